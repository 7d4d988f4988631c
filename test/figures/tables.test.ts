import { expect, it } from 'vitest';
import {
  cellText,
  optionTable,
  pondYearTable,
  quantityTable,
  type Table,
  waterMonthTable,
} from '../../lib/figures/index.js';
import { ladderTable, situationTable } from '../../lib/figures/situationTables.js';
import { invented } from './report.js';

const report = invented();

it('options: one a row, with the reason where one is not possible', () => {
  const { columns, rows } = optionTable(report, 'metric');
  expect(rows).toHaveLength(7);
  for (const row of rows) expect(row).toHaveLength(columns.length);
  expect(rows[0]!.slice(0, 2)).toEqual(['No drain', 'at no depth']);
  const { safe_depth_m } = report.result.options[3]!;
  expect(rows[3]!.slice(0, 2)).toEqual(['Drain to an outlet', `${safe_depth_m!.toFixed(2)} m`]);
  expect(rows[5]!.at(-2)).toBe('not possible: the rim must stay as it is');
});

it('months: the lowest level beside the water, in either system', () => {
  const { columns, rows } = waterMonthTable(report, 'us');
  expect(columns.map(({ key }) => key)).toEqual([
    'month',
    'daily_p50',
    'table_p10',
    'table_p50',
    'uphill_p10',
    'dry_floor',
    'lowest_no_drain',
    'lowest_drain_to_outlet',
  ]);
  expect(rows[7]!.at(-2)).toBe('may be emptied');
  expect(rows[0]!.at(-2)).toMatch(/in$/);
  const ringed = invented((each) => {
    each.result.water.by_month[0]!.tub_level_m = { p10: -0.3, p50: -0.2, p90: -0.05 };
  });
  const withRing = waterMonthTable(ringed, 'metric');
  const ring = withRing.columns.findIndex(({ key }) => key === 'tub_p90');
  expect(withRing.rows.map((row) => row[ring])).toEqual(['\u22120.05 m', ...Array(11).fill(null)]);
});

it('lengths stand in one unit down a column, as they are compared', () => {
  const tables: Table[] = [
    waterMonthTable(report, 'metric'),
    pondYearTable(report, 'metric'),
    situationTable(report, 'metric'),
    ladderTable(report, 'metric'),
  ];
  let seen = 0;
  for (const { name, columns, rows } of tables)
    for (const [at, { label }] of columns.entries()) {
      const cells = rows.map((row) => cellText(row[at] ?? null));
      seen += cells.filter((cell) => /\d m\b/.test(cell)).length;
      for (const cell of cells) expect(cell, `${name}, ${label}`).not.toMatch(/\d [cm]m\b/);
    }
  expect(seen).toBeGreaterThan(50);
});

it('quantities: in the units of the reader; none where nothing is dug yet', () => {
  const pipe = report.result.build!.quantities.find(({ item }) => item.startsWith('solid pipe'))!;
  const [, length] = quantityTable(report, 'metric').rows.find(([item]) => item === pipe.item)!;
  // Up to the half metre that a shop sells.
  expect(Number.parseFloat(String(length))).toBeGreaterThanOrEqual(pipe.amount - 1e-9);
  expect(Number.parseFloat(String(length))).toBeLessThan(pipe.amount + 0.5);
  expect(quantityTable(report, 'us').rows).toContainEqual(['flap valve', '1']);
  const dry = invented((each) => {
    each.result.build = null;
  });
  expect(quantityTable(dry, 'metric').rows).toEqual([]);
});

it('the pond by month: what is topped up only where it is, in either system', () => {
  const band = (p50: number) => ({ p10: p50 / 2, p50, p90: 2 * p50 });
  const kept = (habit: 'topped-up' | 'never') =>
    invented((each) => {
      each.pond.kept = { habit, within_m: habit === 'never' ? null : 0.1 };
      each.result.water.pond.by_month = each.result.water.pond.by_month.map(({ month }) => ({
        month,
        drawdown_m: band(0.0508),
        top_up_m3: band(0.6),
        net_head_m: band(0.4),
      }));
    });
  expect(pondYearTable(kept('topped-up'), 'metric').rows[6]).toEqual([
    'July',
    '0.05 m',
    '0.10 m',
    '600 L',
    '1.2 m³',
    '0.20 m',
  ]);
  expect(pondYearTable(kept('never'), 'us').rows[0]).toEqual(['January', '2 in', '4 in', '7 3/4 in']);
});
