/** The pond from above: how its sides come in, and what areas that leaves. */

import type { Judged } from '../decision/index.js';
import { sayer } from '../text/index.js';
import type { UnitSystem } from '../units/index.js';
import { areaWithin, planArea, planWithin } from '../uplift/index.js';
import { tellShape } from './workedBasics.js';
import { assumed, pondCells, pondItem, Recording } from './workedFrom.js';

/** Areas of the water and of the floor. */
export function planPart({ site, decision }: Judged, units: UnitSystem): Recording {
  const { shape } = site.pond;
  const depth = decision.depth || site.pond.depth;
  const r = new Recording(
    'The pond from above: areas at the rim and at the floor',
    `Dug ${sayer(units).length(depth)} deep. Rain and run-off fall on the area at the rim; the floor is what water lifts first.`,
    pondCells(site, 'length', 'width', 'area', 'side_slope', 'shape'),
  );
  tellShape(
    r,
    site,
    depth === site.pond.depth ? pondItem(site, 'depth', depth) : assumed('depth of this answer'),
  );
  const [, words] = r.told.at(-1)!;
  r.told.splice(-1, 0, [planWithin, { ...words, i: assumed('nought at the rim') }]);
  areaWithin(shape, 0, r.use);
  planArea(shape, depth, r.use);
  return r;
}
