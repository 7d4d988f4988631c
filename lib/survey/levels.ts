/** levels.csv: levelled points. */

import { named, quantity, remark, required, text, word } from './column.js';
import * as garden from './gardenWords.js';
import type { Findings } from './problem.js';
import { distinct } from './rows.js';
import type { Sheet } from './sheet.js';
import { LEVEL_ROLES, type LevelPoint } from './survey.js';
import { readTable } from './table.js';

/** The columns of levels.csv. */
export const LEVEL_COLUMNS = {
  point: required(text()),
  role: required(word(LEVEL_ROLES, garden.ROLES)),
  x: quantity('length', { min: -1e7, max: 1e7 }),
  y: quantity('length', { min: -1e7, max: 1e7 }),
  distance: quantity('length', { min: 0, max: 5000 }),
  level: required(named(quantity('length', { min: -500, max: 9000 }), 'height')),
  note: remark('notes', 'remark', 'remarks', 'comment'),
};

/** Reads levels.csv in the order of the file, which joins boundary points. */
export function readLevels(sheet: Sheet | undefined, findings: Findings): LevelPoint[] {
  const once = distinct(
    readTable(sheet, LEVEL_COLUMNS, findings),
    ({ point, role }) => `point (${point}, ${role})`,
    ({ note, ...said }) => said,
    'level',
    findings,
  );
  for (const row of once) {
    const [x, y] = [row.cell('x'), row.cell('y')];
    if (!x.found === !y.found) continue;
    const missing = x.found ? y : x;
    const message = `missing ${x.found ? 'y' : 'x'} - a place on the plan needs both x and y`;
    findings.refuse({
      ...missing,
      found: '',
      code: 'missing-value',
      message,
      remedy: 'Write both, or neither and the distance from the pond.',
    });
  }
  return once.map((row) => ({ ...row.values, origin: row.origin }));
}
