/** Months to tick. */
import type { VNode } from 'preact';
import { MONTH_NAMES } from '../questions.js';
import { type FieldProps, view } from './view.js';

/** Months as numbers; none where the text says them otherwise. */
function monthsIn(text: string): number[] | undefined {
  const parts = text.split(/[;,\s]+/).filter(Boolean);
  const months = parts.map(Number);
  return months.every((month) => Number.isInteger(month) && month >= 1 && month <= 12) ? months : undefined;
}

/** A month more or less. */
function monthsWith(text: string, month: number, ticked: boolean): string {
  const others = (monthsIn(text) ?? []).filter((one) => one !== month);
  return [...others, ...(ticked ? [month] : [])].sort((a, b) => a - b).join(';');
}

/** The question as twelve boxes, and one for never. */
export function monthsField({
  id,
  question,
  text,
  onWrite,
  legend,
  lines,
}: FieldProps & { legend: string; lines: VNode }): VNode {
  const { word } = question;
  const isWord = word !== undefined && text.trim().toLowerCase() === word.value;
  const months = isWord ? [] : monthsIn(text);
  const box = (name: string, words: string, checked: boolean, on: () => void) =>
    view`<label class="tick"><input type="checkbox" id=${`${id}-${name}`} checked=${checked} onChange=${on} />${words}</label>`;
  return view`<fieldset class="field" aria-describedby=${`${id}-why ${id}-said`}>
    <legend>${legend}</legend>
    <p class="why" id=${`${id}-why`}>${question.why}</p>
    ${
      months
        ? view`<div class="months">
          ${MONTH_NAMES.map((name, at) => box(String(at + 1), name, months.includes(at + 1), () => onWrite(monthsWith(isWord ? '' : text, at + 1, !months.includes(at + 1)))))}
        </div>`
        : view`<input id=${id} type="text" aria-label=${legend} value=${text} onInput=${(e: Event) => onWrite((e.target as HTMLInputElement).value)} />`
    }
    ${word ? box('word', word.words, isWord, () => onWrite(isWord ? '' : word.value)) : null}
    ${lines}
  </fieldset>`;
}
