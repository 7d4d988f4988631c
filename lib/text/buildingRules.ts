import type { BuildingRules, Governs } from '../contract/index.js';
import { BARS, FAILURE } from './failureWords.js';
import { duringMonths } from './monthWords.js';
import type { Wording } from './say.js';
import { timeWords } from './situationWords.js';
import { hoursDown } from './when.js';

const AGAINST: Partial<Record<Governs, string>> = {
  'wet-dig': 'more water may come in than can be taken out',
  'floor-heave': 'water under pressure below the clay may break through the floor',
  'side-slump': 'the sides may slip',
};

const within = (months: number[]) =>
  months.length === 12
    ? 'in a dry month'
    : `only ${duringMonths(months)}, begun so early that the pond is full again before another month begins`;

/** What the rules of building and rebuilding say; the working slope goes by the country. */
export const BUILDING_RULES: Wording<Omit<BuildingRules, 'working-slope/class'>> = {
  'rebuild/emptied': ({ liner, months }) =>
    liner
      ? `The pond is emptied for this and the liner comes out, ${within(months)}: read the dip pipe first, and leave nothing under an empty liner overnight. Until then keep it full.`
      : `The pond is emptied for this, and filled again, ${within(months)}: read the dip pipe first, and every day until the concrete has set for a week; fill the pond at once if the water comes above the floor. Until then keep it full.`,
  'rebuild/opened': ({ months }) =>
    `The pond is emptied for this and the liner comes out, ${within(months)}. The water in the ground stands high enough to lift the liner as the pond goes down, so pump from under it as well, from the dip pipe or from under its edge: nobody steps on a liner that floats. Keep pumping until the new liner lies and the pond is full. Until then keep it full.`,
  'rebuild/too-brief': ({ months, days, needed }) =>
    `This work needs the pond empty for ${needed} days, until the concrete is hard, and its bared sides stand for no more than ${timeWords(24 * days)} ${duringMonths(months)}. Keep it full and ask a licensed engineer how the sides are held meanwhile.`,
  'rebuild/pumped': ({ months }) =>
    `This work needs the pond empty, and in no month does the water in the ground surely stay below the floor: it lifts the liner. ${
      months.length < 12 ? `It can be done only ${duringMonths(months)}, with` : 'It can be done only with'
    } that water pumped below the floor before the pond is lowered, and kept there day and night until the concrete is hard and the pond is full. Keep it full and ask a licensed engineer how, before anything is bought; where nobody can keep it low, this is not the way.`,
  'rebuild/barred': ({ causes }) =>
    `This work needs the pond empty, and as it is it may not be emptied in any month: ${causes.map((cause) => (cause === 'floor-heave' || cause === 'side-slump' ? BARS[cause] : FAILURE[cause])).join('; ')}. Keep it full and ask a licensed engineer how the work can be done.`,
  'batter-sides/behind-wall': () =>
    'Behind the wall the cut is laid back or shored while it is built; nobody works beside an upright cut.',
  'batter-sides/laid-back': ({ slope }) =>
    `Lay the sides back at least ${slope} to 1: as steep as they were drawn this ground is not to be trusted. Quantities, drawings and chances here are for sides laid back; nobody works beside an upright side.`,
  'batter-sides/flatter': ({ slope, drawn, floor_m: [length, width] }, { atMost }) =>
    `Lay the sides back at least ${slope} to 1 instead of ${drawn} to 1: as drawn they do not hold at the depth wished for. The outline at the rim stays, so a floor ${atMost(length)} long and ${atMost(width)} wide is left. Quantities, drawings and chances here are for these sides.`,
  'batter-sides/no-deeper': ({ slope, stands_m, raised_m, wish_m }, { length, atMost }) =>
    `At ${slope} to 1, as drawn, the sides stand with enough safety to ${atMost(stands_m)}${
      raised_m > 0 ? ' below the old ground' : ''
    }, not to ${length(wish_m)}: dig no deeper${
      raised_m > 0 ? ` (the other ${length(raised_m)} of the pond's depth stands above it)` : ''
    }, or have flatter or held sides designed; nobody works beside an upright side.`,
  'batter-sides/too-steep': ({ slope, wish_m }, { length }) =>
    `At ${slope} to 1 the sides do not stand with enough safety at ${length(wish_m)}: lay them back further, dig less deep, or have them held.`,
  'wall-load/empty': ({ load_n_m, wall, height_m, clay }, { length, push }) =>
    `Empty, with the ground outside full of water, earth and water push with about ${push(load_n_m)} of the ${wall} wall, ${length(height_m)} high.${
      clay ? ' Swelling clay pushes harder still.' : ''
    } Whether it stands is not judged here: a licensed engineer designs wall and footing.`,
  'rim-load/edge': ({ above_m, push_n_m }, { length, push }) =>
    `The pond's water stands ${length(above_m)} above the lowest ground: it pushes with ${push(push_n_m)} of rim. These are loads only. Whether frame, wall or bank can carry them, with freezing, roots and children on top, is not checked here.`,
  'dig-in/planned': ({ months }) =>
    `Dig ${duringMonths(months)}, as planned: the hole was judged by the water of then.`,
  'dig-in/instead': ({ months, planned, against }) =>
    `Dig ${duringMonths(months)}, not ${duringMonths(planned)}, when ${AGAINST[against] ?? 'the dig does not hold'}. The hole was judged by the water of ${duringMonths(months).replace(/^(in|from) /, '')}.`,
  'dig-in/months': ({ months, against }) =>
    `Dig it ${duringMonths(months)}: in the other months ${AGAINST[against]}.`,
  'read-before-digging/pressure': ({ pit, depth_m }, { atLeast }) =>
    `In a month in which it may be dug, read the pipe that is open only in the layer under the clay, at ${pit}, every morning and after rain: go on only while its water stands ${atLeast(depth_m)} or more below the ground there. Where it stands higher, it would break through the floor.`,
  'pump-while-digging/inflow': ({ flow_m3_s, months, pit_m }, { flow, length }) =>
    `Water comes into the hole while it is dug, in a wet year about ${flow(flow_m3_s)} ${duringMonths(months)}: hire a pump, let it draw from a pit in one corner ${length(pit_m)} below the floor, and keep it running until the liner lies and the pond is full.`,
  'fill-at-once/months': ({ months, hours }) =>
    `Fill it as soon as the liner lies: ${duringMonths(months)} an empty liner has ${hoursDown(hours, 'no time', 'about ')}.`,
  'keep-old-ground-open/bank': ({ away }) =>
    `${
      away
        ? ''
        : 'Over the lowest old ground leave a dip in the raised rim, lined, and as low as the full pond: there it runs over, on flat stones, and nowhere else. '
    }Leave the old ground beside the bank as the way out for water; do not dam it.`,
  'vent-high-point/bulge': () => 'Lay a vent from the high point when the liner is next up, in a dry month.',
  'vent-high-point/gas': ({ count, diameter_m, wet, fall }, { bore }) =>
    `Organic soil gives off gas that lifts a liner like water does. Lay ${count === 1 ? 'a vent' : `${count} vents`} of ` +
    `${bore(diameter_m)} from the high point under the liner to the open air; ${
      wet
        ? 'and no water drain replaces it: water leaves at the low point, gas at the high point'
        : 'the water stays below the floor, so a bulge there is gas'
    }.${fall === null ? '' : ` The floor must fall by ${fall * 100} % at least, or the gas stays where it is.`}`,
  'ask-engineer/steep-dig': ({ depth_m, slope }, { from }) =>
    `A side ${from(depth_m)} high and more, as steep as ${slope} to 1, is no garden work: a licensed engineer designs what holds it.`,
  'ask-engineer/unnamed-ground': ({ texture, slope }) =>
    `No slope can be named for ${texture}: lay it flat, have it shored, or ask a licensed engineer; ${slope} to 1 is only a bound.`,
  'ask-engineer/walls': () => 'Have a licensed engineer design the walls for the empty pond.',
  'ask-engineer/footing': () => 'Ask a licensed engineer before digging near a footing.',
  'ask-engineer/slab': () => 'Have a licensed engineer design slab and facings.',
  'ask-engineer/pressure': () => 'Ask a licensed engineer: water under pressure lies below the clay.',
  'notify-neighbour/bank': ({ above_m }, { length }) =>
    `The rim holds ${length(above_m)} of water above the ground: tell whoever lives or has ground below it, and settle with them where the water would go if the rim gave way.`,
  'notify-neighbour/near-boundary': () =>
    'The dig comes nearer to the boundary than it is deep: tell the neighbour in writing first; a fence, wall or drive there stands on ground that the dig must not loosen.',
  'notify-neighbour/footing': () =>
    'Tell the neighbour in writing before digging near the boundary or a wall; many places require notice.',
};
