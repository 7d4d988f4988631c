import type { Basis } from '../basis/index.js';
import { isoDate } from '../climate/index.js';
import { isAsBuilt, oldDrainOf } from '../heads/index.js';
import type { Site } from '../site/index.js';
import { sayer } from '../text/index.js';
import type { Decision } from './decide.js';
import type { AddRule } from './sideRules.js';

/** What to watch of the drain under a pond that is there, or to look for before anything is rebuilt. */
export function oldDrainRule({ site }: Basis, { measures }: Decision, add: AddRule): void {
  const floor = -site.pond.depth;
  if (isAsBuilt(measures))
    add(
      'old-drain',
      `Read the dip pipe every month of the wet half-year and after storms: above ${sayer(site).level(floor)} the old drain has begun to stop. Find out when it was laid and what lies around the pipe; a bed without a filter silts up.`,
      { level_m: floor },
    );
  else {
    const open = oldDrainQuestion(site);
    if (open) add('old-drain', `${open.known} ${open.ask}`);
  }
}

/** What is known of an old drain that is not counted on, and what to do before anything is built; undefined: there is none. */
export function oldDrainQuestion(site: Site): { known: string; ask: string } | undefined {
  const old = oldDrainOf(site);
  if (!old) return undefined;
  const say = sayer(site);
  const last = old.looks.at(-1);
  const date = last && isoDate(Math.floor(last.day));
  if (old.state === 'stopped')
    return {
      known: `The old drain does not hold the water down: on ${date} it stood at ${say.level(last!.level!)} under the liner, above the floor.`,
      ask: 'Look into its pipe and flush it before anything is rebuilt; until it runs the pond counts as undrained.',
    };
  if (old.state === 'works')
    return {
      known: `Something leads the water away from under the liner: it stood no higher than ${say.level(old.highest!)} in wet months.`,
      ask: 'Look for the mouth of an old drain before anything is built, and level it (levels.csv, role outlet).',
    };
  return {
    known: last
      ? `Whether the old drain works is not known: the looks into the dip pipe, the last on ${date}, are too few, too old, of a winter in which the ground was low too, or some stood above the floor.`
      : 'Whether the old drain works is not known: nobody has read the dip pipe in wet months.',
    ask: 'Read the dip pipe every second week through a wet half-year, and after storms, before anything is rebuilt.',
  };
}
