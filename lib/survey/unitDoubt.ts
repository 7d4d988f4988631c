/** Depths that fit their neighbours only in another unit: a column headed metres and read in feet, or the reverse. */

import type { Comparison, Pair } from './comparison.js';
import { depthComparisons } from './depthComparisons.js';
import { metres } from './doubt.js';
import type { Findings } from './problem.js';
import type { Sheet } from './sheet.js';
import type { Survey } from './survey.js';

/** What one unit is of another, and the slip that makes it. */
const SLIPS: [factor: number, words: string][] = [
  [1000, 'millimetres and metres mixed up do that'],
  [100, 'centimetres and metres mixed up do that'],
  [39.37, 'inches and metres mixed up do that'],
  [12, 'inches and feet mixed up do that'],
  [10, 'a slipped decimal point does that'],
  [3.281, 'feet and metres mixed up do that'],
];
/** of a factor, to be taken for it */
const NEAR = 1.35;

/**
 * Warns of a column whose depths are out of proportion to what they belong to, once for each.
 * @param survey as far as it could be read
 * @param sheets the files, for the headers as written
 */
export function checkUnits(
  survey: Survey,
  sheets: Readonly<Record<string, Sheet | undefined>>,
  findings: Findings,
): void {
  const told = new Set<string>();
  for (const comparison of depthComparisons(survey)) {
    const { file, column, say } = comparison;
    const doubt = doubtOf(comparison);
    if (!doubt || told.has(`${file} ${column}`)) continue;
    told.add(`${file} ${column}`);
    const { pair, ratio } = doubt;
    const written = headerOf(sheets[file], column);
    const said = say(metres(pair.value), metres(pair.beside));
    findings.warn({
      ...pair.origin,
      column: written,
      code: 'unit-doubt',
      message: `doubtful ${written} - ${said}; ${slipOf(ratio, written)}`,
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

/** What a header's unit is called in the words of a slip. */
const NAMES: Record<string, string> = {
  m: 'metres',
  cm: 'centimetres',
  mm: 'millimetres',
  ft: 'feet',
  in: 'inches',
};

/** @param header as written: a slip between two other units than its own is none */
function slipOf(ratio: number, header: string): string {
  const times = ratio > 1 ? ratio : 1 / ratio;
  const away = ([factor]: (typeof SLIPS)[number]) => Math.abs(Math.log(times / factor));
  const unit = NAMES[/_(m|cm|mm|ft|in)$/.exec(header.toLowerCase())?.[1] ?? ''];
  const possible = SLIPS.filter(
    ([, words]) => !unit || words.includes('decimal') || words.split(' ').includes(unit),
  );
  const nearest = possible.reduce((a, b) => (away(b) < away(a) ? b : a));
  const meant = away(nearest) < Math.log(NEAR) ? nearest[1] : 'mixed-up units do that (1 m is 3.28 ft)';
  return `${meant}: check both against the field book and name the unit in the header`;
}

function headerOf(sheet: Sheet | undefined, column: string): string {
  const form = new RegExp(`^${column}(_(m|cm|mm|ft|in))?$`);
  return sheet?.header.cells.find((cell) => form.test(cell.toLowerCase())) ?? column;
}
