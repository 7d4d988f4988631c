import type { Report } from '../contract/index.js';
import { type MonthWater, monthWaters } from '../contract/index.js';
import { monthStrips } from '../text/monthStrips.js';
import { monthShort } from '../text/monthWords.js';
import { yearAlt } from '../text/yearAlt.js';
import type { UnitSystem } from '../units/index.js';
import { FOOT } from '../units/index.js';
import {
  box,
  type Drawing,
  FORM,
  foldedTo,
  framed,
  leading,
  line,
  type Paint,
  paint,
  path,
  words,
} from './drawing.js';
import { type MonthLook, monthLooks } from './monthLooks.js';
import { spread } from './spread.js';
import { cellParts, LOOKS, levelRange, lookMark, monthGroup, type Year } from './yearParts.js';
import { yearOnPhone } from './yearPhone.js';

/** Room beside the months: levels at the left, names of lines at the right. */
const LEFT = 74;
const RIGHT = 138;
const PLOT = 230;
const CELL = 46;

/**
 * The year: twelve months with the water outside, the looks, the pond's full level and its floor, and below in step when
 * it may be dug and emptied. Each month is a group with its number in `data-month`.
 * @param report what was computed
 * @param units system of the numbers; the survey's own unless said
 * @returns drawings with their alternative text; the sentences of the months are those of {@link yearWords}
 */
export function yearFigure(report: Report, units: UnitSystem = report.units): Drawing {
  const year: Year = {
    waters: monthWaters(report),
    looks: monthLooks(report),
    strips: monthStrips(report, units),
    lines: namedLines(report),
  };
  const alt = yearAlt(year, units);
  return { wide: wideYear(year, units, alt), narrow: yearOnPhone(year, units, alt), alt };
}

/** Full level and floor as recommended, or as wished. */
function namedLines({ pond, result }: Report): Year['lines'] {
  const { depth_m, raise_m } = result.recommendation;
  const advised = depth_m > 0;
  const [depth, raise] = advised ? [depth_m, raise_m] : [pond.depth_m, 0];
  return [
    { name: 'pond full', level_m: pond.full_level_m + raise, tone: 'edge', dash: '9 4' },
    { name: 'pond floor', level_m: raise - depth, tone: 'edge', dash: '' },
  ];
}

function wideYear(year: Year, units: UnitSystem, alt: string): string {
  const { width, type } = FORM.wide;
  const { waters, looks, strips, lines } = year;
  const column = (width - LEFT - RIGHT) / 12;
  const X = (month: number) => LEFT + month * column;
  const [low, high] = levelRange(year);
  const top = 34 + leading(type);
  const Y = (level: number) => top + ((high - level) / (high - low)) * PLOT;
  const foot = top + PLOT;
  const right = width - RIGHT;
  const parts: string[] = [keyParts(waters, looks, type)];
  parts.push(
    ...Array.from({ length: 12 }, (_, m) =>
      words({ rows: monthShort(m + 1), x: X(m + 0.5), y: top - 8, size: type, anchor: 'middle', bold: true }),
    ),
  );
  // Above ground, ground, water.
  parts.push(box('soil', LEFT, Y(0), right - LEFT, foot - Y(0)));
  if (waters.length === 12) parts.push(...waterParts(waters, X, Y));
  parts.push(levelAxis(low, high, Y, right, type, units));
  for (const { level_m, tone, dash } of lines)
    parts.push(line(tone, [LEFT, Y(level_m)], [right, Y(level_m)], 2, dash));
  parts.push(...looks.map((look) => lookMark(look.says, X(look.at), Y(look.level_m))));
  parts.push(...namesParts(year, Y, right, top, foot, type));
  let y = foot + 12;
  const rows = strips.map((strip) => {
    const title = foldedTo(strip.title, right - LEFT, type + 1, true);
    parts.push(words({ rows: title, x: LEFT, y: y + type + 3, size: type + 1, bold: true }));
    const from = y + title.length * leading(type + 1) + 4;
    y = from + CELL + 10;
    return from;
  });
  const months = Array.from({ length: 12 }, (_, m) => {
    const cells = strips.map(({ cells }, at) =>
      cellParts(cells[m]!, { x: X(m) + 2, y: rows[at]!, width: column - 4, height: CELL, type }),
    );
    return monthGroup(m, X(m), top - 26, column, y - top + 22, cells.join(''));
  });
  return framed('wide', y + 2, alt, parts.join('') + months.join(''));
}

/** The band of eight years in ten through the middles of the months, and the middle year. */
function waterParts(
  waters: MonthWater[],
  X: (month: number) => number,
  Y: (level: number) => number,
): string[] {
  const through = (of: (water: MonthWater) => number | null): [number, number][] => {
    const at = (m: number) => of(waters[(m + 12) % 12]!)!;
    const edge = (at(11) + at(0)) / 2;
    return [
      [X(0), Y(edge)],
      ...waters.map((_, m): [number, number] => [X(m + 0.5), Y(at(m))]),
      [X(12), Y(edge)],
    ];
  };
  const has = (of: (water: MonthWater) => number | null) => waters.every((water) => of(water) !== null);
  const drawn = (
    of: (water: MonthWater) => number | null,
    width: number,
    dash: string,
    tone: Paint = 'blue',
  ) =>
    `<path d="${path(through(of))}" ${paint(tone)} stroke-width="${width}"${dash ? ` stroke-dasharray="${dash}"` : ''} stroke-linejoin="round"/>`;
  return [
    `<path d="${path([...through(({ high_m }) => high_m), ...through(({ low_m }) => low_m).reverse()], true)}" ${paint('band')}/>`,
    drawn(({ middle_m }) => middle_m, 3, ''),
    ...(has(({ uphill_m }) => uphill_m) ? [drawn(({ uphill_m }) => uphill_m, 2, '10 4')] : []),
    ...(has(({ ring_m }) => ring_m) ? [drawn(({ ring_m }) => ring_m, 2.5, '2 4', 'edge')] : []),
  ];
}

/** Names at the right of the lines they belong to. */
function namesParts(
  { waters, lines }: Year,
  Y: (level: number) => number,
  right: number,
  top: number,
  foot: number,
  type: number,
): string[] {
  const at = (of: (water: MonthWater) => number | null) =>
    of(waters[11]!) === null || of(waters[0]!) === null ? null : (of(waters[11]!)! + of(waters[0]!)!) / 2;
  const level = (name: string, of: (water: MonthWater) => number | null) => {
    const found = waters.length === 12 ? at(of) : null;
    return found === null ? [] : [{ name, level_m: found }];
  };
  const names = [
    ...lines,
    ...level('clay', ({ middle_m }) => middle_m),
    ...level('uphill wall', ({ uphill_m }) => uphill_m),
    ...level('dug ring', ({ ring_m }) => ring_m),
  ];
  const places = spread(
    names.map(({ level_m }) => Y(level_m)),
    leading(type),
    top + 4,
    foot - 4,
  );
  return names.map(
    ({ name, level_m }, i) =>
      line('rule', [right + 2, Y(level_m)], [right + 16, places[i]!], 1) +
      words({ rows: name, x: right + 20, y: places[i]! + type * 0.35, size: type }),
  );
}

function levelAxis(
  low: number,
  high: number,
  Y: (level: number) => number,
  right: number,
  type: number,
  units: UnitSystem,
): string {
  const unit = units === 'us' ? FOOT : 1;
  const step =
    [0.25, 0.5, 1, 2, 5].map((each) => each * unit).find((each) => Y(0) - Y(each) >= 2 * type) ?? 10 * unit;
  const from = Math.ceil(low / step);
  return Array.from({ length: Math.floor(high / step) - from + 1 }, (_, i) => {
    const level = (from + i) * step;
    const size = Number((Math.abs(level) / unit).toFixed(2));
    const text =
      from + i === 0 ? 'ground' : `${level > 0 ? '+' : '\u2212'}${size} ${units === 'us' ? 'ft' : 'm'}`;
    return (
      line(
        'rule',
        [LEFT - 5, Y(level)],
        [right, Y(level)],
        from + i === 0 ? 1.25 : 0.5,
        from + i === 0 ? '' : '2 4',
      ) + words({ rows: text, x: LEFT - 9, y: Y(level) + type * 0.35, size: type, anchor: 'end' })
    );
  }).join('');
}

function keyParts(waters: MonthWater[], looks: MonthLook[], type: number): string {
  const y = type + 1;
  let x = 0;
  const parts: string[] = [];
  const item = (mark: (x: number) => string, text: string, room: number) => {
    parts.push(mark(x), words({ rows: text, x: x + room, y, size: type }));
    x += room + text.length * type * 0.58 + 22;
  };
  if (waters.length === 12) {
    item((at) => box('band', at, y - 12, 24, 14), "the month's highest water, 8 years of 10", 30);
    item((at) => line('blue', [at, y - 5], [at + 24, y - 5], 3), 'middle year', 30);
  }
  for (const says of ['level', 'below', 'above'] as const)
    if (looks.some((look) => look.says === says))
      item((at) => lookMark(says, at + 6, y - 5), LOOKS[says], 16);
  return parts.join('');
}
