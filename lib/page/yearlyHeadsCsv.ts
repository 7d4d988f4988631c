import { DRAWN_DECIMALS, type HeadColumn, type WorkedPart } from '../report/index.js';
import { csvText } from './csv.js';

/**
 * `yearly-heads.csv`: the simulated water at the wall that decides behind every percentile of the worked calculation, a row
 * a sample and year, m above the lowest natural ground at the rim. About 100 bytes a row and as many rows as samples times
 * years: half a megabyte for 512 samples of 10 years.
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
    for (const step of steps) if (step.drawn) drawn.set(step.drawn.name, step.drawn);
  const columns = [...drawn.values()];
  const rows = Array.from({ length: samples * years }, (_, i) => [
    Math.floor(i / years) + 1,
    (i % years) + 1,
    ...columns.map(({ values }) =>
      Number.isFinite(values[i]) ? Number(values[i]!.toFixed(DRAWN_DECIMALS)) : '',
    ),
  ]);
  return csvText([['sample', 'year', ...drawn.keys()], ...rows]);
}
