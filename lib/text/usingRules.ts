import type { UsingRules } from '../contract/index.js';
import { emptyingTimes } from './emptyingTimes.js';
import { BARS } from './failureWords.js';
import { duringMonths, monthWords } from './monthWords.js';
import type { Wording } from './say.js';
import { anyMonth } from './when.js';

/** Less is not told, m. */
export const TELLING = 0.01;

/** What the rules of a pond in use say. */
export const USING_RULES: Wording<UsingRules> = {
  'dip-pipe/there': () => 'Read the dip pipe before the pond is lowered.',
  'dip-pipe/to-lay': () =>
    'Put a dip pipe down to the low point beside the liner and read it before the pond is lowered.',
  'dip-pipe/bulge': () => 'Keep a dip pipe to the low point and read it before the pond is lowered.',
  'do-not-cut-bulge/bulge': () =>
    'Never cut or weigh down the bulge: the water comes through and the soil follows.',
  'empty-only-in/free': ({ months, days, briefly }) =>
    `Empty it only ${emptyingTimes({ months, days }, ...(briefly ? [briefly] : []))}.`,
  // The days may be fewer than were planned: what the water leaves.
  'empty-only-in/briefly': (briefly) =>
    `Empty it only ${emptyingTimes(briefly)}, and read the dip pipe first.`,
  'do-not-lower/bulge': () => 'Do not lower or empty the pond while the bulge is there.',
  'do-not-lower/barred': ({ months, cause }) =>
    `Never empty it ${anyMonth(months)}, whatever the dip pipe shows: ${BARS[cause]}.`,
  'do-not-lower/unread': ({ months, below_m }, { atLeast, atMost }) =>
    `Do not empty it ${anyMonth(months)} without reading the dip pipe first${
      below_m >= TELLING
        ? `: in it the water must stand ${atLeast(below_m)} below the floor, for it stands so much higher behind the uphill wall`
        : below_m <= -TELLING
          ? `: in it the water may stand no more than ${atMost(-below_m)} above the floor, for the slab holds no more`
          : ''
    }.`,
  'do-not-lower/other-months': ({ months }) => `Do not empty it ${duringMonths(months)}.`,
  'keep-above-level/brim': ({ months, brim, excepted }) =>
    `${keepAbove(months, excepted)}: full to the brim ${duringMonths(brim)}.`,
  'keep-above-level/level': ({ months, level_m, excepted }, { lowest }) =>
    `${keepAbove(months, excepted)}: in the worst month no lower than ${lowest(level_m)}.`,
  'full-may-lift/undrained': ({ months }) =>
    `The water outside may stand too high even for the full pond ${duringMonths(months)}: with nothing done no level of it is safe then.`,
  'full-before-rains/topped-up': ({ within_m, months }, { atMost }) =>
    `Top it up, by hose, rain barrel or float valve, whenever it has fallen by ${atMost(within_m)}, and have ${beforeRains(months)}`,
  'full-before-rains/left': ({ months }) => `Have ${beforeRains(months)}`,
  'mend-leak/pond': () =>
    'The pond loses more than the air takes: find and mend the leak before anything else is done. What is told here counts with it.',
  'trees/clay': () =>
    'Shrinkable clay dries out and sinks beside trees: where one stands nearer than it is tall, or is felled, the rim may settle or rise on that side. Look whether it is level after every dry summer, and ask before a root as thick as a thumb is cut.',
  'ice/rim': ({ walled }) =>
    `Ice pushes on a stiff rim and lifts what is frozen into it${walled ? ', the walls among it' : ''}: float wood or a ball on the water, keep a hole open for gas, and let nobody on the ice.`,
};

function keepAbove(months: number[], excepted: boolean): string {
  const but = excepted ? ', but for the days it may stand empty' : '';
  return `Keep the water above the level that the pond card has for the month, ${duringMonths(months)}${but}`;
}

function beforeRains(months: number[]): string {
  const of = months.length > 0 ? ` of ${monthWords(months)}` : '';
  return `it full before the rains${of}: its own water is what holds the liner down when the ground fills.`;
}
