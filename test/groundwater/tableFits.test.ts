import { describe, expect, test } from 'vitest';
import { dayNumber } from '../../lib/climate/index.js';
import { type Dip, TableFits, type TablePriors } from '../../lib/groundwater/index.js';
import { realWeather } from '../weather.js';

const record = realWeather('Seattle');
const prior = (median: number, spread = 0.3) => ({ median, spread, evidence: [] });
const PRIORS: TablePriors = {
  standing: 0,
  porosity: prior(0.03),
  recession: prior(0.012),
  baseDepth: prior(2),
  spillDepth: prior(0.06),
  extinctionDepth: prior(1.4),
  delay: prior(0.5),
  rootCapacity: prior(0.1),
  demandFactor: prior(1),
  crackShare: prior(0.1),
  drainDepth: prior(1, 0),
  drainRate: prior(0, 0),
  meltFactor: prior(0.003, 0),
};
const DIPS: Dip[] = [{ day: dayNumber(2014, 12, 1), depth: 0.3, says: 'level', error: 0.02 }];

describe('a fit asked for again', () => {
  const fits = new TableFits();
  const first = fits.of(record, DIPS, PRIORS, 8, 1);

  test('is found where weather and looks are the same, however they came in', () => {
    const again = {
      ...record,
      rain: record.rain.slice(),
      tmean: record.tmean.slice(),
      demand: record.demand.slice(),
    };
    expect(fits.of(again, structuredClone(DIPS), structuredClone(PRIORS), 8, 1)).toBe(first);
  });

  test('is made anew for the least difference, and the same for all that', () => {
    const rain = record.rain.slice();
    rain[rain.length - 1] += 1e-9;
    expect(fits.of({ ...record, rain }, DIPS, PRIORS, 8, 1)).not.toBe(first);
    const year = record.year.map((of) => of - 1);
    expect(fits.of({ ...record, year }, DIPS, PRIORS, 8, 1)).not.toBe(first);
    expect(fits.of(record, DIPS, { ...PRIORS, standing: 0.01 }, 8, 1)).not.toBe(first);
    expect(fits.of(record, DIPS, PRIORS, 8, 2)).not.toBe(first);
    expect(new TableFits().of(record, DIPS, PRIORS, 8, 1)).toEqual(first);
  });
});

test('no more than sixteen are kept: what was not asked for the longest goes first', () => {
  const fits = new TableFits();
  const ofSeed = (seed: number) => fits.of(record, [], PRIORS, 8, seed);
  const [first, second] = [ofSeed(1), ofSeed(2)];
  for (let seed = 3; seed <= 16; seed++) ofSeed(seed);
  expect(ofSeed(1)).toBe(first);
  ofSeed(17);
  expect(ofSeed(1)).toBe(first);
  expect(ofSeed(2)).not.toBe(second);
});
