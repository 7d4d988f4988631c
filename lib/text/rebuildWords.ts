/** How a pond that is there is emptied to be rebuilt. */
import type { Recommendation } from '../contract/index.js';
import { duringMonths } from './monthWords.js';
import { timeWords } from './situationWords.js';

type Ruled = Pick<Recommendation, 'rules'>;

/** Whether it is rebuilt, by its rules. */
export const isRebuilt = ({ rules }: Ruled) => rules.some(({ code }) => code === 'rebuild');

/**
 * When it can be emptied to be rebuilt, after an order that names what is built.
 * @param recommendation - with its rules
 * @returns a sentence and its space before it; empty where nothing is rebuilt, or any month will do
 */
export function rebuildWhen({ rules }: Ruled): string {
  const rule = rules.find((each) => each.code === 'rebuild');
  if (rule?.code !== 'rebuild') return '';
  switch (rule.subject) {
    case 'emptied':
      return rule.values.months.length === 12
        ? ''
        : ` To build, empty it only ${duringMonths(rule.values.months)}.`;
    case 'opened':
      return ` To build, empty it only ${rule.values.months.length === 12 ? 'with' : `${duringMonths(rule.values.months)}, with`} the water under the liner pumped out as well.`;
    case 'too-brief':
      return ` An engineer plans how: empty, its sides stand for ${timeWords(24 * rule.values.days)} at most. Keep it full until then.`;
    case 'pumped':
      return ' An engineer plans how: empty, the liner lifts in every month unless the water under it is pumped down. Keep it full until then.';
    case 'barred':
      return ' An engineer plans how: as it is it may not be emptied to build in any month. Keep it full until then.';
  }
}

/**
 * The same as the end of a line.
 * @param recommendation - with its rules
 * @returns such as `, emptied for that only in August`; empty where nothing is rebuilt, or any month will do
 */
export function rebuildBriefly({ rules }: Ruled): string {
  const rule = rules.find((each) => each.code === 'rebuild');
  if (rule?.code !== 'rebuild') return '';
  if (rule.subject !== 'emptied' && rule.subject !== 'opened')
    return ', if an engineer finds how it can be emptied for that';
  const { months } = rule.values;
  const when = months.length === 12 ? [] : [`only ${duringMonths(months)}`];
  const how = rule.subject === 'opened' ? ['with the water under it pumped out'] : [];
  const words = [...when, ...how].join(', ');
  return words && `, emptied for that ${words}`;
}
