import { describe, expect, test } from 'vitest';
import { dayNumber } from '../../lib/climate/index.js';
import {
  columnSeries,
  type Dip,
  fitTable,
  runColumn,
  type TableParameters,
  type TablePriors,
} from '../../lib/groundwater/index.js';
import { normalQuantile, quantileSorted, uniforms } from '../../lib/sampling/index.js';
import { realWeather } from '../weather.js';

const record = realWeather('Seattle');
const TRUTH: TableParameters = {
  porosity: 0.04,
  recession: 0.02,
  baseDepth: 1.8,
  spillDepth: 0.12,
  extinctionDepth: 1.2,
  delay: 0.8,
  rootCapacity: 0.12,
  demandFactor: 1.05,
  crackShare: 0.15,
  drainDepth: 1,
  drainRate: 0,
  meltFactor: 0.003,
};
const prior = (median: number, spread: number) => ({ median, spread, evidence: [] });
const PRIORS: TablePriors = {
  standing: 0,
  porosity: prior(0.03, 0.4),
  recession: prior(0.012, 0.8),
  baseDepth: prior(2, 0.25),
  spillDepth: prior(0.06, 0.7),
  extinctionDepth: prior(1.4, 0.3),
  delay: prior(0.5, 0.6),
  rootCapacity: prior(0.1, 0.25),
  demandFactor: prior(1, 0.1),
  crackShare: prior(0.1, 0.8),
  drainDepth: prior(1, 0),
  drainRate: prior(0, 0),
  meltFactor: prior(0.003, 0),
};

function depths(p: TableParameters): Float64Array {
  const series = columnSeries(record.rain.length);
  runColumn(record, p, series);
  return series.depth;
}

/** Twelve looks, three weeks apart through one winter, read with an error of 2 cm. */
const next = uniforms(5);
const truth = depths(TRUTH);
const DIPS: Dip[] = Array.from({ length: 12 }, (_, i) => {
  const day = dayNumber(2014, 9, 20) + 21 * i;
  return {
    day,
    depth: truth[day - record.firstDay] + 0.02 * normalQuantile(next()),
    says: 'level',
    error: 0.02,
  };
});

/** Depths of all fitted sets on a day, shallow first. */
function onDay(sets: Float64Array[], day: number): Float64Array {
  return Float64Array.from(sets, (s) => s[day - record.firstDay]).sort();
}

describe('twelve dips of a ground that is known', () => {
  const fit = fitTable(record, DIPS, PRIORS, 200, 1);
  const sets = fit.sets.map(depths);

  test('the middle of the fitted sets meets every dip within 0.1 m', () => {
    for (const dip of DIPS)
      expect(Math.abs(quantileSorted(onDay(sets, dip.day), 0.5) - dip.depth)).toBeLessThan(0.1);
  });

  test('nearly all sets differ, what they miss the dips by is small, and every dip is used', () => {
    expect(new Set(fit.sets.map((p) => p.porosity)).size).toBeGreaterThan(150);
    expect(quantileSorted(fit.modelError.slice().sort(), 0.5)).toBeLessThan(0.06);
    expect(fit.splitRhat).toBeLessThan(1.05);
    expect(fit.used).toBe(12);
    expect(fit.outside).toBe(0);
    expect(fit.sets.length).toBe(200);
    expect(fit.closure).toBeLessThan(1e-9);
  });

  test('a winter without dips lies inside what the sets say', () => {
    let inside = 0;
    const days = Array.from({ length: 30 }, (_, i) => dayNumber(2012, 11, 1) + 6 * i);
    for (const day of days) {
      const sorted = onDay(sets, day);
      const at = truth[day - record.firstDay];
      // Model and place differ by 8 cm besides.
      if (at > quantileSorted(sorted, 0.05) - 0.08 && at < quantileSorted(sorted, 0.95) + 0.08) inside++;
    }
    expect(inside).toBeGreaterThanOrEqual(27);
  });

  test('is far narrower than the priors', () => {
    const free = fitTable(record, [], PRIORS, 200, 1).sets.map(depths);
    const width = (s: Float64Array[], day: number) =>
      quantileSorted(onDay(s, day), 0.9) - quantileSorted(onDay(s, day), 0.1);
    const mean = (s: Float64Array[]) => DIPS.reduce((sum, dip) => sum + width(s, dip.day), 0) / DIPS.length;
    expect(mean(sets)).toBeLessThan(0.5 * mean(free));
  });

  test('the same seed gives the same sets, another seed others', () => {
    expect(fitTable(record, DIPS, PRIORS, 50, 1).sets).toEqual(fitTable(record, DIPS, PRIORS, 50, 1).sets);
    expect(fitTable(record, DIPS, PRIORS, 50, 2).sets).not.toEqual(
      fitTable(record, DIPS, PRIORS, 50, 1).sets,
    );
  });
});

describe('bounds', () => {
  const winter = [10, 40, 70, 100].map((d) => dayNumber(2014, 12, 1) + d);

  test("'dry' all winter keeps the table below the hole's floor", () => {
    const dry = winter.map((day): Dip => ({ day, depth: 0.5, says: 'below', error: 0.01 }));
    const { sets } = fitTable(record, dry, { ...PRIORS, spillDepth: prior(0.3, 0.7) }, 200, 1);
    const free = fitTable(record, [], { ...PRIORS, spillDepth: prior(0.3, 0.7) }, 200, 1).sets.map(depths);
    const runs = sets.map(depths);
    const share = (s: Float64Array[]) =>
      winter.reduce((sum, day) => sum + onDay(s, day).filter((d) => d > 0.5 - 0.16).length, 0) / (4 * 200);
    expect(share(free)).toBeLessThan(0.7);
    expect(share(runs)).toBeGreaterThan(0.9);
  });

  test('a hole still filling keeps it above the level seen', () => {
    const filling = winter.map((day): Dip => ({ day, depth: 0.2, says: 'above', error: 0.01 }));
    const wide = { ...PRIORS, spillDepth: prior(0.3, 0.7) };
    // As high as that, or lower by what the set may miss it by.
    const missed = (dips: Dip[], day: number) => {
      const { sets, modelError } = fitTable(record, dips, wide, 200, 1);
      const deep = sets.map((p, s) => onDay([depths(p)], day)[0] - 0.2 > 1.64 * modelError[s]);
      return deep.filter(Boolean).length / 200;
    };
    for (const day of winter.slice(0, 2)) {
      expect(missed([], day)).toBeGreaterThan(0.1);
      expect(missed(filling, day)).toBeLessThan(0.06);
    }
  });
});

test('looks outside the record are counted, and without any inside the sets are the priors', () => {
  const fit = fitTable(record, [{ ...DIPS[0], day: dayNumber(2019, 1, 1) }], PRIORS, 300, 3);
  expect(fit).toMatchObject({ used: 0, outside: 1 });
  const sorted = Float64Array.from(fit.sets, (s) => s.porosity).sort();
  expect(quantileSorted(sorted, 0.5)).toBeCloseTo(0.03, 3);
  expect(Math.log(quantileSorted(sorted, 0.8413) / quantileSorted(sorted, 0.5))).toBeCloseTo(0.4, 1);
});
