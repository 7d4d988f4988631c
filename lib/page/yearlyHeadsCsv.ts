import { DRAWN_DECIMALS, type HeadColumn, STEP_DIGITS, type WorkedPart } from '../report/index.js';
import { csvText } from './csv.js';

/**
 * `yearly-heads.csv`: the simulated water at the wall that decides behind every percentile of the worked calculation, a row
 * a sample and year, m above the lowest natural ground at the rim; and behind every chance which of those years fail, 0 to 1,
 * and how often a drain is found as it then is. About 150 bytes a row and as many rows as samples times years: less than a
 * megabyte for 512 samples of 10 years.
 * @param parts - from {@link workedSheet}
 * @param water - how many samples of how many years were simulated
 * @returns header and rows ended by CR LF (RFC 4180)
 */
export function yearlyHeadsCsv(
  parts: WorkedPart[],
  { samples, years }: { samples: number; years: number },
): string {
  const drawn = new Map<string, HeadColumn>();
  for (const { steps } of parts)
    for (const step of steps) for (const column of step.drawn ?? []) drawn.set(column.name, column);
  const columns = [...drawn.values()];
  const rows = Array.from({ length: samples * years }, (_, i) => [
    Math.floor(i / years) + 1,
    (i % years) + 1,
    ...columns.map(({ values, share }) =>
      Number.isFinite(values[i])
        ? Number(share ? values[i]!.toPrecision(STEP_DIGITS) : values[i]!.toFixed(DRAWN_DECIMALS))
        : '',
    ),
  ]);
  return csvText([['sample', 'year', ...drawn.keys()], ...rows]);
}
