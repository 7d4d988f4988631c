/**
 * Reads the numbered steps of a page from its text alone, works each out again with the numbers as they are printed, and looks
 * up where each is said to be from. Knows nothing of the code that made them.
 */
import { parse as parseCsv } from 'csv-parse/sync';
import { evaluate } from 'mathjs';

/** A number put in, as it is printed. */
export interface Put {
  symbol: string;
  value: number;
  unit: string;
  from: string;
}

/** A step as it is printed. */
export interface Read {
  number: number;
  title: string;
  symbol: string;
  expression: string;
  put: Put[];
  result: number;
  unit: string;
}

const LINE = /^(\d+)\. (.+?): (\S+) = ([^;]+)(?:; (.*))?; (\S+) = (\S+)(?: ([^()]+?))?(?: \(.*\))?\s*$/;
const PUT = /(\S+) = (\S+)(?: ([^[\]]+?))? \[([^\]]*)\](?:; |$)/g;

/** The steps of a page's text, in the order in which they stand. */
export function stepsOf(text: string): Read[] {
  return text.split('\n').flatMap((line): Read[] => {
    const found = LINE.exec(line.trim());
    if (!found) return [];
    const [, number, title, symbol, expression, put = '', again, result, unit = ''] = found;
    if (again !== symbol) return [];
    return [
      {
        number: Number(number),
        title: title!,
        symbol: symbol!,
        expression: expression!,
        put: [...put.matchAll(PUT)].map(([, symbol, value, unit = '', from]) => ({
          symbol: symbol!,
          value: Number(value),
          unit,
          from: from!,
        })),
        result: Number(result),
        unit,
      },
    ];
  });
}

/** What a page's steps are checked against: the files of the survey as text, and the simulated years. */
export interface Beside {
  files: Record<string, string>;
  heads: string;
}

/** Everything that is wrong with the steps of a page; empty where nothing is. */
export function problemsOf(text: string, { files, heads }: Beside): string[] {
  const steps = stepsOf(text);
  const said = Number(/in (\d+) steps\./.exec(text)?.[1]);
  const problems = steps.flatMap((step, at) => [
    ...(step.number === at + 1 ? [] : [`step ${step.number} stands in place ${at + 1}`]),
    ...worked(step, heads),
    ...[step.result, ...step.put.map(({ value }) => value)].flatMap((value) =>
      Number.isFinite(value) ? [] : [`step ${step.number}: ${value} is no number`],
    ),
    ...step.put.flatMap((put) => [...origin(put, step, steps, files), ...numbering(put, step, heads)]),
  ]);
  if (steps.length !== said) problems.push(`${steps.length} steps can be read, ${said} are said`);
  const trials = steps.filter(({ title }) => title.startsWith('What the trial leaves'));
  const tried = steps.some(({ put }) => put.some(({ from }) => from.startsWith('by trial: ')));
  if (tried && trials.length === 0) problems.push('a number by trial has no check');
  for (const { number, result } of trials)
    if (Math.abs(result) > 2e-3) problems.push(`the trial checked in step ${number} leaves ${result}`);
  return problems;
}

/** Half of the sixth digit. */
const half = (value: number) => 0.5 * 10 ** (Math.floor(Math.log10(Math.abs(value) || 1e-9)) - 5);

function worked({ number, expression, put, result, unit }: Read, heads: string): string[] {
  const drawn = /^quantile\((\w+), ([\d.]+)\)$/.exec(expression);
  if (drawn) {
    const values = column(heads, drawn[1]!);
    if (values.length !== put[0]!.value) return [`step ${number}: ${values.length} values`];
    const found = quantile(values, Number(drawn[2]));
    // As the file has it, to a hundredth of a millimetre.
    return Math.abs(found - result) <= 1.01e-5
      ? []
      : [`step ${number}: ${result} ${unit} is ${found} by the file`];
  }
  if (/^(sum|quantile)\(/.test(expression)) return counted({ number, expression, put, result, unit }, heads);
  const unused = put.filter(
    ({ symbol }) => !new RegExp(`(?<![A-Za-z0-9_])${symbol}(?![A-Za-z0-9_])`).test(expression),
  );
  if (unused.length > 0)
    return [`step ${number}: ${unused.map(({ symbol }) => symbol)} not in ${expression}`];
  try {
    const found = Number(evaluate(expression, Object.fromEntries(put.map((p) => [p.symbol, p.value]))));
    const off = Math.abs(found - result);
    return off <= half(found) * (1 + 1e-6) + 1e-12
      ? []
      : [`step ${number}: ${expression} gives ${found}, not ${result}`];
  } catch (error) {
    return [`step ${number}: ${expression}: ${(error as Error).message}`];
  }
}

/** A count of the file's rows, or a percentile of what its samples come to. */
function counted(
  { number, expression, put, result, unit }: Pick<Read, 'number' | 'expression' | 'put' | 'result' | 'unit'>,
  heads: string,
): string[] {
  const columns = put.map(({ symbol }) => column(heads, symbol));
  if (columns.some((values, at) => values.length !== put[at]!.value))
    return [`step ${number}: not as many values`];
  const scope = Object.fromEntries(put.map(({ symbol }, at) => [symbol, columns[at]!]));
  const samples = column(heads, 'sample');
  const bySample = /^quantile\(bysample\((.+)\), ([\d.]+)\)$/.exec(expression);
  const found = bySample
    ? quantile(meansBy(samples, evaluate(bySample[1]!, scope) as number[]), Number(bySample[2]))
    : Number(evaluate(expression, scope));
  // Each row has six digits.
  return Math.abs(found - result) <= 1e-5 * Math.abs(found) + 1e-9
    ? []
    : [`step ${number}: ${result} ${unit} is ${found} by the file`];
}

/** Means of values by the sample that each belongs to. */
function meansBy(samples: number[], values: number[]): number[] {
  const sums = new Map<number, [sum: number, count: number]>();
  samples.forEach((sample, at) => {
    const [sum, count] = sums.get(sample) ?? [0, 0];
    sums.set(sample, [sum + values[at]!, count + 1]);
  });
  return [...sums.values()].map(([sum, count]) => sum / count);
}

/** Type 7 of Hyndman & Fan, written anew. */
export function quantile(values: number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const at = share * (sorted.length - 1);
  const low = Math.floor(at);
  return sorted[low]! + (at - low) * (sorted[Math.min(low + 1, sorted.length - 1)]! - sorted[low]!);
}

/** A column of a CSV as numbers. */
export function column(csv: string, name: string): number[] {
  const known = columns.get(csv) ?? new Map<string, number[]>();
  columns.set(csv, known);
  const found = known.get(name);
  if (found) return found;
  const [header = [], ...rows] = rowsOf(csv);
  const at = header.indexOf(name);
  const values = at < 0 ? [] : rows.map((row) => Number(row[at]));
  known.set(name, values);
  return values;
}
const columns = new Map<string, Map<string, number[]>>();

const parsed = new Map<string, string[][]>();
function rowsOf(csv: string): string[][] {
  const rows =
    parsed.get(csv) ??
    (parseCsv(csv, { relax_column_count: true, skip_empty_lines: false, bom: true }) as string[][]);
  parsed.set(csv, rows);
  return rows;
}

function origin(put: Put, step: Read, steps: Read[], files: Record<string, string>): string[] {
  const { symbol, value, from } = put;
  const here = `step ${step.number}: ${symbol} = ${value} [${from}]`;
  if (from === 'assumed: as the answer has it') return [`${here} has no origin`];
  if (/^(assumed|by trial): \S/.test(from)) return [];
  const earlier = /^step (\d+)$/.exec(from);
  if (earlier) {
    const of = steps[Number(earlier[1]) - 1];
    if (!of || of.number >= step.number) return [`${here}: no such step before`];
    return of.result === value ? [] : [`${here}: that step gives ${of.result}`];
  }
  const row =
    /^([a-z-]+\.csv)(?: line (\d+)(?:, (\w+))?| lines (\d+) to (\d+))?(?:, ([\w.-]+))*(: \S.*)?/.exec(from);
  if (!row) return [`${here}: neither a step, a line nor an assumption`];
  const [, file, line, item, , last] = row;
  if (file === 'yearly-heads.csv') return [];
  const text = files[file!];
  if (text === undefined) return [`${here}: no such file`];
  const lines = text.split(/\r?\n/);
  const at = Number(line ?? last ?? 1);
  if (!lines[at - 1]?.trim()) return [`${here}: no such line`];
  if (item === undefined || row[7] !== undefined) return [];
  return holds(lines, at, item, value) ? [] : [`${here}: the line says ${lines[at - 1]}`];
}

/** How many samples, or years of one, the file holds. */
function numbering({ value, from }: Put, { number }: Read, heads: string): string[] {
  const of = /^yearly-heads\.csv, (sample|year)$/.exec(from)?.[1];
  return !of || Math.max(...column(heads, of)) === value ? [] : [`step ${number}: not so many ${of}s`];
}

const SI: Record<string, number> = {
  '': 1,
  m: 1,
  cm: 0.01,
  mm: 0.001,
  ft: 0.3048,
  in: 0.0254,
  m2: 1,
  'm²': 1,
  ft2: 0.3048 ** 2,
  'ft²': 0.3048 ** 2,
  s: 1,
  min: 60,
  h: 3600,
  d: 86400,
  ratio: 1,
  '%': 0.01,
  'm/s': 1,
  'm/d': 1 / 86400,
  'mm/h': 1e-3 / 3600,
  'in/hr': 0.0254 / 3600,
  'cm/d': 0.01 / 86400,
  'mm/d': 0.001 / 86400,
  'cm/h': 1e-2 / 3600,
  'in/h': 0.0254 / 3600,
  kPa: 1000,
  Pa: 1,
};

/** Whether a line holds a number, in its own unit: an item with its unit beside it, or a cell under a header that names it. */
function holds(lines: string[], at: number, item: string, value: number): boolean {
  const cells = rowsOf(lines[at - 1]!)[0]!.map((cell) => cell.trim());
  const header = rowsOf(lines.find((each) => each.trim() && !each.startsWith('#'))!)[0]!.map((cell) =>
    cell.trim(),
  );
  const texts: [cell: string, unit: string][] =
    cells[0] === item
      ? [[cells[1]!, cells[2] ?? '']]
      : header.flatMap((name, i): [string, string][] =>
          name === item || name.startsWith(`${item}_`)
            ? [[cells[i] ?? '', name.slice(item.length + 1).replace('_', '/')]]
            : [],
        );
  return texts.some(([cell, unit]) => {
    const found = amountOf(cell, unit);
    return found !== undefined && Math.abs(found - value) <= 1.01 * half(value) + 1e-12;
  });
}

/** A number with its unit, in one cell or two: `1.2 m`, `3 ft 4 1/2 in`. */
function amountOf(cell: string, unit: string): number | undefined {
  const parts = [
    ...cell.replace(',', '.').matchAll(/(-?[\d.]+(?:e-?\d+)?)(?:[ -](\d+)\/(\d+))?\s*([^\d\s-][^\d\s-]*)?/gi),
  ];
  if (parts.length === 0) return undefined;
  const sign = cell.trim().startsWith('-') ? -1 : 1;
  return (
    sign *
    parts.reduce((sum, [, whole, over, under, own]) => {
      const amount = Math.abs(Number(whole)) + (over ? Number(over) / Number(under) : 0);
      return sum + amount * (SI[own === "'" ? 'ft' : own === '"' ? 'in' : (own ?? unit)] ?? Number.NaN);
    }, 0)
  );
}
