import { BED_LOSS } from '../drain/index.js';
import { UNIT_WEIGHT_OF_WATER } from '../formula/index.js';
import { quantile } from '../sampling/index.js';
import { discInflow } from '../seepage/index.js';
import type { Outlet, Site } from '../site/index.js';
import { ballastHead, CONCRETE_UNIT_WEIGHT, planArea, slabThickness } from '../uplift/index.js';
import type { Basis } from './basis.js';
import { lawfulOutlets } from './lawfulOutlets.js';
import { drainLevel, floorLevel, lowestUsualLevel, type Measures, NOTHING } from './measures.js';
import type { Obstacle, OptionName } from './result.js';
import { sayer } from './say.js';

/** An option made concrete for a site, or the reason why it cannot be had. */
export interface Option {
  name: OptionName;
  measures?: Measures;
  why?: Obstacle;
}

/** Thickest slab offered inside a liner, m; beyond it another answer is cheaper. Our choice. */
const THICKEST_SLAB = 0.3;
/** Rise of the ground at the rim that makes an uphill side, m. Our choice. */
const UPHILL = 0.1;
/** A cut-off drain stands half a metre off the wall and as deep as the pond, at most 1 m. Common practice. */
export const CUTOFF = { distance: 0.5, depth: 1 };
/** Steady winter recharge over the conductivity holds up the water between cut-off and wall: mean 2 mm/d. */
const WINTER_RECHARGE = 0.002 / 86400;
const STEP = 0.05;

/** Highest receiving water where the survey has a ditch or outlet but no flood mark, m above it. Our choice. */
export const FLOOD_ABOVE = 0.4;

/** Flood level at an outlet, m above the datum. */
export function floodOf(outlet: Outlet): number {
  return outlet.flood ?? (outlet.ditch ?? outlet.level) + FLOOD_ABOVE;
}

/** Every option of the contract, concrete at the wished depth. */
export function optionsOf(basis: Basis): Option[] {
  const { site } = basis;
  return [
    { name: 'no-drain', measures: NOTHING },
    surfaceWater(site),
    cutoff(site),
    outletDrain(basis),
    sumpDrain(site),
    raise(basis),
    ballast(basis),
  ];
}

/** Raise enough for the design high and the margin, in steps of 5 cm, at most what is allowed. */
export function raiseNeeded({ site, highs }: Basis, m: Measures): number {
  const high = highs.yearly(m, 1 - site.pond.acceptedRisk / 2);
  const lacking = high + site.pond.margin - lowestUsualLevel(site, { ...m, raise: 0 });
  const wanted = Math.ceil(Math.max(lacking, STEP) / STEP - 1e-9) * STEP;
  return Number(Math.min(wanted, site.pond.highestRaise).toFixed(4));
}

function surfaceWater(site: Site): Option {
  const name = 'surface-water-only';
  const { catchment, tub } = site;
  if (!tub)
    return {
      name,
      why: {
        governs: 'none',
        text: 'no permeable layer touches the liner, so no surface water gets behind it',
      },
    };
  if (catchment.capped && catchment.uphillArea === 0 && catchment.roofArea === 0)
    return { name, why: { governs: 'none', text: 'surface water is already kept out' } };
  return { name, measures: { ...NOTHING, way: 'keptOut' } };
}

function cutoff(site: Site): Option {
  const name = 'cutoff-drain';
  const { highRim } = site.places;
  if (highRim < UPHILL)
    return {
      name,
      why: { governs: 'none', text: 'there is no uphill side: the ground at the rim is nearly level' },
    };
  const lawful = lawfulReason(site);
  if (lawful) return { name, why: lawful };
  const depth = Math.min(CUTOFF.depth, site.pond.depth + highRim);
  const invert = highRim - depth;
  const { outlets } = lawfulOutlets(site);
  const outlet = outlets.find((o) => o.level + 0.01 * (o.distance + site.pond.shape.length) <= invert);
  if (!outlet)
    return {
      name,
      why: { governs: 'fall', text: 'no outlet lies low enough for a drain uphill of the pond' },
    };
  const k = site.ground.ksat.median;
  const left = CUTOFF.distance * Math.min(Math.sqrt(WINTER_RECHARGE / k), 1);
  return { name, measures: { ...NOTHING, cutoff: invert + left } };
}

function lawfulReason(site: Site): Obstacle | undefined {
  const said = site.survey.site.discharge_allowed;
  if (said === 'no')
    return { governs: 'discharge', text: 'there is no lawful place for the water (discharge_allowed is no)' };
  if (said !== 'yes')
    return {
      governs: 'discharge',
      text: 'nobody has said that water may be discharged (discharge_allowed is not yes): ask first',
    };
  return undefined;
}

function endlessFlow(site: Site, level: number): Obstacle | undefined {
  const limit = site.survey.site.abstraction_limit;
  if (limit === undefined) return undefined;
  const winter = quantile(Float64Array.from(site.water.clayLow.month), 0.9);
  const { shape, depth } = site.pond;
  const radius = Math.sqrt((planArea(shape, 0) + planArea(shape, depth)) / 2 / Math.PI);
  const flow = discInflow.compute(site.ground.ksat.median, radius, Math.max(winter - level, 0));
  if (flow <= limit) return undefined;
  const { flow: words } = sayer(site);
  return {
    governs: 'discharge',
    text: `it would run for ever with about ${words(flow)}, above the limit of ${words(limit)}`,
  };
}

function outletDrain({ site, highs }: Basis): Option {
  const name = 'drain-to-outlet';
  const lawful = lawfulReason(site);
  const { outlets, why } = lawfulOutlets(site);
  if (site.places.outlets.length === 0) return { name, why };
  if (lawful) return { name, why: lawful };
  if (why) return { name, why };
  const floor = floorLevel(site.pond.depth, NOTHING);
  const best = outlets
    .map((outlet) => ({ kind: 'outlet' as const, outlet, flood: floodOf(outlet) }))
    .reduce((a, b) => (drainLevel(b, floor) < drainLevel(a, floor) ? b : a));
  const level = drainLevel(best, floor);
  const lowest = lowestUsualLevel(site, NOTHING);
  if (level + BED_LOSS >= Math.min(lowest, highs.yearly(NOTHING, 0.5)) && level >= floor)
    return {
      name,
      why: {
        governs: 'fall',
        text: `the outlet ${best.outlet.name} is too high: with 1 % fall it holds the water at ${sayer(site).level(level)}`,
      },
    };
  const endless = endlessFlow(site, level);
  if (endless) return { name, why: endless };
  return { name, measures: { ...NOTHING, drain: best } };
}

function sumpDrain(site: Site): Option {
  const name = 'drain-to-sump';
  const { mains_power, pump_acceptable } = site.survey.site;
  if (mains_power !== 'yes' || pump_acceptable !== 'yes')
    return {
      name,
      why: { governs: 'lift-power-out', text: 'it needs mains power and an owner who accepts a pump' },
    };
  const lawful = lawfulReason(site);
  if (lawful) return { name, why: lawful };
  const to = site.places.discharge ?? lawfulOutlets(site).outlets[0];
  if (!to)
    return {
      name,
      why: {
        governs: 'discharge',
        text: 'the survey has no lawful place for pumped water (levels.csv, role discharge)',
      },
    };
  const drain = { kind: 'sump' as const, distance: to.distance };
  const endless = endlessFlow(site, drainLevel(drain, floorLevel(site.pond.depth, NOTHING)));
  if (endless) return { name, why: endless };
  return { name, measures: { ...NOTHING, drain } };
}

function raise(basis: Basis): Option {
  const name = 'raise-pond';
  if (basis.site.pond.highestRaise <= 0)
    return { name, why: { governs: 'none', text: 'the rim must stay (highest_raise is 0)' } };
  return { name, measures: { ...NOTHING, raise: raiseNeeded(basis, NOTHING) } };
}

/** A concrete slab with facings inside the liner, thick enough for the design high with the margin. */
function ballast({ site, highs }: Basis): Option {
  const name = 'ballast';
  const lacking =
    highs.yearly(NOTHING, 1 - site.pond.acceptedRisk / 2) +
    site.pond.margin -
    lowestUsualLevel(site, NOTHING);
  if (lacking <= 0)
    return { name, why: { governs: 'none', text: 'nothing lacks: the pond holds its liner down by itself' } };
  const thickness = Math.ceil(slabThickness.compute(1, lacking, CONCRETE_UNIT_WEIGHT) * 100) / 100;
  if (thickness > THICKEST_SLAB)
    return {
      name,
      why: {
        governs: 'lift-full',
        text: `it would need ${sayer(site).length(thickness)} of concrete on floor and sides`,
      },
    };
  return {
    name,
    measures: {
      ...NOTHING,
      ballast: ballastHead.compute(CONCRETE_UNIT_WEIGHT - UNIT_WEIGHT_OF_WATER, thickness),
    },
  };
}
