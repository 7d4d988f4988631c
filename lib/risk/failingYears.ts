import type { Basis } from './basis.js';
import type { Course } from './courses.js';
import { EmptiedPond } from './emptiedPond.js';
import { undrainedHead } from './head.js';
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
  const { water, pond } = site;
  const { samples, years, clayLow, clayHigh } = draws;
  const { months } = emptyings;
  const { cutoff } = m;
  const count = depths.length;
  const holdFull = pond.fullLevel + m.raise + shift.pond + m.ballast;
  const holdDrawn = lowestUsualLevel(site, m) + shift.pond + m.ballast;
  const calm = new EmptiedPond(site, m, depths, course.calm);
  const flooded = course.flood && new EmptiedPond(site, m, depths, course.flood);
  const rounds = flooded ? site.wetMonths.length : 1;
  /** by place: whether the ditch may flood in its month */
  const floods = months.map((month) => flooded !== undefined && site.wetMonths.includes(month + 1));
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
  const bared = baredSides(m, depths);
  const ringYear = draws.tub?.[m.way];
  const ringEmptied = emptyings.tub?.[m.way];
  const heads = new Float64Array(months.length);
  const rings = new Float64Array(months.length).fill(Number.NEGATIVE_INFINITY);
  const lift = new Int32Array(months.length);
  const slump = new Int32Array(months.length);
  for (let s = 0; s < samples; s++) {
    const conductivity = water.conductivity[s] * shift.conductivity;
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
        lift[q] = calm.firstLift(heads[q], rings[q], conductivity);
        slump[q] = calm.firstSlump(heads[q], tallWet, tallDry);
      }
      for (let p = 0; p < plans.length; p++) {
        const places = emptyings.plans[p];
        let times = rounds;
        if (flooded)
          for (const q of places) {
            if (!floods[q]) continue;
            times--;
            const [calmLift, calmSlump] = [lift[q], slump[q]];
            lift[q] = flooded.firstLift(heads[q], rings[q], conductivity);
            slump[q] = flooded.firstSlump(heads[q], tallWet, tallDry);
            add(plans[p], s, 1, places, until);
            lift[q] = calmLift;
            slump[q] = calmSlump;
          }
        add(plans[p], s, times, places, until);
      }
    }
  }
  return { full, drawn, plans };

  /** Counts a plan of emptying whose drawn-down pond fails at the depths before `until`. */
  function add(
    plan: FailingYears['plans'][number],
    sample: number,
    times: number,
    places: number[],
    until: number,
  ): void {
    let lifts = count;
    let slumps = count;
    for (const q of places) {
      if (lift[q] < lifts) lifts = lift[q];
      if (slump[q] < slumps) slumps = slump[q];
    }
    if (lifts < count) plan.lift.add(sample, times, lifts);
    if (slumps < count) plan.slump.add(sample, times, slumps);
    if (until > 0) plan.any.add(sample, times, 0, until);
    const emptied = Math.max(Math.min(lifts, slumps), until);
    if (emptied < count) plan.any.add(sample, times, emptied);
  }
}

/** How many of the depths, from the shallowest, have a bound above a hold: the bound falls as the floor does. */
function reach(most: Float64Array | undefined, hold: number, depths: number): number {
  const end = most?.findIndex((level) => level <= hold) ?? -1;
  return end < 0 ? depths : end;
}
