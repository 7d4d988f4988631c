import type { DrainRules } from '../contract/index.js';
import { oldDrainWords } from './oldDrainWords.js';
import type { Wording } from './say.js';
import { wayQuestionWords } from './wayQuestionWords.js';
import { anyMonth, hoursDown } from './when.js';

/** Of what helps, but was not counted on. */
const UNCOUNTED =
  'It helps, and nothing here rests on it: levels and chances are with the ring as it fills without.';

/** What the rules that go with a drain say. */
export const DRAIN_RULES: Wording<DrainRules> = {
  'flap/outlet': ({ below }) =>
    below
      ? 'Fit a flap at the outlet: the flood that was levelled stays below the drain, and a flap keeps out one that comes higher.'
      : 'Fit a flap at the outlet, so that the ditch in flood does not run back up the pipe.',
  'animal-guard/outlet': () => 'Fit a guard against animals at the outlet and clear it every autumn.',
  'inspection-pipe/head': () =>
    'Bring the pipe up to the surface at its head; look into it every autumn and after storms, and flush it when water stands in it.',
  'pump-alarm/sump': () =>
    'Two pumps, one of them on a battery, and a high-water alarm on a battery too; test them every month of the wet half-year.',
  'if-drain-stops/may-lift': ({ months }) =>
    `Water that stands in the inspection pipe says that the drain has stopped. Even the full pond may lift then ${anyMonth(months)}: keep it full to the brim and free the drain the same day.`,
  'full-if-power-fails/holds': () =>
    'When the power fails, keep the pond full to the brim until the pump runs again.',
  'full-if-power-fails/may-lift': ({ months, hours, storm_hours }) => {
    const time = hours === null ? 'a year at least' : `about ${hoursDown(hours, LITTLE)}`;
    const storm = storm_hours === null ? 'all' : hoursDown(storm_hours, LITTLE);
    return `Without the pump even the full pond may lift ${anyMonth(months)}: bed and sump take up ${time} of seepage, ${storm} of the design storm. A pump on a battery must run by then; keep the pond full to the brim until it does.`;
  },
  'old-drain/works': ({ level_m }, { highest }) =>
    `Read the dip pipe every month of the wet half-year and after storms: where the water in it stands higher than ${highest(level_m)}, the old drain has begun to stop. Find out when it was laid and what lies around the pipe; a bed without a filter silts up.`,
  'old-drain/open': oldDrainWords,
  'ring-outlet/flooded': () =>
    'In flood the water in the swale stands above the full pond and fills the ring from there: close that way with clay tamped firm, and run the analysis again without it.',
  'ring-outlet/open': ({ slow }) =>
    `Keep the way out of the ring open at the swale.${
      slow === null
        ? ''
        : ` Water gets there through ${slow} only slowly: from the far side of the pond it stands higher than the swale.`
    }`,
  'keep-surface-water-out/led-away': ({ counted }) =>
    `Turn run-off and downpipes away uphill of the pond and cap the ring with clay tamped firm.${counted ? '' : ` ${UNCOUNTED}`}`,
  'keep-surface-water-out/rain': () =>
    `Cap the ring with clay tamped firm: the rain that falls on it alone stands higher against the liner than the water in the ground. ${UNCOUNTED}`,
  'leave-gravel-out/no-outlet': () =>
    'Leave sand and gravel out from under and around the liner: without an outlet they only hold water there.',
  'ask-way/boundary': (question, say) => `Before anything is bought, ask ${wayQuestionWords(question, say)}.`,
  'notify-neighbour/outlet': () => 'Tell the neighbour where the water comes out before the pipe is laid.',
  'ask-engineer/lowered-house': () =>
    'A drain lowers the water in shrinkable clay beside a house: ask a licensed engineer first.',
  'ask-engineer/lowered-place': ({ place }) =>
    `The drain lowers the water in the clay under ${place}, and the clay may shrink: ask a licensed engineer first.`,
};

const LITTLE = 'less than an hour';
