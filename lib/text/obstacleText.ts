import type { Coded, ObstacleValues } from '../contract/index.js';
import type { UnitSystem } from '../units/index.js';
import { LINK_NAMES } from './drainNames.js';
import { type Say, sayer, type Wording, wordsOf } from './say.js';

const OBSTACLES: Wording<ObstacleValues> = {
  'no-ring': () => 'no permeable layer touches the liner, so no surface water gets behind it',
  'already-kept-out': () => 'surface water is already kept out',
  'level-ground': () => 'the ground at the rim rises too little for a drain on the uphill side to help',
  'trench-near-footing': ({ name }) =>
    `its trench would lie below the 45° line from the footing ${name}: an engineer would have to design it`,
  'no-low-outlet-uphill': () => 'no outlet lies low enough for a drain uphill of the pond',
  'discharge-forbidden': () => 'there is no lawful place for the water',
  'discharge-not-said': () => 'nobody has said that water may be discharged: ask first',
  'endless-flow': ({ flow_m3_s, limit_m3_s }, { flow }) =>
    `it would run for ever with about ${flow(flow_m3_s)}, above the limit of ${flow(limit_m3_s)}`,
  'outlet-too-high': ({ outlet, level_m }, { level }) =>
    `the outlet ${outlet} is too high: with the least fall that a pipe needs, the water under the liner is held ${level(level_m)} and no lower`,
  'no-outlet': ({ spill }) =>
    `the survey has no point where a drain may end by gravity${spill === null ? '' : `; a pipe laid to ${spill}, the low way out of the ring, may do: enter it as an outlet too, with how high water ever stands there`}`,
  'outlet-not-placed': ({ outlets }) =>
    `the survey does not say how far ${outlets.join(', ')} is from the pond: measure it and write it into levels.csv, without it there is no telling the fall`,
  'outlets-beyond-boundary': () => 'the boundary lies between the pond and every outlet',
  'outlet-near-boundary': ({ outlet, to_boundary_m, setback_m }, { length }) =>
    `the outlet ${outlet} is ${length(to_boundary_m)} from the boundary and must keep ${length(setback_m)}`,
  'no-power-or-pump': () => 'it needs mains power and an owner who accepts a pump',
  'discharge-not-placed': ({ place }) =>
    `the survey does not say how far ${place} is from the pond: measure it and write it into levels.csv`,
  'no-discharge-place': () => 'the survey has no lawful place for pumped water: find one and level it',
  'rim-must-stay': () => 'the rim must stay as it is',
  'nothing-lacks': () => 'not needed: full, the pond holds its liner down by itself',
  'slab-too-thick': ({ thickness_m }, { atLeast }) =>
    `it would need ${atLeast(thickness_m)} of concrete on floor and sides`,
  'link-too-narrow': ({ link, depth_m, takes_m3_s, comes_m3_s }, { length, flow }) =>
    `dug ${length(depth_m)} deep the ${LINK_NAMES[link]} takes ${flow(takes_m3_s)}, and ${flow(comes_m3_s)} would come`,
  'soil-comes-through': ({ link, share }) =>
    `the ${LINK_NAMES[link]} has ${Number((100 * share).toPrecision(2))} % of the 100 % it must`,
};

/**
 * Why something cannot be had, as the end of a sentence.
 * @param obstacle - its code with its values
 * @param units - of the reader
 * @returns words without a full stop
 */
export function obstacleText(obstacle: Coded<ObstacleValues>, units: UnitSystem): string {
  return obstacleIn(obstacle, sayer(units));
}

/** {@link obstacleText} in a sentence that is being put together. */
export function obstacleIn(obstacle: Coded<ObstacleValues>, say: Say): string {
  return wordsOf(OBSTACLES, obstacle, say);
}
