import { escapeHtml } from './escape.js';
import { px } from './svgParts.js';

/** Pieces of a label that mean something; the rest is letters. */
const PIECES = /(<br>|<span style="color:#[0-9a-f]{6}">|<\/span>|&(?:amp|lt|gt);)/;
/** Line distance over the size of the type. */
const LEADING = 1.3;
/** From the middle of a line down to its base, over the size. */
const BASE = 0.35;

/** A label as it is set. */
interface Words {
  text: string;
  x: number;
  y: number;
  size: number;
  color: string;
  /** which side of the text stands at x: `left`, `center`, `right` */
  xanchor: string;
  yanchor: string;
  /** degrees, clockwise */
  angle?: number;
  /** a light edge around the letters, over lines */
  halo?: boolean;
}

/** A label of one or more rows as SVG text. */
export function svgText({ text, x, y, size, color, xanchor, yanchor, angle, halo }: Words): string {
  if (text === '') return '';
  const rows = rowsOf(text);
  const tall = (rows.length - 1) * size * LEADING;
  const first =
    yanchor === 'top' ? y + size * 0.6 : yanchor === 'bottom' ? y - tall - size * 0.6 : y - tall / 2;
  const anchor = xanchor === 'right' ? 'end' : xanchor === 'center' ? 'middle' : 'start';
  const spans = rows.map(
    (row, at) => `<tspan x="${px(x)}" y="${px(first + at * size * LEADING + size * BASE)}">${row}</tspan>`,
  );
  const turned = angle ? ` transform="rotate(${px(angle)} ${px(x)} ${px(y)})"` : '';
  const edge = halo ? ' stroke="#fff" stroke-width="3" stroke-linejoin="round" paint-order="stroke"' : '';
  return `<text font-size="${px(size)}" fill="${color}" text-anchor="${anchor}"${edge}${turned}>${spans.join('')}</text>`;
}

/** Rows of a label, each with its coloured spans and escaped letters. */
function rowsOf(text: string): string[] {
  const rows = [''];
  for (const piece of text.split(PIECES)) {
    if (piece === '<br>') rows.push('');
    else rows[rows.length - 1] += markupOf(piece);
  }
  return rows;
}

function markupOf(piece: string): string {
  const colour = /^<span style="color:(#[0-9a-f]{6})">$/.exec(piece)?.[1];
  if (colour) return `<tspan fill="${colour}">`;
  if (piece === '</span>') return '</tspan>';
  return /^&(?:amp|lt|gt);$/.test(piece) ? piece : escapeHtml(piece);
}
