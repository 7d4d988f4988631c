import { SECONDS_PER_DAY } from '../formula/index.js';
import { tubVolume } from '../groundwater/index.js';
import { discInflow } from '../seepage/index.js';
import type { Site } from '../site/index.js';
import { LEAST_FLOOR, LIFT_VOLUME_DEPTH, planArea } from '../uplift/index.js';
import type { Draws } from './draws.js';
import { emptiedHold } from './emptying.js';
import { type Measures, NOTHING } from './measures.js';
import { Remembered } from './remembered.js';

/** By sample and depth: a head that does not lift the liner and one that does, m above what holds it; 0 unknown. */
interface Known {
  not: Float64Array;
  lifts: Float64Array;
}

/**
 * Heads that lift an emptied liner within the days it stands empty, at each of many depths. The higher the head the
 * sooner it lifts, so every head that was tried narrows what is still to be tried, for all options and steps alike.
 */
export class LiftingHeads {
  /** level from which water lifts it, by depth, m above the datum */
  private readonly holds: Float64Array;
  private readonly areas: Float64Array;
  /** water over the floor that counts as lifted, m³ */
  private readonly wanted: Float64Array;
  /** water in the ring that stays there, m³ */
  private readonly standing: Float64Array;
  private readonly seconds: number;
  /** with no water in the ring above the floor, and with the ring as full as the head */
  private readonly dry: Known;
  private readonly wet: Known;

  constructor(
    private readonly site: Site,
    m: Measures,
    private readonly depths: ArrayLike<number>,
    private readonly factor: number,
  ) {
    const { pond, tub, water } = site;
    const at = (f: (depth: number) => number) => Float64Array.from(depths, f);
    this.holds = at((depth) => emptiedHold(site, m, depth));
    this.areas = at((depth) => Math.max(planArea(pond.shape, depth), LEAST_FLOOR));
    this.wanted = this.areas.map((area) => LIFT_VOLUME_DEPTH * area);
    this.standing = this.holds.map((hold) => (tub ? tubVolume(tub, hold) : 0));
    this.seconds = pond.daysEmpty * SECONDS_PER_DAY;
    const size = water.samples * depths.length;
    this.dry = { not: new Float64Array(size), lifts: new Float64Array(size) };
    this.wet = tub ? { not: new Float64Array(size), lifts: new Float64Array(size) } : this.dry;
  }

  /**
   * Whether the liner lifts.
   * @param j - which depth
   * @param rise - of the head outside over what holds the liner, m
   * @param tub - level in the ring, m above the datum
   */
  lifts(sample: number, j: number, rise: number, tub: number): boolean {
    const { wet, dry } = this;
    const hold = this.holds[j];
    const head = hold + rise;
    const i = sample * this.holds.length + j;
    if (rise <= wet.not[i]) return false;
    if (surely(dry, i, rise)) return true;
    const known = tub >= head ? wet : tub <= hold ? dry : undefined;
    if (known && rise <= known.not[i]) return false;
    if (known && surely(known, i, rise)) return true;
    const lifts = this.tried(sample, j, rise, Math.min(tub, head));
    if (known && lifts) known.lifts[i] = rise;
    else if (known) known.not[i] = rise;
    return lifts;
  }

  private tried(sample: number, j: number, rise: number, tub: number): boolean {
    const { site, areas, depths } = this;
    const ring = site.tub ? Math.max(tubVolume(site.tub, tub) - this.standing[j], 0) : 0;
    const missing = this.wanted[j] - ring;
    if (missing <= 0) return true;
    const gathering = planArea(site.pond.shape, Math.max(depths[j] - rise, 0));
    const radius = Math.sqrt((areas[j] + gathering) / (2 * Math.PI));
    const conductivity = site.water.conductivity[sample] * this.factor;
    return discInflow.compute(conductivity, radius, rise) * this.seconds > missing;
  }
}

function surely({ lifts }: Known, i: number, rise: number): boolean {
  return lifts[i] > 0 && rise >= lifts[i];
}

/** Floors and ballasts that are remembered at a time. */
const MOST = 8;
const remembered = new Remembered<LiftingHeads>(MOST);

/**
 * Lifting heads of a site. Where no ring holds water they are told by the rise alone, and are the same however high
 * rim and floor are and whatever lies on it.
 */
export function liftingHeads(
  site: Site,
  draws: Draws,
  m: Measures,
  depths: ArrayLike<number>,
  factor: number,
): LiftingHeads {
  const { shape, floorBallast, daysEmpty } = site.pond;
  const known = site.tub ? m : NOTHING;
  const { raise, ballast } = known;
  const key = JSON.stringify([shape, floorBallast, daysEmpty, raise, ballast, factor, Array.from(depths)]);
  return remembered.of(draws, key, () => new LiftingHeads(site, known, depths, factor));
}
