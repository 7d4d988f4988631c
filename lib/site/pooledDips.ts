import { method } from '../formula/index.js';
import type { LevelPoint, Survey } from '../survey/index.js';
import type { PitDip } from './dips.js';
import type { Places } from './places.js';
import { lowSide, type SpotHeads, TABLE_FOLLOWS_GROUND } from './spots.js';

export const pooledDipsMethod = method({
  title: 'Readings of several holes as one water',
  what:
    'Brings every reading to the low side of the pond: along the plane of the water table where three or more levelled holes give one, ' +
    'else by the share of the ground between hole and pond that the table follows.',
  assumptions: [
    'the plane does not turn through the year',
    'without a plane the table follows 0.85 ± 0.15 of the difference in ground',
    'a hole that was not levelled is taken to stand on the lowest ground of the rim',
  ],
  source: 'three-point problem of hydrogeology; common practice',
});

/**
 * Dips as depths below the lowest ground at the rim.
 * @param heads - of the spots, with the plane they rest on
 */
export function pooledDips(
  dips: readonly PitDip[],
  survey: Survey,
  places: Places,
  { plane }: SpotHeads,
): PitDip[] {
  const points = new Map(survey.levels.filter((p) => p.role === 'pit').map((p) => [p.point, p]));
  const pond = lowSide(survey.levels);
  const placed = (p: Pick<LevelPoint, 'x' | 'y'> | undefined) => p?.x !== undefined && p.y !== undefined;
  return dips.map((dip) => {
    const point = points.get(dip.pit);
    const ground = places.pits.get(dip.pit);
    if (!point || ground === undefined) return dip;
    if (plane && placed(point) && pond && placed(pond)) {
      const { rise } = plane.riseOver(pond.x! - point.x!, pond.y! - point.y!);
      return { ...dip, depth: dip.depth - ground - rise, aboveGround: dip.depth < 0 };
    }
    const { mean, spread } = TABLE_FOLLOWS_GROUND;
    return {
      ...dip,
      depth: dip.depth - (1 - mean) * ground,
      aboveGround: dip.depth < 0,
      error: Math.sqrt(dip.error ** 2 + (spread * ground) ** 2),
    };
  });
}
