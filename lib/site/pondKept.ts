import { OPEN_WATER, openWaterEvaporation } from '../pond/index.js';
import type { PondFacts } from '../survey/index.js';
import type { Assumptions } from './assumptions.js';

/**
 * How the level of a pond is kept: held so far below full, m; or topped up when it has fallen by `within`, m (Infinity:
 * never), known to a log standard deviation of `spread`.
 */
export type PondKept = { held: number } | { within: number; spread: number };

/** Topped up when it shows: a hand's width. Our choice, as is its spread: from 5 to 20 cm in nine ponds of ten. */
export const USUALLY_KEPT = { within: 0.1, spread: 0.42 };
/** Fall of a pond that nobody tops up where nothing tells of the climate, m, and how far from the equator that is enough. Our choice. */
const NEVER_TOPPED_UP = { fall: 0.5, from: 45 };
/** A dry year against an ordinary one: what falls and what the air takes. Our choice. */
const DRY_YEAR = { rain: 0.7, demand: 1.15 };

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

/** What is known of the climate where no days of weather are. */
interface ClimateKnown {
  /** degrees */
  latitude: number;
  /** rain and demand of an ordinary year, m a month */
  ordinary?: { liquid: number[]; demand: number[] };
}

/**
 * The same without days of weather to run it through: as low all year as it may fall.
 * @param depth - of the pond, m
 */
export function heldAtWorst(
  kept: PondKept,
  depth: number,
  climate: ClimateKnown,
  assume: Assumptions,
): PondKept {
  if ('held' in kept) return kept;
  if (kept.within < Number.POSITIVE_INFINITY) return { held: kept.within };
  const { fall, by } = fallOf(climate);
  const held = Math.min(fall, depth);
  assume.add('fall of the pond', held, 'm', `never topped up: taken as low all year as ${by}`);
  return { held };
}

/** How far a pond falls that nobody tops up, m, and by what that is known. */
function fallOf({ latitude, ordinary }: ClimateKnown): { fall: number; by: string } {
  if (ordinary) {
    const { liquid, demand } = ordinary;
    let [fall, most] = [0, 0];
    // Twice round: it may begin in the dry months.
    for (let i = 0; i < 24; i++) {
      const evaporation = openWaterEvaporation.compute(
        OPEN_WATER.coefficient,
        DRY_YEAR.demand * demand[i % 12],
      );
      fall = Math.max(fall + evaporation - DRY_YEAR.rain * liquid[i % 12], 0);
      most = Math.max(most, fall);
    }
    return { fall: most, by: 'after the dry months of climate.csv in a dry year' };
  }
  if (Math.abs(latitude) >= NEVER_TOPPED_UP.from)
    return { fall: NEVER_TOPPED_UP.fall, by: 'after a dry summer; no weather tells how far it falls' };
  return {
    fall: Number.POSITIVE_INFINITY,
    by: 'it can: no weather tells how far it falls, and a summer there may dry it out',
  };
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
