import type { Basis } from './basis.js';
import type { Course } from './courses.js';
import { emptiedYears } from './emptiedYears.js';
import { lowestUsualLevel, type Measures } from './measures.js';
import { Onsets, Shallow, type YearsFailing } from './onsets.js';
import { Remembered } from './remembered.js';
import { NO_SHIFT, type Shift } from './shift.js';
import { undrainedHeads } from './undrainedHeads.js';

/** Years in which a pond fails with one course of its drain, by sample and depth. */
export interface FailingYears {
  full: YearsFailing;
  drawn: YearsFailing;
  /** by plan of emptying: lifted, slumped, failing in any state */
  plans: { lift: YearsFailing; slump: YearsFailing; any: YearsFailing }[];
}

/** Counted without a drain that works: the same for every option that differs in its drain only. */
const undrained = new Remembered<FailingYears>();

/** {@link countFailing}, remembered where neither a drain nor a shift makes it this option's own. */
export function failingYears(
  basis: Basis,
  m: Measures,
  course: Course,
  depths: ArrayLike<number>,
  shift?: Shift,
): FailingYears {
  const count = () => countFailing(basis, m, course, depths, shift);
  if (shift || course.calm.most) return count();
  const { way, cutoff, raise, ballast } = m;
  return undrained.of(basis.counted, `${[way, cutoff, raise, ballast]} at ${Array.from(depths)}`, count);
}

/**
 * Counts the failing years of one course; with a ditch as often as there are months in which it may flood.
 * @param depths - on the axis of the wish, ascending, m
 */
function countFailing(
  basis: Basis,
  m: Measures,
  course: Course,
  depths: ArrayLike<number>,
  shift = NO_SHIFT,
): FailingYears {
  const { site, draws, emptyings } = basis;
  const { samples, years } = draws;
  const count = depths.length;
  const emptied = emptiedYears(basis, m, course, depths, shift);
  const { rounds, idle } = emptied;
  // For the yearly high the flood comes on the worst day.
  const { least, most } = course.flood ?? course.calm;
  const heldDown = (hold: number) => {
    const held = hold + shift.pond + m.ballast;
    // Where the least head fails it fails in every year, at every depth.
    return least > held
      ? { from: Number.NEGATIVE_INFINITY, years: new Shallow(samples, count) }
      : { from: held, years: new Shallow(samples, reach(most, held, count)) };
  };
  const full = heldDown(site.pond.fullLevel + m.raise);
  const drawn = heldDown(lowestUsualLevel(site, m));
  const any = emptied.plans.map(() => new Onsets(samples, count, rounds));
  const heads = undrainedHeads(draws, emptyings, m, shift.water);
  /** depths, by year, before which the drawn-down pond fails */
  const until = new Int32Array(years);
  for (let s = 0; s < samples; s++) {
    for (let y = 0, i = s * years; y < years; y++, i++) {
      const fails = Number(heads.yearly[i] > drawn.from);
      full.years.of[s] += Number(heads.yearly[i] > full.from);
      drawn.years.of[s] += fails;
      until[y] = fails * drawn.years.reach;
    }
    if (drawn.years.reach === 0 && idle[s] === 1) continue;
    emptied.plans.forEach(({ cases }, p) => {
      const places = emptyings.plans[p];
      if (places.length === 0) return;
      const ranked = (s * emptyings.months.length + places[0]) * years;
      const order = heads.year.subarray(ranked, ranked + years);
      for (const { first, times } of cases) addYears(any[p], s, times, first, order, until);
    });
  }
  return {
    full: full.years,
    drawn: drawn.years,
    plans: emptied.plans.map(({ lift, slump }, p) => ({
      lift,
      slump,
      // A pond that is never emptied fails drawn down or not at all.
      any: emptyings.plans[p].length === 0 ? drawn.years : any[p],
    })),
  };
}

/** Adds the years of a sample that fail in any state, those that fail alike together. */
function addYears(
  any: Onsets,
  sample: number,
  times: number,
  first: Uint16Array,
  order: Uint16Array,
  until: Int32Array,
): void {
  const years = order.length;
  let [emptied, drawn, alike] = [0, 0, 0];
  for (let r = 0; r < years; r++) {
    const from = first[sample * years + r];
    const to = until[order[r]];
    if (from !== emptied || to !== drawn) {
      any.add(sample, times * alike, 0, drawn);
      any.add(sample, times * alike, Math.max(emptied, drawn));
      alike = 0;
      emptied = from;
      drawn = to;
    }
    alike++;
  }
  any.add(sample, times * alike, 0, drawn);
  any.add(sample, times * alike, Math.max(emptied, drawn));
}

/** How many of the depths, from the shallowest, have a bound above a hold: the bound falls as the floor does. */
function reach(most: Float64Array | undefined, hold: number, depths: number): number {
  const end = most?.findIndex((level) => level <= hold) ?? -1;
  return end < 0 ? depths : end;
}
