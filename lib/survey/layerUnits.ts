/** Tops and bottoms of layers in different units. */

import type { Findings } from './problem.js';
import { groupBy } from './rows.js';
import type { Row } from './table.js';

/** Layers meet: a top this many times the end above it, or less than one part in so many, is no gap; our choice. */
const ORDINARY = 2;

type Depths = { pit: string; top: number; bottom: number };

/**
 * Warns where tops are, throughout, a multiple of the bottoms they should meet.
 * @param rows every layer, also those refused for lying upside down
 */
export function checkLayerUnits(rows: Row<Depths>[], findings: Findings): void {
  const joints = [...groupBy(rows, ({ values }) => values.pit).values()].flatMap((pit) => {
    const layers = [...pit].sort((a, b) => a.values.top - b.values.top);
    return layers.slice(1).map((row, at) => ({
      row,
      ratio: row.values.top / (layers[at] as Row<Depths>).values.bottom,
    }));
  });
  const usable = joints.filter(({ ratio }) => Number.isFinite(ratio) && ratio > 0);
  usable.sort((a, b) => a.ratio - b.ratio);
  const middle = usable[Math.floor((usable.length - 1) / 2)];
  if (!middle || (middle.ratio <= ORDINARY && middle.ratio >= 1 / ORDINARY)) return;
  const [top, bottom] = [middle.row.cell('top'), middle.row.cell('bottom')];
  const times = Number((middle.ratio > 1 ? middle.ratio : 1 / middle.ratio).toPrecision(2));
  const which = middle.ratio > 1 ? 'deeper' : 'shallower';
  const { found: _found, ...place } = top;
  findings.warn({
    ...place,
    code: 'unit-doubt',
    message: `doubtful ${top.column} and ${bottom.column} - layers begin ${times} times ${which} than the ones above them end; 1 m is 3.28 ft: are both columns in the unit of their header?`,
  });
}
