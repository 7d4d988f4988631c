import type { OpenFact, WishStatements } from '../contract/index.js';
import { changeWords } from './changeWords.js';
import { conditionIn } from './conditionText.js';
import { HOW_EMPTIED } from './emptiedWords.js';
import { FAILURE } from './failureWords.js';
import { chanceText, oftenText, WITH_OPTION, type Wording } from './say.js';
import { wayQuestionWords } from './wayQuestionWords.js';

/** What is not known, as far as the depth it would fail at. */
const OPEN_FACT: Record<OpenFact, string> = {
  seam: 'How high the water rises in the layer under the clay is not known: as high as it may, it would heave a floor',
  footing:
    'How deep the footing of the house goes is not known: as shallow as it may be, it would be undermined by a dig',
};

/** What a reason says of the wish. */
export const WISH_TEXT: Wording<WishStatements> = {
  'ask-first': (question, say) => `Ask first ${wayQuestionWords(question, say)}.`,
  'as-wished': ({ governs, per_year }) => `As wished, ${FAILURE[governs]} ${oftenText(per_year)}.`,
  'as-changed': ({ depth_m, change, kept_out, raise_m, fails }, { atMost, atLeast }) => {
    const done = [
      ...(depth_m === null ? [] : [`dug ${atMost(depth_m)} deep`]),
      ...changeWords(change, atMost),
      ...(kept_out ? ['with surface water kept out of the ring'] : []),
      ...(raise_m > 0 ? [`with rim and floor raised ${atLeast(raise_m)}`] : []),
    ];
    return `As wished but ${done.join(' and ')} it holds${HOW_EMPTIED[fails.emptied]}: ${chanceText(fails.per_year)} of years fail (${chanceText(fails.accepted)} a year is accepted). No drain is needed.`;
  },
  'dug-otherwise': ({ change }, { atMost }) =>
    `It is to be ${changeWords(change, atMost).join(' and ')}; all that follows is for that.`,
  'fact-open': ({ fact, depth_m }, { length }) => `${OPEN_FACT[fact]} ${length(depth_m)} deep.`,
  'cannot-be-dug': ({ depth_m, condition }, say) =>
    `${say.length(depth_m)} cannot be dug: ${conditionIn(condition, say)}.`,
  undone: ({ governs, per_year }) =>
    `With nothing done, ${FAILURE[governs]}${per_year === null ? '' : ` ${oftenText(per_year)}`}.`,
  'still-fails': ({ option, governs, per_year, accepted }) =>
    `${WITH_OPTION[option]}, ${FAILURE[governs]}${
      per_year === null ? '' : ` ${oftenText(per_year)} (${chanceText(accepted)} a year is accepted)`
    }.`,
};
