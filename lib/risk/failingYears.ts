import type { Basis } from './basis.js';
import type { Course } from './courses.js';
import { EmptiedPond } from './emptiedPond.js';
import { undrainedHead } from './head.js';
import { liftingHeads } from './liftingHeads.js';
import { lowestUsualLevel, type Measures } from './measures.js';
import { Onsets } from './onsets.js';
import { Remembered } from './remembered.js';
import { NO_SHIFT, type Shift } from './shift.js';
import { baredSides, firstTaller } from './sides.js';

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
  const { samples, years, clayLow, clayHigh } = draws;
  const { months } = emptyings;
  const { cutoff } = m;
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
  const leastFails = yearly.least > holdDrawn;
  const relieves = reachDrawn === 0 && !leastFails && calm.neverLifts && (flooded?.neverLifts ?? true);

  const onsets = () => new Onsets(samples, count, rounds);
  const full = onsets();
  const drawn = onsets();
  const plans = emptyings.plans.map(() => ({ lift: onsets(), slump: onsets(), any: onsets() }));
  const ringYear = draws.tub?.[m.way];
  const ringEmptied = emptyings.tub?.[m.way];
  const heads = new Float64Array(months.length);
  const rings = new Float64Array(months.length).fill(Number.NEGATIVE_INFINITY);
  /** first depths at which it lifts and slumps, by place */
  const lift = new Int32Array(months.length);
  const slump = new Int32Array(months.length);
  for (let s = 0; s < samples; s++) {
    const tallWet = sides ? firstTaller(bared, sides.softWet[s]) : count;
    const tallDry = sides ? firstTaller(bared, sides.softDry[s]) : count;
    if (relieves && tallWet === count) continue;
    for (let i = s * years; i < (s + 1) * years; i++) {
      const ring = ringYear ? ringYear[i] : Number.NEGATIVE_INFINITY;
      const high = undrainedHead(cutoff, clayLow[i] + shift.water, clayHigh[i] + shift.water, ring);
      if (yearly.least > holdFull) full.add(s, rounds, 0);
      else if (high > holdFull && reachFull > 0) full.add(s, rounds, 0, reachFull);
      const until = leastFails ? count : high > holdDrawn ? reachDrawn : 0;
      if (until > 0) drawn.add(s, rounds, 0, until);
      for (let q = 0, w = i * months.length; q < months.length; q++, w++) {
        if (ringEmptied) rings[q] = ringEmptied[w];
        heads[q] = undrainedHead(
          cutoff,
          emptyings.low[w] + shift.water,
          emptyings.high[w] + shift.water,
          rings[q],
        );
        lift[q] = calm.firstLift(s, heads[q], rings[q]);
        slump[q] = calm.firstSlump(heads[q], tallWet, tallDry);
      }
      for (let p = 0; p < plans.length; p++) {
        const places = emptyings.plans[p];
        if (flooded)
          for (let f = 0; f < floods[p].length; f++) {
            const q = floods[p][f];
            const [calmLift, calmSlump] = [lift[q], slump[q]];
            lift[q] = flooded.firstLift(s, heads[q], rings[q]);
            slump[q] = flooded.firstSlump(heads[q], tallWet, tallDry);
            addYear(plans[p], s, 1, first(lift, places, count), first(slump, places, count), until, count);
            lift[q] = calmLift;
            slump[q] = calmSlump;
          }
        const times = rounds - floods[p].length;
        addYear(plans[p], s, times, first(lift, places, count), first(slump, places, count), until, count);
      }
    }
  }
  return { full, drawn, plans };
}

/** Shallowest of the depths of some places. */
function first(depths: Int32Array, places: number[], count: number): number {
  let shallowest = count;
  for (let q = 0; q < places.length; q++) shallowest = Math.min(shallowest, depths[places[q]]);
  return shallowest;
}

/** Adds a year in which a plan lifts and slumps from two depths on, and the drawn-down pond fails before `until`. */
function addYear(
  { lift, slump, any }: FailingYears['plans'][number],
  sample: number,
  times: number,
  lifts: number,
  slumps: number,
  until: number,
  count: number,
): void {
  if (lifts < count) lift.add(sample, times, lifts);
  if (slumps < count) slump.add(sample, times, slumps);
  if (until > 0) any.add(sample, times, 0, until);
  const emptied = Math.max(Math.min(lifts, slumps), until);
  if (emptied < count) any.add(sample, times, emptied);
}

/** How many of the depths, from the shallowest, have a bound above a hold: the bound falls as the floor does. */
function reach(most: Float64Array | undefined, hold: number, depths: number): number {
  const end = most?.findIndex((level) => level <= hold) ?? -1;
  return end < 0 ? depths : end;
}
