import type { Advice } from '../contract/index.js';
import type { Judged } from '../decision/index.js';
import { type Measures, NOTHING } from '../heads/index.js';

/** What the deterministic check is made for: nothing done, and what is recommended. */
export function checkedMeasures({
  decision,
  site,
}: Judged): { option: Advice; m: Measures; depth: number }[] {
  const depth = decision.depth || site.pond.depth;
  const nothing = { option: 'no-drain' as const, m: NOTHING, depth };
  return decision.measures === NOTHING
    ? [nothing]
    : [nothing, { option: decision.option, m: decision.measures, depth }];
}
