/** Figures drawn by hand: text and marks that follow the page's colours, and stay where colours are taken away. */
import type { Holding } from '../contract/index.js';
import { escapeHtml } from './escape.js';
import { textWidth } from './layout.js';
import { px } from './svgParts.js';
import { visible } from './visible.js';

/** A figure for a desk and for a phone, and what it shows in words. */
export interface Drawing {
  /** SVG, 1068 units wide; no text below 15 */
  wide: string;
  /** SVG, 328 units wide; no text below 13 */
  narrow: string;
  alt: string;
}

/** Width of a drawing, of its smallest text, and of a gap. */
export const FORM = {
  wide: { width: 1068, type: 15, gap: 16 },
  narrow: { width: 328, type: 13, gap: 10 },
} as const;
/** Which of the two. */
export type Form = keyof typeof FORM;

/** Line distance over the size of the type. */
const LEADING = 1.28;

/** Colours of a part: in the light, in the dark, and where the reader's own colours are forced. */
type Shade = [light: string, dark: string, forced: string];
const PAPER: Shade = ['#ffffff', 'var(--paper, #14181c)', 'Canvas'];
const INK: Shade = ['currentColor', 'currentColor', 'CanvasText'];
const FAINT: Shade = ['#75797f', '#8f959c', 'CanvasText'];
const BLUE: Shade = ['#1f5f8b', '#86c2ea', 'CanvasText'];
const RED: Shade = ['#a3321c', '#ff9d85', 'CanvasText'];
const NONE: Shade = ['none', 'none', 'none'];

const PAINTS = {
  ink: { fill: INK },
  fail: { fill: RED },
  water: { fill: BLUE },
  paper: { fill: PAPER },
  soil: { fill: ['#ebe2d3', '#3d362b', 'Canvas'] },
  ring: { fill: ['#d5c8ae', '#5a5040', 'Canvas'] },
  stone: { fill: ['#c9c4b8', '#6b675e', 'Canvas'] },
  concrete: { fill: ['#aeb1b5', '#7c8086', 'Canvas'] },
  pond: { fill: ['#c3dded', '#1f4257', 'Canvas'] },
  band: { fill: ['#a9cbe0', '#2d5a76', 'Canvas'] },
  good: { fill: ['#cfe3d4', '#274a35', 'Canvas'] },
  some: { fill: ['#f3e3b0', '#5a4c1e', 'Canvas'] },
  not: { fill: ['#f3dcd5', '#54261c', 'Canvas'] },
  rule: { fill: NONE, stroke: FAINT },
  edge: { fill: NONE, stroke: INK },
  blue: { fill: NONE, stroke: BLUE },
  red: { fill: NONE, stroke: RED },
  erased: { fill: NONE, stroke: PAPER },
} satisfies Record<string, { fill: Shade; stroke?: Shade }>;

/** A colour by what it stands for. */
export type Paint = keyof typeof PAINTS;

/** Class and presentation attributes of a part. */
export function paint(name: Paint): string {
  const { fill, stroke } = PAINTS[name] as { fill: Shade; stroke?: Shade };
  return `class="fig-${name}" fill="${fill[0]}"${stroke ? ` stroke="${stroke[0]}"` : ''}`;
}

const rulesFor = (at: 1 | 2) =>
  Object.entries(PAINTS)
    .map(([name, shades]) => {
      const { fill, stroke } = shades as { fill: Shade; stroke?: Shade };
      return `.fig-${name}{fill:${fill[at]}${stroke ? `;stroke:${stroke[at]}` : ''}}`;
    })
    .join('');
const halo = (at: 1 | 2) => `.fig-haloed{stroke:${PAPER[at]}}`;
const outlines = ['pond', 'band', 'ring', 'stone', 'concrete', 'good', 'some', 'not', 'soil']
  .map((name) => `.fig-${name}`)
  .join(',');

/** Rules of a page that holds these figures: dark, and in forced colours, where what is a shade gets an outline. */
export const FIGURE_STYLE = `
@media screen and (prefers-color-scheme: dark) { ${rulesFor(1)}${halo(1)} }
@media (forced-colors: active) { .figure { forced-color-adjust: none; color: CanvasText; } ${rulesFor(2)}${halo(2)} ${outlines} { stroke: CanvasText; stroke-width: 1; } }
:is(.fig-month, .fig-option):is(:hover, :focus, .chosen) > .fig-hit { stroke: currentColor; stroke-width: 2; }
`;

/** Words in a drawing; `y` is the base of the first row. */
interface Set {
  rows: string | string[];
  x: number;
  y: number;
  size: number;
  anchor?: 'start' | 'middle' | 'end';
  bold?: boolean;
  /** over lines and shades: an edge of paper round the letters */
  halo?: boolean;
  paint?: Paint;
}

/** Rows of text. */
export function words({
  rows,
  x,
  y,
  size,
  anchor = 'start',
  bold,
  halo: edged,
  paint: tone = 'ink',
}: Set): string {
  const spans = [rows]
    .flat()
    .map(
      (row, at) =>
        `<tspan x="${px(x)}" y="${px(y + at * leading(size))}">${escapeHtml(visible(row))}</tspan>`,
    );
  const weight = bold ? ' font-weight="700"' : '';
  const at = anchor === 'start' ? '' : ` text-anchor="${anchor}"`;
  const [tones, paper] = edged
    ? [
        paint(tone).replace('class="', 'class="fig-haloed '),
        ' stroke="#ffffff" stroke-width="4" stroke-linejoin="round" paint-order="stroke"',
      ]
    : [paint(tone), ''];
  return `<text ${tones}${paper} font-size="${px(size)}"${weight}${at}>${spans.join('')}</text>`;
}

/** Distance of two rows. */
export function leading(size: number): number {
  return size * LEADING;
}

/** Width that words take, about and rather too much. */
export function widthOf(text: string, size: number, bold = false): number {
  return textWidth(text, size) * (bold ? 1.08 : 1);
}

/** Text in rows that are no wider than the room, where words allow. */
export function foldedTo(text: string, room: number, size: number, bold = false): string[] {
  const rows: string[] = [];
  // A unit stays on the row of its number.
  for (const word of text.replace(/(?<=\d) (?=(?:[cm]?m|ft|in|%)(?![A-Za-z]))/g, '\u00a0').split(' ')) {
    const last = rows.at(-1);
    if (last !== undefined && widthOf(`${last} ${word}`, size, bold) <= room)
      rows[rows.length - 1] = `${last} ${word}`;
    else rows.push(word);
  }
  return rows;
}

/** A line through points. */
export function path(points: readonly (readonly [x: number, y: number])[], closed = false): string {
  return `M${points.map(([x, y]) => `${px(x)} ${px(y)}`).join('L')}${closed ? 'Z' : ''}`;
}

/** A straight line. */
export function line(
  tone: Paint,
  from: readonly [number, number],
  to: readonly [number, number],
  width: number,
  dash = '',
): string {
  return `<path d="${path([from, to])}" ${paint(tone)} stroke-width="${width}"${dash ? ` stroke-dasharray="${dash}"` : ''}/>`;
}

/** A box. */
export function box(tone: Paint, x: number, y: number, width: number, height: number, more = ''): string {
  return `<rect x="${px(x)}" y="${px(y)}" width="${px(Math.max(width, 0))}" height="${px(Math.max(height, 0))}" ${paint(tone)}${more ? ` ${more}` : ''}/>`;
}

/** Slanting lines that fill a box: no pattern, whose name would have to be the only one of a page. */
export function hatching(tone: Paint, x: number, y: number, width: number, height: number, gap = 7): string {
  const lines: string[] = [];
  for (let from = gap / 2; from < width + height; from += gap) {
    const [x0, y0] = from <= height ? [0, from] : [from - height, height];
    const [x1, y1] = from <= width ? [from, 0] : [width, from - width];
    lines.push(`M${px(x + x0)} ${px(y + y0)}L${px(x + x1)} ${px(y + y1)}`);
  }
  return lines.length === 0 ? '' : `<path d="${lines.join('')}" ${paint(tone)} stroke-width="1"/>`;
}

/** A tick, an hour hand or a cross in a square of that size, told apart by shape. */
export function sign(verdict: Holding, x: number, y: number, size: number): string {
  const at = (dx: number, dy: number): [number, number] => [x + dx * size, y + dy * size];
  const round = `stroke-linecap="round" stroke-linejoin="round"`;
  if (verdict === 'holds')
    return `<path d="${path([at(0.08, 0.55), at(0.38, 0.86), at(0.94, 0.14)])}" ${paint('edge')} stroke-width="${px(size * 0.16)}" ${round}/>`;
  if (verdict === 'fails')
    return `<path d="${path([at(0.12, 0.12), at(0.88, 0.88)])}${path([at(0.88, 0.12), at(0.12, 0.88)])}" ${paint('red')} stroke-width="${px(size * 0.18)}" ${round}/>`;
  return (
    `<circle cx="${px(x + size / 2)}" cy="${px(y + size / 2)}" r="${px(size * 0.42)}" ${paint('edge')} stroke-width="${px(size * 0.12)}"/>` +
    `<path d="${path([at(0.5, 0.24), at(0.5, 0.5), at(0.68, 0.62)])}" ${paint('edge')} stroke-width="${px(size * 0.12)}" ${round}/>`
  );
}

/** The drawing as one SVG of that height. */
export function framed(form: Form, height: number, alt: string, body: string): string {
  const { width } = FORM[form];
  return `<svg xmlns="http://www.w3.org/2000/svg" class="figure" viewBox="0 0 ${width} ${px(height)}" role="img" aria-label="${escapeHtml(visible(alt))}" font-family="system-ui, 'Segoe UI', Roboto, 'Helvetica Neue', Arial, sans-serif">${body}</svg>`;
}
