/** The answer so far, what would help most, and the ways out: the page, the pond card, the survey as a zip. */
import type { VNode } from 'preact';
import { mendUnderWords, moreAssumedWords, takenAsWords } from '../../text/formNotices.js';
import { fileKey } from '../placed.js';
import {
  choiceWords,
  labelOf,
  STEPS,
  type StepName,
  stepOfItem,
  stepOfKey,
  stepOfMeasurement,
} from '../steps.js';
import { factDom, moreKey } from './factFields.js';
import { figureHolder } from './figureHolder.js';
import { openFiles, saveCard, savePage, saveSurvey } from './saving.js';
import type { Session } from './session.js';
import { view } from './view.js';

/** Facts that may be said at once, of those assumed. */
const TOLD = 6;

const titleOf = (step: StepName) => STEPS.find(({ name }) => name === step)?.title ?? '';

/** What keeps the answer back, each with its step. */
function missing(session: Session): { step: StepName; text: string }[] {
  const { remarks } = session.shown;
  if (session.empty)
    return [
      {
        step: 'pond',
        text: 'Say how deep, how long and how wide the pond is to be, and what is in one hole',
      },
    ];
  const said = [...remarks].flatMap(([key, all]) => {
    const step = stepOfKey(key) ?? 'answer';
    const [, item] = key.split(' ');
    if (all.every(({ kind }) => kind === 'noticed')) return [];
    const open = all.every(({ kind }) => kind !== 'wrong');
    if (open && key === fileKey('pits.csv')) return [{ step, text: 'What is in one hole' }];
    if (open && key === fileKey('pond.csv'))
      return [{ step, text: 'How deep, how long and how wide the pond is to be' }];
    const label = open && key.startsWith('pond.csv') && labelOf('pond.csv', item ?? '');
    return [{ step, text: label || mendUnderWords(titleOf(step)) }];
  });
  return [...new Map(said.map((one) => [one.text, one])).values()];
}

/** The one fact that would help most now. */
export function helpsMost(session: Session): { step?: StepName; text: string } | undefined {
  const { state, answer } = session.shown;
  if (state === 'none' || state === 'refused') return missing(session)[0];
  const [next] = answer?.next ?? [];
  if (next) return { step: stepOfMeasurement(next.text), text: next.text };
  return (
    answer && {
      text: 'Nothing that was tried would change the answer. Read the dip pipe before you lower the pond',
    }
  );
}

const STANDS: Readonly<Record<string, string>> = {
  none: 'There is no answer yet.',
  busy: 'The answer is being worked out.',
  quick: 'A first answer from few trials, not to act on: it is being worked out in full.',
  full: 'Worked out in full.',
  refused: 'This is the answer of before: something is to be mended or filled in.',
  failed: 'The answer could not be worked out.',
};

/** How far the answer is to be trusted just now. */
export function stands(session: Session): string {
  const { state, answer } = session.shown;
  if (state === 'refused' && !answer) return STANDS.none!;
  return state === 'busy' && answer
    ? 'This is the answer of before: the new one is being worked out.'
    : STANDS[state]!;
}

function goTo(session: Session, step: StepName, target: string): void {
  if (target !== 'fault')
    for (const file of ['pond.csv', 'site.csv'] as const) session.toggle(moreKey(file), true);
  session.go(step, target);
}

function stepButton(session: Session, step: StepName | undefined, target?: string): VNode | null {
  if (!step || step === 'answer') return null;
  if (target)
    return view`<button type="button" class="plain" onClick=${() => goTo(session, step, target)}>${target === 'fault' ? 'Go there' : 'Say it'}</button>`;
  return view`<button type="button" class="plain" onClick=${() => session.go(step)}>Go to “${titleOf(step)}”</button>`;
}

function words(session: Session): VNode | null {
  const { answer, state } = session.shown;
  if (!answer) return null;
  const old = state !== 'full';
  const part = (title: string, text: string) =>
    text ? view`<section><h3>${title}</h3><p>${text}</p></section>` : null;
  const soon = answer.next.find(({ waits }) => !waits);
  const sayable = answer.assumed.filter(({ item }) => stepOfItem(item));
  return view`<div class=${old ? 'verdict old' : 'verdict'}>
    <p class="headline">${answer.headline.answer}</p>
    <p>${answer.headline.margin}</p>
    ${answer.headline.otherwise ? view`<p>${answer.headline.otherwise}</p>` : null}
    ${part('How often it fails', answer.headline.chance)}
    ${part('What is in hand', answer.headline.inHand)}
    ${part('Why', answer.why)}
    ${answer.drawings.water ? figureHolder('Which water wins?', answer.drawings.water) : null}
    ${figureHolder('How deep, with what?', answer.drawings.depth)}
    ${
      soon && soon !== answer.next[0]
        ? view`<section><h3>What helps without waiting for winter</h3><p>${soon.text}.</p>${stepButton(session, stepOfMeasurement(soon.text))}</section>`
        : null
    }
    ${
      answer.weather
        ? view`<section><h3>What daily weather would settle</h3><p>${answer.weather}</p>${stepButton(session, 'weather')}</section>`
        : null
    }
    ${
      sayable.length > 0
        ? view`<section><h3>Assumed, and you may know it</h3><ul class="assumed">
          ${sayable.slice(0, TOLD).map(({ item, value, reason }) => {
            const { step, file } = stepOfItem(item)!;
            return view`<li key=${item}><strong>${labelOf(file, item)}</strong>: ${takenAsWords(choiceWords(file, item, value), reason)} ${stepButton(session, step, factDom(file, item))}</li>`;
          })}
        </ul>${sayable.length > TOLD ? view`<p>${moreAssumedWords(sayable.length - TOLD)}</p>` : null}</section>`
        : null
    }
  </div>`;
}

function ways(session: Session): VNode {
  const { state } = session.shown;
  return view`<section class="card" aria-labelledby="save-title">
    <h3 id="save-title">Save and open</h3>
    <p>The page holds the answer, the drawings and the what-if, and opens anywhere without a network. The pond card is one small sheet (A6) to print for the shed: how low the pond may go in each month. The survey is one zip file: open it here again, or unpack it and let the program read the folder.</p>
    <button type="button" disabled=${state !== 'full'} onClick=${() => savePage(session)}>Save the page</button>
    <button type="button" disabled=${state !== 'full'} onClick=${() => saveCard(session)}>Save the pond card</button>
    <button type="button" disabled=${session.empty} onClick=${() => saveSurvey(session)}>Save the survey (zip)</button>
    <div class="field"><label for="open-survey">Open a survey</label>
      <p class="why" id="open-survey-why">A zip saved here, or all files of a survey folder at once. It takes the place of what is typed now.</p>
      <input id="open-survey" type="file" multiple accept=".zip,.csv,.tsv,.txt,.dly,.gz,image/*" aria-describedby="open-survey-why" onChange=${(event: Event) => openFiles(session, event.target as HTMLInputElement)} />
    </div>
    <button type="button" class="plain" disabled=${session.empty} onClick=${() => session.startAnew()}>Begin a new survey</button>
  </section>`;
}

/** The step. */
export function answerStep(session: Session): VNode {
  const { state, findings, remarks } = session.shown;
  const held = state === 'none' || state === 'refused' ? missing(session) : [];
  const most = helpsMost(session);
  // What is said of files that belong to no step.
  const elsewhere = [...remarks].filter(([key]) => stepOfKey(key) === undefined);
  return view`<div>
    <p role="status">${stands(session)}</p>
    ${
      held.length > 0
        ? view`<section><h3>Still needed</h3><ul>${held.map(({ step, text }) => view`<li key=${text}>${text}. ${stepButton(session, step, 'fault')}</li>`)}</ul></section>`
        : most
          ? view`<section class="most"><h3>What would help most now</h3><p>${most.text}.</p>${stepButton(session, most.step)}</section>`
          : null
    }
    ${elsewhere.flatMap(([, all]) => all.filter(({ kind }) => kind !== 'open' || findings.problems.length === 0).map(({ kind, text }) => view`<p class=${kind} key=${text}>${text}</p>`))}
    ${words(session)}
    ${ways(session)}
  </div>`;
}
