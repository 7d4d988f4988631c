import type { Measures } from '../heads/index.js';
import type { Site } from '../site/index.js';
import { outline, planArea, pondVolume } from '../uplift/index.js';
import { beddingLaid } from './gravelLeftOut.js';

/** The ring around the liner that the survey plans, as it lies, m³; it is not dug deeper than the pond. */
export function ringVolume(site: Site, m: Measures, depth: number): number {
  const { shape, ring } = site.pond;
  const dug = dugBelow(site, m, depth);
  const middle = { ...shape, length: shape.length + ring.width, width: shape.width + ring.width };
  return outline(middle) * ring.width * Math.min(ring.depth ?? dug, dug);
}

/** From the lowest ground down to what the liner or the bed of a drain lies on, m. */
const dugBelow = (site: Site, m: Measures, depth: number) =>
  Math.max(depth - m.raise + beddingLaid(site, m), 0);

/**
 * The pond's own hole with its ring and bedding, as it lies, m³, and what is cut off the ground that rises behind it to
 * the highest rim; without the bed of a drain.
 */
export function holeOf(site: Site, m: Measures, depth: number): number {
  const { shape } = site.pond;
  const above = planArea(shape, 0) * Math.max(site.places.highRim / 2 - m.raise, 0);
  return above + pondVolume(shape, dugBelow(site, m, depth)) + ringVolume(site, m, depth);
}
