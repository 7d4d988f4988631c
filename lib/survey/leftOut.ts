/** What was given and stays out of the answer, told apart from what was merely noticed. */

import { formatWarning, warningLines } from './problem.js';
import type { Warning } from './survey.js';

/** By code: what would bring it in, where the warning itself does not say. */
const LEFT_OUT: Readonly<Record<string, string>> = {
  'unknown-file': 'Give it the name of a file of the survey, or leave it.',
  'unused-column': '',
  'left-in-later': '',
  'commented-row': "Take the '#' away if it is to count.",
  'unknown-pit': 'Describe that hole in pits.csv, or write its name as it is there.',
  'short-test': 'Look again after a time, and add the row.',
  'test-geometry': '',
  'test-too-few': '',
  'test-wrong-way': '',
  'test-below-table': '',
  'test-outside-hole': '',
  'test-time-order': '',
  'dry-too-soon': 'Wait that long and look again.',
  'dips-outside-weather': 'Bring weather.csv up to the days of the looks.',
  'missing-distance': '',
  'not-used': '',
  'weather-too-short': 'Bring weather of a whole year or more, ten if it can be had.',
  'weather-not-used': 'Bring rain and temperatures of every month, or leave the file away.',
  'climate-not-used': 'Fill the twelve months in.',
};

/** The warnings of a result as lines under headings: what was given and not used, then what was noticed. */
export function noticeLines(warnings: readonly Warning[]): string[] {
  const left = warnings.filter(({ code }) => code in LEFT_OUT);
  const noticed = warnings.filter(({ code }) => !(code in LEFT_OUT));
  const part = (heading: string, lines: string[]) =>
    lines.length === 0 ? [] : [heading, ...lines.map((line) => `  ${line}`)];
  return [
    ...part(
      'Given and not used:',
      left.map((one) => [formatWarning(one), LEFT_OUT[one.code]].filter(Boolean).join('. ')),
    ),
    ...part('Noticed:', warningLines(noticed)),
  ];
}
