import type { OptionName } from '../contract/index.js';
import { pipeRun, reliefLevel } from '../drain/index.js';
import { formula, type Use, unrecorded } from '../formula/index.js';
import type { Outlet, PumpedTo, Site, Way } from '../site/index.js';
import { insetAt, type PondShape } from '../uplift/index.js';

/** What is done about the water, whatever the depth. Levels m above the datum. */
export interface Measures {
  /** surface water turned away and the ring capped */
  way: Way;
  /** rim and floor lifted together, m */
  raise: number;
  /** a drain uphill of the pond: level of its water behind the uphill wall; absent: none */
  cutoff?: number;
  /** where that drain ends */
  cutoffTo?: Outlet;
  drain?: OutletDrain | { kind: 'sump'; to: PumpedTo };
  /** head held down by a slab with facings, on floor and sides, m */
  ballast: number;
}

export interface OutletDrain {
  kind: 'outlet';
  outlet: Outlet;
  flood: number;
  /** that its pipe runs under before it leaves the pond's edge */
  sides: Pick<PondShape, 'sideSlope' | 'shelf'>;
  /** it lies there already, and works */
  asBuilt?: true;
}

/** Whether any drain is built, under the floor or uphill: each may be found blocked. */
export const isDrained = ({ drain, cutoff }: Measures) => drain !== undefined || cutoff !== undefined;

/** Nothing done. */
export const NOTHING: Measures = { way: 'asIs', raise: 0, ballast: 0 };

/** The options that make up a set of measures, for `recommendation.also`. */
export function namesOf(m: Measures): OptionName[] {
  const names: OptionName[] = [];
  if (m.way === 'keptOut') names.push('surface-water-only');
  if (m.raise > 0) names.push('raise-pond');
  if (m.cutoff !== undefined) names.push('cutoff-drain');
  if (m.drain) names.push(m.drain.kind === 'outlet' ? 'drain-to-outlet' : 'drain-to-sump');
  if (m.ballast > 0) names.push('ballast');
  return names.length > 0 ? names : ['no-drain'];
}

/** Whether the drain of these measures lies there already: nothing is built for it. */
export function isAsBuilt(m: Measures | undefined): m is Measures {
  return m?.drain?.kind === 'outlet' && m.drain.asBuilt === true;
}

/** The same with every drain blocked or stopped, under the floor and uphill. */
export function withoutDrain({ drain, cutoff, cutoffTo, ...rest }: Measures): Measures {
  return rest;
}

/** Level to which a drain lets the water in its bed fall, for a floor level, without the receiver's own water. */
export function drainLevel({ drain, raise }: Measures, floor: number, use: Use = unrecorded): number {
  return drain?.kind === 'outlet'
    ? reliefLevel(
        floor,
        drain.outlet.level,
        pipeRun(drain.outlet, insetAt(drain.sides, raise - floor, use), use),
        use,
      )
    : reliefLevel(floor, Number.NEGATIVE_INFINITY, 0, use);
}

/** Level of the liner's lowest point. */
export const floorAt = formula({
  title: "Level of the liner's lowest point",
  symbol: 'z',
  unit: 'm',
  expression: 'r - d',
  parameters: {
    r: { meaning: 'rim raised by', unit: 'm', min: 0, max: 2 },
    d: { meaning: 'depth below the rim', unit: 'm', min: 0, max: 10 },
  },
  compute: (r: number, d: number) => r - d,
  validity: 'above the lowest natural ground at the rim',
  source: 'levelling',
});

/** Level of a depth below the ground. */
export const levelOfDepth = formula({
  title: 'Level of a depth below the lowest natural ground at the rim',
  symbol: 'z',
  unit: 'm',
  expression: '-d',
  parameters: { d: { meaning: 'depth', unit: 'm', min: -5, max: 30 } },
  compute: (d: number) => -d,
  validity: 'below 0 where it lies in the ground',
  source: 'levelling',
});

/** Level of the full pond. */
export const fullAt = formula({
  title: 'Level of the full pond',
  symbol: 'p',
  unit: 'm',
  expression: 'f + r',
  parameters: {
    f: { meaning: 'full level of the pond as surveyed', unit: 'm', min: -5, max: 5 },
    r: { meaning: 'rim raised by', unit: 'm', min: 0, max: 2 },
  },
  compute: (f: number, r: number) => f + r,
  validity: 'above the lowest natural ground at the rim',
  source: 'levelling',
});

/** Liner's lowest point, m above the datum, for a depth on the axis of the wish. */
export function floorLevel(depth: number, m: Measures, use: Use = unrecorded): number {
  return use(floorAt, m.raise, depth);
}

/** Level of the full pond, m above the datum. */
export function fullLevel(site: Site, m: Measures, use: Use = unrecorded): number {
  return use(fullAt, site.pond.fullLevel, m.raise);
}
