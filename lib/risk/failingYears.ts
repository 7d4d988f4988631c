import type { Basis } from './basis.js';
import type { Course } from './courses.js';
import { EmptiedPond } from './emptiedPond.js';
import { liftingHeads } from './liftingHeads.js';
import { lowestUsualLevel, type Measures } from './measures.js';
import { Onsets } from './onsets.js';
import { Remembered } from './remembered.js';
import { NO_SHIFT, type Shift } from './shift.js';
import { baredSides, firstTaller } from './sides.js';
import { undrainedHeads } from './undrainedHeads.js';

/** Years in which a pond fails with one course of its drain, by sample and depth. */
export interface FailingYears {
  full: Onsets;
  drawn: Onsets;
  /** by plan of emptying: lifted, slumped, failing in any state */
  plans: { lift: Onsets; slump: Onsets; any: Onsets }[];
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
  { site, draws, sides, emptyings }: Basis,
  m: Measures,
  course: Course,
  depths: ArrayLike<number>,
  shift = NO_SHIFT,
): FailingYears {
  const { samples, years } = draws;
  const { months } = emptyings;
  const count = depths.length;
  const holdFull = site.pond.fullLevel + m.raise + shift.pond + m.ballast;
  const holdDrawn = lowestUsualLevel(site, m) + shift.pond + m.ballast;
  const bared = baredSides(m, depths);
  const lifting = liftingHeads(site, draws, m, depths, shift.conductivity);
  const calm = new EmptiedPond(lifting, bared, course.calm);
  const flooded = course.flood && new EmptiedPond(lifting, bared, course.flood);
  const rounds = flooded ? site.wetMonths.length : 1;
  /** places of the months in which the ditch may flood, by plan */
  const floods = emptyings.plans.map((places) =>
    places.filter((q) => flooded !== undefined && site.wetMonths.includes(months[q] + 1)),
  );
  // For the yearly high the flood comes on the worst day.
  const yearly = course.flood ?? course.calm;
  const reachFull = reach(yearly.most, holdFull, count);
  const reachDrawn = reach(yearly.most, holdDrawn, count);
  const leastLifts = yearly.least > holdFull;
  const leastFails = yearly.least > holdDrawn;
  const relieves = reachDrawn === 0 && !leastFails && calm.neverLifts && (flooded?.neverLifts ?? true);

  const onsets = () => new Onsets(samples, count, rounds);
  const full = onsets();
  const drawn = onsets();
  const plans = emptyings.plans.map(() => ({ lift: onsets(), slump: onsets(), any: onsets() }));
  const heads = undrainedHeads(draws, emptyings, m, shift.water);
  const each = () => new Int32Array(months.length * years);
  const dry: Emptied = { lift: each(), slump: each() };
  const wet: Emptied = { lift: each(), slump: each() };
  const until = new Int32Array(years);
  for (let s = 0; s < samples; s++) {
    const tallWet = sides ? firstTaller(bared, sides.softWet[s]) : count;
    const tallDry = sides ? firstTaller(bared, sides.softDry[s]) : count;
    if (relieves && tallWet === count) continue;
    for (let y = 0; y < years; y++) {
      const high = heads.yearly[s * years + y];
      full.add(s, rounds, 0, leastLifts ? count : high > holdFull ? reachFull : 0);
      until[y] = leastFails ? count : high > holdDrawn ? reachDrawn : 0;
      drawn.add(s, rounds, 0, until[y]);
    }
    const first = s * months.length * years;
    for (let q = 0; q < months.length; q++) {
      const at = q * years;
      calm.firstLifts(s, heads, first + at, dry.lift, at, years);
      calm.firstSlumps(heads, first + at, tallWet, tallDry, dry.slump, at, years);
      if (!flooded || !floods.some((places) => places.includes(q))) continue;
      flooded.firstLifts(s, heads, first + at, wet.lift, at, years);
      flooded.firstSlumps(heads, first + at, tallWet, tallDry, wet.slump, at, years);
    }
    for (let p = 0; p < plans.length; p++) {
      const places = emptyings.plans[p];
      if (places.length === 0) {
        for (let y = 0; y < years; y++) addAlike(plans[p], s, rounds, count, count, until[y]);
        continue;
      }
      const order = heads.year.subarray(first + places[0] * years, first + (places[0] + 1) * years);
      for (const q of floods[p]) addYears(plans[p], s, 1, order, places, dry, until, q, wet);
      addYears(plans[p], s, rounds - floods[p].length, order, places, dry, until);
    }
  }
  return { full, drawn, plans };
}

/** First depths at which a liner lifts and a side slumps, by place and year. */
interface Emptied {
  lift: Int32Array;
  slump: Int32Array;
}

/**
 * Adds the years of a plan of emptying.
 * @param times - how often each counts
 * @param order - of the years, in which those that fail alike stand together
 * @param until - depths, by year, before which the drawn-down pond fails
 * @param flooded - place with the ditch in flood, and `wet` what fails there then
 */
function addYears(
  plan: Plan,
  sample: number,
  times: number,
  order: Uint16Array,
  places: number[],
  dry: Emptied,
  until: Int32Array,
  flooded?: number,
  wet = dry,
): void {
  const years = order.length;
  let [lifts, slumps, before, alike] = [0, 0, 0, 0];
  for (let r = 0; r < years; r++) {
    const y = order[r];
    let lift = Number.POSITIVE_INFINITY;
    let slump = Number.POSITIVE_INFINITY;
    for (let k = 0; k < places.length; k++) {
      const of = places[k] === flooded ? wet : dry;
      const i = places[k] * years + y;
      lift = Math.min(lift, of.lift[i]);
      slump = Math.min(slump, of.slump[i]);
    }
    if (lift !== lifts || slump !== slumps || until[y] !== before) {
      addAlike(plan, sample, times * alike, lifts, slumps, before);
      alike = 0;
      lifts = lift;
      slumps = slump;
      before = until[y];
    }
    alike++;
  }
  addAlike(plan, sample, times * alike, lifts, slumps, before);
}

type Plan = FailingYears['plans'][number];

function addAlike(
  { lift, slump, any }: Plan,
  sample: number,
  years: number,
  lifts: number,
  slumps: number,
  until: number,
): void {
  lift.add(sample, years, lifts);
  slump.add(sample, years, slumps);
  any.add(sample, years, 0, until);
  any.add(sample, years, Math.max(Math.min(lifts, slumps), until));
}

/** How many of the depths, from the shallowest, have a bound above a hold: the bound falls as the floor does. */
function reach(most: Float64Array | undefined, hold: number, depths: number): number {
  const end = most?.findIndex((level) => level <= hold) ?? -1;
  return end < 0 ? depths : end;
}
