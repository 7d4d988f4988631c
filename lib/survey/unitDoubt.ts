/** Depths that fit their neighbours only in another unit: a column headed metres and read in feet, or the reverse. */

import { type Comparison, depthComparisons, type Pair } from './depthComparisons.js';
import type { Findings } from './problem.js';
import type { Sheet } from './sheet.js';
import type { Survey } from './survey.js';

/** What one unit is of another, largest first, and the slip that makes it. */
const SLIPS: [factor: number, words: string][] = [
  [1000, 'millimetres and metres'],
  [100, 'centimetres and metres'],
  [39.37, 'inches and metres'],
  [12, 'inches and feet'],
  [10, 'a decimal point'],
  [3.281, 'feet and metres'],
];
/** of a factor, to be taken for it */
const NEAR = 1.35;

/**
 * Warns of a column whose depths are out of proportion to what they belong to.
 * @param survey as far as it could be read
 * @param sheets the files, for the headers as written
 */
export function checkUnits(
  survey: Survey,
  sheets: Readonly<Record<string, Sheet | undefined>>,
  findings: Findings,
): void {
  for (const comparison of depthComparisons(survey)) {
    const doubt = doubtOf(comparison);
    if (!doubt) continue;
    const { pair, ratio } = doubt;
    const { file, column, say } = comparison;
    const written = headerOf(sheets[file], column);
    const said = say(metres(pair.value), metres(pair.beside));
    findings.warn({
      ...pair.origin,
      column: written,
      code: 'unit-doubt',
      message: `doubtful ${written} - ${said}; ${slipOf(ratio)}`,
    });
  }
}

function doubtOf({ pairs, least, most, by }: Comparison): { pair: Pair; ratio: number } | undefined {
  const ratios = pairs
    .filter(({ value, beside }) => value > 0 && beside > 0)
    .map((pair) => ({ pair, ratio: pair.value / pair.beside }))
    .sort((a, b) => a.ratio - b.ratio);
  const found = ratios[by === 'largest' ? ratios.length - 1 : Math.floor((ratios.length - 1) / 2)];
  return found && (found.ratio < least || found.ratio > most) ? found : undefined;
}

function slipOf(ratio: number): string {
  const times = ratio > 1 ? ratio : 1 / ratio;
  const [, slip] = SLIPS.find(([factor]) => times > factor / NEAR && times < factor * NEAR) ?? [];
  const meant = slip ? `mixed up, ${slip} do that` : 'mixed-up units do that (1 m is 3.28 ft)';
  return `${meant}: check both columns against the field book and name the unit in the header`;
}

const metres = (value: number) => `${Number(value.toPrecision(3))} m`;

function headerOf(sheet: Sheet | undefined, column: string): string {
  const form = new RegExp(`^${column}(_(m|cm|mm|ft|in))?$`);
  return sheet?.header.cells.find((cell) => form.test(cell.toLowerCase())) ?? column;
}
