import { InputError } from '../units/index.js';
import { deepestFloor, type PondShape, planArea, pondVolume } from '../uplift/index.js';

/** How a pond falls as it loses water, from brim to floor. */
export interface PondStage {
  /** area that catches rain: at the rim, m² */
  catchment: number;
  /** held at the brim, m³ */
  volume: number;
  /** fall below the brim, m, and water area, m², by water missing: even steps from none to all of it */
  fall: Float64Array;
  area: Float64Array;
}

/** Steps of the missing water: of a garden pond a fraction of a millimetre each near the brim. */
const STEPS = 1024;
const HALVINGS = 48;

/**
 * How the level falls with the water that is missing.
 * @param shape - of the pond, its depths from the rim
 * @param brim - level at which it runs over, m above the rim's ground (negative below it); above the ground the sides are upright
 * @param depth - m from the rim's ground to the floor, below the brim; to where the sides meet at most
 * @returns fall and water area by missing water
 * @throws InputError for a brim that is not above the floor
 */
export function pondStage(shape: PondShape, brim: number, depth: number): PondStage {
  const deepest = Math.min(depth, deepestFloor(shape));
  const most = brim + deepest;
  if (!(most > 0))
    throw new InputError(
      'invalid-input',
      `outside: a brim at ${brim} m is not above the floor at ${-deepest} m; raise it or dig deeper`,
    );
  const rim = planArea(shape, 0);
  const heldUpTo = (depth: number) => (depth <= 0 ? rim * depth : pondVolume(shape, depth));
  const full = heldUpTo(-brim);
  const volume = heldUpTo(deepest) - full;
  const fall = new Float64Array(STEPS + 1);
  const area = new Float64Array(STEPS + 1);
  for (let i = 0; i <= STEPS; i++) {
    const missing = (volume * i) / STEPS;
    let low = i === 0 ? 0 : fall[i - 1];
    let high = i === 0 ? 0 : most;
    for (let k = 0; k < HALVINGS; k++) {
      const middle = (low + high) / 2;
      if (heldUpTo(middle - brim) - full < missing) low = middle;
      else high = middle;
    }
    fall[i] = i === STEPS ? most : high;
    area[i] = planArea(shape, Math.max(fall[i] - brim, 0));
  }
  return { catchment: rim, volume, fall, area };
}
