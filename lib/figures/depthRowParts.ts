/** A row of the figure of depths: its name, its bar, what is told of it. */

import type { DepthRow } from '../text/depthRows.js';
import {
  box,
  FORM,
  type Form,
  foldedTo,
  hatching,
  leading,
  line,
  paint,
  path,
  widthOf,
  words,
} from './drawing.js';

/** Where the axis of depth lies: room for names at its left and chances at its right. */
export const DEPTH_FRAME = {
  wide: { left: 240, right: 240, bar: 24 },
  narrow: { left: 4, right: 10, bar: 18 },
};

/** What a row is drawn by. */
interface RowPlace {
  X: (depth: number) => number;
  left: number;
  right: number;
  width: number;
  y: number;
  /** where the wish is */
  wished: number;
  /** what is written with what is recommended */
  advised: string;
  /** nothing is advised: no bar looks like leave to dig */
  doubt: boolean;
}

/** A row, where its bar begins and where the next row may. */
export function depthRowParts(
  form: Form,
  row: DepthRow,
  at: RowPlace,
): { parts: string[]; bar: number; end: number } {
  const { left, right, width } = at;
  const { type } = FORM[form];
  const height = DEPTH_FRAME[form].bar;
  const head = form === 'wide' ? headBeside(row, at, type) : headAbove(row, at, type);
  const bar = form === 'wide' ? at.y : head.end;
  const edge = at.X(row.safe_m!);
  const told = foldedTo(row.told, right - left, type);
  const most = Math.max(...told.map((text) => widthOf(text, type)));
  const start = form === 'wide' ? Math.max(left, Math.min(edge, right - most)) : 0;
  const under = bar + height + type + 6;
  const parts = [
    ...head.parts,
    ...barParts(row, at, bar, height, type),
    words({ rows: told, x: start, y: under, size: type, halo: true }),
  ];
  const end = under + (told.length - 1) * leading(type);
  if (form === 'wide') return { parts, bar, end: Math.max(end, head.end) + 18 };
  const chance = foldedTo(
    `it fails: ${row.chance}${row.chance_note ? `, ${row.chance_note}` : ''}`,
    width,
    type,
  );
  parts.push(words({ rows: chance, x: 0, y: end + leading(type), size: type }));
  return { parts, bar, end: end + chance.length * leading(type) + 18 };
}

/** Name at the left, chance at the right. */
function headBeside(row: DepthRow, { left, right, width, y, advised }: RowPlace, type: number) {
  const bold = row.advised_m !== null;
  const base = y + 17;
  const name = foldedTo(row.name, left - 34, type + 1, bold);
  const said = bold ? foldedTo(advised, left - 34, type) : [];
  const room = width - right - 20;
  const chance = foldedTo(row.chance, room, type, bold);
  const note = row.chance_note ? foldedTo(row.chance_note, room, type) : [];
  const under = base + name.length * leading(type + 1);
  const parts = [
    ...(bold ? [pointer(2, y + 12, 7)] : []),
    words({ rows: name, x: 20, y: base, size: type + 1, bold }),
    ...(bold ? [words({ rows: said, x: 20, y: under, size: type })] : []),
    words({ rows: chance, x: right + 16, y: base, size: type, bold }),
    ...(note.length > 0
      ? [words({ rows: note, x: right + 16, y: base + chance.length * leading(type), size: type })]
      : []),
  ];
  const rows = Math.max(name.length + said.length, chance.length + note.length);
  return { parts, end: base + (rows - 1) * leading(type) };
}

function headAbove(row: DepthRow, { width, y, advised }: RowPlace, type: number) {
  const bold = row.advised_m !== null;
  const x = bold ? 18 : 0;
  const name = foldedTo(bold ? `${row.name}, ${advised}` : row.name, width - x, type + 1, true);
  return {
    parts: [
      ...(bold ? [pointer(2, y + 9, 6)] : []),
      words({ rows: name, x, y: y + 14, size: type + 1, bold: true }),
    ],
    end: y + name.length * leading(type + 1) + 6,
  };
}

/** Points to what is recommended. */
function pointer(x: number, y: number, r: number): string {
  const corners: [number, number][] = [
    [x, y - r],
    [x + 1.7 * r, y],
    [x, y + r],
  ];
  return `<path d="${path(corners, true)}" ${paint('ink')}/>`;
}

/** Solid as deep as it is safe, hatched beyond, an arrow where nothing ends it. */
function barParts(
  row: DepthRow,
  { X, left, right, wished, doubt }: RowPlace,
  bar: number,
  height: number,
  type: number,
): string[] {
  const edge = X(row.safe_m!);
  const parts = [
    doubt
      ? box('edge', left, bar, edge - left, height, 'stroke-width="1.5" stroke-dasharray="5 4"')
      : box('water', left, bar, edge - left, height),
  ];
  if (row.endless) {
    const head: [number, number][] = [
      [right, bar - 3],
      [right + 9, bar + height / 2],
      [right, bar + height + 3],
    ];
    return [...parts, `<path d="${path(head, true)}" ${paint(doubt ? 'rule' : 'water')}/>`];
  }
  parts.push(
    hatching('rule', edge, bar, right - edge, height),
    box('rule', edge, bar, right - edge, height, 'stroke-width="0.75"'),
    line('red', [edge, bar - 4], [edge, bar + height + 4], 3.5),
  );
  if (row.edge === '') return parts;
  const wide = widthOf(row.edge, type, true) + 12;
  const crossed = wished > edge - wide && wished < edge + 4;
  const inside = edge - left > wide && (!crossed || right - edge < wide);
  const from = inside && crossed ? Math.min(edge, wished) : edge;
  return [
    ...parts,
    words({
      rows: row.edge,
      x: inside ? from - 8 : edge + 8,
      y: bar + height / 2 + type * 0.35,
      size: type,
      anchor: inside ? 'end' : 'start',
      bold: true,
      paint: inside && !doubt ? 'paper' : 'ink',
      halo: !inside,
    }),
  ];
}
