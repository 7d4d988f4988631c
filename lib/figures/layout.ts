/** What all figures share: type, margins, axes, and the two widths they are laid out for. */

import type { UnitSystem } from '../units/index.js';
import { FOOT } from '../units/index.js';
import { FAINT_INK, HAIRLINE, INK, PAPER } from './palette.js';

/** `wide`: a page column or paper; `narrow`: a phone. The data of a figure is the same for both. */
export type FigureSize = 'wide' | 'narrow';

/** Width in pixels that labels are set apart for: a printed column, the smallest usual phone. */
export const DESIGN_WIDTH: Record<FigureSize, number> = { wide: 690, narrow: 326 };

const FONT = 'system-ui, "Segoe UI", Roboto, "Helvetica Neue", Arial, sans-serif';
export const LABEL_SIZE: Record<FigureSize, number> = { wide: 12, narrow: 12 };

/** Mean width of a character over its size, for judging whether labels touch. */
const CHARACTER = 0.6;

/** Width of a line of text in pixels, about. */
export function textWidth(text: string, size: number): number {
  return text.length * size * CHARACTER;
}

/** Room for labels beside the drawing: the longest of them and their leaders. */
export function roomFor(texts: string[], size: FigureSize, leader: number): number {
  const rows = texts.flatMap((text) => text.split('<br>'));
  return Math.ceil(Math.max(0, ...rows.map((row) => textWidth(row, LABEL_SIZE[size])))) + leader + 4;
}

/** Keeps a quantity on one line. */
export function unbroken(quantity: string): string {
  return quantity.replaceAll(' ', '\u00a0');
}

/** A label on lines of at most so many characters, where words allow. */
export function folded(text: string, most: number): string {
  const rows: string[] = [];
  for (const word of text.split(' ')) {
    const last = rows.at(-1);
    if (last !== undefined && last.length + word.length < most) rows[rows.length - 1] = `${last} ${word}`;
    else rows.push(word);
  }
  return rows.join('<br>');
}

/** Layout before axes and labels. */
export function baseLayout(
  size: FigureSize,
  height: number,
  margin: { l: number; r: number; t: number; b: number },
) {
  return {
    autosize: true,
    height,
    margin: { ...margin, pad: 0 },
    font: { family: FONT, size: LABEL_SIZE[size], color: INK },
    paper_bgcolor: PAPER,
    plot_bgcolor: PAPER,
    showlegend: false,
    hovermode: 'closest',
    hoverlabel: { bgcolor: PAPER, bordercolor: HAIRLINE, font: { family: FONT, size: 12, color: INK } },
    dragmode: false,
  };
}

/** A thin axis with ticks outside and no grid. */
export function thinAxis(size: FigureSize, title?: string) {
  return {
    ...(title
      ? { title: { text: title, standoff: 6, font: { color: FAINT_INK, size: LABEL_SIZE[size] } } }
      : {}),
    showgrid: false,
    zeroline: false,
    showline: true,
    linecolor: FAINT_INK,
    linewidth: 1,
    ticks: 'outside',
    ticklen: 4,
    tickcolor: FAINT_INK,
    automargin: false,
    fixedrange: true,
  };
}

/** A label without arrow. */
export function label(text: string, x: number | string, y: number, more: object = {}) {
  return { text, x, y, showarrow: false, align: 'left', xanchor: 'left', yanchor: 'middle', ...more };
}

/** Lengths on an axis: factor from metres and the unit written. */
export function lengthScale(units: UnitSystem): { per_m: number; unit: string } {
  return units === 'us' ? { per_m: 1 / FOOT, unit: 'ft' } : { per_m: 1, unit: 'm' };
}

/** Four decimals: what a drawing can show, and short in a page. */
export function short(value: number): number {
  return Number(value.toFixed(4));
}
