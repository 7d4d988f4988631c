/** What stands between the cells of a file, and before the decimals of its numbers. */

import type { DecimalSign } from '../units/index.js';
import type { Findings } from './problem.js';

export type Separator = ',' | ';' | '\t';

const SEPARATORS: readonly Separator[] = [',', ';', '\t'];
const NAMES: Record<Separator, string> = { ',': 'commas', ';': 'semicolons', '\t': 'tabs' };

/**
 * Takes off a first line such as `sep=;`, by which some spreadsheets name the separator.
 * @returns the text with that line emptied, so that lines keep their numbers
 */
export function takeSeparatorLine(text: string): { text: string; named?: Separator } {
  const [line, named] = /^"?sep=([,;\t])"?[,;\t ]*(?=\n|$)/i.exec(text) ?? [];
  return line === undefined ? { text } : { text: text.slice(line.length), named: named as Separator };
}

/**
 * The separator of a file, by its header: no name of a column holds one.
 * @param named by the file itself
 * @returns undefined when the header is apart by more than one kind, which is refused
 */
export function findSeparator(
  file: string,
  text: string,
  named: Separator | undefined,
  findings: Findings,
): Separator | undefined {
  if (named) return named;
  const lines = text.split('\n');
  const at = lines.findIndex((line) => /[^\s,;"]/.test(line) && !/^\s*"?\s*#/.test(line));
  const outsideQuotes = (lines[at] ?? '').replace(/"[^"]*"/g, '');
  const met = SEPARATORS.filter((sign) => outsideQuotes.trim().includes(sign));
  if (met.length <= 1) return met[0] ?? ',';
  const both = met.map((sign) => NAMES[sign]).join(' and ');
  findings.refuse({
    code: 'wrong-separator',
    file,
    line: at + 1,
    message: `invalid separator in '${lines[at]?.slice(0, 80)}' - ${both} stand between its names`,
    found: lines[at]?.slice(0, 80),
    expected: 'commas, semicolons or tabs',
    remedy: 'Keep one of them between the cells of every row.',
  });
  return undefined;
}

/** A decimal number with nothing that could be thousands: not `1,200`. */
const DECIMAL = /^[-+\u2212]?(?![1-9]\d{0,2}[.,]\d{3}(?!\d))\d+([.,])\d+(?![\d.,])/;

/**
 * The sign before decimals. Commas between cells leave the point; where semicolons stand between them a comma is
 * decimal, unless the numbers of the sheet say otherwise.
 */
export function decimalSign(separator: Separator, rows: readonly { cells: string[] }[]): DecimalSign {
  if (separator === ',') return 'point';
  const met = new Set<string>();
  for (const { cells } of rows)
    for (const cell of cells) {
      const sign = DECIMAL.exec(cell)?.[1];
      if (sign !== undefined) met.add(sign);
    }
  if (met.size === 2) return 'either';
  if (met.has('.')) return 'point';
  return met.has(',') || separator === ';' ? 'comma' : 'either';
}
