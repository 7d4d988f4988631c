/** pits.csv: the layers seen in holes. */

import {
  CONSISTENCIES,
  MOTTLES,
  OTHER_GROUND,
  STRUCTURES,
  type Texture,
  USDA_CLASSES,
} from '../soil/index.js';
import { type Column, named, quantity, remark, required, word } from './column.js';
import * as garden from './gardenWords.js';
import { checkLayerUnits } from './layerUnits.js';
import type { Findings } from './problem.js';
import { byName, distinct, sorted } from './rows.js';
import type { Sheet } from './sheet.js';
import type { LayerRow } from './survey.js';
import { type Row, readTable, type Values } from './table.js';

/** Places that are no holes in the ground but have looks in water.csv. */
export const RESERVED_PITS = ['pond', 'dip-pipe', 'dig'];

/** The name of a pit; a reserved one in any case and with a space for the hyphen. */
export function pitName(): Column<string> {
  return {
    read: (cell) => RESERVED_PITS.find((name) => name === cell.toLowerCase().replace(/[\s_]+/g, '-')) ?? cell,
  };
}

const PERCENT = { min: 0, max: 1 };
/** percentages of one soil may miss 100 by rounding this much */
const SUM_TOLERANCE = 0.01 + 1e-9;
/** depths closer than this are the same reading of a tape, m */
const SAME_DEPTH = 1e-6;

const TEXTURES: readonly Texture[] = [...USDA_CLASSES, ...OTHER_GROUND];
/** A texture, or ground of which none is said. */
function texture(): Column<Texture | undefined> {
  const known = word(TEXTURES, garden.TEXTURES);
  const unsaid = (cell: string) => garden.NO_TEXTURE.includes(cell.toLowerCase().replace(/[\s_-]+/g, ' '));
  const colour = (cell: string) =>
    /\b(blue|gr[ae]y)\b/i.test(cell) ? "; where all of it is blue or grey, say 'grey' under mottles" : '';
  return {
    read: (cell, style) => (unsaid(cell) ? undefined : known.read(cell, style)),
    taken(cell) {
      if (unsaid(cell)) return 'ground whose texture is not said; what it feels like would say more';
      const as = known.taken?.(cell);
      return as && `${as}${colour(cell)}`;
    },
  };
}

/** The columns of pits.csv. */
export const PIT_COLUMNS = {
  pit: required(named(pitName(), 'hole')),
  top: required(named(quantity('length', { min: -3, max: 30 }), 'from')),
  bottom: required(named(quantity('length', { min: -3, max: 30, oddAbove: 10 }), 'to')),
  texture: named(texture(), 'soil'),
  sand: quantity('fraction', PERCENT),
  silt: quantity('fraction', PERCENT),
  clay: quantity('fraction', PERCENT),
  // More of it is a gravel or a rock, and its texture should say so.
  stones: quantity('fraction', { ...PERCENT, max: 0.9 }),
  organic: quantity('fraction', PERCENT),
  structure: word(STRUCTURES, garden.STRUCTURES),
  mottles: word(MOTTLES, garden.MOTTLES),
  consistency: named(word(CONSISTENCIES), 'thumb'),
  ksat: quantity('speed', { min: 1e-13, max: 0.1, oddAbove: 1e-2 }),
  strength: quantity('pressure', { min: 100, max: 1e6, oddAbove: 3e5 }),
  photo: remark(),
  note: remark('notes', 'remark', 'remarks', 'comment'),
};
type Layer = Values<typeof PIT_COLUMNS>;

/** Reads pits.csv: layers by pit and top, each the right way up, none in another's place. */
export function readPits(sheet: Sheet | undefined, findings: Findings): LayerRow[] {
  const all = readTable(sheet, PIT_COLUMNS, findings);
  checkLayerUnits(all, findings);
  const rows = all.filter((row) => isRightWayUp(row, findings) && isHole(row, findings));
  const once = distinct(
    rows,
    ({ pit, top, bottom }) => `pit ${pit}, ${top} to ${bottom} m`,
    ({ photo, note, ...said }) => said,
    'top',
    findings,
  );
  const layers = sorted(
    once,
    (layer) => layer.pit,
    (layer) => layer.top,
    findings,
  ).sort((a, b) => byName(a.values.pit, b.values.pit));
  layers.forEach((row, at) => {
    const above = layers[at - 1];
    checkJoint(above?.values.pit === row.values.pit ? above : undefined, row, findings);
  });
  return layers.map((row) => ({ ...row.values, ...grains(row, findings), origin: row.origin }));
}

function isRightWayUp(row: Row<Layer>, findings: Findings): boolean {
  if (row.values.bottom - row.values.top > SAME_DEPTH) return true;
  const [top, place] = [row.cell('top'), row.cell('bottom')];
  findings.refuse({
    ...place,
    code: 'layer-upside-down',
    message: `invalid '${place.found}' - a layer must end deeper than its top, '${top.found}'`,
    expected: `more than ${top.found}`,
    remedy: 'Write depths downwards from the ground; swap the two if they were exchanged.',
  });
  return false;
}

function isHole(row: Row<Layer>, findings: Findings): boolean {
  if (!RESERVED_PITS.includes(row.values.pit)) return true;
  const message = `invalid '${row.values.pit}' - the name is kept for looks in water.csv`;
  findings.refuse({
    ...row.cell('pit'),
    code: 'reserved-name',
    message,
    remedy: 'Give the hole another name.',
  });
  return false;
}

function checkJoint(above: Row<Layer> | undefined, row: Row<Layer>, findings: Findings): void {
  const { pit, top } = row.values;
  const end = above?.values.bottom ?? Math.min(0, top);
  if (above && end - top > SAME_DEPTH) {
    const place = row.cell('top');
    findings.refuse({
      ...place,
      code: 'layers-overlap',
      message: `invalid '${place.found}' - the layer in line ${above.origin.line} of pit ${pit} ends deeper, at '${above.cell('bottom').found}'`,
      expected: above.cell('bottom').found,
      remedy: 'Begin each layer where the one above it ends.',
    });
  } else if (top - end > SAME_DEPTH) {
    const from = above ? `'${above.cell('bottom').found}'` : 'the ground';
    const message = `nothing is said of pit ${pit} between ${from} and '${row.cell('top').found}'`;
    findings.warn({ ...row.origin, column: row.cell('top').column, code: 'layer-gap', message });
  }
}

/** Sand, silt and clay make up the fine earth: three must sum to 100 %, two leave the third. */
function grains(row: Row<Layer>, findings: Findings): Pick<LayerRow, 'sand' | 'silt' | 'clay'> {
  const { sand, silt, clay } = row.values;
  const given = (['sand', 'silt', 'clay'] as const).filter((part) => row.values[part] !== undefined);
  if (given.length < 2) return {};
  const sum = (sand ?? 0) + (silt ?? 0) + (clay ?? 0);
  if (sum > 1 + SUM_TOLERANCE || (given.length === 3 && sum < 1 - SUM_TOLERANCE)) {
    const last = given[given.length - 1] as 'sand' | 'silt' | 'clay';
    findings.refuse({
      ...row.cell(last),
      code: 'texture-sum',
      message: `invalid '${row.cell(last).found}' - ${given.join(', ')} sum to ${Number((sum * 100).toPrecision(4))} %`,
      expected: given.length === 3 ? '99 to 101 %' : '101 % at most',
      remedy: 'Give them as percent of the fine earth (below 2 mm), stones apart.',
    });
    return {};
  }
  if (given.length === 3) return {};
  const rest = Math.max(0, 1 - sum);
  return { sand: sand ?? rest, silt: silt ?? rest, clay: clay ?? rest };
}
