/** The worked calculation, step by step, as it was recorded. */

import type { WorkedPart, WorkedStep } from '../report/index.js';
import { stepInputs, workedIntro } from '../text/workedWords.js';
import { formatQuantity, type QuantityKind, type UnitSystem } from '../units/index.js';
import { paragraph, section, table, text } from './markup.js';

const KINDS: Record<string, QuantityKind> = {
  m: 'length',
  s: 'time',
  Pa: 'pressure',
  'm/s': 'conductivity',
  'm³/s': 'flow',
};

/** Digits shown; a result recomputed from the numbers shown agrees to the last but one. */
const DIGITS = 5;

/** A number as the steps show it, to be typed into a calculator. */
export function stepNumber(value: number): string {
  // What rounding leaves of nought is no number to type.
  if (Math.abs(value) < 1e-15) return '0';
  return String(Number(value.toPrecision(DIGITS)));
}

function withUnit(value: number, unit: string): string {
  return `${stepNumber(value)}${unit === '-' ? '' : ` ${unit}`}`;
}

export function workedSection(parts: WorkedPart[], units: UnitSystem): string {
  return section(
    'worked',
    'The worked calculation, step by step',
    paragraph(workedIntro(DIGITS - 1)),
    ...parts.map(
      ({ heading, note, steps }, part) =>
        `<h3>${part + 1}. ${text(heading)}</h3>${paragraph(note, 'note')}${steps.map((step, at) => stepHtml(step, `${part + 1}.${at + 1}`, units)).join('')}`,
    ),
  );
}

function stepHtml(step: WorkedStep, number: string, units: UnitSystem): string {
  const { title, symbol, unit, expression, inputs, result, validity, source } = step;
  const kind = KINDS[unit];
  const shown = kind ? ` (${formatQuantity(result, kind, units)})` : '';
  return (
    `<div class="step"><h4>${number} ${text(title)}</h4>` +
    `<p class="equation">${text(`${symbol} = ${expression}`)}</p>` +
    table(
      {
        columns: [
          { key: 'symbol', label: 'symbol' },
          { key: 'meaning', label: 'what it is' },
          { key: 'value', label: 'number put in' },
          { key: 'from', label: 'from' },
        ],
        rows: inputs.map((input) => [
          input.symbol,
          input.meaning,
          withUnit(input.value, input.unit),
          input.from,
        ]),
        name: stepInputs(number),
      },
      'inputs',
    ) +
    `<p class="result">${text(`${symbol} = ${withUnit(result, unit)}${shown}`)}</p>` +
    `<p class="note">${text(`${validity}. Source: ${source}`)}</p></div>`
  );
}
