import type { Site } from '../site/index.js';
import type { Look } from '../survey/index.js';

/** Pit names whose looks are of the pond's own water and of the water under its liner. */
type OwnWater = 'pond' | 'dip-pipe';

/** Looks farther apart than this tell nothing of each other, days: a storm lies between. Our choice. */
const PAIR_DAYS = 1;

/** A look that tells where the water stood, or that there was none. */
export interface OwnReading {
  /** days since 1970-01-01, with the time of day */
  day: number;
  /** m above the datum; for a dry pipe its floor, absent where that is not known */
  level?: number;
  dry: boolean;
}

/** What was read in the pond or the dip pipe, in the order of time. */
export function readingsOf({ survey, places }: Site, pit: OwnWater): OwnReading[] {
  const mark = (pit === 'pond' ? places.pondPoint : places.dipPipePoint) ?? 0;
  const told = ({ reading }: Look) => reading === 'level' || reading === 'dry';
  return survey.looks
    .filter((look) => look.pit === pit && told(look))
    .map(({ day, reading, depth, holeDepth }) => {
      const below = reading === 'dry' ? holeDepth : depth;
      return { day, level: below === undefined ? undefined : mark - below, dry: reading === 'dry' };
    })
    .sort((a, b) => a.day - b.day);
}

/** The latest reading; undefined where there is none. */
export function lastReading(site: Site, pit: OwnWater): OwnReading | undefined {
  return readingsOf(site, pit).at(-1);
}

/**
 * The latest reading of the dip pipe that has one of the pond within {@link PAIR_DAYS}, with the pond's nearest in time.
 * A pipe found dry when it was read last speaks for itself.
 */
export function pairedReadings(site: Site): { pond?: OwnReading; under?: OwnReading } {
  const last = lastReading(site, 'dip-pipe');
  if (last?.dry) return { under: last };
  const ponds = readingsOf(site, 'pond');
  for (const under of readingsOf(site, 'dip-pipe').reverse()) {
    const apart = ({ day }: OwnReading) => Math.abs(day - under.day);
    const near = under.dry ? [] : ponds.filter((pond) => apart(pond) <= PAIR_DAYS);
    if (near.length > 0) return { pond: near.reduce((a, b) => (apart(b) < apart(a) ? b : a)), under };
  }
  return {};
}
