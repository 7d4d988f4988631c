/** How something is looked at or measured: a drawing with its parts and steps, folded away until it is wanted. */
import type { VNode } from 'preact';
import { howToDrawing } from '../../figures/howToDrawings.js';
import { type HowTo, howToWords } from '../../text/howToLook.js';
import { unitsOf } from '../answers.js';
import { figureHolder } from './figureHolder.js';
import type { Session } from './session.js';
import { view } from './view.js';

/** A fold for each. */
export function howTo(session: Session, all: readonly HowTo[]): VNode {
  const units = unitsOf(session.shown.answers);
  return view`<div>${all.map((what) => {
    const { title, parts, steps, source } = howToWords(what, units);
    return view`<details class="more" key=${what}><summary>${title}</summary>
      ${figureHolder('', howToDrawing(what, units))}
      <ol class="how">${parts.map((part) => view`<li>${part}</li>`)}</ol>
      <p>How it is done:</p>
      <ul class="how">${steps.map((step) => view`<li>${step}</li>`)}</ul>
      <p class="why">${source}</p>
    </details>`;
  })}</div>`;
}
