import { method } from '../formula/index.js';
import { assertClosed, excess } from './balance.js';

export const hardSurfaceInterception = method({
  title: 'Interception on hard surfaces',
  what: 'Rain first wets a roof or paving; only what exceeds that film runs off, and the film dries by the demand.',
  assumptions: [
    'order of the day: rain, run-off, drying',
    'the film holds 1 mm: the initial abstraction of the curve-number method at CN 98 (paved, roofs), 0.2 S = 1.04 mm',
    'open joints and gutters that leak are not counted',
  ],
  source: 'USDA TR-55 (1986), eq. 2-2 and Table 2-2a (equation seen, CN 98 from memory)',
});

/** Water that a roof or paving holds before any runs off, m: 0.2 (25400/98 − 254) mm, rounded. */
export const HARD_SURFACE_FILM = 0.001;

/**
 * Run-off from a hard surface day by day, see {@link hardSurfaceInterception}; asserts that its balance closes.
 * @param rain - water reaching it, m a day
 * @param demand - evaporative demand, m a day; below 0 counts as 0
 * @param film - water held before any runs off, m, such as {@link HARD_SURFACE_FILM}
 * @param runoff - filled with the run-off, m a day; as long as `rain`
 * @returns what evaporated, what is left on the surface, and the closure error, m
 * @throws Error when the balance does not close to 1e-9 m
 */
export function runHardSurface(
  rain: Float64Array,
  demand: Float64Array,
  film: number,
  runoff: Float64Array,
): { evaporated: number; left: number; closure: number } {
  let wet = 0;
  let evaporated = 0;
  let closure = 0;
  for (let d = 0; d < rain.length; d++) {
    const before = wet;
    wet += rain[d];
    const over = excess(wet, film);
    wet -= over;
    const dried = Math.min(wet, Math.max(demand[d], 0));
    wet -= dried;
    runoff[d] = over;
    evaporated += dried;
    closure += rain[d] - over - dried - (wet - before);
  }
  assertClosed('hard-surface', closure, rain.length);
  return { evaporated, left: wet, closure };
}
