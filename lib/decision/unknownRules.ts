import { deepestOver, dugDepth, footingLimit, unknownSeams } from '../digging/index.js';
import { NEAR_HOUSE, SHALLOW_FOOTING, type Site } from '../site/index.js';
import { sayer } from '../text/index.js';
import type { Decision } from './decide.js';
import type { AddRule } from './sideRules.js';

/** Where a depth is bound by what nobody looked up: the bound, and the look that would lift it. */
export function unknownRules(site: Site, d: Decision, add: AddRule): void {
  const { pond, places } = site;
  const say = sayer(site);
  const dug = dugDepth(site, d.measures, d.depth);
  const wished = Math.max(dugDepth(site, d.measures, pond.depth), dug);
  const seam = unknownSeams(site, wished).sort((a, b) => a.top - b.top)[0];
  if (seam)
    add(
      'seam-unknown',
      `Under tighter ground, from ${say.length(seam.top)} down in ${seam.pit}, lies a layer that carries water, and how high that water rises in the wet half-year is not known. Water as high as the ground would heave a floor deeper than ${say.length(Math.max(deepestOver(seam, seam.headDepth), 0))}: before digging deeper, read a pipe that is open in that layer only, every week through a wet half-year.`,
    );
  if (pond.existing) return;
  const limit = footingLimit(site);
  const near = places.footings.filter((f) => f.assumed && f.distance < Math.max(NEAR_HOUSE, dug));
  if (near.length > 0)
    add(
      'footing-unknown',
      `How deep the footing of ${near.map((f) => f.name).join(' and ')} goes nobody has looked: taken as ${say.length(SHALLOW_FOOTING)} below its ground${
        limit.assumed && Number.isFinite(limit.depth)
          ? `, the 45° line from it allows a dig of ${say.length(Math.max(limit.depth, 0))}`
          : ''
      }. Open a small hole beside the wall down to its underside, level it, or ask a licensed engineer before digging.`,
    );
  const { boundary } = places;
  const reach = Math.max(dug * (1 - pond.shape.sideSlope), 0) + pond.ring.width;
  if (boundary !== undefined && boundary < reach)
    add(
      'notify-neighbour',
      `The dig comes nearer to the boundary than it is deep: tell the neighbour in writing first; a fence, wall or drive there stands on ground that the dig must not loosen.`,
    );
}
