/** What the year is drawn with, on a desk and on a phone. */

import type { Holding, MonthWater } from '../contract/index.js';
import type { MonthCell, MonthStrip } from '../text/monthStrips.js';
import { box, hatching, type Paint, paint, path, sign, words } from './drawing.js';
import type { MonthLook } from './monthLooks.js';
import { px } from './svgParts.js';

/** What the figure shows. */
export interface Year {
  waters: MonthWater[];
  looks: MonthLook[];
  strips: MonthStrip[];
  /** named levels, m above the datum */
  lines: { name: string; level_m: number; tone: Paint; dash: string }[];
}

/** Lowest and highest level that is drawn, m. */
export function levelRange({ waters, looks, lines }: Year): [low: number, high: number] {
  const all = [
    0,
    ...lines.map(({ level_m }) => level_m),
    ...looks.map(({ level_m }) => level_m),
    ...waters.flatMap(({ low_m, high_m, uphill_m, ring_m }) => [low_m, high_m, uphill_m ?? 0, ring_m ?? 0]),
  ];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const air = Math.max(0.05 * (high - low), 0.05);
  return [low - air, high + air];
}

/** What belongs to a month, on an area that a pointer finds. */
export function monthGroup(
  month: number,
  x: number,
  y: number,
  width: number,
  height: number,
  inside: string,
): string {
  return `<g class="fig-month" data-month="${month + 1}">${inside}<rect class="fig-hit" x="${px(x)}" y="${px(y)}" width="${px(width)}" height="${px(height)}" rx="3" fill="none" stroke="none" pointer-events="all"/></g>`;
}

const SHADE: Record<Holding, Paint> = { holds: 'good', briefly: 'some', fails: 'not' };

/** A cell with its sign and word, told apart without its shade too. */
export function cellParts(
  { verdict, word, floor }: MonthCell,
  at: { x: number; y: number; width: number; height: number; type: number },
): string {
  const { x, y, width, height, type } = at;
  const size = type - 1;
  const middle = x + width / 2;
  return (
    box(SHADE[verdict], x, y, width, height) +
    (verdict === 'fails' ? hatching('rule', x, y, width, height, 9) : '') +
    (floor && verdict === 'briefly'
      ? drop(middle, y + height / 2 - size - 2, size)
      : sign(verdict, middle - size / 2, y + height / 2 - size - 2, size)) +
    words({
      rows: word,
      x: middle,
      y: y + height / 2 + type * 0.95,
      size: type,
      anchor: 'middle',
      halo: verdict === 'fails',
    })
  );
}

/** A drop of that height, hung from a place. */
function drop(x: number, y: number, size: number): string {
  const at = (dx: number, dy: number) => `${px(x + dx * size)} ${px(y + dy * size)}`;
  return `<path d="M${at(0, 0)}C${at(0.5, 0.5)} ${at(0.42, 1)} ${at(0, 1)}C${at(-0.42, 1)} ${at(-0.5, 0.5)} ${at(0, 0)}Z" ${paint('water')}/>`;
}

/** A look: a dot where water stood, a triangle down where the hole was dry, up where water stood that high or higher. */
export function lookMark(says: MonthLook['says'], x: number, y: number, r = 4): string {
  const edge = `${paint(says === 'level' ? 'ink' : 'paper')} stroke="currentColor" stroke-width="1.5"`;
  if (says === 'level') return `<circle cx="${px(x)}" cy="${px(y)}" r="${r}" ${edge}/>`;
  const way = says === 'below' ? 1 : -1;
  return `<path d="${path(
    [
      [x - r, y - r * way * 0.8],
      [x + r, y - r * way * 0.8],
      [x, y + r * way],
    ],
    true,
  )}" ${edge}/>`;
}

/** What the signs of the plot mean. */
export const LOOKS = {
  level: 'water seen',
  below: 'hole dry to here',
  above: 'water here or higher',
} as const;
