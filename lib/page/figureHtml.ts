import type { Drawing } from '../figures/drawing.js';
import type { Figure } from '../figures/figure.js';
import { DESIGN_WIDTH, type FigureSize } from '../figures/layout.js';
import { figureSvg } from '../figures/svg.js';
import { text } from './markup.js';

const SIZES: FigureSize[] = ['wide', 'narrow'];

/** A figure drawn for desk and paper and for a phone; the window's width decides which is shown. */
function drawings(id: string, make: (size: FigureSize) => Figure): string {
  return SIZES.map(
    (size) => `<div class="${size}">${figureSvg(make(size), DESIGN_WIDTH[size], `${id}-${size}`)}</div>`,
  ).join('');
}

/** A figure under its heading, with what to look for below it. */
export function figureHtml(
  id: string,
  title: string,
  make: (size: FigureSize) => Figure,
  caption: string,
): string {
  return `<figure id="${id}"><h3>${text(title)}</h3><div class="drawing">${drawings(id, make)}</div><figcaption>${text(caption)}</figcaption></figure>`;
}

/** A figure drawn by hand, for a desk and paper and for a phone. */
export function drawingHtml(
  id: string,
  title: string,
  { wide, narrow }: Drawing,
  caption = '',
  heading: 'h2' | 'h3' = 'h3',
): string {
  const below = caption && `<figcaption>${text(caption)}</figcaption>`;
  return `<figure id="${id}" class="hand"><${heading}>${text(title)}</${heading}><div class="wide">${wide}</div><div class="narrow">${narrow}</div>${below}</figure>`;
}
