/** The answer in five short lines, for a terminal. */

import {
  advisedOption,
  BEFORE_DIGGING,
  isDug,
  LEAST_CHANCE,
  monthsFree,
  monthsToEmpty,
  type PossibleOption,
  possibleOption,
  type Recommendation,
  type Result,
} from '../contract/index.js';
import { formatBound, formatQuantity, type UnitSystem } from '../units/display.js';
import { changeWords } from './changeWords.js';
import { dugAndRaised } from './dugAndRaised.js';
import { emptiedOnly } from './emptiedWords.js';
import { engineerFirst } from './engineerFirst.js';
import { keptLine, keptOtherwise } from './keptOtherwise.js';
import { monthName } from './monthWords.js';
import { rebuildBriefly } from './rebuildWords.js';
import { isRimTaken, LEVEL_THE_RIM } from './rimTaken.js';
import { chanceText } from './say.js';
import { adviceWords, GOVERNS_WORDS } from './terms.js';
/**
 * Five lines of what to do, what stands against it, the pond full and emptied, and what to find out next; whoever calls
 * adds the sixth, where the rest is.
 * @param units in which lengths are shown
 */
export function answerLines(
  {
    recommendation,
    options,
    situations,
    assumptions,
  }: Pick<Result, 'recommendation' | 'options' | 'situations' | 'assumptions'>,
  units: UnitSystem,
): string[] {
  const size = (metres: number) => formatQuantity(metres, 'length', units);
  const { depth_m, raise_m, governs, measure_next, change } = recommendation;
  const advised = advisedOption({ options, recommendation });
  const shown = advised ?? possibleOption({ options }, 'no-drain');
  const by = shown === advised ? '' : ' with nothing done';
  const [next] = measure_next;
  const kept = keptOtherwise({ recommendation, situations });
  return [
    [
      adviceWords(recommendation),
      isDug({ recommendation, situations }) && `, ${dugAndRaised({ depth_m, raise_m }, units)}`,
      change && `, ${changeWords(change, size).join(', ')}`,
      rebuildBriefly(recommendation),
      engineerFirst(recommendation) && `, ${engineerFirst(recommendation)}`,
      isRimTaken({ assumptions }) &&
        !BEFORE_DIGGING.includes(recommendation.option) &&
        ', if the ground there is level',
    ]
      .filter(Boolean)
      .join(''),
    `against    ${GOVERNS_WORDS[governs]}`,
    `in use     ${kept ? keptLine(kept, units) : shown ? `${fullLine(shown, units)}${by}` : 'not known'}`,
    `emptied    ${shown ? `${advised ? emptiedLine(recommendation, monthsToEmpty(recommendation)) : emptiedLine({ rules: [] }, monthsFree(shown.lowest_safe_level_m))}${by}` : 'not known'}`,
    `next       ${
      isRimTaken({ assumptions })
        ? `${LEVEL_THE_RIM}: on a slope this answer may not hold`
        : next
          ? nextLine(next)
          : `nothing tried would change this${depth_m > 0 ? '; read the dip pipe before lowering' : ''}`
    }`,
  ];
}

function fullLine({ full }: PossibleOption, units: UnitSystem): string {
  const { p10 } = full.net_head_m;
  const spare = formatBound(Math.abs(p10), 'length', units, 'down');
  if (full.safe) return p10 >= 0 ? `stays down, ${spare} or more to spare nine years in ten` : 'stays down';
  return p10 < 0 ? `lifts: ${spare} or more too low one year in ten` : 'fails oftener than accepted';
}

/** Of the recommendation by its rules: at its depth, with what is built and done otherwise. */
function emptiedLine(recommendation: Pick<Recommendation, 'rules'>, free: readonly number[]): string {
  if (free.length === 12) return 'in any month';
  return emptiedOnly(recommendation, free) ?? 'in no month';
}

function nextLine({ what, where, month, chance_to_change }: Recommendation['measure_next'][number]): string {
  const when = month === null ? '' : `, in ${monthName(month)}`;
  // Where too little was measured to say, no chance is known either.
  const turns =
    chance_to_change < LEAST_CHANCE ? '' : `: may change the answer (${chanceText(chance_to_change)})`;
  return `${what}, at ${where}${when}${turns}`;
}
