/** The elements of the what-if: controls, answer, table and drawings. */
import { element } from './whatIfControls.js';

/** A part that is closed until somebody asks for it. */
function folded(title: string, ...content: Node[]): HTMLDetailsElement {
  const summary = element('summary', '');
  summary.textContent = title;
  return element('details', '', summary, ...content);
}

/** Puts the elements of the what-if into its place. */
export function layoutOf(root: HTMLElement) {
  const controls = element('div', 'controls');
  const others = element('div', 'controls');
  const headline = element('p', '');
  const used = element('p', 'note');
  const compared = element('div', '');
  const chances = element('p', 'note');
  const section = element('div', 'drawing');
  const risk = element('div', 'drawing');
  const buy = element('div', '');
  const send = element('button', '');
  const reset = element('button', '');
  const line = element('textarea', '');
  const lineLabel = element('label', '');
  const told = element('p', 'told');
  const spoken = element('p', 'spoken');
  told.setAttribute('role', 'status');
  spoken.setAttribute('role', 'status');
  for (const button of [send, reset]) button.type = 'button';
  reset.textContent = 'Back to the survey';
  line.readOnly = true;
  line.rows = 2;
  line.id = `${root.id}-line`;
  lineLabel.htmlFor = line.id;
  lineLabel.textContent = 'The same in a notebook';
  const curve = folded('Chance against depth, with what is tried', chances, risk);
  root.replaceChildren(
    element('div', 'form', controls, folded('Size, level, months, pipe and weather', others)),
    told,
    spoken,
    element('div', 'answer', headline, used, compared),
    element('div', 'pictures', section, curve),
    folded('To buy and to dig for this', buy),
    element('div', 'buttons', reset, send),
    folded('For a notebook', lineLabel, line),
  );
  return {
    controls,
    others,
    headline,
    used,
    compared,
    chances,
    section,
    risk,
    curve,
    buy,
    send,
    reset,
    line,
    told,
    spoken,
  };
}
