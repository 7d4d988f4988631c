import { formula, method } from '../formula/index.js';
import { uniforms } from '../sampling/index.js';
import type { LogEstimate } from '../soil/index.js';
import type { Dip } from './dip.js';

export const modelError = method({
  title: 'What a model of the water table misses',
  what:
    'The water stands off the model by a normal error that is forgotten with time: two days a season apart miss alike, ' +
    'two years do not. Its spread is found with the parameters.',
  assumptions: [
    'forgotten to 1/e in 45 days: the misses of twelve measured wells correlate by 0.75, 0.55 and 0.25 over 10, 30 and 60 days',
    'its spread 0.1 m before any look, a factor of two either way (ln-spread 0.7): six measured wells ended at 0.07 to ' +
      '0.17 m with 50 looks each, others at 0.04 to 0.5 m',
    'in the ground it lifts the water freely. Above the ground water fills air and not pores, so that what would lift it by ' +
      'a metre in the ground lifts it there by the drainable porosity, 0.05 m at most: what comes higher runs off (our choice)',
    'where water was read above the ground it may stand so: the error lifts it freely to 0.05 m above the highest read (our choice)',
    'stepped every five days and straight between, from uniform numbers: the sum of many is normal',
  ],
  source:
    'first-order autoregressive error, common practice; its numbers from measured wells, see test/bench/wells',
});

/** Spread of the error before any look, m. */
export const MODEL_ERROR: LogEstimate = {
  median: 0.1,
  spread: 0.7,
  evidence: ['misses of a fitted model on measured wells'],
};
/** Days in which the error is forgotten to 1/e. */
export const ERROR_LASTS = 45;
/** Water stands by no more than this above the ground, or above where it was read, m. Our choice. */
const PONDS_TO = 0.05;

/**
 * Level to which the error lifts the water freely, see {@link modelError}.
 * @param dips - looks at the water, m below the ground
 * @returns m above the ground: 0 where no level was read above it
 */
export function freeLevel(dips: readonly Dip[]): number {
  const read = Math.max(0, ...dips.map(({ says, depth }) => (says === 'level' ? -depth : 0)));
  return read > 0 ? read + PONDS_TO : 0;
}

/** Level of water that stands above the ground. */
export const pondedLevel = formula({
  title: 'Level of water that stands above the ground',
  symbol: 'h',
  unit: 'm',
  expression: 'z + min(n*max(e - z, 0), 0.05)',
  parameters: {
    e: { meaning: 'level it would have were there ground, above the datum', unit: 'm', min: -10, max: 10 },
    z: { meaning: 'level of the ground, or higher where water was read above it', unit: 'm', min: 0, max: 3 },
    n: { meaning: 'drainable porosity', unit: '-', min: 0.001, max: 0.5 },
  },
  compute: (e: number, z: number, n: number) => z + Math.min(n * Math.max(e - z, 0), PONDS_TO),
  validity: 'a level above the ground; what comes higher than 0.05 m runs off (our choice)',
  source: 'water balance: the same water in air instead of pores',
});

/** Correlation of the error over a time. */
export const errorCorrelation = formula({
  title: 'Correlation of the model error over a time',
  symbol: 'ρ',
  unit: '-',
  expression: 'exp(-t/T)',
  parameters: {
    t: { meaning: 'time between two days', unit: 'd', min: 0, max: 5000 },
    T: { meaning: 'time in which the error is forgotten to 1/e', unit: 'd', min: 1, max: 400 },
  },
  compute: (t: number, T: number) => Math.exp(-t / T),
  validity: 'first-order autoregressive error',
  source: 'autocorrelation of an Ornstein–Uhlenbeck process',
});

/** Days from one step of the error to the next. */
const STEP = 5;

/**
 * Source of error series: each call fills one, independent of those before.
 * @param seed - whole number
 * @returns fills an array, a value a day, of mean 0 and standard deviation 1
 */
export function errorSeries(seed: number): (out: Float64Array) => void {
  const next = uniforms(seed);
  const keeps = errorCorrelation.compute(STEP, ERROR_LASTS);
  // A uniform number of width 1 has a variance of 1/12.
  const pushes = Math.sqrt(12 * (1 - keeps * keeps));
  return (out) => {
    // Three uniform numbers less their mean start it near enough to normal.
    let error = 2 * (next() + next() + next() - 1.5);
    for (let d = 0; d < out.length; d += STEP) {
      const from = error;
      error = keeps * error + pushes * (next() - 0.5);
      const step = (error - from) / STEP;
      const end = Math.min(d + STEP, out.length);
      for (let i = d; i < end; i++) out[i] = from + step * (i - d);
    }
  };
}
