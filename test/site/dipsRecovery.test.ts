import { describe, expect, test } from 'vitest';
import { dipsOf, fillingDepth } from '../../lib/site/index.js';
import { read } from '../survey/folder.js';

const DAY = 86400;
const pipe = { sealed: true, floor: 1.7, start: 1.7, poolRadius: 0.016, holeRadius: 0.05, intakeLength: 0.7 };
const HEADER = 'pit,date,time,reading,depth_m,hole_depth_m,hole_diameter_cm,pipe_bore_cm,open_from_m';
const OPENED = 'P1,2024-02-01,09:00,opened,1.7,1.7,10,3.2,1.0';
/** One lag of the pipe is 5.6 days. */
const K = 1e-9;
/** Looks at 09:00 so many days after the opening, water outside at 0.4 m. */
const looks = (...days: number[]) =>
  days.map((d) => {
    const date = new Date(Date.UTC(2024, 1, 1 + d)).toISOString().slice(0, 10);
    return `P1,${date},09:00,level,${fillingDepth(pipe, 0.4, K, d * DAY).toFixed(3)},,,,`;
  });
const said = (rows: string[], spread = Number.POSITIVE_INFINITY) =>
  dipsOf(read({ 'water.csv': `${HEADER}\n${rows.join('\n')}\n` }), () => ({ median: K, spread }));

describe('looks while a pipe fills', () => {
  test('that settle the level give it on the last day, with its band as error; the earlier ones stay limits', () => {
    const { dips, warnings } = said([OPENED, ...looks(5, 10, 15)], 1);
    expect(warnings).toEqual([]);
    expect(dips.map((d) => d.says)).toEqual(['above', 'above', 'level']);
    expect(Math.abs(dips[2].depth - 0.4)).toBeLessThan(0.02);
    expect(dips[2].error).toBeGreaterThanOrEqual(0.01);
    expect(dips[2].error).toBeLessThan(0.05);
  });

  test('that come early stay limits', () => {
    const { dips } = said([OPENED, ...looks(1, 2)], 1.6);
    expect(dips.map((d) => d.says)).toEqual(['above', 'above']);
  });

  test('count by filling: bailing starts again', () => {
    const { dips } = said(
      [OPENED, ...looks(6, 12), 'P1,2024-02-14,09:00,bailed,1.6,,,,', 'P1,2024-02-15,09:00,level,1.5,,,,'],
      1,
    );
    expect(dips.at(-1)).toMatchObject({ says: 'above', depth: 1.5 });
  });

  test('without times of day need five days', () => {
    const timed = looks(1, 2, 3, 4);
    const untimed = timed.map((row) => row.replace('09:00', ''));
    const says = (rows: string[]) => said([OPENED, ...rows], 0.1).dips.map((d) => d.says);
    expect(says(timed)).toEqual(['above', 'above', 'above', 'level']);
    expect(says(untimed)).toEqual(['above', 'above', 'above', 'above']);
    expect(says(looks(5, 10, 15).map((row) => row.replace('09:00', ''))).at(-1)).toBe('level');
  });
});

describe('a pipe in ground a hundred times tighter than its table says', () => {
  /** Taken for 1e-7 m/s the pipe lags 1.3 hours; it rises as at 1e-9 m/s, 5.6 days. */
  const taken = (rows: string[]) =>
    dipsOf(read({ 'water.csv': `${HEADER}\n${rows.join('\n')}\n` }), () => ({
      median: 100 * K,
      spread: 2.8,
    }));

  test('has not caught up while it rises from look to look: no look of it is a level, and that is said', () => {
    const { dips, warnings } = taken([OPENED, ...looks(2, 3, 4)]);
    expect(dips.map((d) => d.says)).not.toContain('level');
    expect(warnings).toMatchObject([{ code: 'still-filling', file: 'water.csv' }]);
  });

  test('or the looks themselves settle where it is heading for', () => {
    const { dips, warnings } = taken([OPENED, ...looks(5, 10, 15)]);
    expect(warnings).toEqual([]);
    expect(dips.map((d) => d.says)).toEqual(['above', 'above', 'level']);
    expect(Math.abs(dips[2].depth - 0.4)).toBeLessThan(0.03);
  });

  test('whose looks agree has caught up, and a rise after a month is the season', () => {
    const agreed = taken([OPENED, 'P1,2024-02-08,09:00,level,0.9,,,,', 'P1,2024-02-15,09:00,level,0.9,,,,']);
    expect(agreed.dips.map((d) => d.says)).toEqual(['level', 'level']);
    const later = taken([OPENED, 'P1,2024-03-10,09:00,level,0.9,,,,', 'P1,2024-04-10,09:00,level,0.5,,,,']);
    expect(later.dips.map((d) => d.says)).toEqual(['level', 'level']);
  });
});

test("'dry' before two lags bounds by what the tightest likely ground would have shown, and says so", () => {
  const { dips, warnings } = said([OPENED, 'P1,2024-02-08,09:00,dry,,,,,'], 0.5);
  expect(warnings).toMatchObject([{ code: 'dry-too-soon' }]);
  expect(dips).toMatchObject([{ says: 'below' }]);
  expect(dips[0].depth).toBeGreaterThan(1.2);
  expect(dips[0].depth).toBeLessThan(1.7);
  expect(warnings[0].message).toContain(
    `only that the water was below ${Number(dips[0].depth.toPrecision(2))} m`,
  );
});
