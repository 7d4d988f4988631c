/** How long water stands in what was dug, what else speaks of its highest level, and when a dig stays dry. */

import type { Report } from '../contract/index.js';
import { wishedRow } from '../contract/index.js';
import { formatQuantity, type UnitSystem } from '../units/display.js';
import { monthWords } from './monthWords.js';
import { chanceText } from './say.js';

const weeks = (n: number | undefined) =>
  n === undefined ? 'never' : n < 1 ? 'less than a week' : `${n.toFixed(0)} ${n < 1.5 ? 'week' : 'weeks'}`;

/** Sentences on the ring around the pond; none where nothing permeable touches the liner. */
export function ringWords({ tub }: Report, units: UnitSystem): string[] {
  if (!tub) return [];
  const { hoursToFull, weeksToDrain, daysAbove, clayKnown } = tub;
  const { quick, likely, slow } = weeksToDrain;
  const standing = daysAbove.filter(({ days }) => days >= 0.5);
  return [
    hoursToFull === undefined
      ? 'The storm reckoned with does not fill the ring around the pond when it is empty.'
      : `The storm reckoned with fills the empty ring around the pond within ${hoursToFull.toFixed(1)} hours.`,
    clayKnown
      ? `Without a drain a full ring empties into the clay in ${weeks(likely)} (${weeks(quick)} if the clay lets water through well, ${weeks(slow)} if badly).`
      : 'How long a full ring takes to empty into the clay is not known: nobody looked how low the water there falls in the drier months.',
    standing.length > 0
      ? `In a mean year water stands in it above ${standing
          .map(({ level, days }) => `${formatQuantity(level, 'level', units)} on ${days.toFixed(0)}`)
          .join(' days, above ')} days.`
      : daysAbove.length > 0
        ? 'In a mean year no water stands in it on any day.'
        : 'On how many days water stands in it is not known without daily weather.',
  ];
}

const SAYS = {
  agrees: 'agrees with the water reckoned',
  higher: 'says the water comes higher than reckoned',
  lower: 'says the water stays lower than reckoned',
};

/** What else speaks of the highest water, and how wet winters were counted. */
export function evidenceWords({ result }: Report, units: UnitSystem): string[] {
  const winters = result.assumptions.find(({ item }) => item === 'wet winters');
  return [
    ...result.water.seasonal_high_evidence.map(({ source, depth_m, says }) => {
      const what = source === 'mottles and grey' ? 'The colours of the soil' : 'The highest mark remembered';
      return `${what}, at ${formatQuantity(-depth_m, 'level', units)}, ${SAYS[says]}.`;
    }),
    ...(winters ? [`Wet winters: ${winters.value} % up and down; ${winters.reason}.`] : []),
  ];
}

/** Months in which a dig to about the depth wished stays dry, by chance. */
export function dryWords(report: Report, units: UnitSystem): string[] {
  const { digging } = report;
  if (!digging) return [];
  const row = wishedRow(report);
  const depth = formatQuantity(digging.depths[row], 'length', units);
  return digging.months.map(({ chance, at }) => {
    const months = at[row].length > 0 ? monthWords(at[row]) : 'no month';
    return `A floor at ${depth} stays dry all month with a chance of ${chanceText(chance)} or better: ${months}.`;
  });
}

/**
 * Title of the water to pump.
 * @param depth - of the dig, m
 * @param units - how numbers are written
 * @returns a title
 */
export function pumpTitle(depth: number, units: UnitSystem): string {
  return `Water to pump from a dig to ${formatQuantity(depth, 'length', units)}, besides rain`;
}
