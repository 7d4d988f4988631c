import { describe, expect, test } from 'vitest';
import { dayNumber } from '../../lib/climate/index.js';
import { dipsOf, wetMonthsCovered } from '../../lib/site/index.js';
import { read } from '../survey/folder.js';

/** Clay of 1e-8 m/s: an open hole of 100 mm and 1.5 m depth lags 5.2 days (Hvorslev 1951). */
const CLAY = 1e-8;
const said = (rows: string[], conductivity = CLAY) =>
  dipsOf(
    read({
      'water.csv': `pit,date,time,reading,depth_m,hole_depth_m,hole_diameter_cm,pipe_bore_cm,open_from_m\n${rows.join('\n')}\n`,
      'levels.csv': 'point,role,level_m\nr,rim,10\nsurface,pond,10\npipe,dip-pipe,10.1\n',
    }),
    () => ({ median: conductivity, spread: Number.POSITIVE_INFINITY }),
  );
const OPENED = 'P1,2024-01-10,09:00,opened,1.5,,10,,';

describe("'dry'", () => {
  test('an hour after the hole was dug tells nothing, and that is said', () => {
    const { dips, warnings } = said([OPENED, 'P1,2024-01-10,10:00,dry,,,,,']);
    expect(dips).toEqual([]);
    expect(warnings).toMatchObject([{ code: 'dry-too-soon', file: 'water.csv', line: 3 }]);
    expect(warnings[0].message).toMatch(/2024-01-10 says nothing.*one is 5\.2 days/);
  });

  test.each([
    ['2024-01-20', 0],
    ['2024-01-22', 1],
  ])('on %s, two lags being over on the 20th at noon, it gives %d bounds', (date, bounds) => {
    const { dips, warnings } = said([OPENED, `P1,${date},06:00,dry,,,,,`]);
    expect(dips.length).toBe(bounds);
    expect(warnings.length).toBe(1 - bounds);
    for (const dip of dips) expect(dip).toMatchObject({ says: 'below', depth: 1.5, pit: 'P1' });
  });

  test('an hour is enough in ground a thousand times more open', () => {
    const { dips } = said([OPENED, 'P1,2024-01-10,12:00,dry,,,,,'], 1e-4);
    expect(dips).toMatchObject([{ says: 'below', depth: 1.5 }]);
  });

  test('in a hole that nobody says was dug lately it bounds', () => {
    expect(said(['P1,2024-01-10,,dry,,1.2,,,']).dips).toMatchObject([{ says: 'below', depth: 1.2 }]);
  });
});

describe('a level', () => {
  test('while the hole fills is only a lower limit, after three lags the level itself', () => {
    const { dips, warnings } = said([OPENED, 'P1,2024-01-12,,level,1.2,,,,', 'P1,2024-02-10,,level,0.6,,,,']);
    expect(warnings).toEqual([]);
    expect(dips.map((d) => [d.says, d.depth])).toEqual([
      ['above', 1.2],
      ['level', 0.6],
    ]);
    expect(Math.floor(dips[1].day)).toBe(dayNumber(2024, 2, 10));
  });

  test('is a limit again after bailing', () => {
    const { dips } = said([
      OPENED,
      'P1,2024-02-10,08:00,level,0.6,,,,',
      'P1,2024-02-10,09:00,bailed,1.4,,,,',
      'P1,2024-02-11,09:00,level,1.1,,,,',
    ]);
    expect(dips.map((d) => d.says)).toEqual(['level', 'above']);
  });

  test('without an opening row is that of a hole long open', () => {
    expect(said(['P1,2024-02-10,,level,0.6,,,,']).dips).toMatchObject([{ says: 'level', depth: 0.6 }]);
  });

  test('comes sooner in a narrow pipe in a sand pack: the water has less to fill', () => {
    const rows = (bore: string) => [
      `P1,2024-01-10,09:00,opened,1.5,,10,${bore},0.75`,
      `P1,2024-01-13,,level,0.8,,,${bore},`,
    ];
    expect(said(rows('')).dips[0].says).toBe('above');
    expect(said(rows('2')).dips[0].says).toBe('level');
  });
});

test('water met while digging is a lower limit', () => {
  expect(said(['P1,2024-01-10,,strike,0.9,,,,']).dips).toMatchObject([{ says: 'above', depth: 0.9 }]);
});

test('the pond, its dip pipe and the dig are no dips; all others come by day', () => {
  const { dips } = said([
    'pond,2024-01-05,,level,0.1,,,,',
    'dip-pipe,2024-01-05,,level,0.2,,,,',
    'P2,2024-03-01,,level,0.5,,,,',
    'P1,2024-02-01,,level,0.4,,,,',
  ]);
  expect(dips.map((d) => d.pit)).toEqual(['P1', 'P2']);
});

test('months of the wet half count once, and limits from below do not count', () => {
  const { dips } = said([
    'P1,2023-11-05,,level,0.4,,,,',
    'P1,2023-11-25,,level,0.3,,,,',
    'P1,2024-01-05,,dry,,1.2,,,',
    'P1,2024-02-05,,strike,0.9,,,,',
    'P1,2024-07-05,,level,0.9,,,,',
  ]);
  expect(wetMonthsCovered(dips, [1, 2, 3, 4, 11, 12])).toBe(2);
  expect(wetMonthsCovered(dips, [5, 6, 7, 8, 9, 10])).toBe(1);
});
