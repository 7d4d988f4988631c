import type { AskingRules } from '../contract/index.js';
import { obstacleIn } from './obstacleText.js';
import type { Wording } from './say.js';

/** What the rules say of what is to be asked and looked up first. */
export const ASKING_RULES: Wording<AskingRules> = {
  'ask-regulator/protected': () => 'Ask the regulator before any spade goes in.',
  'ask-regulator/wet-plants': () =>
    'Rushes and other plants of wet ground grow here: ask whether the ground is protected before any spade goes in.',
  'measure-first/old-drain': () =>
    'Find out what the old drain does before anything is built: it is cheaper than any of the works.',
  'measure-first/seam': () =>
    'Put a pipe into the layer under the clay, open in that layer only, and read it every week through one wet half-year before it is dug.',
  'measure-first/footing': () =>
    'Find out how deep the footing goes before it is dug: a small hole beside the wall, down to its underside.',
  'measure-first/season': () =>
    'Put in a sealed standpipe and read it every week through one wet half-year before anything is bought.',
  'measure-first/discharge': () =>
    'Ask, and get it in writing, whether and where the water may be led away before anything is bought.',
  'measure-first/place': (lacking, say) => `Measure before anything is bought: ${obstacleIn(lacking, say)}.`,
  'seam-unknown/layer': ({ pit, top_m, deepest_m }, { length, atMost }) =>
    `Under tighter ground, from ${length(top_m)} down in ${pit}, lies a layer that carries water, and how high that water rises in the wet half-year is not known. Water as high as it may stand would heave a floor deeper than ${atMost(deepest_m)}: before digging deeper, read a pipe that is open in that layer only, every week through a wet half-year.`,
  'look-deeper/hole': ({ pit, known_m, to_m }, { atLeast, atMost }) =>
    `Nobody has looked at the ground below ${atMost(known_m)}, and it is dug deeper: first dig or bore a small hole at ${pit} down to ${atLeast(to_m)}. Where water rises in it, or sand or gravel comes up, stop and ask again with what it shows.`,
  'footing-unknown/houses': ({ names, taken_m, allows_m }, { length, atMost }) =>
    `How deep the footing of ${names.join(' and ')} goes nobody has looked: taken as ${length(taken_m)} below its ground${
      allows_m === null ? '' : `, the 45° line from it allows a dig of ${atMost(allows_m)}`
    }. Open a small hole beside the wall down to its underside, level it, or ask a licensed engineer before digging.`,
};
