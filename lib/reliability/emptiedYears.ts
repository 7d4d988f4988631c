import type { Basis } from '../basis/index.js';
import { Onsets, undrainedHeads } from '../basis/index.js';
import { baredSides, firstTaller } from '../digging/index.js';
import type { Measures } from '../heads/index.js';
import { LiftingHeads, NO_SHIFT, type Shift } from '../heads/index.js';
import { Remembered } from '../sampling/index.js';
import { daysCounted } from '../site/index.js';
import type { Course } from './courses.js';
import { EmptiedPond } from './emptiedPond.js';

/** Years in which an emptied pond fails with one course of its drain, however high the pond is kept otherwise. */
interface EmptiedYears {
  /** how often each year counts: as often as there are spells in which a ditch may flood */
  rounds: number;
  /** by plan of emptying */
  plans: EmptiedPlan[];
  /** by sample: 1 where no year fails at any depth */
  idle: Uint8Array;
}

/** A plan of emptying. */
interface EmptiedPlan {
  lift: Onsets;
  slump: Onsets;
  /** the ditch in flood during some emptyings of the plan, and during none of them */
  cases: EmptiedCase[];
}

/** Where the ditch is in flood. */
interface EmptiedCase {
  /** places of the months whose emptying it meets */
  flooded: number[];
  /** how often it counts */
  times: number;
  /** first depth that fails; index sample × years + rank, the years in the order of the plan's first month */
  first: Uint16Array;
}

const found = new Remembered<EmptiedYears>(16);
const shifted = new Remembered<EmptiedYears>(8);

/** {@link countEmptied}, remembered. */
export function emptiedYears(
  basis: Basis,
  m: Measures,
  course: Course,
  depths: ArrayLike<number>,
  shift: Shift = NO_SHIFT,
): EmptiedYears {
  const count = () => countEmptied(basis, m, course, depths, shift);
  const { way, cutoff, raise, ballast, drain } = m;
  const { water, permeability } = shift;
  const relieved = course.calm.most ? [drain, course.state, course.flood !== undefined] : [];
  const key = JSON.stringify([
    way,
    cutoff,
    raise,
    ballast,
    relieved,
    Array.from(depths),
    water,
    permeability,
  ]);
  const asIs = water === NO_SHIFT.water && permeability === NO_SHIFT.permeability;
  return (asIs ? found : shifted).of(basis.emptied, key, count);
}

function countEmptied(
  { site, draws, sides, emptyings }: Basis,
  m: Measures,
  course: Course,
  depths: ArrayLike<number>,
  shift: Shift,
): EmptiedYears {
  const { samples, years } = draws;
  const { months } = emptyings;
  const count = depths.length;
  const { heights, cracks, slips } = baredSides(site, m, depths);
  const stands = Array.from(depths, sides);
  const maySlip = slips.some((level) => level < Number.POSITIVE_INFINITY);
  const lifting = new LiftingHeads(site, m, depths, shift.permeability);
  const heads = undrainedHeads(draws, emptyings, m, shift.water);
  const calm = new EmptiedPond(lifting, cracks, course.calm, emptyings, heads);
  const flooded = course.flood && new EmptiedPond(lifting, cracks, course.flood, emptyings, heads);
  const relieved = calm.neverLifts && (flooded?.neverLifts ?? true);
  const spells = flooded ? floodSpells(site.wetMonths) : [NO_SPELL];
  const rounds = spells.length;
  const met = months.map((month) => spellsMet(month, site.pond.daysEmpty));
  const mayFlood = (q: number) => flooded !== undefined && spells.some((spell) => met[q].has(spell));
  const onsets = () => new Onsets(samples, count, rounds);
  const plans = emptyings.plans.map((places): EmptiedPlan => {
    const cases = new Map<string, EmptiedCase>();
    for (const spell of spells) {
      const flooded = places.filter((q) => met[q].has(spell));
      const same = cases.get(`${flooded}`);
      if (same) same.times++;
      else
        cases.set(`${flooded}`, { flooded, times: 1, first: new Uint16Array(samples * years).fill(count) });
    }
    return { lift: onsets(), slump: onsets(), cases: [...cases.values()] };
  });
  const idle = new Uint8Array(samples);
  const each = () =>
    months.map((): FirstDepths => ({ lift: new Uint16Array(years), slump: new Uint16Array(years) }));
  const inCalm = each();
  const inFlood = each();
  const emptied = plans.map(({ cases }, p) =>
    cases.map((of) => emptyings.plans[p].map((q) => (of.flooded.includes(q) ? inFlood[q] : inCalm[q]))),
  );
  for (let s = 0; s < samples; s++) {
    const tallWet = firstTaller(heights, (j) => stands[j]?.softWet[s] ?? Number.POSITIVE_INFINITY);
    const tallDry = firstTaller(heights, (j) => stands[j]?.softDry[s] ?? Number.POSITIVE_INFINITY);
    if (relieved && tallWet === count && !maySlip) {
      idle[s] = 1;
      continue;
    }
    const from = (q: number) => (s * months.length + q) * years;
    for (let q = 0; q < months.length; q++) {
      const of = {
        sample: s,
        first: from(q),
        month: (year: number) => (s * years + year) * months.length + q,
      };
      calm.firstLifts(of, inCalm[q].lift);
      calm.firstSlumps(of, tallWet, tallDry, inCalm[q].slump);
      if (maySlip) calm.firstSlips(of, slips, inCalm[q].slump);
      if (!flooded || !mayFlood(q)) continue;
      flooded.firstLifts(of, inFlood[q].lift);
      flooded.firstSlumps(of, tallWet, tallDry, inFlood[q].slump);
      if (maySlip) flooded.firstSlips(of, slips, inFlood[q].slump);
    }
    plans.forEach((plan, p) => {
      const [place] = emptyings.plans[p];
      if (place === undefined) return;
      const order = heads.year.subarray(from(place), from(place) + years);
      plan.cases.forEach((of, c) => {
        addYears(plan, s, of, emptied[p][c], order);
      });
    });
  }
  return { rounds, plans, idle };
}

/** Thirds of a month, in one of which a ditch floods. */
const SPELLS = 36;
/** Days of a third, no more than it has. */
const SPELL_DAYS = 10;
const NO_SPELL = -1;

function floodSpells(wetMonths: readonly number[]): number[] {
  return wetMonths.flatMap((month) => [0, 1, 2].map((third) => 3 * (month - 1) + third));
}

/** Spells that an emptying may meet which starts on any day of a month, 0–11. */
function spellsMet(month: number, daysEmpty: number): Set<number> {
  const after = Math.ceil((daysCounted(daysEmpty) - 1) / SPELL_DAYS);
  const met = Math.min(3 + after, SPELLS);
  return new Set(Array.from({ length: met }, (_, i) => (3 * month + i) % SPELLS));
}

/** First depths at which the liner lifts and a side slumps in an emptying, by year. */
interface FirstDepths {
  lift: Uint16Array;
  slump: Uint16Array;
}

/**
 * Adds the years of a sample, those that fail alike together.
 * @param emptied - one emptying of the plan after another
 * @param order - of the years, in which those that fail alike stand together
 */
function addYears(
  plan: EmptiedPlan,
  sample: number,
  { times, first }: EmptiedCase,
  emptied: FirstDepths[],
  order: Uint16Array,
): void {
  const years = order.length;
  let [lifts, slumps, alike] = [0, 0, 0];
  for (let r = 0; r < years; r++) {
    let lift = Number.POSITIVE_INFINITY;
    let slump = Number.POSITIVE_INFINITY;
    for (const of of emptied) {
      lift = Math.min(lift, of.lift[order[r]]);
      slump = Math.min(slump, of.slump[order[r]]);
    }
    first[sample * years + r] = Math.min(lift, slump);
    if (lift !== lifts || slump !== slumps) {
      plan.lift.add(sample, times * alike, lifts);
      plan.slump.add(sample, times * alike, slumps);
      alike = 0;
      lifts = lift;
      slumps = slump;
    }
    alike++;
  }
  plan.lift.add(sample, times * alike, lifts);
  plan.slump.add(sample, times * alike, slumps);
}
