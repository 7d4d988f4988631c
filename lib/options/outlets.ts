import type { Basis } from '../basis/index.js';
import { LEAST_CHANCE } from '../contract/index.js';
import { dutyTo, reliefLevel } from '../drain/index.js';
import { method } from '../formula/index.js';
import type { OldDrain } from '../heads/index.js';
import { drainLevel, floodOf, floorLevel, type Measures, NOTHING } from '../heads/index.js';
import { chancesOf } from '../reliability/index.js';
import { Remembered } from '../sampling/index.js';
import type { Outlet, PumpedTo } from '../site/index.js';
import type { PondShape } from '../uplift/index.js';
import { lawfulOutlets } from './lawfulOutlets.js';

export const outletChoice = method({
  title: 'Choice of the outlet',
  what:
    'The outlets in the order in which they serve a drain under the floor at the planned depth: by chance a year, then those ' +
    'whose way is known to be within the boundary, then by the height of the floor above the water there, then the nearest.',
  assumptions: [
    'chances that differ by less than 0.1 % and heights that differ by less than 1 mm are alike; height beyond the margin ' +
      'that is asked for counts no more (our choice)',
    'an outlet that serves and whose way is known goes before one whose way is a question',
    'a cut-off drain goes to the first of them that lies low enough, a pump to the lawful place it moves most water to',
  ],
  source: 'chance of failing in a year; common practice',
});

/** A drain under the floor of a pond to an outlet; `old`: one that lies there. */
export function drainTo(outlet: Outlet, { sideSlope, shelf }: PondShape, old?: OldDrain): Measures['drain'] {
  const drain = { kind: 'outlet', outlet, flood: floodOf(outlet), sides: { sideSlope, shelf } } as const;
  return old?.state === 'works' ? { ...drain, asBuilt: true } : drain;
}

/** The lawful place that a pump under the planned pond moves most water to, else the best outlet; undefined: there is none. */
export function pumpedTo(basis: Basis): PumpedTo | undefined {
  const { places, pond } = basis.site;
  const start = drainLevel({ ...NOTHING, drain: SUMP }, floorLevel(pond.depth, NOTHING));
  const [best] = places.discharges
    .map((to) => ({ to, flow: dutyTo(start, to).flow }))
    .sort((a, b) => b.flow - a.flow || a.to.distance - b.to.distance || (a.to.name < b.to.name ? -1 : 1));
  return best?.to ?? outletsOf(basis)[0];
}

/** Any sump: the level it holds does not depend on where its water goes. */
const SUMP = { kind: 'sump', to: { name: '', level: 0, distance: 0 } } as const;

/** Orders remembered about a site, by what they depend on. */
const MOST = 32;
const ranked = new Remembered<Outlet[]>(MOST);

/** Lawful outlets, the best first, see {@link outletChoice}; the same in any order of the file. */
export function outletsOf(basis: Basis): Outlet[] {
  const outlets = notWorse(lawfulOutlets(basis.site).outlets);
  if (outlets.length < 2) return outlets;
  const { depth, acceptedRisk, margin } = basis.site.pond;
  const key = JSON.stringify([depth, acceptedRisk, margin, outlets]);
  return ranked.of(basis.counted, key, () => rank(basis, outlets));
}

/** Outlets without those that another beats in all that counts: held, flooded and reached no lower, and as far or farther. */
function notWorse(outlets: Outlet[]): Outlet[] {
  const counts = (o: Outlet) => [
    o.level,
    o.distance,
    reliefLevel(Number.NEGATIVE_INFINITY, o.level, o.distance),
    floodOf(o),
    o.ditch ?? Number.NEGATIVE_INFINITY,
    Number(o.wayUnknown ?? false),
  ];
  const left: { outlet: Outlet; by: number[] }[] = [];
  const inOrder = outlets
    .map((outlet) => ({ outlet, by: counts(outlet) }))
    .sort((a, b) => byKey(a.by, b.by) || (a.outlet.name < b.outlet.name ? -1 : 1));
  // Sorted by level first: what comes later beats nothing before it.
  for (const each of inOrder)
    if (!left.some(({ by }) => by.every((v, i) => v <= each.by[i]))) left.push(each);
  return left.map(({ outlet }) => outlet);
}

/** Order by the first number that differs. */
function byKey(a: number[], b: number[]): number {
  return a.map((v, i) => v - b[i]).find((v) => v < 0 || v > 0) ?? 0;
}

function rank(basis: Basis, outlets: Outlet[]): Outlet[] {
  const { depth, acceptedRisk, margin, shape } = basis.site.pond;
  const floor = floorLevel(depth, NOTHING);
  const keyed = outlets.map((outlet) => {
    const measures = { ...NOTHING, drain: drainTo(outlet, shape) };
    const [{ perYear }] = chancesOf(basis, measures, [depth]);
    const open = Number(outlet.wayUnknown ?? false);
    const spare = Math.min(floor - Math.max(drainLevel(measures, floor), floodOf(outlet)), margin);
    return {
      outlet,
      key: [
        Number(perYear > acceptedRisk) + open,
        Math.round(perYear / LEAST_CHANCE),
        open,
        -Math.round(spare * 1000),
        outlet.distance,
        outlet.level,
      ],
    };
  });
  return keyed
    .sort((a, b) => byKey(a.key, b.key) || (a.outlet.name < b.outlet.name ? -1 : 1))
    .map(({ outlet }) => outlet);
}
