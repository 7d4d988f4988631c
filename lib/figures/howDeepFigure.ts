import type { Report } from '../contract/index.js';
import { beforeDiggingWords } from '../text/beforeDigging.js';
import { type DepthRow, depthRows, depthRowsAlt } from '../text/depthRows.js';
import { FOOT, formatQuantity, type UnitSystem } from '../units/index.js';
import { DEPTH_FRAME, depthRowParts } from './depthRowParts.js';
import {
  type Drawing,
  FORM,
  type Form,
  foldedTo,
  framed,
  leading,
  line,
  paint,
  path,
  widthOf,
  words,
} from './drawing.js';
import { fitsRow } from './fitsRow.js';
import { px } from './svgParts.js';

/**
 * How deep with what: a row an option, solid as deep as it is safe, hatched beyond, what fails named at the edge, against
 * the depth wished; what is recommended first, what cannot be had last.
 * @param report what was computed
 * @param units system of the numbers; the survey's own unless said
 * @returns drawings with their alternative text
 */
export function howDeepFigure(report: Report, units: UnitSystem = report.units): Drawing {
  const rows = depthRows(report, units, fitsRow);
  const alt = depthRowsAlt(rows, report, units);
  return {
    wide: drawn('wide', rows, report, units, alt),
    narrow: drawn('narrow', rows, report, units, alt),
    alt,
  };
}

/** Depth to which the axis goes, m. */
function deepestOf(rows: DepthRow[], wish: number, searched: number): number {
  const ends = rows.flatMap(({ safe_m, endless }) => (safe_m !== null && !endless ? [safe_m] : []));
  return Math.min(Math.max(wish * 1.35, Math.max(0, ...ends) * 1.15), Math.max(searched, wish * 1.15));
}

function drawn(form: Form, rows: DepthRow[], report: Report, units: UnitSystem, alt: string): string {
  const { width, type } = FORM[form];
  const frame = DEPTH_FRAME[form];
  const wish = report.pond.depth_m;
  const searched = Math.max(0, ...report.result.options.map(({ depth_searched_m }) => depth_searched_m));
  const deepest = deepestOf(rows, wish, searched);
  const left = frame.left;
  const right = width - frame.right;
  const X = (depth: number) => left + (Math.min(depth, deepest) / deepest) * (right - left);
  const parts: string[] = [];
  const warned = beforeDiggingWords(report);
  let y = 0;
  if (warned) {
    const text = foldedTo(warned, width, type, true);
    parts.push(words({ rows: text, x: 0, y: type + 2, size: type, bold: true, paint: 'fail' }));
    y = text.length * leading(type) + 12;
  }
  // Heads: the wish over its line, and what stands at the right.
  const wished = `wished ${formatQuantity(wish, 'length', units)}`;
  const half = widthOf(wished, type, true) / 2;
  const head = y + type + 2;
  if (form === 'wide')
    parts.push(words({ rows: 'it fails', x: width - frame.right + 16, y: head, size: type }));
  parts.push(
    words({
      rows: wished,
      x: Math.min(Math.max(X(wish), left + half), form === 'wide' ? right - half : width - half),
      y: head,
      size: type,
      anchor: 'middle',
      bold: true,
    }),
  );
  y = head + 10;
  const top = y;
  const possible = rows.filter(({ safe_m }) => safe_m !== null);
  const body: string[] = [];
  const lines: string[] = [];
  for (const row of possible) {
    const made = depthRowParts(form, row, {
      X,
      left,
      right,
      width,
      y,
      wished: X(wish),
      doubt: warned !== null,
      advised:
        row.advised_m !== null && row.advised_m !== wish
          ? `recommended, ${formatQuantity(row.advised_m, 'length', units)} deep`
          : 'recommended',
    });
    const stroke = [
      [X(wish), made.bar - 5],
      [X(wish), made.bar + DEPTH_FRAME[form].bar + 5],
    ] as const;
    lines.push(line('erased', ...stroke, 6), line('edge', ...stroke, 2.5));
    body.push(optionGroup(row, y, made, width));
    y = made.end;
  }
  parts.push(
    line('rule', [X(wish), top - 6], [X(wish), y - 4], 1, '3 4'),
    ...body,
    ...lines,
    ...axisParts({ X, y, deepest, left, right, type, form }, units),
  );
  y += type + 26;
  for (const row of rows.filter(({ safe_m }) => safe_m === null)) {
    const text = form === 'wide' ? [row.told] : foldedTo(`${row.name}: ${row.told}`, width - type - 8, type);
    const base = y + type;
    const size = type - 3;
    parts.push(
      `<path d="${path([
        [0, base - size],
        [size, base],
      ])}${path([
        [size, base - size],
        [0, base],
      ])}" ${paint('rule')} stroke-width="2"/>`,
      ...(form === 'wide' ? [words({ rows: row.name, x: type + 6, y: base, size: type })] : []),
      words({ rows: text, x: form === 'wide' ? left : type + 6, y: base, size: type }),
    );
    y += text.length * leading(type) + 7;
  }
  return framed(form, y + 6, alt, parts.join(''));
}

/** What belongs to an option, on an area that a pointer finds. */
function optionGroup(
  { option }: DepthRow,
  y: number,
  { parts, end }: { parts: string[]; end: number },
  width: number,
): string {
  return `<g class="fig-option" data-option="${option}">${parts.join('')}<rect class="fig-hit" x="0" y="${px(y)}" width="${width}" height="${px(end - y - 6)}" rx="3" fill="none" stroke="none" pointer-events="all"/></g>`;
}

function axisParts(
  {
    X,
    y,
    deepest,
    left,
    right,
    type,
    form,
  }: {
    X: (depth: number) => number;
    y: number;
    deepest: number;
    left: number;
    right: number;
    type: number;
    form: Form;
  },
  units: UnitSystem,
): string[] {
  const unit = units === 'us' ? FOOT : 1;
  const room = form === 'wide' ? 70 : 58;
  const step =
    [0.25, 0.5, 1, 2].map((each) => each * unit).find((each) => X(each) - left >= room) ?? 4 * unit;
  const ticks = Array.from({ length: Math.floor(deepest / step + 1e-6) + 1 }, (_, i) => i * step);
  return [
    line('rule', [left, y], [right, y], 1.5),
    ...ticks.map((depth, i) => {
      const size = Number((depth / unit).toFixed(2));
      const text = i === 0 ? (form === 'wide' ? 'ground' : '0') : `${size} ${units === 'us' ? 'ft' : 'm'}`;
      return (
        line('rule', [X(depth), y], [X(depth), y + 6], 1.5) +
        words({
          rows: text,
          x: X(depth),
          y: y + type + 9,
          size: type,
          anchor: i === 0 && form === 'narrow' ? 'start' : X(depth) > right - 16 ? 'end' : 'middle',
        })
      );
    }),
  ];
}
