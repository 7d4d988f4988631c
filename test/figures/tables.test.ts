import { expect, it } from 'vitest';
import { optionTable, quantityTable, waterMonthTable } from '../../lib/figures/index.js';
import { invented } from './report.js';

const report = invented();

it('options: one a row, with the reason where one is not possible', () => {
  const { columns, rows } = optionTable(report, 'metric');
  expect(rows).toHaveLength(7);
  for (const row of rows) expect(row).toHaveLength(columns.length);
  expect(rows[0]!.slice(0, 2)).toEqual(['No drain', '0.45 m']);
  expect(rows[5]!.at(-2)).toBe('not possible: highest_raise is 0 m');
});

it('months: the lowest level beside the water, in either system', () => {
  const { columns, rows } = waterMonthTable(report, 'us');
  expect(columns.map(({ key }) => key)).toEqual([
    'month',
    'table_p10',
    'table_p50',
    'table_p90',
    'dry_floor',
    'lowest_no_drain',
    'lowest_drain_to_outlet',
  ]);
  expect(rows[7]!.at(5)).toBe('may be emptied');
  expect(rows[0]!.at(5)).toMatch(/in$/);
  const ringed = invented((each) => {
    each.result.water.by_month[0]!.tub_level_m = { p10: -0.3, p50: -0.2, p90: -0.05 };
  });
  expect(waterMonthTable(ringed, 'metric').rows.map((row) => row[4])).toEqual([
    '\u221250 mm',
    ...Array(11).fill(null),
  ]);
});

it('quantities: in the units of the reader; none without a drain', () => {
  expect(quantityTable(report, 'metric').rows).toContainEqual(['solid pipe, 100 mm', '18.00 m']);
  expect(quantityTable(report, 'us').rows).toContainEqual(['flap valve', '1']);
  const dry = invented((each) => {
    each.result.drain = null;
  });
  expect(quantityTable(dry, 'metric').rows).toEqual([]);
});
