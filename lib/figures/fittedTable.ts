import type { FittedParameter, Report } from '../contract/index.js';
import { fittedName, fittedValue } from '../text/fittedWords.js';
import type { UnitSystem } from '../units/index.js';
import type { Table } from './table.js';

/**
 * The parameters of the daily water balance, before the looks and after.
 * @param report - from {@link reportOf}
 * @param units - how numbers are written
 * @returns a row a parameter
 */
export function fittedTable({ fitted }: Report, units: UnitSystem): Table {
  const range = (name: FittedParameter['name'], { p10, p50, p90 }: FittedParameter['before']) => {
    const [low, middle, high] = [p10, p50, p90].map((value) => fittedValue(name, value, units));
    return `${middle} (${low} to ${high})`;
  };
  return {
    name: 'What was fitted of the water in the ground',
    columns: [
      { key: 'parameter', label: 'parameter' },
      { key: 'does', label: 'what it does' },
      { key: 'before', label: 'before the looks' },
      { key: 'after', label: 'after' },
    ],
    rows: fitted.map(({ name, before, after }) => [
      fittedName(name).name,
      fittedName(name).does,
      range(name, before),
      range(name, after),
    ]),
  };
}
