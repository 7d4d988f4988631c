import { describe, expect, test } from 'vitest';
import { isoDate } from '../../lib/climate/index.js';
import { siteModel } from '../../lib/site/index.js';
import { read } from '../survey/folder.js';
import { realDays } from '../weather.js';

const LEVELS = 'point,role,level_m\nr1,rim,10\nr2,rim,10.4\n';
const site = (files: Record<string, string | undefined>, samples = 60) =>
  siteModel(read({ 'heads.csv': undefined, 'levels.csv': LEVELS, ...files }), { samples, seed: 1 });

/** Middle of a month over all samples and years. */
function middle(levels: Float32Array, month: number): number {
  const of = levels.filter((_, i) => i % 12 === month - 1).sort();
  return of[Math.floor(of.length / 2)];
}

/** A look each month from October to May in a hole dug long before. */
const MONTHS = ['2023-10', '2023-11', '2023-12', '2024-01', '2024-02', '2024-03', '2024-04', '2024-05'];
const DIPS = `pit,date,reading,depth_m,hole_diameter_cm\nP1,2023-03-01,opened,2,10\n${MONTHS.map(
  (m, i) => `P1,${m}-10,level,${[1.2, 0.8, 0.5, 0.3, 0.25, 0.3, 0.5, 0.8][i]},`,
).join('\n')}\n`;

const WEATHER = `date,rain_mm,tmin_c,tmax_c\n${realDays('Seattle')
  .map((d) => `${isoDate(d.day)},${(d.rain! * 1000).toFixed(1)},${d.tmin},${d.tmax}`)
  .join('\n')}\n`;

test('a rim that nobody levelled counts as level, and the list says so', () => {
  const items = (levels: string | undefined) =>
    site({ 'levels.csv': levels }).assumptions.map(({ item }) => item);
  expect(items(undefined)).toContain('ground at the rim');
  expect(items('point,role,level_m\nr1,rim,10\n')).toContain('ground at the rim');
  expect(items(LEVELS)).not.toContain('ground at the rim');
});

describe('without weather', () => {
  test('and without levels the winter head is the spill level, and the site says so', () => {
    const s = site({});
    expect(s.waterModel).toBe('spill level');
    expect(middle(s.water.clayLow.month, 1)).toBeCloseTo(0, 1);
    expect(middle(s.water.clayLow.month, 7)).toBeLessThan(-0.2);
    expect(s.assumptions.map((a) => a.item)).toContain('winter water');
    expect(s.record).toBeUndefined();
    // Nothing is known of the ring either: full in the wet half-year, filled by a heavy day otherwise.
    expect(middle(s.water.tub!.asIs.month, 1)).toBe(0);
    const [summer, clay] = [middle(s.water.tub!.asIs.month, 7), middle(s.water.clayLow.month, 7)];
    expect(summer).toBeGreaterThan(clay + 0.03);
    expect(summer).toBeLessThanOrEqual(0);
    // Kept out of it, it stands as the clay.
    expect(middle(s.water.tub!.keptOut.month, 7)).toBe(clay);
  });

  test('dips that cover the wet half carry the water', () => {
    const s = site({ 'water.csv': DIPS });
    expect(s.waterModel).toBe('dips');
    expect(s.dips.length).toBe(8);
    expect(middle(s.water.clayLow.month, 2)).toBeCloseTo(-0.25, 1);
    expect(middle(s.water.clayLow.month, 10)).toBeCloseTo(-1.2, 1);
    expect(s.assumptions.map((a) => a.item)).toContain('year-to-year spread');
  });

  test('three months of dips do not', () => {
    const few = DIPS.split('\n')
      .filter((row) => !/2023-12|2024-0[1345]/.test(row))
      .join('\n');
    expect(site({ 'water.csv': few }).waterModel).toBe('spill level');
  });

  test('levels already known go before dips', () => {
    const s = site({
      'water.csv': DIPS,
      'heads.csv': 'place,month,depth_m,spread_m\nsite,1,0.1,0.02\nsite,7,1.1,0.02\n',
    });
    expect(s.waterModel).toBe('heads.csv');
    expect(middle(s.water.clayLow.month, 1)).toBeCloseTo(-0.1, 1);
    // April is wet and not told: as January.
    expect(middle(s.water.clayLow.month, 4)).toBeCloseTo(-0.1, 1);
    expect(middle(s.water.clayLow.month, 7)).toBeCloseTo(-1.1, 1);
  });

  test('reading error is one draw for all years, a spread from year to year is not', () => {
    const known = (source: string) =>
      site({ 'heads.csv': `place,month,depth_m,spread_m,source\nsite,1,0.1,0.1,${source}\n` }).water;
    const spread = (w: ReturnType<typeof known>) => {
      const first = Array.from({ length: w.years }, (_, y) => w.clayLow.month[y * 12]);
      return Math.max(...first) - Math.min(...first);
    };
    expect(spread(known('reading error'))).toBe(0);
    expect(spread(known('records'))).toBeGreaterThan(0.1);
  });
});

describe('behind the uphill wall', () => {
  test('the table follows the ground by most of its rise, and by no more than all of it', () => {
    const { clayLow, clayHigh } = site({}).water;
    const rise = Float64Array.from(clayLow.month, (low, i) => clayHigh.month[i] - low).sort();
    expect(rise[0]).toBeGreaterThanOrEqual(0);
    expect(rise[rise.length - 1]).toBeLessThanOrEqual(0.4 + 1e-6);
    expect(rise[Math.floor(rise.length / 2)]).toBeCloseTo(0.85 * 0.4, 2);
  });

  test('or stands where it was measured', () => {
    const s = site({
      'heads.csv': 'place,month,depth_m,spread_m\nsite,high,0.3,0.02\nuphill,high,0.2,0.02\n',
    });
    expect(middle(s.water.clayHigh.month, 1)).toBeCloseTo(0.2, 1);
  });
});

describe('with weather', () => {
  const s = site({ 'weather.csv': WEATHER, 'site.csv': 'item,value,unit,note\nlatitude,47.45,deg,\n' });

  test('every year of it is simulated in every sample, and all balances close', () => {
    expect(s.waterModel).toMatch(/from priors$/);
    // Three whole years, each with its wet season as it was, wetter and drier.
    expect(s.water).toMatchObject({ samples: 60, years: 9 });
    expect(s.water.clayLow.month.length).toBe(60 * 9 * 12);
    expect(s.assumptions.map((a) => a.item)).toContain('wet winters');
    expect(s.water.clayLow.month.every(Number.isFinite)).toBe(true);
    expect(s.water.closure).toBeLessThan(1e-9);
  });

  test('the table is high in winter and deep in summer, above the ground by 0.05 m at most where nobody read it there', () => {
    expect(middle(s.water.clayLow.month, 1)).toBeGreaterThan(middle(s.water.clayLow.month, 9) + 0.4);
    expect(Math.max(...s.water.clayLow.month)).toBeGreaterThan(0);
    expect(Math.max(...s.water.clayLow.month)).toBeLessThanOrEqual(0.05 + 1e-6);
  });

  test('the ring stands no higher with run-off kept out, and above the ground by 0.05 m at most where nobody read it there', () => {
    const { asIs, keptOut } = s.water.tub!;
    expect(Math.max(...asIs.month)).toBeLessThanOrEqual(1e-6);
    for (let i = 0; i < asIs.month.length; i++)
      expect(keptOut.month[i]).toBeLessThanOrEqual(asIs.month[i] + 1e-6);
    expect(middle(asIs.month, 1)).toBeGreaterThan(middle(keptOut.month, 1));
  });

  test('an emptying meets the highest of the month it starts in, and may meet more after it', () => {
    const { month, emptied } = s.water.clayLow;
    for (let i = 0; i < month.length; i++) expect(emptied[i]).toBeGreaterThanOrEqual(month[i] - 1e-6);
    expect(emptied.some((level, i) => level > month[i] + 0.05)).toBe(true);
  });

  test('the same survey and seed give the same water, another seed another', () => {
    const again = (seed: number) => siteModel(s.survey, { samples: 10, seed }).water.clayLow.month;
    expect(again(1)).toEqual(again(1));
    expect(again(2)).not.toEqual(again(1));
  });

  test('dips are fitted, those outside the record counted', () => {
    const inside = DIPS.replaceAll('2023-', '2013-').replaceAll('2024-', '2014-');
    const fitted = site({ 'weather.csv': WEATHER, 'water.csv': inside });
    expect(fitted.waterModel).toMatch(/fitted to dips$/);
    expect(fitted.warnings.map((w) => w.code)).not.toContain('dips-outside-weather');
    const late = site({ 'weather.csv': WEATHER, 'water.csv': DIPS });
    expect(late.waterModel).toMatch(/from priors$/);
    expect(late.warnings).toContainEqual(
      expect.objectContaining({ code: 'dips-outside-weather', message: expect.stringMatching(/^8 looks/) }),
    );
  });

  test('weather without a whole year is not used, and said', () => {
    const short = WEATHER.split('\n').slice(0, 200).join('\n');
    const s = site({ 'weather.csv': short });
    expect(s.waterModel).toBe('spill level');
    expect(s.warnings.map((w) => w.code)).toContain('weather-too-short');
  });

  test('days filled are counted in a warning', () => {
    const gappy = WEATHER.split('\n')
      .filter((_, i) => i < 500 || i > 504)
      .join('\n');
    expect(site({ 'weather.csv': gappy }, 8).warnings).toContainEqual(
      expect.objectContaining({
        code: 'weather-filled',
        message: expect.stringMatching(/^5 days without rain and 5 without/),
      }),
    );
  });
});
