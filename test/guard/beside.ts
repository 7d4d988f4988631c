/** Houses and footings: the line at 45° from the underside that a dig may not cross. */
import type { Claim } from './claims.js';
import { type Danger, LEVEL, m } from './danger.js';
import type { GuardSite } from './site.js';
import { speaksOf, type Told } from './told.js';

/** Foundations begin at least this far below ground; an old wall may begin at it. Common practice, m. */
const SHALLOWEST = 0.3;
/** A footing levelled this near a house is the house's, m. */
const SAME = 0.5;

export function besideDanger(site: GuardSite, told: Told, claim: Claim): Danger[] {
  const { slope, ring, existing } = site.pond;
  if (existing) return [];
  // The cut leans away by its slope, so the toe reaches furthest.
  const reach = (underside: number) => claim.dug * Math.max(1 - slope, 0) + Math.min(underside, 0) + ring;
  const { verdict } = claim;
  const crossed = site.footings
    .filter(({ distance, level }) => reach(level) > distance + 2 * LEVEL)
    .map(({ name, distance, level }): Danger => {
      const why = `dug ${m(claim.dug)}, footing ${name} ${m(level)} at ${m(distance)}`;
      return { verdict, kind: 'footing', why };
    });
  if (!claim.recommended || speaksOf(told, /footing|foundation|engineer/i)) return crossed;
  const unasked = site.houses
    .filter(
      ({ name, distance }) =>
        !site.footings.some((f) => f.name === name || Math.abs(f.distance - distance) < SAME) &&
        reach(-SHALLOWEST) > distance + LEVEL,
    )
    .map(({ name, role, distance }): Danger => {
      const why = `dug ${m(claim.dug)}, ${role} ${name} at ${m(distance)}, its footing unknown`;
      return { verdict, kind: 'footing unasked', why };
    });
  return [...crossed, ...unasked];
}
