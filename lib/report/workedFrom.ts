/** Where the numbers put into a worked step came from, in words a reader can follow to a row of the survey. */

import type { Formula, Step, Use } from '../formula/index.js';
import { recorder } from '../formula/index.js';
import type { Site } from '../site/index.js';
import type { Origin } from '../survey/index.js';

/** A column of `yearly-heads.csv`: a value a sample and year, index sample × years + year. */
export interface HeadColumn {
  name: string;
  meaning: string;
  values: ArrayLike<number>;
  /** of no length: a share, or a chance */
  share?: true;
}

/** A step of the worked calculation: every number with where it came from, and as it is printed. */
export interface WorkedStep extends Step {
  /** in the whole sheet, from 1 */
  number: number;
  inputs: (Step['inputs'][number] & { from: string; shown: number })[];
  /** the result of the numbers put in as printed */
  shown: number;
  /** of a percentile or a count: what it is drawn from */
  drawn?: HeadColumn[];
}

/** A part of the worked calculation: the steps of one question, recorded from the code that answers it. */
export interface WorkedPart {
  heading: string;
  /** what the numbers put in are and where they come from */
  note: string;
  from: Origin[];
  steps: WorkedStep[];
  /** numbers of steps made before that it takes again */
  again: number[];
  /** place in the answer that a step (by its number) equals, once divided by `per` */
  equals: { path: string; step: number; per: number }[];
}

/** What is told of the inputs of a formula; told again it holds from the next time on that the formula occurs. */
export type InputOrigins = [Formula, Record<string, string | undefined>];

/** A number that is put in as it stands: of the survey, or assumed. */
export interface Known {
  value: number;
  unit: string;
  words: string;
}

/** Steps of one question while they are recorded, without their numbers. */
export class Recording {
  readonly use: Use;
  readonly steps: (Step & { drawn?: HeadColumn[] })[];
  readonly told: InputOrigins[] = [];
  readonly known: Known[] = [];
  readonly equals: { path: string; of: Step; per: number }[] = [];

  constructor(
    readonly heading: string,
    public note: string,
    readonly from: Origin[] = [],
  ) {
    const { use, steps } = recorder();
    this.use = use;
    this.steps = steps;
  }

  /** Says where inputs of a formula come from that no earlier step gives. */
  tell(formula: Formula, words: Record<string, string | undefined>): this {
    this.told.push([formula, words]);
    return this;
  }

  /** Says where a number comes from, whichever formula takes it; no step is looked for. */
  know(value: number, unit: string, words: string): this {
    this.known.push({ value, unit, words });
    return this;
  }

  /** The same where it was told otherwise before. */
  retell(formula: Formula, ...words: Record<string, string | undefined>[]): this {
    for (let at = this.told.length - 1; at >= 0; at--)
      if (this.told[at]![0].title === formula.title) this.told.splice(at, 1);
    for (const each of words) this.tell(formula, each);
    return this;
  }

  /** The same with another note. */
  noted(note: string): this {
    this.note = note;
    return this;
  }

  /** That the step recorded last stands at a place of the answer. */
  same(path: string, per = 1): void {
    const of = this.steps.at(-1);
    if (of) this.equals.push({ path, of, per });
  }

  /** A percentile of what was simulated, with the column it is drawn from. */
  drawn(column: HeadColumn, share: number, result: number, title: string): void {
    const { name, meaning, values } = column;
    this.steps.push({
      title,
      symbol: 'h',
      unit: 'm',
      expression: `quantile(${name}, ${share})`,
      inputs: [{ symbol: name, meaning, unit: 'values', value: values.length }],
      result,
      validity: TYPE_7,
      source: SIMULATED,
      compute: () => result,
      drawn: [column],
    });
  }

  /** What is counted in columns of shares, index by index, by an expression of their names. */
  counted(
    columns: HeadColumn[],
    expression: string,
    step: Pick<Step, 'title' | 'symbol' | 'unit' | 'result'>,
  ): void {
    this.steps.push({
      ...step,
      expression,
      inputs: columns.map(({ name, meaning, values }) => ({
        symbol: name,
        meaning,
        unit: 'values',
        value: values.length,
      })),
      validity: expression.startsWith('quantile') ? `of the means of the samples, ${TYPE_7}` : 'row by row',
      source: SIMULATED,
      compute: () => step.result,
      drawn: columns,
    });
  }

  /** The sum of steps that were recorded before. */
  summed(step: Pick<Step, 'title' | 'symbol' | 'unit'>, of: number[], meaning: string): void {
    const symbols = of.map((_, at) => String.fromCharCode('a'.charCodeAt(0) + at));
    const compute = (...values: number[]) => values.reduce((sum, value) => sum + value, 0);
    this.steps.push({
      ...step,
      expression: symbols.join(' + '),
      inputs: symbols.map((symbol, at) => ({ symbol, meaning, unit: step.unit, value: of[at]! })),
      result: compute(...of),
      validity: 'everything that is counted',
      source: 'arithmetic',
      compute,
    });
  }
}

const TYPE_7 = 'straight between the values in order (type 7 of Hyndman & Fan 1996)';
const SIMULATED = 'simulated water, see the methods';

/** Name of the file of what was simulated. */
export const YEARLY_HEADS = 'yearly-heads.csv';

/** An assumption by name. */
export function assumed(name: string): string {
  return `assumed: ${name}`;
}

/** A row of the survey as a person looks it up: `pond.csv line 4, depth`. */
export function rowWords({ file, line, column }: Origin): string {
  return `${file}${line === undefined ? '' : ` line ${line}`}${column ? `, ${column}` : ''}`;
}

type PondItem = keyof Site['survey']['origins']['pond'];

/** A number of the pond: the row that says it, or that it is assumed, tried or laid back. */
export function pondItem(site: Site, item: PondItem, value: number): string {
  const { pond, origins } = site.survey;
  const origin = origins.pond[item];
  if (origin && pond[item as keyof typeof pond] === value) return rowWords({ ...origin, column: item });
  return origin ? `${rowWords(origin)}: ${item}, changed` : assumed(item);
}

/** An item of pond.csv with its row, or that it was assumed. */
export function pondRow({ survey }: Site, item: PondItem, words?: string): string {
  return itemRow('pond.csv', survey.origins.pond[item], item, words);
}

/** The same of site.csv. */
export function siteRow(
  { survey }: Site,
  item: keyof Site['survey']['origins']['site'],
  words?: string,
): string {
  return itemRow('site.csv', survey.origins.site[item], item, words);
}

function itemRow(file: string, origin: Origin | undefined, item: string, words?: string): string {
  const place = origin ? rowWords({ ...origin, column: item }) : assumed(`${item} is not in ${file}`);
  return words ? `${place}: ${words}` : place;
}

/** First and last row of a file among origins: `pits.csv lines 2 to 7`. */
export function rowsWords(origins: Origin[]): string {
  const files = [...new Set(origins.map(({ file }) => file))];
  return files
    .map((file) => {
      const lines = origins.flatMap((o) => (o.file === file && o.line !== undefined ? [o.line] : []));
      const [first, last] = [Math.min(...lines), Math.max(...lines)];
      return lines.length === 0
        ? file
        : first === last
          ? `${file} line ${first}`
          : `${file} lines ${first} to ${last}`;
    })
    .join(', ');
}

/** What the simulated water rests on. */
export function waterWords({ survey, waterModel, water }: Site): string {
  const rows = rowsWords([...survey.looks, ...survey.heads].map(({ origin }) => origin));
  const weather = survey.weather.length > 0 ? 'weather.csv' : '';
  return `${water.samples} samples of ${water.years} years, ${waterModel} (${[rows, weather].filter(Boolean).join(', ') || 'no looks into holes'})`;
}

/** Rows of pond.csv that hold some items. */
export const pondCells = ({ survey }: Site, ...items: PondItem[]): Origin[] =>
  items.map((item) => survey.origins.pond[item]).filter((o): o is Origin => o !== undefined);
