import type { Basis } from '../basis/index.js';
import { drawdownOf } from '../basis/index.js';
import { LEVEL_RESOLUTION } from '../formula/index.js';
import { fullLevel } from '../heads/index.js';
import type { AddRule } from './addRule.js';
import type { Decision } from './decide.js';

/** Full before the rains, where the water in the pond is what holds the liner down. */
export function topUpRule(basis: Basis, d: Decision, add: AddRule): void {
  const { site, highs } = basis;
  const { kept, acceptedRisk } = site.pond;
  const within = d.change?.kept_within_m ?? ('within' in kept ? kept.within : undefined);
  if (within === undefined || d.depth <= 0 || d.measures.drain) return;
  const high = highs.yearly(d.measures, 1 - acceptedRisk);
  const holds = fullLevel(site, d.measures) + d.measures.ballast;
  // Low as it may fall it would still press the liner down.
  if (!d.change?.kept_within_m && high + drawdownOf(basis, 0.9) <= holds + LEVEL_RESOLUTION) return;
  const first = site.wetMonths.filter((month) => !site.wetMonths.includes(month === 1 ? 12 : month - 1));
  if (Number.isFinite(within))
    add('full-before-rains/topped-up', { within_m: within, months: first }, { months: first });
  else add('full-before-rains/left', { months: first }, { months: first });
}
