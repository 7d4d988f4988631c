import type { Governs, OpenFact } from '../contract/index.js';
import type { Measures } from '../heads/index.js';
import type { Site } from '../site/index.js';
import { footingLimit } from './digConditions.js';
import { deepestDug } from './digging.js';
import { unknownSeams } from './heave.js';

/** What nobody looked up and alone makes a verdict at a depth unsafe. */
export function openFactAt(site: Site, m: Measures, depth: number, governs: Governs): OpenFact | undefined {
  if (governs === 'footing' && footingLimit(site).assumed) return 'footing';
  const deep = deepestDug(site, m, depth);
  return governs === 'floor-heave' && unknownSeams(site, deep).length > 0 ? 'seam' : undefined;
}
