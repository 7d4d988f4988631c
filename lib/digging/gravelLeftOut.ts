import type { Measures } from '../heads/index.js';
import type { Site } from '../site/index.js';

const GRAINS = ['sand', 'gravel'];

/**
 * Whether sand and gravel that the survey plans under a liner or around it are left out: without a way out they only hold
 * water there. What is there already stays.
 */
export function gravelLeftOut({ pond, tub }: Site, { drain }: Measures): boolean {
  const { bedding, ring, existing } = pond;
  const holds = GRAINS.includes(bedding.kind) || (ring.width > 0 && GRAINS.includes(ring.fill));
  return !existing && !drain && tub !== undefined && !tub.exit && holds;
}

/** Thickness of the bedding that is laid under the liner, m: none over a drain's bed, nor where it is left out. */
export function beddingLaid(site: Site, m: Measures): number {
  return m.drain || gravelLeftOut(site, m) ? 0 : site.pond.bedding.thickness;
}
