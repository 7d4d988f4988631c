/** The pond from above: how its sides come in, and what areas that leaves. */

import type { Judged } from '../decision/index.js';
import { recorder } from '../formula/index.js';
import { sayer } from '../text/index.js';
import type { UnitSystem } from '../units/index.js';
import { areaWithin, planArea, planWithin, sideInset } from '../uplift/index.js';
import { pondCells, pondRow, type Told, type WorkedPart, withOrigins } from './workedFrom.js';

/** Where the numbers of a plan area come from, at a depth told in words. */
export function planTold({ site }: Judged, depth: string): Told[] {
  const { pond } = site.survey;
  const long = pond.length === undefined ? 'area' : 'length';
  const across = pond.width === undefined ? long : 'width';
  return [
    [
      sideInset,
      {
        s: pondRow(site, 'side_slope', 'side slope'),
        z: depth,
        w: site.pond.shape.shelf ? pondRow(site, 'shelf_width', 'shelf') : 'no shelf',
      },
    ],
    [
      planWithin,
      {
        f: pondRow(site, 'shape', site.pond.shape.shape),
        L: pondRow(site, long, 'as surveyed'),
        W: pondRow(site, across, 'as surveyed'),
        i: 'the step before; nought at the rim',
      },
    ],
  ];
}

/** Areas of the water and of the floor. */
export function planPart(a: Judged, units: UnitSystem): WorkedPart {
  const { site, decision } = a;
  const { shape } = site.pond;
  const depth = decision.depth || site.pond.depth;
  const { use, steps } = recorder();
  areaWithin(shape, 0, use);
  planArea(shape, depth, use);
  const [inset, plan] = planTold(
    a,
    depth === site.pond.depth ? pondRow(site, 'depth', 'floor') : 'floor at the recommended depth',
  );
  return {
    heading: 'The pond from above: areas at the rim and at the floor',
    note: `Dug ${sayer(units).length(depth)} deep. Rain and run-off fall on the area at the rim; the floor is what water lifts first.`,
    from: pondCells(a, 'length', 'width', 'area', 'side_slope', 'shape'),
    steps: withOrigins(steps, [plan, inset, plan]),
    equals: [],
  };
}
