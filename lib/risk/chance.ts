import { method } from '../formula/index.js';
import { replicateChance } from '../sampling/index.js';
import { REPLICATES } from '../site/index.js';
import type { Basis } from './basis.js';
import { coursesOf } from './courses.js';
import { CourseTally, type FailingYears, type Year } from './courseTally.js';
import { EmptiedPond } from './emptying.js';
import { undrainedHead } from './head.js';
import { lowestUsualLevel, type Measures } from './measures.js';
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

/** A perturbation of the site, for tipping points. */
export interface Shift {
  /** water outside everywhere, m */
  water: number;
  /** pond level, m */
  pond: number;
  /** factor on the conductivity */
  conductivity: number;
}
export const NO_SHIFT: Shift = { water: 0, pond: 0, conductivity: 1 };

/** What a chance is counted over, beside the site's draws. */
export interface Counting {
  shift?: Shift;
  /** samples to count over; absent: all */
  subset?: ArrayLike<number>;
}

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

/** Chance a year that measures fail at one depth; see {@link chancesOf}. */
export function chanceOf(basis: Basis, m: Measures, depth: number, how?: Counting): Chance {
  return chancesOf(basis, m, [depth], how)[0];
}

/**
 * Chance a year that measures fail, for many depths at once.
 * @param depths - on the axis of the wish, ascending, m
 */
export function chancesOf(
  { site, draws, sides, emptyings }: Basis,
  m: Measures,
  depths: ArrayLike<number>,
  { shift = NO_SHIFT, subset }: Counting = {},
): Chance[] {
  const { water, pond } = site;
  const { years } = draws;
  const { plans, months } = emptyings;
  const count = subset?.length ?? draws.samples;
  const isWet = (month: number) => site.wetMonths.includes(month + 1);
  const wetMonths = ALL_MONTHS.filter(isWet).length;
  const holds = {
    full: pond.fullLevel + m.raise + shift.pond + m.ballast,
    drawn: lowestUsualLevel(site, m) + shift.pond + m.ballast,
  };
  const empty = new EmptiedPond(site, m, depths);
  const courses = coursesOf(m, draws, depths);
  const tallies = courses.map(
    (course) => new CourseTally(course, empty, holds, plans, months.map(isWet), wetMonths),
  );
  const nothing = () => new Float64Array(depths.length);
  const sums = courses.map(
    (): FailingYears => ({
      full: nothing(),
      drawn: nothing(),
      plans: plans.map(() => ({ lift: nothing(), slump: nothing() })),
    }),
  );
  const failing = plans.map(() => new Float64Array(depths.length * count));
  const ringYear = draws.tub?.[m.way];
  const ringEmptied = emptyings.tub?.[m.way];
  const year: Year = {
    high: 0,
    heads: new Float64Array(months.length),
    tubs: new Float64Array(months.length).fill(Number.NEGATIVE_INFINITY),
    conductivity: 0,
    softWet: Number.POSITIVE_INFINITY,
    softDry: Number.POSITIVE_INFINITY,
  };
  for (let j = 0; j < count; j++) {
    const s = subset ? subset[j] : j;
    year.conductivity = water.conductivity[s] * shift.conductivity;
    if (sides) {
      year.softWet = sides.softWet[s];
      year.softDry = sides.softDry[s];
    }
    for (let i = s * years; i < (s + 1) * years; i++) {
      year.high = undrainedHead(
        m,
        draws.clayLow[i] + shift.water,
        draws.clayHigh[i] + shift.water,
        ringYear ? ringYear[i] : Number.NEGATIVE_INFINITY,
      );
      for (let q = 0, w = i * months.length; q < months.length; q++, w++) {
        if (ringEmptied) year.tubs[q] = ringEmptied[w];
        year.heads[q] = undrainedHead(
          m,
          emptyings.low[w] + shift.water,
          emptyings.high[w] + shift.water,
          year.tubs[q],
        );
      }
      for (const tally of tallies) tally.add(year);
    }
    for (let c = 0; c < courses.length; c++)
      tallies[c].moveTo(sums[c], failing, courses[c].weight(s), j, count);
  }
  const n = count * years;
  const total = (of: (f: FailingYears) => number) => sums.reduce((sum, f) => sum + of(f), 0) / n;
  for (const f of failing) for (let i = 0; i < f.length; i++) f[i] /= years;
  return Array.from(depths, (_, d) => {
    const rows = failing.map((f) => f.subarray(d * count, (d + 1) * count));
    const means = rows.map(meanOf);
    const worst = means.indexOf(Math.max(...means));
    const mostOf = (mode: 'lift' | 'slump') =>
      Math.max(...plans.map((_, p) => total((f) => f.plans[p][mode][d])));
    const { halfWidth95 } = replicateChance(rows[worst], REPLICATES);
    return {
      perYear: means[worst],
      standardError: halfWidth95 / 1.96,

      shares: rows[worst],
      modes: {
        'lift-full': total((f) => f.full[d]),
        'lift-drawn-down': total((f) => f.drawn[d]),
        'lift-emptied': mostOf('lift'),
        'side-slump': mostOf('slump'),
        ...(m.drain?.kind === 'sump' ? { 'lift-power-out': sums[0].drawn[d] / n } : {}),
      },
    };
  });
}

const ALL_MONTHS = Array.from({ length: 12 }, (_, month) => month);

function meanOf(shares: Float64Array): number {
  let sum = 0;
  for (let j = 0; j < shares.length; j++) sum += shares[j];
  return sum / shares.length;
}

/** Chance over a life: unlucky ground is unlucky every year. */
export function lifeChance(shares: Float64Array, years: number): number {
  return shares.reduce((a, share) => a + 1 - (1 - share) ** years, 0) / shares.length;
}
