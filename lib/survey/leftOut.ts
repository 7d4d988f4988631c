/** What was given and stays out of the answer, told apart from what was merely noticed. */

import { formatWarning } from './problem.js';
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

/** Of one kind in one file this many are told one by one on a terminal. */
const ONE_BY_ONE = 3;

/** The warnings of a result as lines under headings: what was given and not used, then what was noticed. */
export function noticeLines(warnings: readonly Warning[]): string[] {
  const without = warnings.filter(({ code }) => code === 'empty-item');
  const others = warnings.filter(({ code }) => code !== 'empty-item');
  const left = others.filter(({ code }) => code in LEFT_OUT);
  const noticed = others.filter(({ code }) => !(code in LEFT_OUT));
  const files = [...new Set(without.map(({ file }) => file))];
  const empty = files.flatMap((file) => {
    const here = without.filter((one) => one.file === file);
    if (here.length <= ONE_BY_ONE) return here.map(formatWarning);
    const items = here.map(({ message }) => message.replace(/^'(\S+)' .*$/, '$1'));
    return [
      `${file}: ${items.length} items have no value, so the survey does not say them: ${items.join(', ')}`,
    ];
  });
  const part = (heading: string, lines: string[]) =>
    lines.length === 0 ? [] : [heading, ...lines.map((line) => `  ${line}`)];
  return [
    ...part(
      'Given and not used:',
      left.map((one) => [formatWarning(one), LEFT_OUT[one.code]].filter(Boolean).join('. ')),
    ),
    ...part('Noticed:', [...noticed.map(formatWarning), ...empty]),
  ];
}
