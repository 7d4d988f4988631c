import type { Basis } from '../basis/index.js';
import { isoDate } from '../climate/index.js';
import type { OldDrainFound } from '../contract/index.js';
import { isAsBuilt, oldDrainOf } from '../heads/index.js';
import type { Site } from '../site/index.js';
import type { AddRule } from './addRule.js';
import type { Decision } from './decide.js';

/** What to watch of the drain under a pond that is there, or to look for before anything is rebuilt. */
export function oldDrainRule({ site }: Basis, { measures }: Decision, add: AddRule): void {
  const floor = -site.pond.depth;
  if (isAsBuilt(measures)) add('old-drain/works', { level_m: floor }, { level_m: floor });
  else {
    const open = oldDrainQuestion(site);
    if (open) add('old-drain/open', open);
  }
}

/** What is known of an old drain that is not counted on; undefined: there is none. */
export function oldDrainQuestion(site: Site): OldDrainFound | undefined {
  const old = oldDrainOf(site);
  if (!old) return undefined;
  const dateOf = ({ day }: (typeof old.looks)[number]) => isoDate(Math.floor(day));
  if (old.state === 'stopped') {
    const worst = old.looks.reduce((a, b) => (b.level! > a.level! ? b : a));
    return { state: 'stopped', date: dateOf(worst), level_m: worst.level! };
  }
  if (old.state === 'works') return { state: 'works', highest_m: old.highest! };
  const last = old.looks.at(-1);
  return { state: 'unsure', last: last ? dateOf(last) : null };
}
