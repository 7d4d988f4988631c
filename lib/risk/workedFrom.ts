/** Where the numbers put into a worked step came from, in words a reader can follow to a row of the survey. */
import type { Formula, Step } from '../formula/index.js';
import type { Site } from '../site/index.js';
import type { Origin } from '../survey/index.js';

/** A step of the worked calculation: every number with where it came from. */
export interface WorkedStep extends Step {
  inputs: (Step['inputs'][number] & { from: string })[];
}

/** Origin in words, for the inputs of a formula by symbol. */
// biome-ignore lint/suspicious/noExplicitAny: arguments of different formulas
type Told = [Formula<(...args: any[]) => number>, Record<string, string>];

/**
 * Steps with the origin of each input: the earlier step of the part that gives the same number, else as told; what is
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
      const earlier = steps.slice(0, at).findIndex(({ result }) => result === input.value);
      const from = earlier >= 0 ? `result of step ${earlier + 1}` : said;
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
