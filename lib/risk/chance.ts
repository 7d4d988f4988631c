import { method } from '../formula/index.js';
import { replicateChance } from '../sampling/index.js';
import { REPLICATES } from '../site/index.js';
import type { Basis } from './basis.js';
import type { Counting } from './counting.js';
import { coursesOf } from './courses.js';
import { failingYears } from './failingYears.js';
import type { Measures } from './measures.js';
import type { Governs } from './result.js';

export const chanceMethod = method({
  title: 'Chance of failing in a year',
  what:
    'Mean over samples of the share of failing weather years. One sample is one draw of everything unknown but ' +
    'fixed, run through all weather years; a year fails when on any day the head outside beats what holds the liner.',
  assumptions: [
    'states: full and drawn down all year; emptied for the days planned from the first of each month planned, where ' +
      'the liner also needs water to arrive and a bared, softened side slumps at once; power out for a sump',
    'what a drain is found to be in a year (working, flap stuck, blocked) is weighed by its chance, not drawn',
    "the ditch's flood is taken to come every year: for the yearly high on the worst day, for an emptying in one of " +
      'the wet months, each as likely',
    'what fails emptied at one depth fails deeper too: the first failing depth of every year is searched',
    'over a life: mean over samples of 1 − (1 − share)^years, because unlucky ground is unlucky every year',
  ],
  source: 'Monte Carlo; checked against closed forms',
});

/** Chance of an option at a depth. */
export interface Chance {
  perYear: number;
  /** of the mean over samples, by the spread between replicates: ± 1.96 of it covers the truth in 95 of 100 seeds */
  standardError: number;
  /** share of failing years, one a sample */
  shares: Float64Array;
  /** chance of each mode by itself, a year */
  modes: Partial<Record<Governs, number>>;
}

/**
 * Chance a year that measures fail at one depth; see {@link chancesOf}.
 * @param basis - of a judgement
 * @param m - measures of an option
 * @param depth - m below the lowest natural ground at the rim
 * @param how - inputs shifted, or samples counted; absent: as they are, all
 * @returns 0–1 by year, with its standard error and by mode
 */
export function chanceOf(basis: Basis, m: Measures, depth: number, how?: Counting): Chance {
  return chancesOf(basis, m, [depth], how)[0];
}

/**
 * Chance a year that measures fail, for many depths at once.
 * @param depths - on the axis of the wish, ascending, m
 */
export function chancesOf(basis: Basis, m: Measures, depths: ArrayLike<number>, how?: Counting): Chance[] {
  const { draws, emptyings } = basis;
  const subset = how?.subset;
  const count = subset?.length ?? draws.samples;
  const plans = emptyings.plans.map(() => new Float64Array(depths.length * count));
  const modes = new Map<Governs, Float64Array[]>();
  const sumOf = (mode: Governs, p = 0) => {
    const sums = modes.get(mode) ?? [];
    modes.set(mode, sums);
    sums[p] ??= new Float64Array(depths.length);
    return sums[p];
  };
  for (const course of coursesOf(m, draws, depths)) {
    const failing = failingYears(basis, m, course, depths, how);
    const weight = Float64Array.from({ length: count }, (_, j) => course.weight(subset ? subset[j] : j));
    failing.full.addTo(sumOf('lift-full'), weight);
    failing.drawn.addTo(sumOf('lift-drawn-down'), weight);
    if (m.drain?.kind === 'sump' && course.state === 'blocked')
      failing.drawn.addTo(sumOf('lift-power-out'), weight);
    failing.plans.forEach(({ lift, slump, any }, p) => {
      lift.addTo(sumOf('lift-emptied', p), weight);
      slump.addTo(sumOf('side-slump', p), weight);
      any.addTo(plans[p], weight, true);
    });
  }
  for (const shares of plans) for (let i = 0; i < shares.length; i++) shares[i] /= draws.years;
  return Array.from(depths, (_, d) => {
    const rows = plans.map((shares) => shares.subarray(d * count, (d + 1) * count));
    const means = rows.map(meanOf);
    const worst = means.indexOf(Math.max(...means));
    const { halfWidth95 } = replicateChance(rows[worst], REPLICATES);
    return {
      perYear: means[worst],
      standardError: halfWidth95 / 1.96,
      shares: rows[worst],
      modes: Object.fromEntries(
        Array.from(modes, ([mode, sums]) => [
          mode,
          Math.max(...sums.map((sum) => sum[d])) / (count * draws.years),
        ]),
      ),
    };
  });
}

function meanOf(shares: Float64Array): number {
  let sum = 0;
  for (let j = 0; j < shares.length; j++) sum += shares[j];
  return sum / shares.length;
}

/** Chance over a life: unlucky ground is unlucky every year. */
export function lifeChance(shares: Float64Array, years: number): number {
  return shares.reduce((a, share) => a + 1 - (1 - share) ** years, 0) / shares.length;
}
