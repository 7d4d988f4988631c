/** A bar to hold a ruler to. */

import { dimensionText } from '../text/sheetWords.js';
import type { UnitSystem } from '../units/index.js';
import { FOOT } from '../units/index.js';
import type { SheetPaper } from './sheetPaper.js';

/** Lengths of a bar. */
const LENGTHS: Record<UnitSystem, readonly number[]> = {
  metric: [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200],
  us: [0.25, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500].map((feet) => feet * FOOT),
};

/** A bar of a round length, some 20 to 45 mm long, from a point to the right; its length over the end. */
export function scaleBar(paper: SheetPaper, x: number, y: number, scale: number, units: UnitSystem): void {
  const mm = 1000 / scale;
  const lengths = LENGTHS[units];
  const length = lengths.find((each) => each * mm >= 18) ?? lengths.at(-1)!;
  const half = (length * mm) / 2;
  paper.shape('ink', [
    [x, y - 1.2],
    [x + half, y - 1.2],
    [x + half, y],
    [x, y],
  ]);
  paper.shape(
    'edge',
    [
      [x, y - 1.2],
      [x + 2 * half, y - 1.2],
      [x + 2 * half, y],
      [x, y],
    ],
    { width: 0.2 },
  );
  paper.text('0', x, y - 2.2);
  paper.text(dimensionText(length, units), x + 2 * half, y - 2.2, { anchor: 'middle' });
}
