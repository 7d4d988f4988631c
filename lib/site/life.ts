import type { Survey } from '../survey/index.js';
import type { Assumptions } from './assumptions.js';

/** Life of a liner, years. Common practice. */
const LIFE = 20;

/** Years that the liner is to serve. */
export function lifeOf({ site }: Survey, assume: Assumptions): number {
  return assume.or(site.life, 'life', LIFE, 'years', 'a liner serves about so long (common practice)');
}
