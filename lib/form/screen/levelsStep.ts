/** Levels, by tape down from a level string or above a mark. */
import type { VNode } from 'preact';
import { type FormRow, textOf, withCell } from '../answers.js';
import { holeChoices, holeName } from '../holes.js';
import type { Question } from '../questions.js';
import { LEVEL_QUESTIONS } from '../rowQuestions.js';
import { tick } from './fields.js';
import { addRow, rowFold } from './fold.js';
import { howTo } from './howTo.js';
import { levelSketch, roleWords, sketchButton } from './levelSketch.js';
import { cellField, rowEnd, rowFields, rowGuess } from './rowFields.js';
import type { Session } from './session.js';
import { view } from './view.js';

/** A height as far below as it is above, as text; nothing but its sign is changed. */
function otherSign(text: string): string {
  const [, sign, rest] = /^\s*([-\u2212+]?)\s*(.*)$/.exec(text) as unknown as [string, string, string];
  if (rest === '' || /^0*([.,]0*)?$/.test(rest)) return rest;
  return sign === '-' || sign === '\u2212' ? rest : `-${rest}`;
}

const DOWN: Pick<Question, 'ask' | 'why'> = {
  ask: 'How far down from the string?',
  why: 'From the level string, or the water in the hose, down to the ground there.',
};

function point(session: Session, row: FormRow, down: boolean): VNode {
  const title = textOf(row, 'point') || 'a point';
  const holes = holeChoices(session.shown.answers);
  const own = (question: Question) => {
    const { name } = question;
    const edit = (text: string, unit?: string) =>
      session.edit((all) => withCell(all, 'levels.csv', row.id, name, text, unit));
    // A hole keeps one name everywhere.
    if (name === 'point' && textOf(row, 'role') === 'pit' && holes.length > 0)
      return cellField(
        session,
        'levels.csv',
        row,
        { ...question, ask: 'Which hole?', how: 'hole' },
        { holes },
      );
    if (name === 'point')
      return cellField(session, 'levels.csv', row, question, { onWrite: (text) => edit(holeName(text)) });
    if (name !== 'level' || !down) return cellField(session, 'levels.csv', row, question);
    return cellField(
      session,
      'levels.csv',
      row,
      { ...question, ...DOWN },
      {
        text: otherSign(textOf(row, 'level')),
        onWrite: (text, unit) => edit(otherSign(text), unit),
      },
    );
  };
  const summary = [title, roleWords(textOf(row, 'role'))].filter(Boolean).join(', ');
  return rowFold(
    session,
    'levels.csv',
    row,
    summary,
    () => view`<div>
    ${rowFields(session, 'levels.csv', row, LEVEL_QUESTIONS, own)}
    ${sketchButton(session, row)}
    ${rowGuess(session, 'levels.csv', row)}
    ${rowEnd(session, 'levels.csv', row, title)}
  </div>`,
  );
}

/** The step. */
export function levelsStep(session: Session): VNode {
  const { answers } = session.shown;
  const rows = answers.rows['levels.csv'];
  const typed = rows.map((row) => textOf(row, 'level')).filter((text) => text !== '');
  // A survey that came with heights above a mark is shown as it is.
  const down = answers.levelsDown ?? typed.every((text) => /^\s*[-\u2212]|^0*([.,]0*)?$/.test(text));
  return view`<div>
    <ol class="how">
      <li>Stretch a string from a peg uphill of the pond, down over it to where water could run away. Make it level with a spirit level on the string, or use a clear hose filled with water.</li>
      <li>Measure by tape from the string straight down to the ground: at the lowest and the highest edge of the pond, at each hole, and where a drain could end.</li>
      <li>Measure along the ground from the pond’s edge to each point.</li>
    </ol>
    ${howTo(session, ['hose', 'laser'])}
    ${tick('levels-down', 'I measure down from a level string or hose', down, (ticked) =>
      session.edit((all) => ({ ...all, levelsDown: ticked })),
    )}
    ${down ? null : view`<p class="why">Heights are above one fixed mark, such as a doorstep; below it write a minus.</p>`}
    ${levelSketch(session)}
    ${rows.map((row) => point(session, row, down))}
    <button type="button" onClick=${() => addRow(session, 'levels.csv', { role: { text: rows.length === 0 ? 'rim' : '' } })}>Add a point</button>
  </div>`;
}
