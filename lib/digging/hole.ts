import type { Measures } from '../heads/index.js';
import type { Site } from '../site/index.js';
import { outline, planArea, pondVolume } from '../uplift/index.js';

/**
 * The pond's own hole with its ring and bedding, as it lies, m³, and what is cut off the ground that rises behind it to
 * the highest rim; without the bed of a drain.
 */
export function holeOf({ pond, places }: Site, m: Measures, depth: number): number {
  const { shape, ring, bedding } = pond;
  const dug = Math.max(depth - m.raise + (m.drain ? 0 : bedding.thickness), 0);
  // The ring is not dug deeper than the pond.
  const above = planArea(shape, 0) * Math.max(places.highRim / 2 - m.raise, 0);
  return above + pondVolume(shape, dug) + outline(shape) * ring.width * Math.min(ring.depth ?? dug, dug);
}
