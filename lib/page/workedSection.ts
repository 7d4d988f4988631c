/** The worked calculation, step by step, as it was recorded. */

import { STEP_DIGITS, type WorkedPart, type WorkedStep } from '../report/index.js';
import { againWords, formulaName, workedIntro } from '../text/workedWords.js';
import { formatQuantity, type QuantityKind, type UnitSystem } from '../units/index.js';
import { html, type Markup, paragraph, section } from './markup.js';

const KINDS: Record<string, QuantityKind> = {
  m: 'length',
  s: 'time',
  Pa: 'pressure',
  'm/s': 'permeability',
  'm³/s': 'flow',
};

/** A number as the steps show it, to be typed into a calculator. */
function stepNumber(value: number): string {
  return String(Number(value.toPrecision(STEP_DIGITS + 1)));
}

function withUnit(value: number, unit: string): string {
  return `${stepNumber(value)}${unit === '-' ? '' : ` ${unit}`}`;
}

export function workedSection(parts: WorkedPart[], units: UnitSystem): Markup {
  const steps = parts.flatMap((part) => part.steps);
  return section(
    'worked',
    'The worked calculation, step by step',
    paragraph(workedIntro(STEP_DIGITS, steps.length)),
    ...parts.map(
      ({ heading, note, steps, again }) =>
        html`<h3>${heading}</h3>${paragraph(`${note}${againWords(again)}`, 'note')}<ol class="worked">${steps.map(
          (step) => stepHtml(step, units),
        )}</ol>`,
    ),
    html`<details><summary>${formulaName()}</summary>${formulaList(steps)}</details>`,
  );
}

/** A step in a line: equation, numbers put in with where each is from, result. */
function stepHtml(
  { title, symbol, unit, expression, inputs, shown, number }: WorkedStep,
  units: UnitSystem,
): Markup {
  const kind = unit === 'm/s' && symbol !== 'K' ? undefined : KINDS[unit];
  const read = kind && Number.isFinite(shown) ? ` (${formatQuantity(shown, kind, units)})` : '';
  const put = inputs.map(
    (input, at) =>
      html`${at === 0 ? '' : '; '}${`${input.symbol} = ${withUnit(input.shown, input.unit)}`} <small>[${input.from}]</small>`,
  );
  return html`<li id="step-${number}">${number}. ${title}: <span class="equation">${`${symbol} = ${expression}`}</span>; ${put}; <strong>${`${symbol} = ${withUnit(shown, unit)}`}</strong>${read}</li>`;
}

/** Every formula once, with what its symbols mean. */
function formulaList(steps: readonly WorkedStep[]): Markup {
  const once = [...new Map(steps.map((step) => [formulaOf(step), step])).values()];
  const items = once.map((step) => {
    const { symbol, unit, inputs, validity, source } = step;
    const symbols = [
      `${symbol}: result${unit === '-' ? '' : `, ${unit}`}`,
      ...inputs.map((put) => `${put.symbol}: ${put.meaning}${put.unit === '-' ? '' : `, ${put.unit}`}`),
    ];
    return html`<li><strong>${formulaOf(step)}</strong>. ${`${symbols.join('; ')}. ${validity}. Source: ${source}`}</li>`;
  });
  return html`<ul class="worked">${items}</ul>`;
}

/** Name of a formula, of however many parts. */
function formulaOf({ title, drawn, unit }: WorkedStep): string {
  if (!drawn) return title.replace(/ \(\d+\)$/, '');
  return unit === 'years' ? 'Failing years counted' : 'Percentile of simulated years';
}
