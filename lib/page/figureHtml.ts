import type { Drawing } from '../figures/drawing.js';
import type { Figure } from '../figures/figure.js';
import { DESIGN_WIDTH, type FigureSize } from '../figures/layout.js';
import { figureSvg } from '../figures/svg.js';
import { html, Markup } from './markup.js';

const SIZES: FigureSize[] = ['wide', 'narrow'];

/** A figure drawn for desk and paper and for a phone; the window's width decides which is shown. */
function drawings(id: string, make: (size: FigureSize) => Figure): Markup {
  return html`${SIZES.map((size) => html`<div class="${size}">${new Markup(figureSvg(make(size), DESIGN_WIDTH[size], `${id}-${size}`))}</div>`)}`;
}

/** A figure under its heading, with what to look for below it. */
export function figureHtml(
  id: string,
  title: string,
  make: (size: FigureSize) => Figure,
  caption: string,
): Markup {
  return html`<figure id="${id}"><h3>${title}</h3><div class="drawing">${drawings(id, make)}</div><figcaption>${caption}</figcaption></figure>`;
}

/** A figure drawn by hand, for a desk and paper and for a phone. */
export function drawingHtml(
  id: string,
  title: string,
  { wide, narrow }: Drawing,
  caption = '',
  heading: 'h2' | 'h3' = 'h3',
): Markup {
  const below = caption && html`<figcaption>${caption}</figcaption>`;
  return html`<figure id="${id}" class="hand"><${heading}>${title}</${heading}><div class="wide">${new Markup(wide)}</div><div class="narrow">${new Markup(narrow)}</div>${below}</figure>`;
}
