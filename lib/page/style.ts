import { FIGURE_STYLE } from '../figures/drawing.js';
import { css as page } from './page.css.js';
import { css as print } from './print.css.js';
import { css as whatIf } from './whatIf.css.js';

/** Looks of the what-if, in the page and under a notebook's cell. */
export const PANEL_STYLE = whatIf;

/** Looks of the page, on a phone, a desk and paper. */
export const STYLE = [whatIf, FIGURE_STYLE, page, print].join('\n');
