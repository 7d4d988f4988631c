/** The likelihood that ends early is the likelihood, to the bit. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayNumber } from '../../lib/climate/index.js';
import {
  columnConstants,
  columnSeries,
  type Dip,
  likelihoodOf,
  logLikelihoodOf,
  parametersAt,
  runDays,
  seenFrom,
  spinUp,
  tablePriors,
} from '../../lib/groundwater/index.js';
import { realWeather } from '../weather.js';

const record = realWeather('Seattle');
const dip = (days: number, depth: number, says: Dip['says'] = 'level'): Dip => ({
  day: dayNumber(2013, 11, 1) + days,
  depth,
  says,
  error: 0.01,
});
const DIPS = [
  dip(0, 0.9),
  dip(12, 0.7, 'above'),
  dip(40, 0.45),
  dip(47, 0.4),
  dip(75, 0.3),
  dip(110, 0.2, 'below'),
  dip(200, 0.6),
  dip(700, 1.1),
];
const COLOUR = { depth: 0.3, spread: 0.2 };
const ground = {
  porosity: { median: 0.05, spread: 0.4, evidence: [] },
  rootCapacity: { median: 0.1, spread: 0.25, evidence: [] },
  permeable: false,
  clayey: true,
  snows: true,
};
const priors = tablePriors(ground, DIPS);
const scores = fc.array(fc.double({ min: -2, max: 2, noNaN: true }), { minLength: 12, maxLength: 12 });
const error = fc.double({ min: 0.02, max: 0.5, noNaN: true });
const ANY = Number.NEGATIVE_INFINITY;

describe.each([
  ['dips', DIPS, undefined],
  ['dips and colours', DIPS, COLOUR],
  ['colours', [], COLOUR],
] as const)('by %s', (_, dips, colour) => {
  const likelihood = likelihoodOf(record, [...dips], colour);

  test('what is reached is known to the bit; of what is not the run may end early, and by dips alone it does', () => {
    fc.assert(
      fc.property(scores, error, fc.double({ min: 1e-9, max: 30, noNaN: true }), (z, missed, room) => {
        const p = parametersAt(priors, z);
        const whole = likelihood.of(p, missed, ANY);
        expect(Number.isFinite(whole)).toBe(true);
        expect(likelihood.of(p, missed, whole)).toBe(whole);
        expect(likelihood.of(p, missed, whole - room)).toBe(whole);
        expect(colour ? [ANY, whole] : [ANY]).toContain(likelihood.of(p, missed, whole + room));
      }),
      { seed: 1, numRuns: 60 },
    );
    expect(likelihood.closure()).toBeLessThan(1e-9);
  });
});

test('run in stretches it is that of one run from the first dip to the last', () => {
  const likelihood = likelihoodOf(record, DIPS, undefined);
  const first = DIPS[0].day - record.firstDay;
  const end = DIPS[DIPS.length - 1].day - record.firstDay + 1;
  fc.assert(
    fc.property(scores, error, (z, missed) => {
      const p = parametersAt(priors, z);
      const series = columnSeries(record.rain.length);
      runDays(record, first, end, columnConstants(p), spinUp(record, first)(p), series);
      const whole = logLikelihoodOf(seenFrom(record.firstDay, DIPS), series.depth, missed);
      expect(likelihood.of(p, missed, ANY)).toBeCloseTo(whole, 9);
    }),
    { seed: 2, numRuns: 30 },
  );
});
