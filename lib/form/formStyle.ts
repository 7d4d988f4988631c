import { FIGURE_STYLE } from '../figures/drawing.js';
import { css } from './form.css.js';

/** Looks of the form. */
export const FORM_STYLE = `${css}\n${FIGURE_STYLE}`;
