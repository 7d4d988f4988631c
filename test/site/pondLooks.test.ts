/** Looks at the pond's own level tell its losses: a twin of known leak and coefficient, read with a rule. */
import { describe, expect, test } from 'vitest';
import { mulberry32, normal } from '../../datasets/random.mjs';
import { fitPondLosses, type PondInterval } from '../../lib/pond/index.js';
import { siteModel } from '../../lib/site/index.js';
import { surveyOf, withItem } from '../folder.js';
import { flush } from '../risk/flush.js';
import { pondDays } from '../secondPath/pondYear.js';
import { daysOf, referenceEt } from '../secondPath/weather.js';
import { LATITUDE } from '../weather.js';

const PLAN = { shape: 'box', length: 4, width: 3, sideSlope: 1 } as const;
const BRIM = 0.15;

/** A pond never topped up, read every so many days from April to October of two years; by the second path's own balance. */
function twin({
  leak,
  coefficient = 1.05,
  every = 7,
  from = 0,
  looks = 999,
  ring = '0',
}: {
  leak: number;
  coefficient?: number;
  every?: number;
  from?: number;
  looks?: number;
  ring?: string;
}) {
  let files = flush('kept_within', 'never', { ring });
  files = withItem(files, 'site.csv', 'latitude', String(LATITUDE.Seattle), 'deg');
  files = withItem(files, 'pond.csv', 'state', 'existing');
  const days = daysOf(files['weather.csv']!);
  const { lacks } = pondDays(
    { plan: PLAN, brim: BRIM, depth: 1 },
    days.map(({ rain }) => rain / 1000),
    days.map((day) => (coefficient * referenceEt(LATITUDE.Seattle, day)) / 1000),
    { within: Number.POSITIVE_INFINITY },
    leak,
  );
  const uniform = mulberry32(5);
  const read = days.flatMap(({ day, year, month }, d) =>
    year >= 2013 && year <= 2014 && month >= 4 && month <= 10 && d % every === 0 && d > 0
      ? // At midnight, the end of the day before; the mark is 0.2 m above the ground.
        [{ day, depth: 0.2 - (BRIM - lacks[d - 1]! + 0.005 * normal(uniform)) }]
      : [],
  );
  const rows = read
    .slice(from, from + looks)
    .map(
      ({ day, depth }) =>
        `pond,${new Date(day * 86_400_000).toISOString().slice(0, 10)},00:00,level,${depth.toFixed(3)}`,
    );
  files['levels.csv'] += 'surface,pond,0,10.2\n';
  if (rows.length > 0) files['water.csv'] = `pit,date,time,reading,depth_m\n${rows.join('\n')}\n`;
  return siteModel(surveyOf(files), { samples: 64 });
}

const leakTold = (site: ReturnType<typeof twin>) => site.assumptions.find(({ item }) => item === 'leak');
const leakWarned = (site: ReturnType<typeof twin>) => site.warnings.some(({ code }) => code === 'pond-leaks');
const deepest = (site: ReturnType<typeof twin>) => Math.max(...site.water.pond!.drawdown);

describe('a twin of a known leak', () => {
  test.each([0.002, 0.004, 0.008])(
    'of %d m a day is found within three tenths of a millimetre and a tenth',
    (leak) => {
      const site = twin({ leak });
      const told = Number(leakTold(site)!.value) / 1000;
      expect(Math.abs(told - leak)).toBeLessThan(0.0003 + 0.1 * leak);
      expect(leakWarned(site)).toBe(true);
      expect(deepest(site)).toBeGreaterThan(deepest(twin({ leak: 0, looks: 0 })) + 0.1);
    },
  );

  test('a sound liner shows none, in a windy place either', () => {
    for (const coefficient of [1.05, 1.25]) {
      const site = twin({ leak: 0, coefficient });
      expect(leakTold(site)!.value).toBe(0);
      expect(leakTold(site)!.reason).toContain('show none');
      expect(leakWarned(site)).toBe(false);
    }
  });

  test('two looks tell too little, and are told as that', () => {
    const site = twin({ leak: 0.004, looks: 2, from: 10 });
    expect(leakTold(site)!.value).toBe(0);
    expect(leakTold(site)!.reason).toMatch(/^2 looks at the pond tell/);
    expect([...site.water.pond!.drawdown]).toEqual([...twin({ leak: 0.004, looks: 0 }).water.pond!.drawdown]);
  });

  test('what leaks stands in the ring', () => {
    const mean = (site: ReturnType<typeof twin>) =>
      site.water.daily!.tub!.keptOut.reduce((a, b) => a + b, 0) / site.water.daily!.tub!.keptOut.length;
    expect(mean(twin({ leak: 0.008, ring: '0.3' }))).toBeGreaterThan(
      mean(twin({ leak: 0.008, ring: '0.3', looks: 0 })) + 0.01,
    );
  });
});

test('what leaks raises no ring above the pond it comes from', () => {
  const [site, sound] = [twin({ leak: 0.008, ring: '0.3' }), twin({ leak: 0.008, ring: '0.3', looks: 0 })];
  const { tub, drawdown } = site.water.daily!;
  const without = sound.water.daily!.tub!.keptOut;
  let raised = 0;
  tub!.keptOut.forEach((level, i) => {
    const pond = site.pond.fullLevel - drawdown![i]!;
    expect(level).toBeLessThanOrEqual(Math.max(without[i]!, pond) + 1e-6);
    if (level > without[i]! + 1e-3) raised++;
  });
  expect(raised).toBeGreaterThan(100);
});

describe('the fit of the losses', () => {
  const interval = (days: number, evaporation: number, lost: number): PondInterval => ({
    days,
    evaporation,
    lost,
    rain: 0,
    follows: false,
  });

  test('one interval by hand: without a leak the coefficient moves by its share of the variance', () => {
    // Prior 1.05 ± 0.1575 on 0.1 m: ± 15.75 mm; reading ± 7.07 mm. Lost 0.125 where 0.105 was awaited.
    const share = 0.01575 ** 2 / (0.01575 ** 2 + 2 * 0.005 ** 2);
    const { coefficient, leak } = fitPondLosses([interval(20, 0.1, 0.125)], 0.005, false);
    expect(coefficient.mean).toBeCloseTo(1.05 + (share * 0.02) / 0.1, 9);
    expect(coefficient.sd).toBeCloseTo(0.1575 * Math.sqrt(1 - share), 9);
    expect(leak).toEqual({ mean: 0, sd: 0 });
  });

  test('exact readings give both back, and readings in a row tell more than apart', () => {
    const at = (evaporation: number) => interval(10, evaporation, 1.2 * evaporation + 0.03);
    const { coefficient, leak } = fitPondLosses([at(0.01), at(0.06), at(0.04)], 1e-6);
    expect(coefficient.mean).toBeCloseTo(1.2, 4);
    expect(leak.mean).toBeCloseTo(0.003, 6);
    const row = [at(0.02), at(0.02), at(0.02)];
    const apart = fitPondLosses(row, 0.005).leak.sd;
    const joined = fitPondLosses(
      row.map((each, i) => ({ ...each, follows: i > 0 })),
      0.005,
    ).leak.sd;
    expect(joined).toBeLessThan(apart);
    // Thirty days in a row are at least as good as their ends alone.
    const ends = fitPondLosses([interval(30, 0.06, 3 * at(0.02).lost)], 0.005).leak.sd;
    expect(joined).toBeLessThanOrEqual(ends * (1 + 1e-9));
  });

  test('nothing read leaves what was taken before', () => {
    const { coefficient, leak } = fitPondLosses([], 0.005);
    expect(coefficient.mean).toBe(1.05);
    expect(leak).toEqual({ mean: 0, sd: 0.005 });
  });
});
