import { isoDate } from '../climate/index.js';
import type { Basis } from './basis.js';
import type { Decision } from './decide.js';
import { isAsBuilt } from './measures.js';
import { oldDrainOf } from './oldDrain.js';
import { sayer } from './say.js';
import type { AddRule } from './sideRules.js';

/** What to watch of the drain under a pond that is there, or to look for before anything is rebuilt. */
export function oldDrainRule({ site }: Basis, { measures }: Decision, add: AddRule): void {
  const old = oldDrainOf(site);
  if (!old) return;
  const say = sayer(site);
  const floor = say.level(-site.pond.depth);
  if (isAsBuilt(measures))
    add(
      'old-drain',
      `Read the dip pipe every month of the wet half-year and after storms: above ${floor} the old drain has begun to stop. Find out when it was laid and what lies around the pipe; a bed without a filter silts up.`,
      { level_m: -site.pond.depth },
    );
  else if (old.works)
    add(
      'old-drain',
      `Something leads the water away from under the liner: it stood no higher than ${say.level(old.highest)} in wet months. Look for the mouth of an old drain before anything is built, and level it (levels.csv, role outlet).`,
    );
  else {
    const last = old.looks.at(-1)!;
    add(
      'old-drain',
      `The old drain does not hold the water down: on ${isoDate(Math.floor(last.day))} it stood at ${say.level(last.level!)} under the liner, above the floor. Look into its pipe and flush it before anything is rebuilt; until it runs the pond counts as undrained.`,
    );
  }
}
