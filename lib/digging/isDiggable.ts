import type { Measures } from '../heads/index.js';
import type { Site } from '../site/index.js';
import { againstDig, digConditions } from './digConditions.js';
import { bestDig, type DigDraws, worstDig } from './digging.js';

/** What a dig is judged by. */
interface Dig {
  site: Site;
  dig: DigDraws;
}

/** Whether the depth wished for can be dug with measures, or another depth; a pond that is there is not dug. */
export function isDiggable({ site, dig }: Dig, m: Measures, depth = site.pond.depth): boolean {
  const worst = worstDig(bestDig(site, dig, m, depth).chances);
  return againstDig(worst, digConditions(site, dig, m, depth), site.pond.acceptedRisk) === 'none';
}
