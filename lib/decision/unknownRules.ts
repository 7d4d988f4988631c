import { KNOWN_BELOW } from '../contract/index.js';
import { bindingUnread, deepestDug, deepestOver, footingLimit } from '../digging/index.js';
import { deepestLogged, NEAR_HOUSE, SHALLOW_FOOTING, type Site } from '../site/index.js';
import type { AddRule } from './addRule.js';
import type { Decision } from './decide.js';

/** Where a depth is bound by what nobody looked up: the bound, and the look that would lift it. */
export function unknownRules(site: Site, d: Decision, add: AddRule): void {
  const { pond, places } = site;
  const dug = deepestDug(site, d.measures, d.depth);
  const wished = Math.max(deepestDug(site, d.measures, pond.depth), dug);
  const [seam] = bindingUnread(site, wished).sort((a, b) => a.top - b.top);
  if (seam)
    add('seam-unknown/layer', {
      pit: seam.pit,
      top_m: seam.top,
      // In the month in which it is dug it may stand lower.
      deepest_m: Math.max(deepestOver(seam, seam.headDepth), d.verdict?.safe ? dug : 0),
    });
  if (pond.existing) return;
  const known = deepestLogged(site);
  if (known && known.bottom - known.ground < dug)
    add('look-deeper/hole', {
      pit: known.pit,
      known_m: known.bottom,
      to_m: dug + known.ground + KNOWN_BELOW,
    });
  const limit = footingLimit(site);
  const near = places.footings.filter((f) => f.assumed && f.distance < Math.max(NEAR_HOUSE, dug));
  if (near.length > 0)
    add('footing-unknown/houses', {
      names: near.map((f) => f.name),
      taken_m: SHALLOW_FOOTING,
      allows_m: limit.assumed && Number.isFinite(limit.depth) ? Math.max(limit.depth, 0) : null,
    });
  const { boundary } = places;
  const { sideSlope } = pond.shape;
  // A cut that goes on up to higher ground comes out beyond the rim.
  const reach = Math.max(dug * (1 - sideSlope), sideSlope * places.highRim, 0) + pond.ring.width;
  if (boundary !== undefined && boundary < reach) add('notify-neighbour/near-boundary', {});
}
