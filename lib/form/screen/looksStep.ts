/** Looks at water, and what is known of it without looking. */
import type { VNode } from 'preact';
import { type FormRow, textOf, withRow } from '../answers.js';
import { holeChoices, holesIn } from '../holes.js';
import { HEAD_QUESTIONS, LOOK_QUESTIONS } from '../rowQuestions.js';
import { addRow, cellWords, rowFold } from './fold.js';
import { howTo } from './howTo.js';
import { cellField, rowEnd, rowFields, rowGuess } from './rowFields.js';
import type { Session } from './session.js';
import { view } from './view.js';

const two = (number: number) => String(number).padStart(2, '0');

/** Day and time as they are here. */
function nowHere(now: Date): { date: string; time: string } {
  return {
    date: `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`,
    time: `${two(now.getHours())}:${two(now.getMinutes())}`,
  };
}

/** Adds a look of this moment, into the hole looked into last. */
export function addLook(session: Session): void {
  const { answers } = session.shown;
  const last = answers.rows['water.csv'].at(-1);
  const pit = last ? textOf(last, 'pit') : (holesIn(answers)[0] ?? '');
  const { date, time } = nowHere(new Date());
  addRow(session, 'water.csv', { pit: { text: pit }, date: { text: date }, time: { text: time } });
}

const READING: Readonly<Record<string, string>> = {
  opened: 'finished at',
  level: 'water at',
  strike: 'water met at',
  bailed: 'emptied to',
};

function titleOf(row: FormRow): string {
  const [pit, date, reading] = ['pit', 'date', 'reading'].map((name) => textOf(row, name)) as [
    string,
    string,
    string,
  ];
  const what = reading === 'dry' ? 'dry' : `${READING[reading] ?? reading} ${cellWords(row.cells.depth)}`;
  return [pit || 'a hole', date, what.trim()].filter(Boolean).join(', ');
}

function look(session: Session, row: FormRow): VNode {
  const { answers } = session.shown;
  return rowFold(
    session,
    'water.csv',
    row,
    titleOf(row),
    () => view`<div>
    ${rowFields(session, 'water.csv', row, LOOK_QUESTIONS, (question) =>
      cellField(session, 'water.csv', row, question, {
        holes: holeChoices(answers, ['dip-pipe', 'pond', 'dig']),
      }),
    )}
    ${rowGuess(session, 'water.csv', row)}
    ${rowEnd(session, 'water.csv', row, 'this look')}
  </div>`,
  );
}

/** The step. */
export function looksStep(session: Session): VNode {
  const { answers } = session.shown;
  const looks = answers.rows['water.csv'];
  const heads = answers.rows['heads.csv'];
  return view`<div>
    <p>Write down when the hole was finished, and how deep. Cover it so that no rain runs in and no child or animal falls in, and fence it. Always measure from the same mark.</p>
    ${howTo(session, ['standpipe', 'dip-pipe'])}
    ${looks.map((row) => look(session, row))}
    <button type="button" onClick=${() => addLook(session)}>Add a look of now</button>
    <section class="card" aria-labelledby="heads-title">
      <h3 id="heads-title">Water you know of without a look</h3>
      <p>From a neighbour’s pipe, a map, a memory of winter. Say how far off it may be, and the answer counts it as no surer than that. Where any stands here it is taken in the place of what the looks tell.</p>
      ${heads.map(
        (row) => view`<section class="row" key=${row.id} aria-label="Water you know of">
          ${rowFields(session, 'heads.csv', row, HEAD_QUESTIONS, (question) =>
            cellField(session, 'heads.csv', row, question, { holes: headPlaces(answers) }),
          )}
          ${rowEnd(session, 'heads.csv', row, 'this')}
        </section>`,
      )}
      <button type="button" onClick=${() => session.edit((all) => withRow(all, 'heads.csv', { place: { text: 'site' }, month: { text: 'high' } }))}>Add what you know</button>
    </section>
  </div>`;
}

const headPlaces = (answers: Session['shown']['answers']) => [
  { value: 'site', words: 'Where the pond is to be' },
  { value: 'uphill', words: 'Uphill of it' },
  ...holeChoices(answers),
];
