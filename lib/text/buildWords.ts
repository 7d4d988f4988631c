/** How long the work takes, and what it costs, as somebody plans it. */
import type { WorkResult } from '../contract/index.js';

/** Two people at the work on both days of a weekend, six hours each. Our choice. */
const WEEKEND = { people: 2, days: 2, hours: 6 };

/** Weekends that digging and filling take. */
export function digWeekends({ hours_by_hand }: Pick<WorkResult, 'hours_by_hand'>): number {
  return Math.ceil(Math.ceil(hours_by_hand) / (WEEKEND.people * WEEKEND.days * WEEKEND.hours));
}

/**
 * How long the work takes by hand.
 * @param build - what is to be done
 * @returns sentences; none where nothing is dug or filled
 */
export function hoursWords({ hours_by_hand }: WorkResult): string {
  if (hours_by_hand === 0) return '';
  const hours = Math.ceil(hours_by_hand);
  const weekends = digWeekends({ hours_by_hand });
  return (
    `By hand it takes about ${hours === 1 ? 'an hour' : `${hours} hours`} of digging and filling: ` +
    `${weekends === 1 ? 'a weekend' : `${weekends} weekends`} for two people at six hours a day. ` +
    'Pipes, liner and edging take another weekend; a hired digger does the digging in a day or two. ' +
    'Have all of it in the garden before the first spadeful, so that the hole stands open for as few days as may be.'
  );
}

/**
 * What work costs by the prices of the survey.
 * @param work - of an option, or of what is recommended
 * @returns the sum, and how many items have no price; null where there are no prices
 */
export function costText({ cost, unpriced }: WorkResult): string | null {
  if (cost === null) return null;
  const missing =
    unpriced.length === 0
      ? ''
      : `, without ${unpriced.length === 1 ? 'an item that has' : `${unpriced.length} items that have`} no price`;
  return `${Math.round(cost)}${missing}`;
}

/**
 * What the list costs, and what of it has no price yet.
 * @param build - what is to be done
 * @returns a sentence; empty where the survey has no prices
 */
export function costWords(build: WorkResult): string {
  const cost = costText(build);
  if (cost === null) return '';
  const missing = build.unpriced.length > 0 ? `: ${build.unpriced.join('; ')}` : '';
  return `By the prices of the survey it costs ${cost}${missing}.`;
}
