import { method } from '../formula/index.js';
import { replicateChance } from '../sampling/index.js';
import { REPLICATES } from '../site/index.js';
import type { Basis } from './basis.js';
import { coursesOf } from './courses.js';
import { micrometres, searchable } from './depths.js';
import { type FailingYears, failingYears } from './failingYears.js';
import type { Measures } from './measures.js';
import type { YearsFailing } from './onsets.js';
import { Remembered } from './remembered.js';
import type { Governs } from './result.js';
import type { Shift } from './shift.js';

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

/** Chance a year that measures fail at a depth. */
export class Chance {
  private readonly found = new Map<Shares, Float64Array>();

  constructor(
    /** of the worst plan of emptying */
    readonly perYear: number,
    /** chance of each mode by itself, a year */
    readonly modes: Partial<Record<Governs, number>>,
    private readonly shared: { plans: Shares[]; worst: number; drawn: Shares },
  ) {}

  /** share of failing years, one a sample */
  get shares(): Float64Array {
    return this.sharesOf(this.shared.plans[this.shared.worst]);
  }

  /** of the mean over samples, by the spread between replicates: ± 1.96 of it covers the truth in 95 of 100 seeds */
  get standardError(): number {
    return replicateChance(this.shares, REPLICATES).halfWidth95 / 1.96;
  }

  /** Chance among some of the samples only, and that of lifting drawn down among them. */
  among(samples: ArrayLike<number>): { perYear: number; drawn: number } {
    const mean = (of: Shares) => {
      const shares = this.sharesOf(of);
      let sum = 0;
      for (let i = 0; i < samples.length; i++) sum += shares[samples[i]];
      return sum / samples.length;
    };
    return { perYear: Math.max(...this.shared.plans.map(mean)), drawn: mean(this.shared.drawn) };
  }

  private sharesOf(of: Shares): Float64Array {
    const found = this.found.get(of) ?? of();
    this.found.set(of, found);
    return found;
  }
}

/** Works out shares of failing years, one a sample. */
type Shares = () => Float64Array;

/**
 * Chance a year that measures fail at one depth; see {@link chanceMethod}.
 * @param basis - of a judgement
 * @param m - measures of an option; its levels m above the lowest natural ground at the rim
 * @param depth - from the rim's ground, which `m.raise` lifts, to the liner's lowest point, m, above 0
 * @param shift - of the inputs; absent: as they are
 * @returns chance a year, 0–1, with its standard error, and by mode
 */
export function chanceOf(basis: Basis, m: Measures, depth: number, shift?: Shift): Chance {
  return chancesOf(basis, m, [depth], shift)[0];
}

/**
 * Chance a year that measures fail, for many depths at once.
 * @param depths - on the axis of the wish, ascending, m
 */
export function chancesOf(basis: Basis, m: Measures, depths: ArrayLike<number>, shift?: Shift): Chance[] {
  const { samples, years } = basis.draws;
  const courses = coursesOf(m, basis.draws, depths).map((course) => ({
    failing: failingYears(basis, m, course, depths, shift),
    weight: Float64Array.from({ length: samples }, (_, s) => course.weight(s)),
    blocked: course.state === 'blocked',
  }));
  const means = (count: Count, among = courses) => {
    const sums = new Float64Array(depths.length);
    for (const { failing, weight } of among) count(failing).addTo(sums, weight);
    return sums.map((sum) => sum / (samples * years));
  };
  const sharesAt = (depth: number, count: Count) => () => {
    const sums = new Float64Array(samples);
    for (const { failing, weight } of courses) count(failing).addAt(depth, sums, weight);
    return sums.map((sum) => sum / years);
  };
  const drawn: Count = (years) => years.drawn;
  const ofPlans = (state: 'lift' | 'slump' | 'any'): Count[] =>
    basis.emptyings.plans.map((_, p) => (years) => years.plans[p][state]);
  const worst = (means: Float64Array[], d: number) => Math.max(...means.map((mean) => mean[d]));
  const any = ofPlans('any');
  const anyMeans = any.map((plan) => means(plan));
  const lifted = ofPlans('lift').map((plan) => means(plan));
  const slumped = ofPlans('slump').map((plan) => means(plan));
  const powerOut = courses.filter(({ blocked }) => blocked && m.drain?.kind === 'sump');
  const yearly: [Governs, Float64Array][] = [
    ['lift-full', means((years) => years.full)],
    ['lift-drawn-down', means(drawn)],
    ...powerOut.map((course): [Governs, Float64Array] => ['lift-power-out', means(drawn, [course])]),
  ];
  return Array.from(depths, (_, d) => {
    const perYear = worst(anyMeans, d);
    const modes: Chance['modes'] = Object.fromEntries(yearly.map(([mode, mean]) => [mode, mean[d]]));
    modes['lift-emptied'] = worst(lifted, d);
    modes['side-slump'] = worst(slumped, d);
    return new Chance(perYear, modes, {
      plans: any.map((plan) => sharesAt(d, plan)),
      worst: anyMeans.findIndex((mean) => mean[d] === perYear),
      drawn: sharesAt(d, drawn),
    });
  });
}

/** Sets of measures that are remembered at a time: a step asks for a dozen, and every level of an outlet is another. */
const MOST = 32;
const kept = new Remembered<Map<number, Chance>>(MOST);

/** {@link chancesOf}, kept for the next who asks; the first time for all depths that may be searched. */
export function keptChances(basis: Basis, m: Measures, depths: number[]): Chance[] {
  const found = kept.of(basis.counted, JSON.stringify(m), () => new Map());
  const lacks = (depth: number) => !found.has(micrometres(depth));
  if (depths.some(lacks)) {
    const wanted = [...searchable(basis.site.pond.shape), ...depths].filter(lacks).sort((a, b) => a - b);
    const anew = wanted.filter((depth, i) => micrometres(depth) !== micrometres(wanted[i - 1]));
    chancesOf(basis, m, anew).forEach((chance, i) => {
      found.set(micrometres(anew[i]), chance);
    });
  }
  return depths.map((depth) => found.get(micrometres(depth))!);
}

/** Picks one of the counts of failing years. */
type Count = (years: FailingYears) => YearsFailing;

/** Chance over a life: unlucky ground is unlucky every year. */
export function lifeChance(shares: Float64Array, years: number): number {
  return shares.reduce((a, share) => a + 1 - (1 - share) ** years, 0) / shares.length;
}
