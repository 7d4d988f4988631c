import type { Basis } from '../basis/index.js';
import {
  drawdownOf,
  excessLetBe,
  keptHeads,
  Onsets,
  Shallow,
  undrainedHeads,
  type YearsFailing,
} from '../basis/index.js';
import { LEVEL_RESOLUTION } from '../formula/index.js';
import { fullLevel, type Measures, NO_SHIFT, type Shift } from '../heads/index.js';
import { Remembered } from '../sampling/index.js';
import type { Course } from './courses.js';
import { emptiedHeaves } from './emptiedHeaves.js';
import { emptiedYears } from './emptiedYears.js';
import { keptHeaves } from './keptHeaves.js';

/** Years in which a pond fails with one course of its drain, by sample and depth. */
export interface FailingYears {
  full: YearsFailing;
  drawn: YearsFailing;
  /** of `drawn`, those in which the liner lifts */
  lifted: YearsFailing;
  /** as it is kept, by its floor over a seam; absent without a seam */
  heaved?: YearsFailing;
  /** by plan of emptying: lifted, slumped, its floor heaved, failing in any state */
  plans: { lift: YearsFailing; slump: YearsFailing; heave: YearsFailing; any: YearsFailing }[];
  /**
   * Share of each year that fails at one depth, index sample × years + year: of a ditch in flood as many of its spells as
   * fail, else 0 or 1.
   * @param of - plan of emptying, in any state; or the pond full, or as it is kept
   */
  each(depth: number, of: number | 'full' | 'drawn'): Float64Array;
}

/** Counted without a drain that works: the same for every option that differs in its drain only. */
const undrained = new Remembered<FailingYears>();
const shifted = new Remembered<FailingYears>(8);

/** {@link countFailing}, remembered where no drain makes it this option's own. */
export function failingYears(
  basis: Basis,
  m: Measures,
  course: Course,
  depths: ArrayLike<number>,
  shift?: Shift,
): FailingYears {
  const count = () => countFailing(basis, m, course, depths, shift);
  if (course.calm.most) return count();
  const { way, cutoff, raise, ballast } = m;
  const key = JSON.stringify([way, cutoff, raise, ballast, Array.from(depths), shift]);
  return (shift ? shifted : undrained).of(basis.counted, key, count);
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
  const held = fullLevel(site, m) + shift.pond + m.ballast + LEVEL_RESOLUTION;
  const heldDown = (excess: number, lacks: number) => {
    // Where the least head fails it fails in every year, at every depth.
    return least + lacks > held + excess
      ? { from: Number.NEGATIVE_INFINITY, years: new Shallow(samples, count) }
      : { from: held + excess, years: new Shallow(samples, reach(most, held + excess - lacks, count)) };
  };
  const full = heldDown(0, 0);
  // What a drain leaves may meet the pond on the day it lacks most.
  const lacks = drawdownOf(basis, 1);
  const drawn = heldDown(Math.min(excessLetBe(site), lacks), lacks);
  const keptSums = keptHeads(basis, m, shift.water);
  const any = emptied.plans.map(() => new Onsets(samples, count, rounds));
  const heaves = emptiedHeaves(basis, m, depths);
  const keptHeave = keptHeaves(basis, m, depths, shift.pond);
  const heaved = emptied.plans.map(() => new Onsets(samples, count, rounds));
  const heads = undrainedHeads(draws, emptyings, m, shift.water);
  /** above the brim nothing is let be */
  const lifts = (i: number) => keptSums[i] > drawn.from || heads.yearly[i] > full.from;
  /** depths, by year, before which the pond as it is kept fails */
  const until = new Int32Array(years);
  for (let s = 0; s < samples; s++) {
    for (let y = 0, i = s * years; y < years; y++, i++) {
      const fails = Number(lifts(i));
      full.years.of[s] += Number(heads.yearly[i] > full.from);
      drawn.years.of[s] += fails;
      until[y] = fails * drawn.years.reach;
    }
    if (drawn.years.reach === 0 && idle[s] === 1 && !heaves) continue;
    emptied.plans.forEach(({ cases }, p) => {
      const places = emptyings.plans[p];
      if (places.length === 0) return;
      const ranked = (s * emptyings.months.length + places[0]) * years;
      const order = heads.year.subarray(ranked, ranked + years);
      const heave = heaves?.[p][s] ?? count;
      heaved[p].add(s, rounds * years, heave);
      const heavesIn = (y: number) => Math.min(heave, keptHeave?.drawn[s * years + y] ?? count);
      for (const { first, times } of cases) addYears(any[p], s, times, first, heavesIn, order, until);
    });
  }
  const each: FailingYears['each'] = (depth, of) => {
    const shares = new Float64Array(samples * years);
    const places = typeof of === 'number' ? emptyings.plans[of] : [];
    const cases = places.length === 0 ? [] : emptied.plans[of as number].cases;
    const kept = of === 'full' ? full : drawn;
    const reached = depth < kept.years.reach;
    const fails = of === 'full' ? (i: number) => heads.yearly[i] > full.from : lifts;
    for (let s = 0; s < samples; s++) {
      const ranked = (s * emptyings.months.length + (places[0] ?? 0)) * years;
      const heave = places.length === 0 ? count : (heaves?.[of as number][s] ?? count);
      for (let r = 0; r < years; r++) {
        const i = s * years + (places.length === 0 ? r : heads.year[ranked + r]);
        const sinks = of === 'full' ? keptHeave?.full[s] : keptHeave?.drawn[i];
        if (Math.min(heave, sinks ?? count) <= depth || (reached && fails(i))) shares[i] = 1;
        else if (idle[s] === 0)
          for (const { first, times } of cases)
            if (first[s * years + r] <= depth) shares[i] += times / rounds;
      }
    }
    return shares;
  };
  const dips = keptHeave && ((i: number) => keptHeave.drawn[i]!);
  const together = (lifted: Shallow, lifting: (i: number) => boolean, heaving?: (i: number) => number) =>
    heaving ? onsetsOf(samples, years, count, (i) => (lifting(i) ? lifted.reach : 0), heaving) : lifted;
  const keptYears = together(drawn.years, lifts, dips);
  return {
    each,
    full: together(
      full.years,
      (i) => heads.yearly[i] > full.from,
      keptHeave && ((i) => keptHeave.full[Math.floor(i / years)]!),
    ),
    drawn: keptYears,
    lifted: drawn.years,
    heaved: dips && onsetsOf(samples, years, count, () => 0, dips),
    plans: emptied.plans.map(({ lift, slump }, p) => ({
      lift,
      slump,
      heave: heaved[p],
      // A pond that is never emptied fails drawn down or not at all.
      any: emptyings.plans[p].length === 0 ? keptYears : any[p],
    })),
  };
}

/** Years that fail at every depth up to one, and from another on. */
function onsetsOf(
  samples: number,
  years: number,
  depths: number,
  until: (year: number) => number,
  from: (year: number) => number,
): Onsets {
  const onsets = new Onsets(samples, depths, 1);
  for (let i = 0; i < samples * years; i++) {
    const [to, again] = [until(i), from(i)];
    onsets.add(Math.floor(i / years), 1, 0, to);
    onsets.add(Math.floor(i / years), 1, Math.max(to, again));
  }
  return onsets;
}

/** Adds the years of a sample that fail in any state, those that fail alike together. */
function addYears(
  any: Onsets,
  sample: number,
  times: number,
  first: Uint16Array,
  heave: (year: number) => number,
  order: Uint16Array,
  until: Int32Array,
): void {
  const years = order.length;
  let [emptied, drawn, alike] = [0, 0, 0];
  for (let r = 0; r < years; r++) {
    const from = Math.min(first[sample * years + r], heave(order[r]));
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
