/** How the pond is used, as the end of an order: how full it is kept, and when it may be emptied. */
import { monthsPlanned, monthsToEmpty, type Report } from '../contract/index.js';
import { emptiedWords } from './emptiedWords.js';
import { isRebuilt } from './rebuildWords.js';

/**
 * How full it is kept and when it is emptied, where that is not all one.
 * @param report - with what is recommended
 * @param size - of metres in words
 * @returns such as `, kept within 5 cm of full`; empty where nothing is asked of its use
 */
export function useOrder(report: Report, size: (metres: number) => string): string {
  return keptOrder(report, size) + emptiedOrder(report);
}

/** How full it is kept, where only its own water holds the liner down; not again where that is what is changed. */
function keptOrder({ result }: Report, size: (metres: number) => string): string {
  const { rules, change } = result.recommendation;
  if (change?.kept_within_m !== undefined) return '';
  return rules
    .map((rule) =>
      rule.code !== 'full-before-rains'
        ? ''
        : rule.subject === 'topped-up'
          ? `, kept within ${size(rule.values.within_m)} of full`
          : ', full before the rains',
    )
    .join('');
}

/** In which months it may be emptied, where that is not all one; of a pond never emptied by wish the steps tell. */
function emptiedOrder(report: Report): string {
  const { recommendation } = report.result;
  const months = monthsToEmpty(recommendation);
  if (months.length === 12 || (months.length > 0 && monthsPlanned(report).length === 0)) return '';
  return `, ${isRebuilt(recommendation) ? 'after that ' : ''}${emptiedWords(recommendation, months)}`;
}
