import { monthShort } from '../text/monthWords.js';
import type { UnitSystem } from '../units/index.js';
import { FOOT } from '../units/index.js';
import { box, FORM, foldedTo, framed, leading, line, type Paint, paint, widthOf, words } from './drawing.js';
import { px } from './svgParts.js';
import { cellParts, LOOKS, levelRange, lookMark, monthGroup, type Year } from './yearParts.js';

const NAME = 34;
const CELL = 60;
const ROW = 42;

/**
 * The year with a row a month: how high the water stands along it, ground at the left, and what may be done at the right.
 * @param year what the figure shows
 * @param units system of the numbers
 * @param alt in words
 * @returns SVG
 */
export function yearOnPhone(year: Year, units: UnitSystem, alt: string): string {
  const { width, type } = FORM.narrow;
  const { waters, looks, strips, lines } = year;
  const right = width - strips.length * CELL - (strips.length > 0 ? 6 : 0);
  const [low, high] = levelRange(year);
  const X = (level: number) => NAME + ((high - level) / (high - low)) * (right - NAME);
  const parts: string[] = [];
  // A named level has a row of its own over the track; a stem leads down.
  const named = [{ name: 'ground', level_m: 0, dash: '', tone: 'rule' as Paint }, ...lines];
  const order = [...named].sort((a, b) => b.level_m - a.level_m);
  const heads = strips.map(({ head }) => head);
  const top = Math.max(order.length, 2) * leading(type) + 8;
  const foot = top + 12 * ROW;
  order.forEach(({ name, level_m, dash, tone }, at) => {
    const base = (at + 1) * leading(type);
    const half = widthOf(name, type) / 2;
    const x = Math.min(Math.max(X(level_m), NAME + half), right - half);
    parts.push(
      line('rule', [X(level_m), base + 4], [X(level_m), top], 1),
      line(tone, [X(level_m), top], [X(level_m), foot], tone === 'rule' ? 1 : 2, dash),
      words({ rows: name, x, y: base, size: type, anchor: 'middle', halo: true }),
    );
  });
  heads.forEach((head, at) => {
    parts.push(
      words({
        rows: head.filter(Boolean),
        x: right + 6 + (at + 0.5) * CELL,
        y: top - 8 - (head.filter(Boolean).length - 1) * leading(type),
        size: type,
        anchor: 'middle',
        bold: true,
      }),
    );
  });
  const months = Array.from({ length: 12 }, (_, m) => {
    const from = top + m * ROW;
    const middle = from + ROW / 2;
    const water = waters[m];
    const inside = [
      words({ rows: monthShort(m + 1), x: 0, y: middle + type * 0.35, size: type, bold: true }),
      ...(water
        ? [
            box(
              'band',
              X(water.high_m),
              middle - 8,
              Math.max(X(water.low_m) - X(water.high_m), 2),
              16,
              'fill-opacity="0.85"',
            ),
            line('blue', [X(water.middle_m), middle - 11], [X(water.middle_m), middle + 11], 3),
            water.uphill_m === null ? '' : uphillMark(X(water.uphill_m), middle),
            water.ring_m === null ? '' : ringMark(X(water.ring_m), middle),
          ]
        : []),
      ...looks
        .filter(({ at }) => Math.floor(at) === m)
        .map(({ at, level_m, says }) => lookMark(says, X(level_m), from + 6 + (at - m) * (ROW - 12), 3)),
      ...strips.map(({ cells }, at) =>
        cellParts(cells[m]!, {
          x: right + 7 + at * CELL,
          y: from + 1,
          width: CELL - 2,
          height: ROW - 2,
          type,
        }),
      ),
    ];
    return line('rule', [0, from], [right, from], 0.5) + monthGroup(m, 0, from, width, ROW, inside.join(''));
  });
  parts.push(axisParts(low, high, X, right, foot, type, units));
  let y = foot + 30;
  const key = (text: string, mark: (y: number) => string, room: number) => {
    for (const [at, row] of foldedTo(text, width - room, type).entries()) {
      y += leading(type);
      parts.push(at === 0 ? mark(y - 5) : '', words({ rows: row, x: room, y, size: type }));
    }
    y += 3;
  };
  if (waters.length === 12)
    key(
      "the month's highest water, 8 years of 10; the stroke is the middle year",
      (at) => box('band', 0, at - 6, 18, 12) + line('blue', [9, at - 7], [9, at + 7], 3),
      26,
    );
  if (waters.some(({ uphill_m }) => uphill_m !== null))
    key('behind the uphill wall, middle year', (at) => uphillMark(9, at, 7), 26);
  if (waters.some(({ ring_m }) => ring_m !== null))
    key('in the dug ring, middle year', (at) => ringMark(9, at, 7), 26);
  for (const says of ['level', 'below', 'above'] as const)
    if (looks.some((look) => look.says === says)) key(LOOKS[says], (at) => lookMark(says, 9, at), 26);
  for (const { title, head } of strips.filter(({ kind }) => kind !== 'dig'))
    key(
      `${head.join(' ').trim()}: ${title.replace(/^Empty it,? ?/, '') || 'nothing needs doing first'}`,
      () => '',
      0,
    );
  return framed('narrow', y + 6, alt, parts.join('') + months.join(''));
}

/** Levels below the track. */
function axisParts(
  low: number,
  high: number,
  X: (level: number) => number,
  right: number,
  foot: number,
  type: number,
  units: UnitSystem,
): string {
  const unit = units === 'us' ? FOOT : 1;
  const text = (level: number) =>
    Math.abs(level) < 1e-9
      ? '0'
      : `${level > 0 ? '+' : '\u2212'}${Number((Math.abs(level) / unit).toFixed(2))} ${units === 'us' ? 'ft' : 'm'}`;
  const step =
    [0.25, 0.5, 1, 2, 5]
      .map((each) => each * unit)
      .find((each) => X(0) - X(each) >= widthOf('\u22120.25 m', type)) ?? 10 * unit;
  const from = Math.ceil(low / step);
  const ticks = Array.from({ length: Math.floor(high / step) - from + 1 }, (_, i) => (from + i) * step);
  return ticks
    .filter((level) => X(level) + widthOf(text(level), type) / 2 <= right + 4)
    .map(
      (level) =>
        line('rule', [X(level), foot], [X(level), foot + 5], 1) +
        words({ rows: text(level), x: X(level), y: foot + type + 7, size: type, anchor: 'middle' }),
    )
    .join('');
}

function uphillMark(x: number, y: number, half = 12): string {
  return `<path d="M${px(x)} ${px(y - half)}V${px(y + half)}" ${paint('blue')} stroke-width="2" stroke-dasharray="5 3"/>`;
}

function ringMark(x: number, y: number, half = 12): string {
  return `<path d="M${px(x)} ${px(y - half)}V${px(y + half)}" ${paint('edge')} stroke-width="2.5" stroke-dasharray="2 3"/>`;
}
