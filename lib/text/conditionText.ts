import type { Coded, ConditionValues } from '../contract/index.js';
import type { UnitSystem } from '../units/index.js';
import { type Say, sayer, type Wording, wordsOf } from './say.js';

const CONDITIONS: Wording<ConditionValues> = {
  'laid-back': ({ from_m, slope }, { from }) =>
    `in this ground a hole with a side ${from(from_m)} high or more has its sides laid back ${slope} to 1, or an engineer designs what holds them`,
  'footing-line': ({ name, assumed, depth_m }, { atMost }) =>
    `the 45° line from the footing ${assumed ? `of ${name}, taken as shallow because nobody has seen it,` : name} allows a dig of ${atMost(depth_m)}`,
  'sides-meet': ({ depth_m }, { atMost }) =>
    `at this slope the sides meet at ${atMost(depth_m)}; for more depth the pond has to be wider, or its sides steeper where the ground lets them stand`,
  'slab-cast': () =>
    'a slab is cast on a liner that lies dry: in no month does the water surely stay below the floor, and without mains power and a place to lead it to nobody keeps it pumped down',
};

/**
 * A condition of a dig, as the end of a sentence.
 * @param condition - its code with its values
 * @param units - of the reader
 * @returns words without a full stop
 */
export function conditionText(condition: Coded<ConditionValues>, units: UnitSystem): string {
  return conditionIn(condition, sayer(units));
}

/** {@link conditionText} in a sentence that is being put together. */
export function conditionIn(condition: Coded<ConditionValues>, say: Say): string {
  return wordsOf(CONDITIONS, condition, say);
}
