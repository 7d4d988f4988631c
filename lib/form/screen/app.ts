/** The form on the screen: its head, the steps, the step that is open, and the answer below. */
import type { VNode } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { surveyFileOf } from '../../survey/index.js';
import { stepOfSteps } from '../../text/formNames.js';
import { asTheyCameWords, keptAtWords } from '../../text/formNotices.js';
import { unitsOf, withFact } from '../answers.js';
import { fileKey, type Remark } from '../placed.js';
import { KEEPING_QUESTIONS, PLACE_QUESTIONS } from '../placeQuestions.js';
import { POND_QUESTIONS } from '../pondQuestions.js';
import { STEPS, type Step, type StepName, stepOfKey } from '../steps.js';
import { answerStep, helpsMost, stands } from './answerStep.js';
import { factFields } from './factFields.js';
import { remarkLines } from './fields.js';
import { cautions, holesStep } from './holesStep.js';
import { levelsStep } from './levelsStep.js';
import { addLook, looksStep } from './looksStep.js';
import type { Session } from './session.js';
import { testsStep } from './testsStep.js';
import { view } from './view.js';
import { weatherStep } from './weatherStep.js';

const CONTENT: Readonly<Record<StepName, (session: Session) => VNode>> = {
  pond: (session) => factFields(session, 'pond.csv', POND_QUESTIONS),
  place: (session) => factFields(session, 'site.csv', PLACE_QUESTIONS),
  holes: holesStep,
  looks: looksStep,
  levels: levelsStep,
  tests: testsStep,
  weather: weatherStep,
  keeping: (session) => factFields(session, 'site.csv', KEEPING_QUESTIONS),
  answer: answerStep,
};

/** What is said within a step, at any of its fields. */
function saidIn(session: Session, { name }: Step): Remark[] {
  return [...session.shown.remarks].flatMap(([key, remarks]) => (stepOfKey(key) === name ? remarks : []));
}

function unitSwitch(session: Session): VNode {
  const units = unitsOf(session.shown.answers);
  const set = (event: Event) =>
    session.edit((all) => withFact(all, 'site.csv', 'show_units', (event.target as HTMLSelectElement).value));
  return view`<label class="units" for="units">Units <select id="units" value=${units} onChange=${set}>
    <option value="metric">metres</option><option value="us">feet</option>
  </select></label>`;
}

function keptLine(session: Session): string {
  const { kept } = session.shown;
  if (kept === 'nowhere')
    return 'This browser keeps nothing: save the survey under “The answer” before you close it.';
  if (kept === 'not yet')
    return 'What you type is kept in this browser, on this device. Nothing is sent anywhere.';
  const at = kept.toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' });
  return keptAtWords(at);
}

function stepList(session: Session): VNode {
  const { step } = session.shown;
  return view`<nav aria-label="Steps"><ol class="steps">
    ${STEPS.map((one, at) => {
      const faults = saidIn(session, one).filter(({ kind }) => kind === 'wrong').length;
      return view`<li key=${one.name}><button type="button" aria-current=${one.name === step ? 'step' : undefined} class=${faults > 0 ? 'faulty' : ''} onClick=${() => session.go(one.name)}>
        <span aria-hidden="true">${at + 1}</span> ${one.short}${faults > 0 ? view`<span class="hidden">, ${faults} to mend</span>` : null}
      </button></li>`;
    })}
  </ol></nav>`;
}

/** Files of a step that count as they came: what is typed beside them would be lost. */
function asTheyCame(session: Session, { name: step, files }: Step): string[] {
  const own = step === 'keeping' ? ['site.csv'] : files;
  return session.shown.answers.attached.filter((name) => {
    const file = name.includes('/') ? undefined : surveyFileOf(name);
    return file !== undefined && file !== 'weather.csv' && own.includes(file);
  });
}

function content(session: Session, step: Step): VNode {
  const files = asTheyCame(session, step);
  if (files.length === 0) return CONTENT[step.name](session);
  return view`<section class="card">
    ${step.name === 'holes' ? cautions() : null}
    <p>${asTheyCameWords(files)}</p>
    ${files.map((name) => view`<button type="button" key=${name} onClick=${() => session.attach(new Map(), [name])}>Take out ${name}</button>`)}
  </section>`;
}

/** What belongs to no field of an open step. */
function unplaced(session: Session, { name, files }: Step): VNode | null {
  if (name === 'weather') return null;
  const said = files.flatMap((file) => session.shown.remarks.get(fileKey(file)) ?? []);
  const shown = said.filter(({ kind }) => kind !== 'open');
  return shown.length > 0 ? remarkLines(`${name}-said`, shown) : null;
}

function answerBar(session: Session): VNode {
  const { answer, state } = session.shown;
  const most = helpsMost(session);
  const line = answer && state !== 'none' ? answer.headline.answer : stands(session);
  return view`<aside class=${`bar ${state}`} aria-label="Answer so far">
    <div aria-live="polite">
      <p class="headline">${line}</p>
      ${
        answer && state !== 'full'
          ? view`<p class="note">${stands(session)}</p>`
          : most
            ? view`<p class="note"><strong>${answer ? 'Helps most now:' : 'Still needed:'}</strong> ${most.text}.</p>`
            : null
      }
    </div>
    <button type="button" onClick=${() => session.go('answer')}>Answer</button>
  </aside>`;
}

function notice(session: Session): VNode | null {
  const { told, elsewhere } = session.shown;
  return view`<div class="notice" role="status">
    ${elsewhere ? view`<p>This form is open in another window, which has changed it. <button type="button" onClick=${() => location.reload()}>Take that up</button></p>` : null}
    ${told ? view`<p>${told} ${session.canUndo ? view`<button type="button" onClick=${() => session.undo()}>Undo</button>` : null}</p>` : null}
  </div>`;
}

/** The control somebody was sent to. */
function fieldOf(target: string): HTMLElement | null {
  const first = 'p.wrong, p.open';
  if (target !== 'fault')
    return document.getElementById(target) ?? document.querySelector(`[id^="${target}-"]`);
  return (
    document.querySelector(first)?.closest('.field')?.querySelector<HTMLElement>('input, select') ?? null
  );
}

/** All of it. */
export function App({ session }: { session: Session }): VNode {
  const { step: name, answers, target } = session.shown;
  const at = STEPS.findIndex((step) => step.name === name);
  const step = STEPS[at]!;
  const heading = useRef<HTMLHeadingElement>(null);
  const first = useRef(true);
  useEffect(() => {
    if (first.current) {
      first.current = false;
      return;
    }
    document.querySelector('.steps [aria-current]')?.scrollIntoView({ block: 'nearest', inline: 'center' });
    const field = target === undefined ? null : fieldOf(target);
    if (field) {
      field.closest('details')?.setAttribute('open', '');
      field.scrollIntoView({ block: 'center' });
      field.focus();
      return;
    }
    heading.current?.focus();
    window.scrollTo(0, 0);
  }, [name, target]);
  const to = (other: Step | undefined, words: string) =>
    other
      ? view`<button type="button" onClick=${() => session.go(other.name)}>${words}: ${other.title}</button>`
      : null;
  const looked = answers.rows['pits.csv'].length > 0;
  const today = () => {
    addLook(session);
    session.go('looks');
  };
  return view`<div>
    <header>
      <h1>Pond survey</h1>
      ${unitSwitch(session)}
      <p class="kept">${keptLine(session)}</p>
      ${looked && name !== 'looks' ? view`<button type="button" class="today" onClick=${today}>Add today’s look</button>` : null}
    </header>
    ${stepList(session)}
    <main>
      <h2 tabindex="-1" ref=${heading}><span class="hidden">${stepOfSteps(at + 1, STEPS.length)} </span>${step.title}</h2>
      <p class="lead">${step.lead}</p>
      ${notice(session)}
      ${unplaced(session, step)}
      ${content(session, step)}
      <div class="walk">${to(STEPS[at - 1], 'Back')}${to(STEPS[at + 1], 'Next')}</div>
    </main>
    ${name === 'answer' ? null : answerBar(session)}
  </div>`;
}
