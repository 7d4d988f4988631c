import type { Basis } from '../basis/index.js';
import type { SiteDrain } from '../contract/index.js';
import { drainFor } from '../works/index.js';
import type { Decision } from './decide.js';

/** The drain a decision needs, or null where it needs none. */
export function drainOf(basis: Basis, { option, measures, depth }: Decision): SiteDrain | null {
  if (option === 'do-not-dig' || option === 'measure-first' || option === 'move') return null;
  return drainFor(basis, measures, depth);
}
