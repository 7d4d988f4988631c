import { describe, expect, test } from 'vitest';
import { basisOf } from '../../lib/basis/index.js';
import { type Measures, NOTHING } from '../../lib/heads/index.js';
import { chanceOf, lifeChance } from '../../lib/reliability/index.js';
import { normalCdf } from '../../lib/sampling/index.js';
import { siteModel } from '../../lib/site/index.js';
import { surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';

const site = (files: Record<string, string>, samples = 500) => siteModel(surveyOf(files), { samples });

describe('the full pond against a normal water level', () => {
  // Closed form: P(head > pond) with head ~ N(−depth, √(spread² + 0.01²)), 0.01 m being the levelling error.
  test.each([
    [0.3, 0.1, -0.2],
    [0.3, 0.1, -0.3],
    [0.5, 0.2, -0.1],
  ])('water at %f ± %f m, pond at %f m', (depth, spread, level) => {
    const s = site(baseSurvey({ depth, spread, level }));
    const exact = 1 - normalCdf((level + depth) / Math.hypot(spread, 0.01));
    const { perYear, error } = chanceOf(basisOf(s), NOTHING, 1);
    expect(Math.abs(perYear - exact)).toBeLessThan(3 * error.standardError + 1e-4);
  });

  test('is the same at every depth', () => {
    const s = site(baseSurvey());
    const basis = basisOf(s);
    const at = [0.3, 0.7, 1.2, 1.45].map((d) => chanceOf(basis, NOTHING, d).perYear);
    expect(new Set(at).size).toBe(1);
  });

  test('never lifts when it stands above all water', () => {
    const s = site(baseSurvey({ level: 0.4 }));
    expect(chanceOf(basisOf(s), NOTHING, 1.4).perYear).toBe(0);
  });
});

describe('chance over a life', () => {
  test('year-to-year water, ground known: each sample has seen twenty years', () => {
    const [depth, spread, level] = [0.3, 0.1, -0.15];
    const s = site(baseSurvey({ spread, level }), 2000);
    const { shares } = chanceOf(basisOf(s), NOTHING, 1);
    const years = s.water.years;
    const p = 1 - normalCdf((level + depth) / Math.hypot(spread, 0.01));
    // The share of a sample is k of n years with the binomial's chance; over T years 1 − (1 − k/n)^T of it.
    const expected = (T: number) => {
      let [sum, chance] = [0, (1 - p) ** years];
      for (let k = 0; k <= years; k++) {
        sum += chance * (1 - (1 - k / years) ** T);
        chance *= ((years - k) / (k + 1)) * (p / (1 - p));
      }
      return sum;
    };
    for (const T of [5, 20, 60]) {
      expect(Math.abs(lifeChance(shares, T) - expected(T))).toBeLessThan(0.03);
      // Of a certain ground, with each year by itself, it would be more: twenty years leave the rarer ones out.
      expect(lifeChance(shares, T)).toBeLessThan(1 - (1 - p) ** T + 0.01);
    }
  });

  test('reading error: unlucky ground is unlucky every year', () => {
    const s = site(baseSurvey({ source: 'reading error of the level' }), 2000);
    const { perYear, shares } = chanceOf(basisOf(s), NOTHING, 1);
    expect(lifeChance(shares, 20)).toBeCloseTo(perYear, 2);
    expect(1 - (1 - perYear) ** 20).toBeGreaterThan(0.9);
  });
});

describe('with common random numbers', () => {
  const s = site(baseSurvey({ level: -0.25, drawdown: 0.05 }));
  const basis = basisOf(s);
  const at = (m: Partial<Measures>, depth = 1) => chanceOf(basis, { ...NOTHING, ...m }, depth).perYear;

  test('raising never raises the chance', () => {
    const risks = [0, 0.05, 0.1, 0.2, 0.4].map((raise) => at({ raise }));
    expect([...risks].sort((a, b) => b - a)).toEqual(risks);
  });

  test('ballast never raises the chance', () => {
    const risks = [0, 0.05, 0.1, 0.3].map((ballast) => at({ ballast }));
    expect([...risks].sort((a, b) => b - a)).toEqual(risks);
  });

  test('a drain with its outlet free never raises the chance', () => {
    const outlet = { name: 'out', level: -1.5, distance: 20, ditch: -1.7, flood: -1.4 };
    expect(at({ drain: { kind: 'outlet', outlet, flood: -1.4, sides: s.pond.shape } })).toBeLessThanOrEqual(
      at({}),
    );
  });

  test('lower water never raises the chance', () => {
    const risks = [0.2, 0, -0.1, -0.3].map(
      (water) => chanceOf(basis, NOTHING, 1, { water, pond: 0, permeability: 1 }).perYear,
    );
    expect([...risks].sort((a, b) => b - a)).toEqual(risks);
  });
});

describe('emptied', () => {
  const wet = withItem(
    withItem(baseSurvey({ level: 0.2 }), 'pond.csv', 'emptied_in', '3'),
    'pond.csv',
    'days_empty',
    '14',
  );

  test('deeper is never safer', () => {
    const s = site(wet);
    const basis = basisOf(s);
    const risks = [0.25, 0.3, 0.4, 0.6, 1].map((d) => chanceOf(basis, NOTHING, d).perYear);
    expect([...risks].sort((a, b) => a - b)).toEqual(risks);
    expect(risks.at(-1)).toBeGreaterThan(0.9);
  });

  test('tight clay gives time: no lift in a day at 1e-10 m/s', () => {
    const tight = { ...withItem(wet, 'pond.csv', 'days_empty', '1') };
    tight['pits.csv'] = tight['pits.csv'].replace('1e-7', '1e-10');
    const s = site(tight);
    expect(chanceOf(basisOf(s), NOTHING, 1).perYear).toBe(0);
  });

  test('with no month named, every month is tried and the worst reported', () => {
    const files = baseSurvey({ level: 0.2 });
    files['pond.csv'] = files['pond.csv'].replace('emptied_in,never,,\n', '');
    files['heads.csv'] = `place,month,depth_m,spread_m,source\nsite,1,0.3,0.05,pipe\nsite,7,1.6,0.05,pipe\n`;
    const any = site(files);
    const january = site(withItem(files, 'pond.csv', 'emptied_in', '1'));
    const july = site(withItem(files, 'pond.csv', 'emptied_in', '7'));
    const risk = (s: ReturnType<typeof site>) => chanceOf(basisOf(s), NOTHING, 1).perYear;
    expect(risk(any)).toBe(risk(january));
    expect(risk(july)).toBe(0);
  });
});

test('over a life of half a year or of a thousand, a share that a rounding lifts above 1 stays a chance', () => {
  const shares = Float64Array.of(1 + 2 ** -52, 0, 0.5);
  for (const years of [0.5, 1, 20.5, 1000]) {
    const chance = lifeChance(shares, years);
    expect(chance).toBeGreaterThan(0.3);
    expect(chance).toBeLessThanOrEqual(1);
  }
});
