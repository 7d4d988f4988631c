import type { Basis } from '../basis/index.js';
import { drawdownOf, keptHigh } from '../basis/index.js';
import type { Obstacle } from '../contract/index.js';
import { isDiggable } from '../digging/index.js';
import { BED_LOSS } from '../drain/index.js';
import { UNIT_WEIGHT_OF_WATER } from '../formula/index.js';
import { drainLevel, floorLevel, fullLevel, type Measures, NOTHING, oldDrainOf } from '../heads/index.js';
import { quantile } from '../sampling/index.js';
import { discInflow } from '../seepage/index.js';
import { permeabilityAround, type Site } from '../site/index.js';
import {
  ballastHead,
  CONCRETE_UNIT_WEIGHT,
  deepestFloor,
  planArea,
  slabThickness,
  THICKEST_SLAB,
} from '../uplift/index.js';
import { cutoffDrain } from './cutoffDrain.js';
import { lawfulOutlets } from './lawfulOutlets.js';
import type { Option } from './option.js';
import { drainTo, outletsOf, pumpedTo } from './outlets.js';

const STEP = 0.05;

/** Every option of the contract, concrete at the wished depth. */
export function optionsOf(basis: Basis): Option[] {
  const { site } = basis;
  return [
    { name: 'no-drain', measures: NOTHING },
    surfaceWater(site),
    cutoffDrain(basis, lawfulReason(site)),
    outletDrain(basis),
    sumpDrain(basis),
    raise(basis),
    ballast(basis),
  ];
}

/**
 * Raise enough for the design high and the margin, and for the depth wished for where it is refused when all of it is dug;
 * in steps of 5 cm, at most what is allowed.
 */
export function raiseNeeded(basis: Basis, m: Measures): number {
  const { highestRaise, depth, shape, existing } = basis.site.pond;
  const against = raiseAgainstWater(basis, m);
  // Sides that meet leave no floor however high the rim is.
  if (existing || depth > deepestFloor(shape)) return against;
  for (let steps = 0; ; steps++) {
    const raise = atMost(highestRaise, against + steps * STEP);
    if (raise === highestRaise || isDiggable(basis, { ...m, raise })) return raise;
  }
}

/** A raise rounded to a tenth of a millimetre; the highest allowed is kept as it was written, or it is never reached. */
const atMost = (highest: number, raise: number) => Math.min(Number(raise.toFixed(4)), highest);

function raiseAgainstWater(basis: Basis, m: Measures): number {
  const { site } = basis;
  const high = keptHigh(basis, m, 1 - site.pond.acceptedRisk / 2);
  const lacking = high + site.pond.margin - site.pond.fullLevel;
  const wanted = Math.ceil(Math.max(lacking, STEP) / STEP - 1e-9) * STEP;
  return atMost(site.pond.highestRaise, wanted);
}

function surfaceWater(site: Site): Option {
  const name = 'surface-water-only';
  const { catchment, tub } = site;
  if (!tub)
    return {
      name,
      why: { governs: 'none', code: 'no-ring', values: {} },
    };
  const spills = catchment.overflow === 'ring' && catchment.pondRoof > 0;
  if (catchment.capped && catchment.uphillArea === 0 && catchment.roofArea === 0 && !spills)
    return { name, why: { governs: 'none', code: 'already-kept-out', values: {} } };
  return { name, measures: { ...NOTHING, way: 'keptOut' } };
}

function lawfulReason(site: Site): Obstacle | undefined {
  const said = site.survey.site.discharge_allowed;
  if (said === 'no') return { governs: 'discharge', code: 'discharge-forbidden', values: {} };
  if (said !== 'yes') return { governs: 'discharge', code: 'discharge-not-said', values: {} };
  return undefined;
}

function endlessFlow(site: Site, level: number): Obstacle | undefined {
  const limit = site.survey.site.abstraction_limit;
  if (limit === undefined) return undefined;
  const winter = quantile(Float64Array.from(site.water.clayLow.month), 0.9);
  const { shape, depth } = site.pond;
  const radius = Math.sqrt((planArea(shape, 0) + planArea(shape, depth)) / 2 / Math.PI);
  const flow = discInflow.compute(
    permeabilityAround(site.ground, depth).median,
    radius,
    Math.max(winter - level, 0),
  );
  if (flow <= limit) return undefined;
  return { governs: 'discharge', code: 'endless-flow', values: { flow_m3_s: flow, limit_m3_s: limit } };
}

function outletDrain(basis: Basis): Option {
  const name = 'drain-to-outlet';
  const { site, highs } = basis;
  const lawful = lawfulReason(site);
  const { why } = lawfulOutlets(site);
  if (site.places.outlets.length === 0) return { name, why };
  if (lawful) return { name, why: lawful };
  if (why) return { name, why };
  const floor = floorLevel(site.pond.depth, NOTHING);
  const [outlet] = outletsOf(basis);
  const measures = { ...NOTHING, drain: drainTo(outlet, site.pond.shape, oldDrainOf(site)) };
  const level = drainLevel(measures, floor);
  const lowest = fullLevel(site, NOTHING) - drawdownOf(basis, 0.5);
  if (level + BED_LOSS >= Math.min(lowest, highs.yearly(NOTHING, 0.5)) && level >= floor)
    return {
      name,
      why: {
        governs: 'fall',
        code: 'outlet-too-high',
        values: { outlet: outlet.name, level_m: level },
      },
    };
  const endless = endlessFlow(site, level);
  if (endless) return { name, why: endless };
  return { name, measures };
}

function sumpDrain(basis: Basis): Option {
  const name = 'drain-to-sump';
  const { site } = basis;
  const { mains_power, pump_acceptable } = site.survey.site;
  if (mains_power !== 'yes' || pump_acceptable !== 'yes')
    return {
      name,
      why: { governs: 'lift-power-out', code: 'no-power-or-pump', values: {} },
    };
  const lawful = lawfulReason(site);
  if (lawful) return { name, why: lawful };
  const to = pumpedTo(basis);
  if (!to) {
    const far = site.places.unplaced.find(({ role }) => role === 'discharge');
    if (far)
      return {
        name,
        why: {
          governs: 'discharge',
          asks: true,
          code: 'discharge-not-placed',
          values: { place: far.name },
        },
      };
    return {
      name,
      why: { governs: 'discharge', code: 'no-discharge-place', values: {} },
    };
  }
  const measures = { ...NOTHING, drain: { kind: 'sump' as const, to } };
  const endless = endlessFlow(site, drainLevel(measures, floorLevel(site.pond.depth, NOTHING)));
  if (endless) return { name, why: endless };
  return { name, measures };
}

function raise(basis: Basis): Option {
  const name = 'raise-pond';
  if (basis.site.pond.highestRaise <= 0)
    return { name, why: { governs: 'none', code: 'rim-must-stay', values: {} } };
  return { name, measures: { ...NOTHING, raise: raiseNeeded(basis, NOTHING) } };
}

/** A concrete slab with facings inside the liner, thick enough for the design high with the margin. */
function ballast(basis: Basis): Option {
  const name = 'ballast';
  const { site } = basis;
  const lacking =
    keptHigh(basis, NOTHING, 1 - site.pond.acceptedRisk / 2) + site.pond.margin - site.pond.fullLevel;
  if (lacking <= 0) return { name, why: { governs: 'none', code: 'nothing-lacks', values: {} } };
  const thickness = Math.ceil(slabThickness.compute(1, lacking, CONCRETE_UNIT_WEIGHT) * 100) / 100;
  if (thickness > THICKEST_SLAB)
    return {
      name,
      why: { governs: 'lift-full', code: 'slab-too-thick', values: { thickness_m: thickness } },
    };
  return {
    name,
    measures: {
      ...NOTHING,
      ballast: ballastHead.compute(CONCRETE_UNIT_WEIGHT - UNIT_WEIGHT_OF_WATER, thickness),
    },
  };
}
