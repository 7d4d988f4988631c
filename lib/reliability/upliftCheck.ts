import type { Basis } from '../basis/index.js';
import { decidingDay } from '../basis/index.js';
import type { Advice, UpliftCheck } from '../contract/index.js';
import { type Use, unrecorded } from '../formula/index.js';
import { floorLevel, type Measures } from '../heads/index.js';
import { depthOver, EUROCODE_7, slabPressure, upliftUtilisation, waterPressure } from '../uplift/index.js';

/** Share of years whose highest water stays below the level that is checked. */
export const CHECKED_SHARE = 0.95;

/** Water that is counted in an empty pond, m, so that the ratio has a number. */
const LEAST_WATER = 1e-6;

/**
 * EN 1997-1 limit state UPL (2.4.7.4) on the floor, with measures at a depth.
 * @param depth - on the axis of the wish, m
 * @param use - a recorder, for the worked sheet
 */
export function upliftCheck(
  { basis }: { basis: Basis },
  option: Advice,
  m: Measures,
  depth: number,
  use: Use = unrecorded,
): UpliftCheck {
  const floor = floorLevel(depth, m, use);
  const { head: high, pond } = decidingDay(basis, m, depth, CHECKED_SHARE, undefined, use);
  const { lifts, holds } = basis.site.country.rules === 'gb' ? EUROCODE_7.upliftUk : EUROCODE_7.uplift;
  const uplift = use(waterPressure, use(depthOver, high, floor, 0));
  const water = use(waterPressure, use(depthOver, pond, floor, LEAST_WATER));
  const weight = use(slabPressure, water, m.ballast);
  const utilisation = use(upliftUtilisation, lifts, uplift, holds, weight);
  return {
    option,
    depth_m: depth,
    high_m: high,
    pond_m: pond,
    floor_m: floor,
    ballast_m: m.ballast,
    factor: { lifting: lifts, holding: holds },
    lifting_pa: lifts * uplift,
    holding_pa: holds * weight,
    utilisation,
    met: utilisation <= 1,
  };
}
