/** Sides and floor of the dig. */

import type { Judged } from '../decision/index.js';
import { bestDig, dugDepth, headIn, sideUphill, weighedSide } from '../digging/index.js';
import { levelOfDepth } from '../heads/index.js';
import { strengthAt } from '../site/index.js';
import { sayer } from '../text/index.js';
import type { UnitSystem } from '../units/index.js';
import { depthOver, heaveFactor, logWanted, plugLeft } from '../uplift/index.js';
import { unlookedOf } from './designSheet.js';
import { knownDeepest, tellLevels, tellSides } from './workedBasics.js';
import { assumed, Recording, rowsWords } from './workedFrom.js';

/** How the sides and the floor over a seam stand while it is dug. */
export function diggingParts(a: Judged, units: UnitSystem): Recording[] {
  const { site, decision } = a;
  const { measures, depth } = decision;
  const parts: Recording[] = [];
  const dug = dugDepth(site, measures, depth);
  const say = sayer(units);
  const { ground } = site;
  const weight = assumed('unit weight of wet ground: common practice');
  const r = new Recording(
    'The sides while digging',
    `Dug ${say.length(dug)} deep; a side should stand 1.5 times as high as it is. ${strengthAt(ground, sideUphill(site, dug))?.evidence.join(', ') ?? ''}`.trim(),
    ground.layers.map((l) => l.row.origin),
  );
  tellSides(tellLevels(r, site, measures, depth), site);
  if (weighedSide(site, measures.raise, dugDepth(site, measures, depth, r.use), r.use)) parts.push(r);
  const below = new Recording(
    'The ground below the deepest log',
    'Taken at its worst: a layer begins there whose water stands at the ground.',
    ground.layers.map((l) => l.row.origin),
  );
  tellLevels(below, site, measures, depth)
    .tell(plugLeft, { T: 'pits.csv: end of the deepest log' })
    .tell(heaveFactor, { g: weight, h: 'pits.csv: end of the deepest log' })
    .tell(logWanted, {
      F: assumed('factor wanted against heave: our choice'),
      g: weight,
      e: 'levels.csv: ground at that hole',
    });
  if (unlookedOf({ site }, knownDeepest(below, site, measures, depth), below.use)) parts.push(below);
  for (const seam of ground.seams) {
    const { months } = bestDig(site, a.basis.dig, measures, depth).plan;
    const head = headIn(seam, months);
    if (seam.top - dug <= 0 || seam.top - head <= 0) continue;
    const r = new Recording(
      `The floor over the seam in ${seam.pit}`,
      `Dug ${say.length(dug)} deep; 1.25 is wanted.`,
      seam.from,
    );
    const read = seam.assumed
      ? assumed('not read in the wet half-year: taken as high as is credible')
      : rowsWords(seam.from)
        ? `${rowsWords(seam.from)}: highest level of its water`
        : assumed('as read in another hole');
    const top = `pits.csv: top of the seam in ${seam.pit}`;
    tellLevels(r, site, measures, depth);
    r.tell(depthOver, { h: top, z: read, e: assumed('nought') });
    dugDepth(site, measures, depth, r.use);
    r.tell(plugLeft, { T: top });
    const left = r.use(plugLeft, seam.top, r.use(levelOfDepth, dug));
    const pressure = r.use(depthOver, seam.top, head, 0);
    r.tell(heaveFactor, { g: weight });
    r.use(heaveFactor, seam.coverWeight, left, pressure);
    parts.push(r);
  }
  return parts;
}
