/** Entries of a survey that look like slips, told where the answer is read: it rests on them. */
import type { Result } from '../contract/index.js';
import { listText } from './sentence.js';

/** Codes of warnings that say a value is likely not what was meant. */
const SLIPS: ReadonlySet<string> = new Set([
  'unit-doubt',
  'doubtful-value',
  'odd-value',
  'unknown-pit',
  'holes-apart',
]);

/** So many are named. */
const NAMED = 3;

/**
 * What of the survey is to be checked before anything rests on the answer.
 * @param result - with its warnings
 * @returns a sentence; empty where nothing looks like a slip
 */
export function doubtedWords({ warnings }: Pick<Result, 'warnings'>): string {
  const slips = warnings.filter(({ code }) => SLIPS.has(code));
  if (slips.length === 0) return '';
  const places = [
    ...new Set(slips.map(({ file, line }) => (line === undefined ? file : `${file} line ${line}`))),
  ];
  const more = places.length - NAMED;
  const named = more > 0 ? [...places.slice(0, NAMED), `${more} more`] : places;
  const one = places.length === 1;
  return `Check the survey first: ${listText(named)} ${one ? 'looks' : 'look'} like ${one ? 'a slip' : 'slips'}, and the answer rests on ${one ? 'it' : 'them'}; why, is under “Warnings”.`;
}
