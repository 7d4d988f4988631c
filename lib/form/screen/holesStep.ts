/** Holes and the layers in them. */
import type { VNode } from 'preact';

import { CAUTIONS } from '../../text/cautions.js';
import { SPADE_HOLE } from '../../text/fieldSheetWords.js';
import { layerOfHole, layerPhotoAlt, takeOutHole } from '../../text/formNames.js';
import { holeThereWords, photoMissingWords } from '../../text/formNotices.js';
import { type FormRow, textOf, withCell, withoutRows } from '../answers.js';
import { holeName, holesIn, newHoleName, renamedHole, withLayer } from '../holes.js';
import { LAYER_QUESTIONS } from '../layerQuestions.js';
import { cellKey } from '../placed.js';
import type { Question } from '../questions.js';
import { cellWords, rowFold } from './fold.js';
import { howTo } from './howTo.js';
import { photoData, shrunkPhoto } from './photo.js';
import { cellField, rowDom, rowEnd, rowFields, rowGuess } from './rowFields.js';
import type { Session } from './session.js';
import { view } from './view.js';

const NAME: Question = {
  name: 'pit',
  ask: 'Name of the hole',
  why: 'Short, such as P1. Write it on the peg beside it.',
  how: 'text',
};

/** What stands over the digging, whatever else is read. */
export function cautions(): VNode {
  return view`<section class="cautions" aria-labelledby="cautions-title">
    <h3 id="cautions-title">Before the first hole</h3>
    <ul>${CAUTIONS.map(({ title, text }) => view`<li><strong>${title}.</strong> ${text}</li>`)}</ul>
  </section>`;
}

function holeNameField(session: Session, pit: string, at: number): VNode {
  const id = `hole-${at}`;
  const write = (event: Event) => {
    const input = event.target as HTMLInputElement;
    const name = holeName(input.value.trim());
    if (name === pit) return;
    if (name === '' || holesIn(session.shown.answers).includes(name)) {
      input.value = pit;
      session.tell(name === '' ? 'A hole needs a name.' : holeThereWords(name));
      return;
    }
    session.edit((all) => renamedHole(all, pit, name));
  };
  const first = session.shown.answers.rows['pits.csv'].find((row) => textOf(row, 'pit') === pit);
  const said = (first && session.shown.remarks.get(cellKey('pits.csv', first.id, 'pit'))) ?? [];
  return view`<div class="field"><label for=${id}>${NAME.ask}</label>
    <p class="why" id=${`${id}-why`}>${NAME.why}</p>
    <input id=${id} type="text" aria-describedby=${`${id}-why ${id}-said`} value=${pit} onChange=${write} />
    <div id=${`${id}-said`} class="remarks">${said.map(({ kind, text }) => view`<p class=${kind}>${text}</p>`)}</div>
  </div>`;
}

/** A photo: chosen or taken, made small, shown, or taken out. */
function photoField(session: Session, row: FormRow, question: Question): VNode {
  const name = textOf(row, 'photo');
  const id = rowDom('pits.csv', row.id, 'photo');
  const bytes = session.shown.attached.get(name);
  const take = async (event: Event) => {
    const input = event.target as HTMLInputElement;
    const file = input.files?.[0];
    if (!file) return;
    try {
      const small = await shrunkPhoto(file);
      const own = `${textOf(row, 'pit')}-${row.id}`.replace(/[^A-Za-z0-9]+/g, '-').toLowerCase();
      const called = `${own}.jpg`;
      session.attach(new Map([[called, small]]), name === called ? [] : [name]);
      session.edit((all) => withCell(all, 'pits.csv', row.id, 'photo', called));
    } catch (error) {
      session.tell((error as Error).message);
    }
    input.value = '';
  };
  const drop = () => {
    session.attach(new Map(), [name]);
    session.edit((all) => withCell(all, 'pits.csv', row.id, 'photo', ''));
  };
  return view`<div class="field"><label for=${id}>${question.ask}</label>
    <p class="why" id=${`${id}-why`}>${question.why}</p>
    ${bytes ? view`<img class="photo" src=${photoData(bytes)} alt=${layerPhotoAlt(textOf(row, 'top'), textOf(row, 'pit'))} />` : null}
    ${name !== '' && !bytes ? view`<p class="wrong">${photoMissingWords(name)}</p>` : null}
    <input id=${id} type="file" accept="image/*" aria-describedby=${`${id}-why`} onChange=${take} />
    ${name !== '' ? view`<button type="button" class="plain" onClick=${drop}>Take the photo out</button>` : null}
  </div>`;
}

function layer(session: Session, row: FormRow, number: number): VNode {
  const name = layerOfHole(number, textOf(row, 'pit'));
  const { top, bottom } = row.cells;
  const depth = textOf(row, 'bottom') === '' ? '' : `${cellWords(top)} to ${cellWords(bottom)}`;
  const summary = [`Layer ${number}`, depth, textOf(row, 'texture')].filter(Boolean).join(', ');
  return rowFold(
    session,
    'pits.csv',
    row,
    summary,
    () => view`<div>
    ${rowFields(session, 'pits.csv', row, LAYER_QUESTIONS, (question) =>
      question.how === 'photo'
        ? photoField(session, row, question)
        : cellField(session, 'pits.csv', row, question),
    )}
    ${rowGuess(session, 'pits.csv', row)}
    ${rowEnd(session, 'pits.csv', row, name)}
  </div>`,
  );
}

/** Adds a layer that stands open; the others are folded. */
function addLayer(session: Session, pit: string): void {
  session.foldAll('pits.csv ');
  session.edit((all) => withLayer(all, pit));
}

/** The step. */
export function holesStep(session: Session): VNode {
  const { answers } = session.shown;
  const rows = answers.rows['pits.csv'];
  const pits = [...new Set(rows.map((row) => textOf(row, 'pit')))];
  return view`<div>
    ${cautions()}
    <p>${SPADE_HOLE}</p>
    ${howTo(session, ['ribbon'])}
    ${pits.map((pit, at) => {
      const layers = rows.filter((row) => textOf(row, 'pit') === pit);
      return view`<section class="card" key=${at} aria-label=${`Hole ${pit}`}>
        <h3>Hole ${pit}</h3>
        ${holeNameField(session, pit, at)}
        ${layers.map((row, number) => layer(session, row, number + 1))}
        <button type="button" onClick=${() => addLayer(session, pit)}>Add the layer below</button>
        <button type="button" class="plain" onClick=${() => session.remove((all) => withoutRows(all, 'pits.csv', (row) => textOf(row, 'pit') === pit), `Hole ${pit}`)}>${takeOutHole(pit)}</button>
      </section>`;
    })}
    <button type="button" onClick=${() => addLayer(session, newHoleName(answers))}>${pits.length === 0 ? 'Begin the first hole' : 'Begin another hole'}</button>
  </div>`;
}
