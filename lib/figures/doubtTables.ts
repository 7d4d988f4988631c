import type { Report } from '../contract/report.js';
import type { Percentiles } from '../sampling/index.js';
import { monthName } from '../text/monthWords.js';
import { chanceText } from '../text/say.js';
import { ADVICE_NAMES, turnWords } from '../text/terms.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import type { Table } from './table.js';

/**
 * A number of an input in the words of its unit.
 * @param value - in `unit`
 * @param unit - `m` (said as a level, with its sign), `m/s`, `Pa`, empty for a chance 0–1, or another that is written as it is
 * @param units - how numbers are written
 * @returns number with unit
 */
function inputText(value: number, unit: string, units: UnitSystem): string {
  if (unit === 'm') return formatQuantity(value, 'level', units);
  if (unit === 'm/s') return formatQuantity(value, 'permeability', units);
  if (unit === 'Pa') return formatQuantity(value, 'pressure', units);
  return unit === '' ? chanceText(value) : `${Number(value.toPrecision(3))} ${unit}`;
}

/**
 * Where the answer turns, beside what was measured or planned.
 * @param report - from {@link reportOf}
 * @param units - how numbers are written
 * @returns a row an input
 */
export function tippingTable({ result }: Report, units: UnitSystem): Table {
  const now = (value: number | Percentiles, unit: string) =>
    typeof value === 'number'
      ? inputText(value, unit, units)
      : `${inputText(value.p50, unit, units)} (${inputText(value.p10, unit, units)} to ${inputText(value.p90, unit, units)})`;
  return {
    name: 'Where the answer turns',
    columns: [
      { key: 'input', label: 'if this' },
      { key: 'now', label: 'which is now' },
      { key: 'value', label: 'came to' },
      { key: 'to', label: 'the answer would be' },
    ],
    rows: result.tipping_points.map((point) => [
      point.input,
      now(point.now, point.unit),
      inputText(point.value, point.unit, units),
      turnWords(point),
    ]),
  };
}

/**
 * What the doubt about the chance comes from.
 * @param report - from {@link reportOf}
 * @returns a row an input, the largest share first
 */
export function driverTable({ result }: Report): Table {
  const share = (value: number | null) =>
    value === null ? null : `${Math.round(100 * Math.min(Math.max(value, 0), 1))} %`;
  return {
    name: 'What the doubt comes from',
    columns: [
      { key: 'input', label: 'input' },
      { key: 'first_order', label: 'doubt that would go if it were known' },
      { key: 'total', label: 'doubt that would stay if only it were not known' },
    ],
    rows: result.drivers.map((d) => [d.input, share(d.first_order), share(d.total)]),
  };
}

/**
 * What could still be measured, and what it is worth.
 * @param report - from {@link reportOf}
 * @returns a row a measurement, the most useful first
 */
export function measurementTable({ result }: Report): Table {
  return {
    name: 'What to measure next',
    columns: [
      { key: 'what', label: 'measurement' },
      { key: 'where', label: 'where' },
      { key: 'month', label: 'when' },
      { key: 'chance_to_change', label: 'chance to change the answer' },
      { key: 'worth', label: 'worth, in drains' },
    ],
    rows: result.recommendation.measure_next.map((m) => [
      m.what,
      m.where,
      m.month === null ? null : monthName(m.month),
      chanceText(m.chance_to_change),
      Number(m.worth_drains.toFixed(2)),
    ]),
  };
}

/**
 * The levelled spots, the best first.
 * @param report - from {@link reportOf}
 * @param units - how numbers are written
 * @returns a row a spot
 */
export function spotTable({ result }: Report, units: UnitSystem): Table {
  return {
    name: 'Spots, the best first',
    columns: [
      { key: 'spot', label: 'spot' },
      { key: 'option', label: 'answer there' },
      { key: 'depth', label: 'depth' },
      { key: 'water', label: 'depth to water when read' },
      { key: 'reason', label: 'why' },
    ],
    rows: result.spots.map((s) => [
      s.planned ? `${s.spot} (planned)` : s.spot,
      ADVICE_NAMES[s.option],
      formatQuantity(s.depth_m, 'depth', units),
      `${formatQuantity(s.water_depth_m, 'depth', units)} ± ${formatQuantity(s.spread_m, 'depth', units)}`,
      s.reason,
    ]),
  };
}
