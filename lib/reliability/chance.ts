import type { Basis, YearsFailing } from '../basis/index.js';
import type { Governs, Obstacle } from '../contract/index.js';
import { method } from '../formula/index.js';
import type { Measures, Shift } from '../heads/index.js';
import { Remembered, replicateChance } from '../sampling/index.js';
import { REPLICATES } from '../site/index.js';
import { type Carrying, carryingOf } from './carrying.js';
import { type CountedCourse, chanceAYear, sharesByYear } from './countedYears.js';
import { type Course, coursesOf } from './courses.js';
import { micrometres, searchable } from './depths.js';
import { type ChanceError, errorOfYears } from './errorOfYears.js';
import { type FailingYears, failingYears } from './failingYears.js';

export const chanceMethod = method({
  title: 'Chance of failing in a year',
  what:
    'Mean over samples of the share of failing weather years. One sample is one draw of everything unknown but ' +
    'fixed, run through all weather years; a year fails when on any day the head outside beats what holds the liner, or the ' +
    'water of a seam what lies over it.',
  assumptions: [
    'states: full and drawn down all year; emptied for the days planned, on whichever day of each month planned it is ' +
      'the worst to start, where the liner also needs water to arrive, and a bared, softened side slumps and a floor over ' +
      'a seam heaves at once; no pump running for a sump',
    'what a drain is found to be in a year (working, flap stuck, blocked) is weighed by its chance, not drawn',
    'the ditch floods once in as many years as the survey says, else 5: for the yearly high on the worst day, for an ' +
      'emptying in one third of a wet month, each as likely',
    'what fails emptied at one depth fails deeper too: the first failing depth of every year is searched',
    'its error: between replicates of the samples, and between the years of the weather, which are drawn too and stand ' +
      'for themselves; both together. A single year tells no scatter: then that of years which fail wholly or not at all',
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
    private readonly shared: {
      plans: Shares[];
      worst: number;
      drawn: Shares;
      /** years of the weather's record */
      record: number;
      /** courses that were counted, and their years */
      counted(of: number | 'full' | 'drawn'): CountedCourse[];
      upkeep: number;
      lifted: number;
      lacks?: Obstacle;
      /** share of failing years, one a sample, full and with the pump out */
      full: Shares;
      powerOut?: Shares;
    },
  ) {}

  /** share of years failing in one state, one a sample; absent where that state is not met */
  sharesIn(state: 'lift-full' | 'lift-drawn-down' | 'lift-power-out'): Float64Array | undefined {
    const { full, drawn, powerOut } = this.shared;
    const of = { 'lift-full': full, 'lift-drawn-down': drawn, 'lift-power-out': powerOut }[state];
    return of && this.sharesOf(of);
  }

  /** what of `perYear` comes of a drain, flap or pump found out of order */
  get upkeep(): number {
    return this.shared.upkeep;
  }

  /** what of the chance as it is kept is of the liner lifted, whatever the floor does over a seam */
  get lifted(): number {
    return this.shared.lifted;
  }

  /**
   * What is counted: by what a drain may be found to be, which years fail and how often it is found so.
   * @param of - in any state, full, as it is kept, or so with no pump running
   * @param plan - of emptying, that any state is of; absent: the worst
   */
  counted(of: 'any' | 'full' | 'drawn' | 'power-out', plan = this.shared.worst): CountedCourse[] {
    const { counted } = this.shared;
    const pumpless = (each: CountedCourse) => each.state === 'pumps-out' || each.state === 'power-out';
    return of === 'power-out' ? counted('drawn').filter(pumpless) : counted(of === 'any' ? plan : of);
  }

  /** why the drain cannot be had at this depth; absent: it can, or there is none */
  get lacks(): Obstacle | undefined {
    return this.shared.lacks;
  }

  /** share of failing years, one a sample */
  get shares(): Float64Array {
    return this.sharesOf(this.shared.plans[this.shared.worst]);
  }

  /** Share of failing years by one plan of emptying, one a sample; where no month was named that of each, 0–11. */
  sharesOfPlan(plan: number): Float64Array {
    return this.sharesOf(this.shared.plans[plan]);
  }

  /** of the chance a year: how far other samples and other years of weather may move it */
  get error(): ChanceError {
    return this.errorOf(this.shared.plans[this.shared.worst], this.shared.worst);
  }

  /** The same of the chance of lifting drawn down. */
  get drawnError(): ChanceError {
    return this.errorOf(this.shared.drawn, 'drawn');
  }

  private errorOf(of: Shares, counted: number | 'drawn'): ChanceError {
    const { record } = this.shared;
    const bySample = replicateChance(this.sharesOf(of), REPLICATES);
    const byWeather = errorOfYears(sharesByYear(this.shared.counted(counted), record));
    return {
      // What lies between 0 and 1 cannot scatter wider.
      standardError: Math.min(Math.hypot(bySample.standardError, byWeather.standardError), 0.5),
      halfWidth95: Math.min(Math.hypot(bySample.halfWidth95, byWeather.halfWidth95), 1),
    };
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
  const carrying = carryingOf(basis, m, depths, shift);
  const courses = coursesOf(m, basis, depths, carrying).map((course) => ({
    state: course.state,
    flooded: course.flood !== undefined,
    failing: failingYears(basis, course.measures, course, depths, shift),
    weights: weightsOf(course, samples, depths.length, carrying),
  }));
  const means = (count: Count, among = courses) => {
    const sums = new Float64Array(depths.length);
    for (const { failing, weights } of among) count(failing).addTo(sums, weights);
    // Weights of what may become of a drain add up to 1 but for rounding.
    return sums.map((sum) => chanceAYear.compute(sum, samples, years));
  };
  const sharesAt =
    (depth: number, count: Count, among = courses) =>
    () => {
      const sums = new Float64Array(samples);
      for (const { failing, weights } of among) count(failing).addAt(depth, sums, weights[depth]);
      return sums.map((sum) => sum / years);
    };
  const { fit, record: weather } = basis.site;
  const record = fit && weather && years % weather.years === 0 ? weather.years : years;
  const countedAt = (depth: number) => (of: number | 'full' | 'drawn') =>
    courses.map(
      ({ state, flooded, failing, weights }): CountedCourse => ({
        state,
        flooded,
        weight: weights[depth],
        fails: failing.each(depth, of),
      }),
    );
  const drawn: Count = (years) => years.drawn;
  const ofPlans = (state: 'lift' | 'slump' | 'heave' | 'any'): Count[] =>
    basis.emptyings.plans.map((_, p) => (years) => years.plans[p][state]);
  const worst = (means: Float64Array[], d: number) => Math.max(...means.map((mean) => mean[d]));
  const any = ofPlans('any');
  const anyMeans = any.map((plan) => means(plan));
  const lifted = ofPlans('lift').map((plan) => means(plan));
  const sunk = courses[0].failing.heaved ? means((years) => years.heaved!) : undefined;
  const lifts = courses[0].failing.heaved ? means((years) => years.lifted) : undefined;
  const slumped = ofPlans('slump').map((plan) => means(plan));
  const heaved = ofPlans('heave').map((plan) => means(plan));
  const pumpless = courses.filter(({ state }) => state === 'pumps-out' || state === 'power-out');
  const kept = courses
    .filter(({ state }) => state !== 'works' && state !== 'none')
    // More water than the drain takes is no matter of upkeep.
    .map((course) => ({
      ...course,
      weights: byCarrying(carrying, depths.length, (d) =>
        course.weights[d].map((w, s) => (carrying[d]?.overwhelmed[s] === 1 ? 0 : w)),
      ),
    }));
  const upkeep = ofPlans('any').map((plan) => means(plan, kept));
  const yearly: [Governs, Float64Array][] = [
    ['lift-full', means((years) => years.full)],
    ['lift-drawn-down', means(drawn)],
    ...(pumpless.length > 0 ? [['lift-power-out', means(drawn, pumpless)] as [Governs, Float64Array]] : []),
  ];
  return Array.from(depths, (_, d) => {
    const perYear = worst(anyMeans, d);
    const modes: Chance['modes'] = Object.fromEntries(yearly.map(([mode, mean]) => [mode, mean[d]]));
    modes['lift-emptied'] = worst(lifted, d);
    modes['side-slump'] = worst(slumped, d);
    modes['floor-heave'] = Math.max(worst(heaved, d), sunk?.[d] ?? 0);
    const plan = anyMeans.findIndex((mean) => mean[d] === perYear);
    return new Chance(perYear, modes, {
      plans: any.map((plan) => sharesAt(d, plan)),
      worst: plan,
      drawn: sharesAt(d, drawn),
      record,
      counted: countedAt(d),
      upkeep: upkeep.length > 0 ? upkeep[plan][d] : 0,
      lifted: lifts?.[d] ?? modes['lift-drawn-down']!,
      lacks: carrying[d]?.lacks,
      full: sharesAt(d, (years) => years.full),
      powerOut: pumpless.length > 0 ? sharesAt(d, drawn, pumpless) : undefined,
    });
  });
}

/** Weight of a course in every sample, by depth; one array where the drain carries the same. */
function weightsOf(course: Course, samples: number, depths: number, carrying: Carrying[]): Float64Array[] {
  return byCarrying(carrying, depths, (d) =>
    Float64Array.from({ length: samples }, (_, s) => course.weight(s, d)),
  );
}

/** Values by depth, made anew only where the drain carries otherwise than at the depth before. */
function byCarrying<T>(carrying: Carrying[], depths: number, make: (depth: number) => T): T[] {
  const made: T[] = [];
  for (let d = 0; d < depths; d++) {
    const [one, before] = [carrying[d], carrying[d - 1]];
    const alike = d > 0 && (!one || (one.overwhelmed === before.overwhelmed && one.filled === before.filled));
    made.push(alike ? made[d - 1] : make(d));
  }
  return made;
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
  // A sum of weights may pass 1 by a rounding.
  return shares.reduce((a, share) => a + 1 - Math.max(1 - share, 0) ** years, 0) / shares.length;
}
