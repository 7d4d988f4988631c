import { Assumptions } from '../site/index.js';
import type { Assessment } from './assess.js';
import type { Decision } from './decide.js';
import type { SiteDrain } from './drainAround.js';
import { drainFor } from './drainFor.js';

/**
 * The drain that is recommended, else one that could be built here though none is needed; null where none can be.
 * @param a - from {@link assess}
 * @returns the drain as designed for the site, or null
 */
export function possibleDrain({ basis, options, decision, drain }: Assessment): SiteDrain | null {
  if (drain) return drain;
  const option = options.find((o) => o.measures?.drain);
  if (!option) return null;
  const wish: Decision = {
    ...decision,
    option: option.name,
    measures: option.measures!,
    depth: basis.site.pond.depth,
  };
  return drainFor(basis, wish, new Assumptions());
}
