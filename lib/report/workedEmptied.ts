/** The worked time until the liner of an emptied pond lifts. */

import { MONTHS } from '../climate/index.js';
import type { Judged } from '../decision/index.js';
import { LEVEL_RESOLUTION } from '../formula/index.js';
import { tubHolds } from '../groundwater/index.js';
import { emptiedHold, NOTHING, secondsToLift } from '../heads/index.js';
import { monthlyDesign, monthlyLimits } from '../reliability/index.js';
import { discInflow } from '../seepage/index.js';
import { monthWords } from '../text/index.js';
import {
  depthOver,
  type EmptyTime,
  LIFT_VOLUME_DEPTH,
  missingWater,
  netHead,
  sideInset,
} from '../uplift/index.js';
import { tellLevels } from './workedBasics.js';
import { drawnWater } from './workedDrawn.js';
import { assumed, pondCells, pondItem, pondRow, Recording } from './workedFrom.js';

/** Why the month's time is another than that by its own water. */
function elsewhere({ seconds, governs }: EmptyTime): string {
  const hours = `${Math.round(seconds / 3600)} h`;
  if (governs === 'heave') return ' The floor would heave at once.';
  if (governs === 'sides') return ` The sides allow less: ${hours}, as softened clay takes up water.`;
  const from = Number.isFinite(seconds)
    ? `${hours} from the worst day of the month on`
    : 'from no day of the month on does the water come in time';
  return ` Where it is not over within the month, the next counts with its own water: ${from}.`;
}

/** The time an emptied pond has without measures, in the month planned or the worst one. */
export function emptiedPart(a: Judged): Recording[] {
  const { site, basis } = a;
  const { pond } = site;
  if (Array.isArray(pond.emptiedIn) && pond.emptiedIn.length === 0) return [];
  const months = pond.emptiedIn === 'any' ? MONTHS : pond.emptiedIn;
  const designs = months.map((month) => ({ month, ...monthlyDesign(basis, NOTHING, pond.depth, month) }));
  const worst = designs.reduce((x, y) => (y.high > x.high ? y : x));
  const { month, holds, clay, standing, permeability } = worst;
  if (clay <= holds + LEVEL_RESOLUTION) return [];
  const end = monthlyLimits(basis, NOTHING, pond.depth).empty[month - 1];
  const r = new Recording(
    `Emptied in ${monthWords([month])} with nothing done: the time until the liner lifts`,
    '',
    [
      ...pondCells(site, 'length', 'width', 'depth', 'side_slope', 'emptied_in'),
      ...site.ground.layers.map((l) => l.row.origin),
    ],
  );
  const p = 1 - pond.acceptedRisk;
  const { way, cutoff } = NOTHING;
  const of = site.tub ? 'clay' : 'month';
  drawnWater(r, a, basis, { of, month, way, cutoff }, p, clay);
  if (site.tub) {
    const { highs } = basis;
    drawnWater(r, a, basis, { of: 'month', month, way, cutoff }, p, highs.monthly(NOTHING, month, p));
    drawnWater(r, a, basis, { of: 'ring', month, way, cutoff }, p, highs.ring(NOTHING, month, p));
  }
  tellLevels(r, site, NOTHING, pond.depth);
  r.use(netHead, emptiedHold(site, NOTHING, pond.depth, r.use), clay);
  tellArrival(r, a);
  const recorded = r.steps.length;
  const lift = secondsToLift(site, pond.depth, holds, clay, standing, permeability, LIFT_VOLUME_DEPTH, r.use);
  if (r.steps.length === recorded) return [];
  const liftEnds = lift === end.seconds;
  if (liftEnds && r.steps.at(-1)!.result === lift)
    r.same(`options[no-drain].hours_empty_safe[${month - 1}]`, 3600);
  const note =
    `Head in the clay: exceeded in that month only in ${Number((100 * pond.acceptedRisk).toPrecision(6))} % of cases; permeability at its 90 % end. ` +
    `Seconds here, hours in result.json.${liftEnds ? '' : elsewhere(end)}`;
  return [r.noted(note)];
}

/** Where what arrives under the liner comes from. */
function tellArrival(r: Recording, { site, decision }: Judged): void {
  const { pond } = site;
  // As deep as recommended it is a step of the ground.
  if (decision.depth > 0 && decision.depth !== pond.depth)
    r.tell(discInflow, { K: assumed('the 90 % end of the layers around the pond as wished') });
  const least = assumed('nought');
  r.tell(depthOver, { e: least }).tell(depthOver, { h: pondItem(site, 'depth', pond.depth), e: least });
  r.tell(missingWater, {
    l: assumed('20 mm over the floor, our choice'),
    ...(site.tub ? {} : { r: assumed('no ring that stores water') }),
  });
  const fill = pondRow(site, 'ring_fill', 'drainable porosity of the fill, by table');
  const bedding = pondRow(site, 'bedding', 'by table');
  r.tell(tubHolds, {
    B: pondRow(site, 'bedding', 'plan area at the floor where there is any'),
    n: bedding,
    t: pondItem(site, 'bedding_thickness', pond.bedding.thickness),
    R: pondRow(site, 'ring_width', 'outline at the rim times the width, at least 5 mm'),
    m: fill,
    f: pondRow(site, 'ring_depth', 'as a level, no deeper than the pond'),
  });
  const inset = r.told.find(([formula]) => formula.title === sideInset.title)![1];
  r.retell(sideInset, inset, { ...inset, z: undefined });
}
