import type { Report } from '../contract/report.js';
import { monthName } from '../text/monthWords.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import type { Table } from './table.js';

/**
 * The pond's own year as it is kept: how low it stands, what is topped up and what it keeps over the water outside.
 * @param report - from {@link reportOf}
 * @param units - how numbers are written
 * @returns 12 rows, January first; a column of topping up only where it is topped up
 */
export function pondYearTable({ result: { water }, pond }: Report, units: UnitSystem): Table {
  const { by_month } = water.pond;
  const filled = pond.kept.habit === 'topped-up';
  const depth = (value: number) => formatQuantity(value, 'depth', units);
  return {
    name: 'The pond by month, as it is kept',
    columns: [
      { key: 'month', label: 'month' },
      { key: 'drawdown_p50', label: 'lowest, below full' },
      { key: 'drawdown_p90', label: '1 in 10 lower' },
      ...(filled
        ? [
            { key: 'top_up_p50', label: 'to top up' },
            { key: 'top_up_p90', label: '1 in 10 more' },
          ]
        : []),
      { key: 'net_head_p10', label: 'above the water outside, 1 in 10 less' },
    ],
    rows: by_month.map(({ month, drawdown_m, top_up_m3, net_head_m }) => [
      monthName(month),
      depth(drawdown_m.p50),
      depth(drawdown_m.p90),
      ...(filled
        ? [top_up_m3!.p50, top_up_m3!.p90].map((volume) => formatQuantity(volume, 'volume', units))
        : []),
      depth(net_head_m.p10),
    ]),
  };
}
