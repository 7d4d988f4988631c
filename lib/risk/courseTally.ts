import type { Course } from './courses.js';
import type { Bounds, EmptiedPond } from './emptying.js';
import { Onsets } from './onsets.js';

/** Years failing at each depth: the pond full, drawn down, and by plan of emptying lifted, slumped, failing at all. */
export interface FailingYears {
  full: Float64Array;
  drawn: Float64Array;
  plans: { lift: Float64Array; slump: Float64Array }[];
}

/** What a year brings: the yearly high, heads and ring levels by emptying, and the sample's ground. */
export interface Year {
  high: number;
  heads: Float64Array;
  tubs: Float64Array;
  conductivity: number;
  /** heights a softened side stands with water or air in its crack, m */
  softWet: number;
  softDry: number;
}

/** Levels that water must beat, m above the datum. */
export interface Holds {
  full: number;
  drawn: number;
}

/** Counts the failing years of one course in one sample. */
export class CourseTally {
  private readonly full: Onsets;
  private readonly drawn: Onsets;
  private readonly plans: { places: number[]; lift: Onsets; slump: Onsets; any: Onsets }[];
  private readonly high: Bounds;
  private readonly depths: number;
  private readonly reachFull: number;
  private readonly reachDrawn: number;
  /** places of emptying in whose month the ditch may flood */
  private readonly floods: number[];
  /** whether the drain keeps it safe in every state, the sides aside */
  private readonly relieves: boolean;
  /** first failing depths by place */
  private readonly lift: Int32Array;
  private readonly slump: Int32Array;

  /**
   * @param plans - places of emptying that count together
   * @param wet - by place: whether its month is one of those in which the ditch floods
   * @param wetMonths - how many those are in a year
   */
  constructor(
    private readonly course: Course,
    private readonly empty: EmptiedPond,
    private readonly holds: Holds,
    plans: number[][],
    wet: boolean[],
    private readonly wetMonths: number,
  ) {
    const depths = empty.holds.length;
    this.depths = depths;
    this.full = new Onsets(depths);
    this.drawn = new Onsets(depths);
    this.plans = plans.map((places) => ({
      places,
      lift: new Onsets(depths),
      slump: new Onsets(depths),
      any: new Onsets(depths),
    }));
    this.high = course.flood ?? course.calm;
    this.reachFull = this.reach(holds.full);
    this.reachDrawn = this.reach(holds.drawn);
    this.relieves =
      this.reachFull + this.reachDrawn === 0 &&
      this.high.least <= holds.drawn &&
      [course.calm, this.high].every((bounds) => empty.neverLifts(bounds));
    this.floods = course.flood ? wet.flatMap((is, place) => (is ? [place] : [])) : [];
    this.lift = new Int32Array(wet.length);
    this.slump = new Int32Array(wet.length);
  }

  /** Counts a year, as often as there are wet months: each of them may be the one of the flood. */
  add(year: Year): void {
    if (this.relieves && this.empty.tallest <= year.softWet) return;
    const { lift, slump, depths, floods, wetMonths, holds } = this;
    const { calm, flood } = this.course;
    const { high, heads, tubs, conductivity, softWet, softDry } = year;
    const least = this.high.least;
    if (high > holds.full) this.full.add(wetMonths, 0, this.reachFull);
    else if (least > holds.full) this.full.add(wetMonths, 0);
    const until = high > holds.drawn ? this.reachDrawn : least > holds.drawn ? depths : 0;
    if (until > 0) this.drawn.add(wetMonths, 0, until);
    for (let q = 0; q < lift.length; q++) {
      lift[q] = this.empty.firstLift(calm, heads[q], tubs[q], conductivity);
      slump[q] = this.empty.firstSlump(calm, heads[q], softWet, softDry);
    }
    for (const plan of this.plans) {
      let times = wetMonths;
      if (flood)
        for (const q of floods) {
          if (plan.places.indexOf(q) < 0) continue;
          times--;
          const [calmLift, calmSlump] = [lift[q], slump[q]];
          lift[q] = this.empty.firstLift(flood, heads[q], tubs[q], conductivity);
          slump[q] = this.empty.firstSlump(flood, heads[q], softWet, softDry);
          this.count(plan, 1, until);
          [lift[q], slump[q]] = [calmLift, calmSlump];
        }
      this.count(plan, times, until);
    }
  }

  /**
   * Adds the counts of a sample, times the chance of the course in it, to the sums; then starts anew.
   * @param failing - years failing at all, by plan: row a depth, column a sample
   */
  moveTo(sums: FailingYears, failing: Float64Array[], weight: number, sample: number, samples: number): void {
    const each = weight / this.wetMonths;
    this.full.moveTo(sums.full, each);
    this.drawn.moveTo(sums.drawn, each);
    for (let p = 0; p < this.plans.length; p++) {
      const { lift, slump, any } = this.plans[p];
      lift.moveTo(sums.plans[p].lift, each);
      slump.moveTo(sums.plans[p].slump, each);
      any.moveTo(failing[p], each, samples, sample);
    }
  }

  private count(plan: CourseTally['plans'][number], times: number, until: number): void {
    const { depths } = this;
    let lift = depths;
    let slump = depths;
    for (const q of plan.places) {
      if (this.lift[q] < lift) lift = this.lift[q];
      if (this.slump[q] < slump) slump = this.slump[q];
    }
    if (lift < depths) plan.lift.add(times, lift);
    if (slump < depths) plan.slump.add(times, slump);
    if (until > 0) plan.any.add(times, 0, until);
    const emptied = Math.min(lift, slump);
    if (emptied < depths) plan.any.add(times, Math.max(emptied, until));
  }

  /** How many of the depths, from the shallowest, have a bound above a hold: the bound falls as the floor does. */
  private reach(hold: number): number {
    const { least, most } = this.high;
    if (most === undefined || least > hold) return this.depths;
    const end = most.findIndex((level) => level <= hold);
    return end < 0 ? this.depths : end;
  }
}
