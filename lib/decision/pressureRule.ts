import { MONTHS } from '../climate/index.js';
import { BEFORE_DIGGING } from '../contract/index.js';
import { deepestDug, deepestHead, seamWater } from '../digging/index.js';
import { levelOfDepth } from '../heads/index.js';
import type { Seam, Site } from '../site/index.js';
import type { AddRule } from './addRule.js';
import type { Decision } from './decide.js';

/** Rarest water of a layer under pressure that still asks for a look on the day, a chance. Our choice. */
const HARDLY_EVER = 0.001;

/** A look into the layer under pressure on the day it is dug: no month says where its water stands then. */
export function pressureRule(site: Site, d: Decision, add: AddRule): void {
  const floor = levelOfDepth.compute(deepestDug(site, d.measures, d.depth));
  if (BEFORE_DIGGING.includes(d.option) || d.depth <= 0 || floor >= 0) return;
  const over = { floor, months: MONTHS, exceeded: HARDLY_EVER };
  const held = (seam: Seam) => deepestHead(seam, over);
  // Water at the ground and higher would be seen without a pipe.
  const pressing = site.ground.seams.filter(
    (seam) => held(seam) > Math.max(0, seamWater(seam, { ...over, holds: floor })),
  );
  const [worst] = pressing.sort((a, b) => held(b) - held(a));
  if (worst)
    add('read-before-digging/pressure', {
      pit: worst.pit,
      depth_m: held(worst) + (site.places.pits.get(worst.pit) ?? 0),
    });
}
