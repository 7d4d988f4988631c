/** Tests with a stop-watch: how fast water sinks in a hole. */
import type { VNode } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { callItTest, lookOfTest } from '../../text/formNames.js';
import {
  type Answers,
  type Cell,
  type FormRow,
  textOf,
  type Watch,
  withCell,
  withoutRows,
  withRow,
  withRows,
} from '../answers.js';
import { holeChoices, holesIn } from '../holes.js';
import { cellKey } from '../placed.js';
import type { Question } from '../questions.js';
import { TEST_QUESTIONS } from '../rowQuestions.js';
import { field } from './fields.js';
import { cellField, rowEnd } from './rowFields.js';
import type { Session } from './session.js';
import { view } from './view.js';

const asked = (name: string) => TEST_QUESTIONS.find((question) => question.name === name) as Question;
const OF_TEST = ['hole_depth', 'hole_diameter', 'soaked_before'].map(asked);
const OF_LOOK = ['minutes', 'depth_to_water'].map(asked);

/** Rows of one test. */
interface Test {
  pit: string;
  test: string;
  rows: FormRow[];
}

/** Tests in the order in which they were written down. */
function testsIn({ rows }: Answers): Test[] {
  const tests = new Map<string, Test>();
  for (const row of rows['soakage.csv']) {
    const [pit, test] = [textOf(row, 'pit'), textOf(row, 'test')];
    const key = JSON.stringify([pit, test]);
    tests.set(key, { pit, test, rows: [...(tests.get(key)?.rows ?? []), row] });
  }
  return [...tests.values()];
}

/** Minutes since the watch was started, to the second. */
const minutesOn = (watch: Watch, now: number) => (Math.max(0, now - watch.started) / 60_000).toFixed(2);

const same = (row: FormRow, { pit, test }: { pit: string; test: string }) =>
  textOf(row, 'pit') === pit && textOf(row, 'test') === test;

/** With another look of a test, in the units of its last. */
function withLook(answers: Answers, { pit, test, rows }: Test, minutes: string): Answers {
  const unit = rows.at(-1)?.cells.depth_to_water?.unit;
  const depth: Cell = unit ? { text: '', unit } : { text: '' };
  const cells = {
    pit: { text: pit },
    test: { text: test },
    minutes: { text: minutes },
    depth_to_water: depth,
  };
  // A time that was taken counts at once, and asks for its depth.
  return withRow(answers, 'soakage.csv', cells, { behind: rows.at(-1)?.id, draft: minutes === '' });
}

/** With a test named otherwise, or in another hole. */
function withTestCell(answers: Answers, test: Test, name: 'pit' | 'test', text: string): Answers {
  const change = (row: FormRow) =>
    same(row, test) ? { ...row, cells: { ...row.cells, [name]: { text } } } : row;
  return withRows(answers, 'soakage.csv', answers.rows['soakage.csv'].map(change));
}

/** The running time, drawn each second by itself. */
function Clock({ watch }: { watch: Watch }): VNode {
  const [now, set] = useState(Date.now());
  useEffect(() => {
    const timer = setInterval(() => set(Date.now()), 1000);
    return () => clearInterval(timer);
  }, [watch.started]);
  const seconds = Math.max(0, Math.floor((now - watch.started) / 1000));
  return view`<output class="clock">${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}</output>`;
}

function watchOf(session: Session, test: Test): VNode {
  const { watch } = session.shown.answers;
  const runs = watch && watch.pit === test.pit && watch.test === test.test;
  const start = () =>
    session.edit((all) => {
      const begun = { ...all, watch: { pit: test.pit, test: test.test, started: Date.now() } };
      const [first] = test.rows;
      const fresh = test.rows.length === 1 && first && textOf(first, 'minutes') === '';
      return fresh ? withCell(begun, 'soakage.csv', first.id, 'minutes', '0') : begun;
    });
  const mark = () =>
    session.edit((all) => (all.watch ? withLook(all, test, minutesOn(all.watch, Date.now())) : all));
  const stop = () => session.edit(({ watch: _, ...rest }) => rest);
  if (!runs)
    return view`<button type="button" onClick=${start}>Start the watch: water is at its first mark</button>`;
  return view`<div class="watch"><${Clock} watch=${watch} />
    <button type="button" onClick=${mark}>Water has moved: write this time down</button>
    <button type="button" class="plain" onClick=${stop}>Stop the watch</button></div>`;
}

function testCard(session: Session, test: Test, at: number): VNode {
  const { answers, remarks } = session.shown;
  const [first] = test.rows as [FormRow];
  const title = `Test ${test.test || at + 1}`;
  const pit = field({
    id: `test-${at}-pit`,
    question: asked('pit'),
    text: test.pit,
    units: 'metric',
    holes: holeChoices(answers),
    remarks: remarks.get(cellKey('soakage.csv', first.id, 'pit')),
    onWrite: (text) => session.edit((all) => withTestCell(all, test, 'pit', text)),
  });
  const all = remarks.get(cellKey('soakage.csv', first.id)) ?? [];
  return view`<section class="card" key=${at} aria-label=${title}>
    <h3>${title}</h3>
    ${pit}
    ${test.test === '' ? view`<button type="button" onClick=${() => session.edit((answered) => withTestCell(answered, test, 'test', String(at + 1)))}>${callItTest(at + 1)}</button>` : null}
    ${OF_TEST.map((question) => cellField(session, 'soakage.csv', first, question))}
    ${watchOf(session, test)}
    ${test.rows.map(
      (
        row,
        number,
      ) => view`<div class="pair" key=${row.id} role="group" aria-label=${lookOfTest(number + 1, title)}>
        ${OF_LOOK.map((question) => cellField(session, 'soakage.csv', row, question, { brief: true }))}
        ${number > 0 ? rowEnd(session, 'soakage.csv', row, `look ${number + 1}`) : null}
      </div>`,
    )}
    ${all.map(({ kind, text }) => view`<p class=${kind}>${text}</p>`)}
    <button type="button" onClick=${() => session.edit((answered) => withLook(answered, test, ''))}>Add a look without the watch</button>
    <button type="button" class="plain" onClick=${() => session.remove((answered) => withoutRows(answered, 'soakage.csv', (row) => same(row, test)), title)}>Take out ${title.toLowerCase()}</button>
  </section>`;
}

/** The step. */
export function testsStep(session: Session): VNode {
  const { answers } = session.shown;
  const tests = testsIn(answers);
  const add = () =>
    session.edit((all) => {
      const number = String(testsIn(all).length + 1);
      return withRow(all, 'soakage.csv', { pit: { text: holesIn(all)[0] ?? '' }, test: { text: number } });
    });
  return view`<div>
    <ol class="how">
      <li>In a hole of known width, below the topsoil, scratch the smeared wall rough. Fill it with water to 30 cm (12 in) above its floor.</li>
      <li>Let it soak for some hours and fill it again.</li>
      <li>Start the watch, and write down how far the water is below the ground each time it has moved. Rain spoils the test. A fall you cannot measure in a day is an answer too: write it.</li>
    </ol>
    ${tests.map((test, at) => testCard(session, test, at))}
    <button type="button" onClick=${add}>Begin a test</button>
  </div>`;
}
