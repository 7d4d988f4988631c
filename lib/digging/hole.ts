import type { Measures } from '../heads/index.js';
import type { Site } from '../site/index.js';
import { outline, planArea, pondVolume } from '../uplift/index.js';

/** The ring around the liner that the survey plans, as it lies, m³; it is not dug deeper than the pond. */
export function ringVolume({ pond: { shape, ring, bedding } }: Site, m: Measures, depth: number): number {
  const dug = dugBelow(bedding.thickness, m, depth);
  return outline(shape) * ring.width * Math.min(ring.depth ?? dug, dug);
}

/** From the lowest ground down to what the liner or the bed of a drain lies on, m. */
const dugBelow = (bedding: number, m: Measures, depth: number) =>
  Math.max(depth - m.raise + (m.drain ? 0 : bedding), 0);

/**
 * The pond's own hole with its ring and bedding, as it lies, m³, and what is cut off the ground that rises behind it to
 * the highest rim; without the bed of a drain.
 */
export function holeOf(site: Site, m: Measures, depth: number): number {
  const { shape, bedding } = site.pond;
  const above = planArea(shape, 0) * Math.max(site.places.highRim / 2 - m.raise, 0);
  return above + pondVolume(shape, dugBelow(bedding.thickness, m, depth)) + ringVolume(site, m, depth);
}
