/** A sheet of paper that a drawing true to scale is set on: all lengths in millimetres of paper. */
import type { UnitSystem } from '../units/index.js';
import { line, type Paint, paint, path, widthOf, words } from './drawing.js';
import { spread } from './spread.js';
import { px } from './svgParts.js';

/** Part of a sheet, from its top left corner. */
export interface Region {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** What is drawn on, without the margins of the printer. */
export const PAPERS: Record<UnitSystem, { name: 'a4' | 'letter'; width: number; height: number }> = {
  metric: { name: 'a4', width: 280, height: 190 },
  us: { name: 'letter', width: 264, height: 194 },
};

/** Size of the type: its capitals are 2.5 mm high. */
export const TYPE = 3.5;
export const ROW = 4.6;

/** Usual scales, the largest first; those of the last hundreds are for a long way to the outlet. */
const SCALES: Record<UnitSystem, readonly number[]> = {
  metric: [10, 20, 25, 50, 100, 200, 500, 1000, 2000, 5000],
  us: [12, 24, 48, 60, 120, 240, 600, 1200, 2400, 6000],
};

/**
 * The largest usual scale at which something fits.
 * @param size - of what is drawn, m
 * @param room - for it on the paper, mm
 * @param units - whose scales
 * @returns metres on the ground over metres on paper
 */
export function scaleFor(
  size: { width: number; height: number },
  room: { width: number; height: number },
  units: UnitSystem,
): number {
  const least = Math.max((size.width * 1000) / room.width, (size.height * 1000) / room.height);
  const scales = SCALES[units];
  return scales.find((scale) => scale >= least - 1e-9) ?? Math.ceil(least / 1000) * 1000;
}

type At = readonly [x: number, y: number];
interface Box {
  x0: number;
  y0: number;
  x1: number;
  y1: number;
}

/** An edge of paper as wide as on a screen would hide what is drawn. */
const HALO = 'stroke-width="4"';

const touch = (a: Box, b: Box) => a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1;
/** Room kept round a label, mm. */
const CLEAR = 0.4;
/** A label so far from its point gets a leader, mm. */
const LEADER = 3.5;

/** What is set on a sheet, in the order in which it is drawn; labels do not lie over one another. */
export class SheetPaper {
  private readonly parts: string[] = [];
  private readonly lettering: string[] = [];
  private readonly taken: Box[] = [];

  add(svg: string): void {
    this.parts.push(svg);
  }

  line(tone: Paint, from: At, to: At, width = 0.25, dash = ''): void {
    this.add(line(tone, from, to, width, dash));
  }

  shape(tone: Paint, points: readonly At[], { width = 0.35, dash = '', closed = true } = {}): void {
    const stroked = tone === 'edge' || tone === 'rule' || tone === 'blue' || tone === 'red';
    this.add(
      `<path d="${path(points, closed)}" ${paint(tone)}${stroked ? ` stroke-width="${width}" stroke-linejoin="round"` : ''}${dash ? ` stroke-dasharray="${dash}"` : ''}/>`,
    );
  }

  dot(at: At, radius = 0.7): void {
    this.add(`<circle cx="${px(at[0])}" cy="${px(at[1])}" r="${radius}" ${paint('ink')}/>`);
  }

  /** Text where it is told to stand; whoever sets it keeps its place free. */
  text(
    text: string,
    x: number,
    y: number,
    { bold = false, anchor = 'start' as 'start' | 'middle' | 'end' } = {},
  ): void {
    if (text === '') return;
    this.taken.push(boxOf(text, x, y, anchor, bold));
    this.lettering.push(
      words({ rows: text, x, y, size: TYPE, bold, anchor, halo: true }).replace(HALO, 'stroke-width="0.8"'),
    );
  }

  /** Text that stands upright, read from the right; `y` is its lower end. */
  upright(text: string, x: number, y: number): void {
    const long = widthOf(text, TYPE);
    this.taken.push({ x0: x - TYPE * 0.8, x1: x + TYPE * 0.25, y0: y - long, y1: y });
    this.lettering.push(
      `<g transform="translate(${px(x)} ${px(y)}) rotate(-90)">${words({ rows: text, x: 0, y: 0, size: TYPE })}</g>`,
    );
  }

  /** Text as near to a point as is free within a region, with a leader where that is not beside it. */
  label(text: string, [x, y]: At, within: Region, bold = false): boolean {
    const long = widthOf(text, TYPE, bold);
    for (let reach = 1.2; reach < 60; reach += 1.6)
      for (let i = 0; i < 16; i++) {
        const turn = (i * Math.PI) / 8 - Math.PI / 4;
        const [cx, cy] = [
          x + Math.cos(turn) * (reach + long / 2),
          y + Math.sin(turn) * (reach + TYPE / 2) + TYPE * 0.3,
        ];
        const box = grown(boxOf(text, cx, cy, 'middle', bold), CLEAR);
        if (
          box.x0 < within.x ||
          box.x1 > within.x + within.width ||
          box.y0 < within.y ||
          box.y1 > within.y + within.height ||
          this.taken.some((each) => touch(each, box))
        )
          continue;
        if (reach > LEADER) {
          const near: At = [Math.min(Math.max(x, box.x0), box.x1), Math.min(Math.max(y, box.y0), box.y1)];
          this.line('rule', [x, y], near, 0.18);
        }
        this.text(text, cx, cy, { bold, anchor: 'middle' });
        return true;
      }
    return false;
  }

  /** Texts under one another at `x`, each led to from its point, within so much of the height. */
  flags(flags: readonly { text: string; at: At }[], x: number, [top, bottom]: [number, number]): void {
    const heights = spread(
      flags.map(({ at }) => at[1]),
      ROW,
      top,
      bottom,
    );
    flags.forEach(({ text, at }, i) => {
      this.line('rule', at, [x - 1, heights[i]! - 1], 0.18);
      this.text(text, x, heights[i]!);
    });
  }

  /** A level length between two lines, with its text over the middle. */
  across(text: string, x0: number, x1: number, y: number): void {
    this.line('edge', [x0, y], [x1, y], 0.2);
    for (const x of [x0, x1]) this.line('edge', [x - 0.9, y + 0.9], [x + 0.9, y - 0.9], 0.35);
    this.text(text, (x0 + x1) / 2, y - 1.5, { anchor: 'middle' });
  }

  /** An upright length, with its text left of the middle. */
  up(text: string, x: number, y0: number, y1: number): void {
    this.line('edge', [x, y0], [x, y1], 0.2);
    for (const y of [y0, y1]) this.line('edge', [x - 0.9, y + 0.9], [x + 0.9, y - 0.9], 0.35);
    this.upright(text, x - 1.7, (y0 + y1) / 2 + widthOf(text, TYPE) / 2);
  }

  /** A place is kept free of labels. */
  keep({ x, y, width, height }: Region): void {
    this.taken.push({ x0: x, y0: y, x1: x + width, y1: y + height });
  }

  svg(): string {
    return this.parts.join('') + this.lettering.join('');
  }
}

function boxOf(text: string, x: number, y: number, anchor: 'start' | 'middle' | 'end', bold: boolean): Box {
  const long = widthOf(text, TYPE, bold);
  const x0 = anchor === 'start' ? x : anchor === 'middle' ? x - long / 2 : x - long;
  return { x0, x1: x0 + long, y0: y - TYPE * 0.8, y1: y + TYPE * 0.25 };
}

const grown = (box: Box, by: number): Box => ({
  x0: box.x0 - by,
  x1: box.x1 + by,
  y0: box.y0 - by,
  y1: box.y1 + by,
});
