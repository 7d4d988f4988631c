import type { OldDrainFound } from '../contract/index.js';
import type { Say } from './say.js';

/** What is known of an old drain that is not counted on, and what to do before anything is built. */
export function oldDrainWords(found: OldDrainFound, { level }: Say): string {
  switch (found.state) {
    case 'stopped':
      return `The old drain does not hold the water down: on ${found.date} the water under the liner stood ${level(found.level_m)}, above the floor. Look into its pipe and flush it before anything is rebuilt; until it runs the pond counts as undrained.`;
    case 'works':
      return `Something leads the water away from under the liner: in wet months it stood no higher than ${level(found.highest_m)}. Look for the mouth of an old drain before anything is built, and level it as an outlet.`;
    case 'unsure':
      return `Whether the old drain works is not known: ${
        found.last === null
          ? 'nobody has read the dip pipe in wet months.'
          : `the looks into the dip pipe, the last on ${found.last}, are too few, too old, of a winter in which the ground was low too, or some stood above the floor.`
      } Read the dip pipe every second week through a wet half-year, and after storms, before anything is rebuilt.`;
  }
}
