import type { Failing, Governs, ServingStatements } from '../contract/index.js';
import { inflowWords, weakestWords } from './drainWords.js';
import { HOW_EMPTIED } from './emptiedWords.js';
import { FAILURE } from './failureWords.js';
import { duringMonths } from './monthWords.js';
import { obstacleIn } from './obstacleText.js';
import { chanceText, isUpkeep, oftenText, orderText, WITH_OPTION, type Wording } from './say.js';

/** What a reason says of why something serves. */
export const SERVING_TEXT: Wording<ServingStatements> = {
  'kept-full': ({ emptied }) =>
    `Kept full it stays put; ${
      emptied === null
        ? 'emptied at the wrong time it does not'
        : `emptied ${duringMonths(emptied.months)} as wished ${EMPTIED[emptied.fails] ?? 'the liner lifts'} ${oftenText(emptied.per_year)}`
    }.`,
  'keep-to-months': () => 'Keep to the months given and no drain is needed.',
  'never-emptied': ({ cause }) => `It is not emptied in any month: ${NO_DRAIN_MENDS[cause]}.`,
  'by-dip-pipe': ({ never }) => {
    const but = never.length > 0 ? `, never ${duringMonths(never)}` : '';
    return `By what is known of the water no month is free for it: empty it only when the dip pipe shows the water below the floor${but}, and no drain is needed.`;
  },
  'no-drain-serves': (why, say) => `No drain would serve the emptied pond: ${obstacleIn(why, say)}.`,
  'nothing-lifts': ({ how, months, fails }) =>
    `${NOTHING_LIFTS[how](duringMonths(months))}${failsWords(fails)} No drain is needed.`,
  'surface-water-only': ({ fails }) =>
    `Kept out of the ring, surface water no longer gets behind the liner${failsWords(fails)}`,
  'raise-pond': ({ raise_m, dug_m, fails }, { length, atMost }) =>
    dug_m !== null
      ? `With rim and floor raised ${length(raise_m)} only ${atMost(dug_m)} is dug below the old ground, and the rest of the depth stands above it${failsWords(fails)} It has no moving parts and needs no outlet.`
      : `With rim and floor raised ${length(raise_m)} the pond stands above the water outside${failsWords(fails)} It has no moving parts and needs no outlet.`,
  'cutoff-drain': ({ raise_m, fails }, { length }) =>
    `A drain uphill takes the water that stands behind the upper wall${
      raise_m > 0 ? `, and the low rim goes up ${length(raise_m)}` : ''
    }${failsWords(fails)}`,
  'old-drain-works': ({ looks, from, to, highest_m, fails }, { level }) =>
    `The old drain works: in ${looks} readings in the wet months from ${from} to ${to} the water under the liner stood no higher than ${level(highest_m)}. Nothing is rebuilt${failsWords(fails)}`,
  'drain-to-outlet': ({ bed_m, outlet, level_m, fails }, { length, level }) =>
    `A filtered bed ${length(bed_m)} thick with a pipe to ${outlet} holds the water under the liner ${level(level_m)}${failsWords(fails)}`,
  'drain-to-sump': ({ lowest, fails }) =>
    `${lowest ? 'No lower ground can take the water by gravity, so it' : 'The water'} is pumped from a sump, as long as the alarm is heeded${failsWords(fails)}`,
  ballast: ({ head_m, fails }, { length }) =>
    `A concrete slab with facings inside the liner presses as much on floor and sides as ${length(head_m)} of water lifts${failsWords(fails)}`,
  shallower: ({ depth_m, emptied }, { atMost }) => `At ${atMost(depth_m)} it is safe${HOW_EMPTIED[emptied]}.`,
  'rim-buys': ({ raise_m, depth_m, wish_m }, { length, atMost }) =>
    `With the rim raised ${length(raise_m)} it may be ${atMost(depth_m)} deep, of the ${length(wish_m)} wished for: what the rim adds is not dug.`,
  spot: ({ name, depth_m }, { length }) =>
    `At the spot ${name} the water stands ${length(depth_m)} below the ground, and the same pond is safe there without drain or concrete.`,
  'no-depth': () => 'No depth worth having is safe here.',
  vent: () =>
    'Organic ground lies under or near the floor: the gas it gives off gathers under a liner. A vent from the high point lets it out; a water drain at the low point would not.',
  inflow: inflowWords,
  'weakest-link': weakestWords,
  'option-lacks': ({ option, lacks }, say) =>
    `${WITH_OPTION[option]} it does not serve: ${obstacleIn(lacks, say)}.`,
  'outlet-fails': ({ outlet, governs }) =>
    `A drain to ${outlet} would not serve the emptied pond: ${FAILURE[governs]}.`,
};

const EMPTIED: Partial<Record<Governs, string>> = {
  'side-slump': 'its sides slump',
  'floor-heave': 'its floor heaves',
};

const NO_DRAIN_MENDS: Record<ServingStatements['never-emptied']['cause'], string> = {
  'floor-heave':
    'water under pressure below the clay would heave the floor, which no drain under the liner relieves and no dip pipe shows',
  'side-slump':
    'as steep as they are the bared sides would slip even with no water behind them, which no drain mends',
};

const NOTHING_LIFTS: Record<ServingStatements['nothing-lifts']['how'], (months: string) => string> = {
  always: () => 'Nothing lifts the liner',
  'never-emptied': () => 'As long as it is not emptied, nothing lifts the liner',
  'in-months': (months) => `Emptied only ${months}, nothing lifts the liner`,
  'in-time': (months) =>
    `Emptied ${months} it is full again before enough water comes through the clay to lift the liner`,
};

const RULED: Record<Failing['emptied'], string> = {
  planned: '',
  ruled: 'emptied only in the months given, ',
  never: 'never emptied, ',
};

/** How often it fails as it is recommended: emptied as planned, or only when the rules allow it. */
function failsWords({ per_year, upkeep, accepted, emptied, kept }: Failing): string {
  const limit = `(${chanceText(accepted)} a year is accepted).`;
  return emptied === 'planned' && isUpkeep({ per_year, upkeep })
    ? `: it fails ${orderText(per_year)}, set by how drain and ${kept} are kept ${limit}`
    : `: ${RULED[emptied]}${chanceText(per_year)} of years fail ${limit}`;
}
