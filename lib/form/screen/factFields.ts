/** Facts, one a question, with the less usual ones behind a fold. */
import type { VNode } from 'preact';
import { itemName } from '../../survey/facts.js';
import { inFileWords } from '../../text/formNotices.js';
import {
  type FactFile,
  factRow,
  guessNote,
  isGuess,
  textOf,
  unitsOf,
  withCell,
  withFact,
  withoutRows,
} from '../answers.js';
import { factKey } from '../placed.js';
import type { Question } from '../questions.js';
import { labelOf } from '../steps.js';
import { field, remarkLines, tick } from './fields.js';
import { fold } from './fold.js';
import type { Session } from './session.js';
import { view } from './view.js';

/** Key of the fold that holds the less usual facts. */
export const moreKey = (file: FactFile) => `${file} more`;

/** Id of a fact's control. */
export const factDom = (file: FactFile, name: string) => `${file.replace('.csv', '')}-${name}`;

/** A fact's field, with the tick that calls it a guess. */
function factField(session: Session, file: FactFile, question: Question): VNode {
  const { answers, remarks } = session.shown;
  const row = factRow(answers, file, question.name);
  const [text, unit, note] = ['value', 'unit', 'note'].map((cell) => textOf(row, cell)) as [
    string,
    string,
    string,
  ];
  const id = factDom(file, question.name);
  return field({
    id,
    question,
    text,
    unit,
    units: unitsOf(answers),
    remarks: remarks.get(factKey(file, question.name)),
    onWrite: (value, chosen) => session.edit((all) => withFact(all, file, question.name, value, chosen)),
    children:
      row && text !== '' && question.how !== 'text'
        ? tick(`${id}-guess`, 'It is a guess', isGuess(note), (guess) =>
            session.edit((all) => withCell(all, file, row.id, 'note', guessNote(note, guess))),
          )
        : null,
  });
}

/** Is a question asked, by what another fact says? One that has an answer is. */
function isAsked(session: Session, file: FactFile, { name, only }: Question): boolean {
  const said = (item: string) => textOf(factRow(session.shown.answers, file, item), 'value').toLowerCase();
  if (!only || said(name) !== '') return true;
  return only.is.startsWith('!') ? said(only.name) !== only.is.slice(1) : said(only.name) === only.is;
}

/** Facts that came with a file and are asked nowhere, or stand there twice: shown as they are, and taken out. */
function leftOver(session: Session, file: FactFile): VNode[] {
  const { answers, remarks } = session.shown;
  return answers.rows[file].flatMap((row) => {
    const [item, value, unit] = ['item', 'value', 'unit'].map((cell) => textOf(row, cell)) as [
      string,
      string,
      string,
    ];
    const asked = item === 'show_units' || labelOf(file, itemName(item)) !== undefined;
    if (asked && factRow(answers, file, itemName(item))?.id === row.id) return [];
    const said = remarks.get(factKey(file, itemName(item))) ?? [];
    return [
      view`<section class="card" key=${row.id}>
        <p>${inFileWords(item, value, unit)}</p>
        ${asked ? null : remarkLines(`${file.replace('.csv', '')}-row-${row.id}`, said)}
        <button type="button" class="plain" onClick=${() => session.remove((all) => withoutRows(all, file, ({ id }) => id === row.id), item)}>Take it out</button>
      </section>`,
    ];
  });
}

/** The questions of a step; of those behind the fold what is answered stands open. */
export function factFields(session: Session, file: FactFile, questions: readonly Question[]): VNode {
  const asked = questions.filter((question) => isAsked(session, file, question));
  const more = asked.filter((question) => question.more);
  const { answers, remarks } = session.shown;
  const open = more.some(
    ({ name }) => textOf(factRow(answers, file, name), 'value') !== '' || remarks.has(factKey(file, name)),
  );
  return view`<div>
    ${leftOver(session, file)}
    ${asked.filter((question) => !question.more).map((question) => factField(session, file, question))}
    ${
      more.length > 0
        ? fold(
            session,
            { key: moreKey(file), summary: 'More, if you know it', reason: open, kind: 'more' },
            () => more.map((question) => factField(session, file, question)),
          )
        : null
    }
  </div>`;
}
