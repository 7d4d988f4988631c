import type { Report, WaterDay } from '../contract/index.js';
import type { Percentiles } from '../sampling/index.js';
import { csvText } from './csv.js';

const SERIES: [key: Exclude<keyof WaterDay, 'date'>, column: string][] = [
  ['table_depth_m', 'table_depth_m'],
  ['tub_level_m', 'tub_level_m'],
  ['head_undrained_m', 'head_undrained_m'],
  ['head_drained_m', 'head_drained_m'],
  ['uphill_wall_m', 'uphill_wall_m'],
  ['pond_level_m', 'pond_level_m'],
];
const PARTS: (keyof Percentiles)[] = ['p10', 'p50', 'p90'];

/**
 * `water-year.csv`: a row a day of the weather, or a month (`--MM`) of an ordinary year: depth to the water table (m
 * below the lowest ground at the rim), level in the tub and head under the liner, undrained and drained (m above it),
 * all at the low side; the level in the clay behind the uphill wall (m above it), where there is one; and that of the
 * pond as it is kept (m above it; of a month its lowest).
 * @param report - from {@link reportOf}
 * @returns header and rows ended by CR LF (RFC 4180); numbers with 6 significant digits, nothing where there is no such water
 */
export function waterYearCsv({ water_year }: Report): string {
  const header = ['date', ...SERIES.flatMap(([, column]) => PARTS.map((part) => `${column}_${part}`))];
  const rows = water_year.map((row) => [
    row.date,
    ...SERIES.flatMap(([key]) => PARTS.map((part) => numberText(row[key]?.[part]))),
  ]);
  return csvText([header, ...rows]);
}

function numberText(value: number | undefined): string {
  return value === undefined ? '' : String(Number(value.toPrecision(6)));
}
