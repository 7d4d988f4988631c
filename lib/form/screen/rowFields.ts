/** The questions of a row, its guess and its end. */
import type { ComponentChildren, VNode } from 'preact';
import {
  type FormRow,
  guessNote,
  isGuess,
  type TableFile,
  textOf,
  unitsOf,
  withCell,
  withoutRows,
} from '../answers.js';
import { cellKey } from '../placed.js';
import type { Choice, Question } from '../questions.js';
import { field, remarkLines, tick } from './fields.js';
import { fold } from './fold.js';
import type { Session } from './session.js';
import { view } from './view.js';

export const rowDom = (file: TableFile, id: number, name: string) =>
  `${file.replace('.csv', '')}-${id}-${name}`;

/** A cell's field. */
export function cellField(
  session: Session,
  file: TableFile,
  row: FormRow,
  question: Question,
  besides: {
    holes?: readonly Choice[];
    brief?: boolean;
    onWrite?: (text: string, unit?: string) => void;
    /** as it is shown, where that is not as it stands in the file */
    text?: string;
    children?: ComponentChildren;
  } = {},
): VNode {
  const { answers, remarks } = session.shown;
  const { name } = question;
  return field({
    id: rowDom(file, row.id, name),
    question,
    text: textOf(row, name),
    unit: row.cells[name]?.unit,
    units: unitsOf(answers),
    remarks: remarks.get(cellKey(file, row.id, name)),
    onWrite: (text, unit) => session.edit((all) => withCell(all, file, row.id, name, text, unit)),
    ...besides,
  });
}

/** Is a column asked, by what another cell of the row says? One that is filled in is. */
function isAsked(row: FormRow, { name, only }: Question): boolean {
  if (!only || textOf(row, name) !== '') return true;
  const said = textOf(row, only.name).toLowerCase();
  return only.is.startsWith('!') ? said !== only.is.slice(1) : said === only.is;
}

/** The questions of a row, the less usual ones behind a fold, and what is said of the row as a whole. */
export function rowFields(
  session: Session,
  file: TableFile,
  row: FormRow,
  questions: readonly Question[],
  fieldOf: (question: Question) => VNode,
): VNode {
  const { remarks } = session.shown;
  const asked = questions.filter((question) => isAsked(row, question));
  const more = asked.filter((question) => question.more);
  const open = more.some(({ name }) => textOf(row, name) !== '' || remarks.has(cellKey(file, row.id, name)));
  return view`<div>
    ${asked.filter((question) => !question.more).map(fieldOf)}
    ${more.length > 0 ? fold(session, { key: `${cellKey(file, row.id)} more`, summary: 'More, if you know it', reason: open, kind: 'more' }, () => more.map(fieldOf)) : null}
    ${remarkLines(rowDom(file, row.id, 'said'), remarks.get(cellKey(file, row.id)) ?? [])}
  </div>`;
}

/** The tick that calls a row a guess; its note says so. */
export function rowGuess(session: Session, file: TableFile, row: FormRow): VNode {
  const note = textOf(row, 'note');
  return tick(rowDom(file, row.id, 'guess'), 'Some of this is a guess', isGuess(note), (guess) =>
    session.edit((all) => withCell(all, file, row.id, 'note', guessNote(note, guess))),
  );
}

/** The button that takes a row out. */
export function rowEnd(session: Session, file: TableFile, row: FormRow, what: string): VNode {
  const take = () => session.remove((all) => withoutRows(all, file, ({ id }) => id === row.id), what);
  return view`<button type="button" class="plain" onClick=${take}>Take out ${what}</button>`;
}
