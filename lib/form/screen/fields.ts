/** One question on the screen: its label, why it is asked, the control, and what the reader says to it. */
import type { VNode } from 'preact';
import { isBare } from '../answers.js';
import type { Remark } from '../placed.js';
import { type Choice, UNIT_CHOICES, UNIT_WORDS } from '../questions.js';
import { monthsField } from './months.js';
import { type FieldProps, view } from './view.js';

const KIND_WORDS = { wrong: 'To mend: ', open: '', noticed: 'Worth a look: ' } as const;

/** What the reader says at a place. */
export function remarkLines(id: string, remarks: readonly Remark[]): VNode {
  return view`<div id=${id} class="remarks" aria-live="polite">
    ${remarks.map(({ kind, text }) => view`<p class=${kind}>${KIND_WORDS[kind]}${text}</p>`)}
  </div>`;
}

/** A question with its control. */
export function field(props: FieldProps): VNode {
  const { id, question, remarks = [], brief, children } = props;
  if (question.how === 'months')
    return monthsField({ ...props, legend: question.ask, lines: remarkLines(`${id}-said`, remarks) });
  const described = [brief ? '' : `${id}-why`, `${id}-said`].filter(Boolean).join(' ');
  const wrong = remarks.some(({ kind }) => kind === 'wrong');
  return view`<div class=${`field${wrong ? ' faulty' : ''}`}>
    <label for=${id}>${question.ask}</label>
    ${brief ? null : view`<p class="why" id=${`${id}-why`}>${question.why}</p>`}
    ${control(props, described, wrong)}
    ${children}
    ${remarkLines(`${id}-said`, remarks)}
  </div>`;
}

function control(props: FieldProps, described: string, wrong: boolean): VNode {
  const { id, question, text, onWrite, holes } = props;
  const common = { id, 'aria-describedby': described, 'aria-invalid': wrong ? 'true' : undefined };
  const written = (event: Event) => (event.target as HTMLInputElement).value;
  const { how } = question;
  if (how === 'choice' || how === 'hole') {
    const choices = how === 'hole' ? (holes ?? []) : (question.choices ?? []);
    return view`<select ...${common} value=${chosen(choices, text)} onChange=${(e: Event) => onWrite(written(e))}>
      <option value="">Not said</option>
      ${options(choices)}
      ${choices.some(({ value }) => value === chosen(choices, text)) || text === '' ? null : view`<option value=${text}>${text}</option>`}
    </select>`;
  }
  // What a calendar or clock cannot show is shown as it was written.
  const type =
    how === 'date' && /^(\d{4}-\d\d-\d\d)?$/.test(text)
      ? 'date'
      : how === 'time' && /^(\d\d:\d\d)?$/.test(text)
        ? 'time'
        : 'text';
  if (how)
    return view`<input ...${common} type=${type} value=${text} onInput=${(e: Event) => onWrite(written(e))} />`;
  return numberControl(props, common, written);
}

/** Words in any case are one. */
const chosen = (choices: readonly Choice[], text: string) =>
  choices.find(({ value }) => value.toLowerCase() === text.trim().toLowerCase())?.value ?? text;

function options(choices: readonly Choice[]): VNode[] {
  const one = ({ value, words }: Choice) => view`<option value=${value}>${words}</option>`;
  const groups = [...new Set(choices.map(({ group }) => group))];
  return groups.flatMap((group) => {
    const inside = choices.filter((choice) => choice.group === group).map(one);
    return group === undefined ? inside : [view`<optgroup label=${group}>${inside}</optgroup>`];
  });
}

/** What number or unit stands beside the other just now: it may not have been drawn again since it was changed. */
const besideIt = (event: Event, what: 'input' | 'select') =>
  (event.target as Element).closest('.number')?.querySelector<HTMLInputElement | HTMLSelectElement>(what)
    ?.value;

/** The unit of a number, which may be chosen where the number does not carry its own. */
function numberControl(props: FieldProps, common: object, written: (event: Event) => string): VNode {
  const { id, question, text, units, onWrite } = props;
  const usual = question.unit?.[units] ?? '';
  const unit = props.unit || usual;
  const { word } = question;
  const isWord = word !== undefined && text.toLowerCase() === word.value;
  const choices = UNIT_CHOICES.find((all) => all.includes(usual)) ?? [];
  const all = choices.includes(unit) ? choices : [unit, ...choices];
  const own = text !== '' && !isBare(text);
  const name = (each: string) => UNIT_WORDS[each] ?? each;
  return view`<div class="number">
    <input ...${common} type="text" inputmode=${units === 'us' || /-/.test(text) || question.why.includes('minus') ? 'text' : 'decimal'}
      autocomplete="off" disabled=${isWord} value=${isWord ? '' : text}
      onInput=${(e: Event) => onWrite(written(e), besideIt(e, 'select') ?? (unit || undefined))} />
    ${
      unit === '' || isWord
        ? null
        : own
          ? view`<span class="unit">as written</span>`
          : choices.length < 2
            ? view`<span class="unit">${name(unit)}</span>`
            : view`<select aria-label=${`Unit: ${question.ask}`} value=${unit} onChange=${(e: Event) => onWrite(besideIt(e, 'input') ?? text, written(e))}>
      ${all.map((each) => view`<option value=${each}>${name(each)}</option>`)}
    </select>`
    }
    ${word ? view`<label class="tick"><input type="checkbox" id=${`${id}-word`} checked=${isWord} onChange=${() => onWrite(isWord ? '' : word.value)} />${word.words}</label>` : null}
  </div>`;
}

/** A box to tick. */
export function tick(id: string, words: string, checked: boolean, onTick: (checked: boolean) => void): VNode {
  return view`<label class="tick"><input type="checkbox" id=${id} checked=${checked}
    onChange=${(e: Event) => onTick((e.target as HTMLInputElement).checked)} />${words}</label>`;
}
