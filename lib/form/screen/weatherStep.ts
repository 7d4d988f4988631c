/** Weather: a file of daily values, or the twelve months of an ordinary year. */
import type { VNode } from 'preact';
import { surveyFileOf } from '../../survey/index.js';
import { type Answers, textOf, unitsOf, withCell, withoutRows, withRows } from '../answers.js';
import { cellKey, fileKey } from '../placed.js';
import { MONTH_NAMES, type Question } from '../questions.js';
import { MONTH_QUESTIONS } from '../rowQuestions.js';
import { field, remarkLines } from './fields.js';
import { rowDom } from './rowFields.js';
import type { Session } from './session.js';
import { view } from './view.js';
import { plain } from './zip.js';

/** Attached files that can only be weather. */
function weatherFiles({ attached }: Answers): string[] {
  return attached.filter((name) => {
    if (name.includes('/') || !/\.(csv|tsv|dly|txt)$/i.test(name)) return false;
    return (surveyFileOf(name) ?? 'weather.csv') === 'weather.csv' && !/^readme/i.test(name);
  });
}

/** With the twelve rows to be filled in. */
function withMonths(answers: Answers): Answers {
  const known = new Set(answers.rows['climate.csv'].map((row) => textOf(row, 'month')));
  let next = answers.next;
  const added = MONTH_NAMES.flatMap((_, at) => {
    const month = String(at + 1);
    return known.has(month) ? [] : [{ id: next++, draft: true as const, cells: { month: { text: month } } }];
  });
  return { ...withRows(answers, 'climate.csv', [...answers.rows['climate.csv'], ...added]), next };
}

function monthTable(session: Session): VNode {
  const { answers, remarks } = session.shown;
  const units = unitsOf(answers);
  const rows = answers.rows['climate.csv'];
  const shown = MONTH_QUESTIONS.filter(
    ({ name, more }) => name !== 'month' && (!more || rows.some((row) => textOf(row, name) !== '')),
  );
  const cell = (row: (typeof rows)[number], question: Question) =>
    field({
      id: rowDom('climate.csv', row.id, question.name),
      question,
      text: textOf(row, question.name),
      unit: row.cells[question.name]?.unit,
      units,
      brief: true,
      remarks: remarks.get(cellKey('climate.csv', row.id, question.name)),
      onWrite: (text, unit) =>
        session.edit((all) => withCell(all, 'climate.csv', row.id, question.name, text, unit)),
    });
  return view`<div>
    <p class="why">${shown.map(({ ask, why }) => `${ask}: ${why}`).join(' ')}</p>
    ${rows.map((row) => {
      const month = MONTH_NAMES[Number(textOf(row, 'month')) - 1] ?? textOf(row, 'month');
      return view`<fieldset class="pair" key=${row.id}><legend>${month}</legend>${shown.map((question) => cell(row, question))}</fieldset>`;
    })}
    ${remarkLines('climate-said', remarks.get(fileKey('climate.csv')) ?? [])}
    <button type="button" class="plain" onClick=${() => session.remove((all) => withoutRows(all, 'climate.csv', () => true), 'The twelve months')}>Take out the twelve months</button>
  </div>`;
}

/** The step. */
export function weatherStep(session: Session): VNode {
  const { answer, answers, attached, remarks } = session.shown;
  const files = weatherFiles(answers);
  const attach = async (event: Event) => {
    const input = event.target as HTMLInputElement;
    const file = input.files?.[0];
    if (!file) return;
    try {
      const bytes = new Uint8Array(await file.arrayBuffer());
      const [content] = Object.values(plain({ [file.name]: bytes }));
      // Under that name what is wrong with it is told column by column, whatever the service called it.
      session.attach(new Map([['weather.csv', content ?? bytes]]), files);
    } catch (error) {
      session.tell((error as Error).message);
    }
    input.value = '';
  };
  return view`<div>
    <section class="card" aria-labelledby="daily-title">
      <h3 id="daily-title">Daily weather, as a file</h3>
      <p>Ask a weather service for the rain, the lowest and the highest temperature of every day, for ten years or more, from the nearest station. Take the file as it comes: a table that names its columns with their units, or one of GHCN-Daily.</p>
      ${answer?.weather ? view`<p>${answer.weather}</p>` : null}
      <div class="field"><label for="weather-file">The file</label>
        <input id="weather-file" type="file" accept=".csv,.tsv,.txt,.dly,.gz" onChange=${attach} />
      </div>
      ${files.map((name) => view`<p key=${name}><strong>${name}</strong>, ${Math.ceil((attached.get(name)?.length ?? 0) / 1000)} kB <button type="button" class="plain" onClick=${() => session.attach(new Map(), [name])}>Take out ${name}</button></p>`)}
      ${remarkLines(
        'weather-said',
        [...new Set(['weather.csv', ...files])].flatMap((name) => remarks.get(fileKey(name)) ?? []),
      )}
    </section>
    <section class="card" aria-labelledby="months-title">
      <h3 id="months-title">Or the twelve months of an ordinary year</h3>
      ${answer?.weather ? null : view`<p>They set which months are wet, and how far the pond falls where nobody tops it up. They do not make the winter water surer.</p>`}
      <p>Rain is needed for all twelve.</p>
      ${
        answers.rows['climate.csv'].length > 0
          ? monthTable(session)
          : view`<button type="button" onClick=${() => session.edit(withMonths)}>Fill in twelve months</button>`
      }
    </section>
  </div>`;
}
