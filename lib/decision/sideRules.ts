import type { Basis } from '../basis/index.js';
import type { Governs, MonthlyLimits } from '../contract/index.js';
import {
  BAILED,
  bestDig,
  digInflow,
  dugDepth,
  monthsToDig,
  sideUphill,
  UNIT_WEIGHT,
  workingSlopeAt,
} from '../digging/index.js';
import { floorLevel } from '../heads/index.js';
import { layersInSide, type Site, strengthAt } from '../site/index.js';
import {
  deepestFloor,
  FLAT_BOUND,
  GAS_FALL,
  gasCheck,
  isProtectionDue,
  PROTECTION_DEPTH,
  planArea,
  rimLoad,
  SOFTENED_FRICTION,
  sideKind,
  wallLoad,
} from '../uplift/index.js';
import type { AddRule } from './addRule.js';
import type { Decision } from './decide.js';
import { brimOf, housesBelow, isHeld } from './downhill.js';
import { floorLeft } from './floorLeft.js';

/** What a flatter side mends. */
const STEEP: ReadonlySet<Governs> = new Set(['side-slump', 'working-slope']);

/** How the sides are to be cut, and how while anyone works beside them: one slope, that of everything else here. */
export function sideRules({ site, dig }: Basis, d: Decision, add: AddRule): void {
  const { ground, pond } = site;
  const dug = dugDepth(site, d.measures, d.depth);
  if (dug <= 0) return;
  const { sideSlope: slope } = pond.shape;
  if (pond.wall !== 'none') {
    wallRule(site, d, add);
    add('batter-sides/behind-wall', {});
  } else if (d.change?.side_slope !== undefined)
    add('batter-sides/flatter', { slope, drawn: pond.drawnSlope!, floor_m: floorLeft(pond.shape, d.depth) });
  else if (pond.drawnSlope !== undefined) add('batter-sides/laid-back', { slope });
  // Dug in other months they stand.
  else if (STEEP.has(d.governs) && !d.change?.built_in && pond.depth <= deepestFloor(pond.shape)) {
    // Of a raised rim's depth only a part is dug.
    const stands = d.verdict?.diggable ? dug : 0;
    if (stands > 0 && stands < pond.depth)
      add('batter-sides/no-deeper', {
        slope,
        stands_m: stands,
        raised_m: d.measures.raise,
        wish_m: pond.depth,
      });
    else add('batter-sides/too-steep', { slope, wish_m: pond.depth });
  }
  const wished = dugDepth(site, d.measures, pond.depth);
  const slopeAt = (depth: number, deep: number) =>
    workingSlopeAt(site, bestDig(site, dig, d.measures, depth).plan.wetWater, deep);
  if (isProtectionDue(sideUphill(site, wished)) && slope < slopeAt(pond.depth, wished).slope)
    add('ask-engineer/steep-dig', { depth_m: PROTECTION_DEPTH, slope });
  const unnamed = layersInSide(ground.sides, dug).find(
    ({ texture, structure }) => sideKind(texture, structure) === 'unnamed',
  );
  if (unnamed) add('ask-engineer/unnamed-ground', { texture: unnamed.texture, slope: FLAT_BOUND });
  const working = slopeAt(d.depth, dug);
  add('working-slope/class', {
    type: working.type,
    slope: working.slope,
    due: working.engineer ? 'engineer' : working.protect ? 'protect' : 'less-deep',
    height_m: sideUphill(site, dug),
    deep_m: dug,
  });
}

/** What pushes on an upright wall when the pond is empty; the wall itself is not judged here. */
export function wallRule(site: Site, d: Decision, add: AddRule): void {
  const { pond, ground } = site;
  // Up to the highest ground that it holds.
  const height = d.depth - d.measures.raise + site.places.highRim;
  if (pond.wall === 'none' || height <= 0) return;
  const load = wallLoad.compute(SOFTENED_FRICTION, UNIT_WEIGHT.mean, height, pond.edgingLoad);
  add('wall-load/empty', {
    load_n_m: load,
    wall: pond.wall,
    height_m: height,
    clay: strengthAt(ground, d.depth) !== undefined,
  });
  add('ask-engineer/walls', {});
}

/** The vent for gas under the liner. */
export function ventRule({ site, highs }: Basis, d: Decision, add: AddRule): void {
  const { ground, pond, survey } = site;
  const { shape } = pond;
  const { vent, falls, wet } = gasCheck({
    organicTop: ground.organicTop,
    smell: survey.site.organic_smell === 'yes',
    depth: d.depth,
    floor: floorLevel(d.depth, d.measures),
    head: highs.yearly(d.measures, 0.5),
    floorFall: survey.pond.floor_fall,
    area: planArea(shape, 0),
    highSide: shape.width,
    ventLength: d.depth * Math.hypot(1, shape.sideSlope) + 1,
  });
  if (!vent) return;
  add('vent-high-point/gas', {
    count: vent.count,
    diameter_m: vent.diameter,
    wet,
    fall: falls ? null : GAS_FALL,
  });
}

/** What a raised rim has to carry, and who lives below it. */
export function rimRule(site: Site, d: Decision, add: AddRule): void {
  if (!isHeld(site, d)) return;
  const above = brimOf(site, d);
  add('rim-load/edge', { above_m: above, push_n_m: rimLoad(above).push });
  const below = housesBelow(site, d, { kind: 'brim', level_m: null }).some(({ neighbour }) => neighbour);
  if (d.measures.raise > 0 || below) add('notify-neighbour/bank', { above_m: above });
}

/** The months to dig in, where the water of the others stands against it. */
export function monthRule({ site, dig }: Basis, d: Decision, add: AddRule): void {
  const planned = site.pond.builtIn;
  if (planned && d.change?.built_in) {
    const values = { months: planned, planned: site.survey.pond.built_in!, against: d.governs };
    add('dig-in/instead', values, { months: planned });
    return;
  }
  if (d.depth > 0 && planned) add('dig-in/planned', { months: planned }, { months: planned });
  const best = d.depth > 0 && monthsToDig(site, dig, d.measures, d.depth);
  if (!best) return;
  const { months, against } = best;
  add('dig-in/months', { months, against }, { months });
}

/** Water that has to be pumped out of the hole while it is dug. */
export function pumpingRule({ site, dig }: Basis, d: Decision, add: AddRule): void {
  const dug = dugDepth(site, d.measures, d.depth);
  const { months, wetWater } = bestDig(site, dig, d.measures, d.depth).plan;
  const inflow = digInflow(site, wetWater, d.depth, dug);
  if (d.depth <= 0 || inflow <= BAILED) return;
  add('pump-while-digging/inflow', { flow_m3_s: inflow, months, pit_m: PUMP_PIT }, { months });
}

/** The pit that a pump draws from, below the floor of the dig, m. Common practice. */
const PUMP_PIT = 0.3;

/** A liner is bare until it is filled: how long it may be, in the months of filling. */
export function fillingRule(site: Site, { empty }: MonthlyLimits, add: AddRule): void {
  const months = site.survey.pond.filled_in ?? [];
  const ending = months.filter((month) => empty[month - 1].governs !== 'none');
  if (ending.length === 0) return;
  const hours = Math.min(...ending.map((month) => empty[month - 1].seconds)) / 3600;
  add('fill-at-once/months', { months: ending, hours }, { months: ending });
}
