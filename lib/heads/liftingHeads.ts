import { LEVEL_RESOLUTION, SECONDS_PER_DAY } from '../formula/index.js';
import { tubVolume } from '../groundwater/index.js';
import { discInflow } from '../seepage/index.js';
import { permeabilityBySample, type Site } from '../site/index.js';
import { gatheringRadius, LEAST_FLOOR, LIFT_VOLUME_DEPTH, planArea } from '../uplift/index.js';
import { emptiedHold } from './emptying.js';
import type { Measures } from './measures.js';

/** Which water lifts an emptied liner within the days it stands empty, at each of many depths. */
export class LiftingHeads {
  /** level from which water lifts it, by depth, m above the datum */
  readonly holds: Float64Array;
  private readonly areas: Float64Array;
  /** water over the floor that counts as lifted, m³ */
  private readonly wanted: Float64Array;
  /** water in the ring that stays there, m³ */
  private readonly standing: Float64Array;
  /** radius that gathers water from the rim down: no rise gathers from a wider one */
  private readonly widest: Float64Array;
  private readonly seconds: number;
  /** of the ground round the pond, by depth, m/s */
  private readonly permeability: ((sample: number) => number)[];

  constructor(
    private readonly site: Site,
    m: Measures,
    private readonly depths: ArrayLike<number>,
    private readonly factor: number,
  ) {
    const { pond, tub } = site;
    const at = (f: (depth: number) => number) => Float64Array.from(depths, f);
    this.holds = at((depth) => emptiedHold(site, m, depth));
    this.areas = at((depth) => Math.max(planArea(pond.shape, depth), LEAST_FLOOR));
    this.wanted = this.areas.map((area) => LIFT_VOLUME_DEPTH * area);
    this.standing = this.holds.map((hold) => (tub ? tubVolume(tub, hold) : 0));
    this.widest = this.areas.map((area) => gatheringRadius.compute(area, planArea(pond.shape, 0)));
    this.permeability = Array.from(depths, (depth) => permeabilityBySample(site, depth));
    // Mean heights are of whole days.
    const days = pond.daysEmpty > 1 ? Math.ceil(pond.daysEmpty) : pond.daysEmpty;
    this.seconds = days * SECONDS_PER_DAY;
  }

  /**
   * Whether the liner lifts: with what stands in the ring, and what the clay gives by the mean height of its water over
   * what holds the liner, as from the plan that its highest level reaches.
   * @param j - which depth
   * @param highest - height of the clay's water over what holds the liner at its highest, m, and its `mean` over the days
   * @param ring - highest level in it, m above the datum
   */
  lifts(sample: number, j: number, highest: number, mean: number, ring: number): boolean {
    const { site, areas, depths, holds } = this;
    const stands =
      site.tub && ring > holds[j] + LEVEL_RESOLUTION ? tubVolume(site.tub, ring) - this.standing[j] : 0;
    const missing = this.wanted[j] - stands;
    if (missing <= 0) return true;
    if (highest <= LEVEL_RESOLUTION) return false;
    const permeability = this.permeability[j](sample) * this.factor;
    const arrives = (radius: number) => discInflow.compute(permeability, radius, mean) * this.seconds;
    if (arrives(this.widest[j]) <= missing) return false;
    const plan = planArea(site.pond.shape, Math.max(depths[j] - highest, 0));
    return arrives(gatheringRadius.compute(areas[j], plan)) > missing;
  }
}
