import type { PondFacts } from '../survey/index.js';
import type { Assumptions } from './assumptions.js';

/**
 * How the level of a pond is kept: held so far below full, m; or topped up when it has fallen by `within`, m (Infinity:
 * never), known to a log standard deviation of `spread`.
 */
export type PondKept = { held: number } | { within: number; spread: number };

/** Topped up when it shows: a hand's width. Our choice, as is its spread: from 5 to 20 cm in nine ponds of ten. */
export const USUALLY_KEPT = { within: 0.1, spread: 0.42 };
/** Fall of a pond that nobody tops up, where no weather tells it, m: a dry summer of an ordinary climate. Our choice. */
const NEVER_TOPPED_UP = 0.5;

/** How a survey says that the level is kept. */
export function keptOf({ usual_drawdown, kept_within }: PondFacts, assume: Assumptions): PondKept {
  if (usual_drawdown !== undefined) return { held: usual_drawdown };
  if (kept_within === 'never') return { within: Number.POSITIVE_INFINITY, spread: 0 };
  if (kept_within !== undefined) return { within: kept_within, spread: 0 };
  assume.add(
    'kept_within',
    USUALLY_KEPT.within,
    'm',
    'topped up when it has fallen by a hand (5 to 20 cm), as most do; write never where nobody does, or what a float valve keeps',
  );
  return USUALLY_KEPT;
}

/**
 * The same without days of weather to run it through: as low all year as it may fall.
 * @param depth - of the pond, m
 */
export function heldAtWorst(kept: PondKept, depth: number, assume: Assumptions): PondKept {
  if ('held' in kept) return kept;
  if (kept.within < Number.POSITIVE_INFINITY) return { held: kept.within };
  const held = Math.min(NEVER_TOPPED_UP, depth);
  assume.add(
    'usual_drawdown',
    held,
    'm',
    'never topped up, and no weather tells how far it falls: taken as low all year as after a dry summer',
  );
  return { held };
}

/**
 * How far a pond is let fall at most; where nobody tops it up that is for the weather to say.
 * @param kept - of a site's pond
 * @returns m, 0 and more; 0 where it is never topped up
 */
export function letFall(kept: PondKept): number {
  if ('held' in kept) return kept.held;
  return kept.within < Number.POSITIVE_INFINITY ? kept.within : 0;
}
