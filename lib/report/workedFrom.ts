/** Where the numbers put into a worked step came from, in words a reader can follow to a row of the survey. */

import { decidingDay } from '../basis/index.js';
import type { Judged } from '../decision/index.js';
import type { Formula, Step } from '../formula/index.js';
import type { Measures } from '../heads/index.js';
import type { Site } from '../site/index.js';
import type { Origin } from '../survey/index.js';

/** A step of the worked calculation: every number with where it came from. */
export interface WorkedStep extends Step {
  inputs: (Step['inputs'][number] & { from: string })[];
}

/** A part of the worked calculation: the steps of one question, recorded from the code that answers it. */
export interface WorkedPart {
  heading: string;
  /** what the numbers put in are and where they come from */
  note: string;
  from: Origin[];
  steps: WorkedStep[];
  /** place in result.json that a step (counted from 1) equals, once divided by `per` */
  equals: { path: string; step: number; per: number }[];
}

/** Origin in words, for the inputs of a formula by symbol. */
// biome-ignore lint/suspicious/noExplicitAny: arguments of different formulas
export type Told = [Formula<(...args: any[]) => number>, Record<string, string>];

const resultOf = (step: number) => (step < 0 ? undefined : `result of step ${step + 1}`);

/**
 * Steps with the origin of each input: the earlier step of the part that gives the same quantity, else as told; what is
 * told of a formula is used up in the order in which it occurs.
 * @throws Error when an input is neither told nor the result of an earlier step
 */
export function withOrigins(steps: Step[], told: Told[]): WorkedStep[] {
  const left = [...told];
  return steps.map((step, at) => {
    const next = left.findIndex(([formula]) => formula.title === step.title);
    const words = next < 0 ? {} : left.splice(next, 1)[0][1];
    const inputs = step.inputs.map((input) => {
      const said = words[input.symbol];
      const same = (one: Step) => one.result === input.value;
      const earlier = steps.slice(0, at).findIndex((one) => same(one) && one.unit === input.unit);
      // Nought equals nought by chance, and a ratio a length: what is told comes first then.
      const from =
        earlier >= 0 && (input.value !== 0 || !said)
          ? resultOf(earlier)
          : (said ?? resultOf(steps.slice(0, at).findIndex(same)));
      if (from === undefined) throw new Error(`missing origin of ${input.symbol} in ${step.title}`);
      return { ...input, from };
    });
    return { ...step, inputs };
  });
}

/** A row of the survey as a person looks it up: `pond.csv line 4, depth`. */
export function rowWords({ file, line, column }: Origin): string {
  return `${file}${line === undefined ? '' : ` line ${line}`}${column ? `, ${column}` : ''}`;
}

/** An item of pond.csv with its row, or that it was assumed. */
export function pondRow(
  { survey }: Site,
  item: keyof Site['survey']['origins']['pond'],
  words: string,
): string {
  const origin = survey.origins.pond[item];
  return origin
    ? `${words} (${rowWords({ ...origin, column: item })})`
    : `${words} (assumed: ${item} is not in pond.csv)`;
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
export const pondCells = (
  a: Judged,
  ...items: (keyof Judged['site']['survey']['origins']['pond'])[]
): Origin[] =>
  items.map((item) => a.site.survey.origins.pond[item]).filter((o): o is Origin => o !== undefined);

/** The pond level of the day that decides, put together by hand; the year one that a share 1 − p exceeds. */
export function keptWords({ site, basis }: Judged, m: Measures, p: number): string {
  const { pond, survey } = site;
  const { kept } = pond;
  const day = decidingDay(basis, m, pond.depth, p);
  const lacks = pond.fullLevel + m.raise - day.pond;
  const say = (value: number) => `${Number(value.toFixed(4))} m`;
  const full = survey.pond.full_level === undefined ? 'water_above_rim_ground' : 'full_level';
  return [
    pondRow(site, full, `full level ${say(pond.fullLevel)}`),
    ...(m.raise > 0 ? [`+ raised ${say(m.raise)}`] : []),
    'held' in kept
      ? pondRow(site, 'usual_drawdown', `− held below full ${say(lacks)}`)
      : pondRow(
          site,
          'kept_within',
          `− lacking on the day that decides, by its daily balance, ${say(lacks)}`,
        ),
    ...(m.ballast > 0 ? [`+ head held by the slab ${say(m.ballast)}`] : []),
  ].join(' ');
}

/** The floor of the pond, put together by hand. */
export function floorWords({ site }: Judged, m: Measures, depth: number): string {
  const say = (value: number) => `${Number(value.toFixed(4))} m`;
  const dug =
    depth === site.pond.depth
      ? pondRow(site, 'depth', `floor −${say(depth)}`)
      : `floor at the recommended depth −${say(depth)}`;
  return m.raise > 0 ? `${dug} + raised ${say(m.raise)}` : dug;
}
