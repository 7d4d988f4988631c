import type { SiteDrain } from '../contract/index.js';
import { drainFor } from '../works/index.js';
import type { Assessment } from './assess.js';

/**
 * The drain that is recommended, else one that could be built here though none is needed; null where none can be.
 * @param a - from {@link assess}
 * @returns the drain as designed for the site, at the depth wished where none is recommended, or null
 */
export function possibleDrain({ basis, options, drain }: Assessment): SiteDrain | null {
  const possible = options.find((o) => o.measures?.drain)?.measures;
  return drain ?? (possible ? drainFor(basis, possible, basis.site.pond.depth) : null);
}
