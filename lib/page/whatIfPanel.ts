/** The what-if in a browser: it asks the library beside the page, and shows the newest answer. */

import type { FigureSize } from '../figures/layout.js';
import { copyByHand, leftOutOfLink } from '../text/whatIfNotices.js';
import type { UnitSystem } from '../units/index.js';
import type { Controls, Drawn, TrialText } from './pageQuestions.js';
import type { Ask } from './pageWorker.js';
import { type Control, choiceControl, numberControl } from './whatIfControls.js';
import { layoutOf } from './whatIfLayout.js';
import { waterKey } from './whatIfParameters.js';
import { fragmentOf, notebookLine, type State } from './whatIfState.js';

interface PanelOptions {
  ask: Ask;
  /** what it starts with, and what of it cannot be tried */
  state: State;
  left: string[];
  units: UnitSystem;
  /** the page: keeps the state in its address, and hands it on as a link or a copy */
  page?: { save(state: string): Promise<void> };
}

/** A panel that is there. */
export interface Panel {
  inUnits(units: UnitSystem): void;
}

/** Window narrower than this is drawn for a phone, px. */
const PHONE = 560;
/** What runs the water again waits for a rest of the hand, and so do the words that are read out, ms. */
const REST = 120;
const SPEAK = 700;

const messageOf = (error: unknown) => (error instanceof Error ? error.message : String(error));

/** Makes an element the what-if of a survey; told when its first answer stands. */
export async function whatIfPanel(root: HTMLElement, options: PanelOptions): Promise<Panel> {
  const { ask, page } = options;
  root.classList.add('what-if');
  const loading = document.createElement('p');
  loading.className = 'told';
  loading.setAttribute('role', 'status');
  loading.textContent = 'Loading: the water of every year is computed, which takes some seconds.';
  // Read before anything is put in, when it costs no layout.
  const drawnSize: FigureSize = root.clientWidth < PHONE ? 'narrow' : 'wide';
  root.replaceChildren(loading);
  performance.mark('what-if');
  let has: Controls;
  try {
    has = await ask.controls();
  } catch (error) {
    loading.textContent = `This cannot be computed: ${messageOf(error)}`;
    throw error;
  }
  let { state, units } = options;
  let shown: { key: string; said: TrialText; drawn?: Drawn } | undefined;
  let [asking, again] = [false, false];
  let [resting, speaking] = [0, 0];
  const parts = layoutOf(root);
  const controls = controlsOf(
    has,
    () => ({ ...shown?.said.built, ...state }),
    change,
    (why) => tell(why),
  );
  for (const { first, element } of controls) (first ? parts.controls : parts.others).append(element);

  function tell(words: string): void {
    parts.told.textContent = words;
  }

  function showControls(): void {
    for (const control of controls) control.show(units);
  }

  function change(next: Partial<State>): void {
    if (next.units) units = next.units;
    state = Object.fromEntries(
      Object.entries({ ...state, ...next }).filter(([, value]) => value !== undefined),
    ) as State;
    showControls();
    tell('');
    clearTimeout(resting);
    // Without a ring the water does not know how large the pond is.
    if (!has.ring || shown === undefined || waterKey(state) === shown.key) {
      stepped();
      return;
    }
    root.classList.add('stale');
    tell('The water is computed again …');
    resting = window.setTimeout(stepped, REST);
  }

  const stepped = () => {
    step().catch((error) => tell(`This cannot be computed: ${messageOf(error)}`));
  };

  /** Asks for the newest state, words first; what was tried in between is passed over. */
  async function step(): Promise<void> {
    again = true;
    if (asking) return;
    asking = true;
    while (again) {
      again = false;
      const kind = shown === undefined ? 'first' : root.classList.contains('stale') ? 'water' : 'step';
      if (shown) performance.mark('what-if');
      const key = waterKey(state);
      const { units: _, ...tried } = state;
      try {
        const said = await ask.about('try', { change: tried, units });
        // What the water of another size answers is not shown.
        if (again && key !== waterKey(state)) continue;
        const built = shown?.said.built.raise;
        shown = { key, said, drawn: shown?.drawn };
        say(said);
        // What an option builds shows where nothing else is tried.
        if (said.built.raise !== built) showControls();
        performance.measure(`what-if ${kind}`, 'what-if');
        if (again && kind === 'step') continue;
        const drawn = await ask.about('draw', { change: tried, units, size: drawnSize, name: root.id });
        if (again && key !== waterKey(state)) continue;
        shown.drawn = drawn;
        draw(drawn);
        if (key !== waterKey(state)) continue;
        if (root.classList.contains('stale')) tell('');
        root.classList.remove('stale');
      } catch (error) {
        root.classList.add('stale');
        tell(`This cannot be computed: ${messageOf(error)}`);
      }
    }
    asking = false;
    link();
    clearTimeout(speaking);
    speaking = window.setTimeout(() => {
      parts.spoken.textContent = root.classList.contains('stale') ? '' : (shown?.said.headline ?? '');
    }, SPEAK);
  }

  function say({ headline, standing, used, chances, compared }: TrialText): void {
    parts.headline.textContent = headline;
    parts.headline.className = standing;
    parts.used.textContent = used;
    parts.chances.textContent = chances;
    parts.compared.innerHTML = compared;
  }

  function draw({ section, buy }: Drawn): void {
    parts.section.innerHTML = section;
    parts.buy.innerHTML = buy;
    drawCurve();
  }

  function drawCurve(): void {
    if (parts.curve.open) parts.risk.innerHTML = shown?.drawn?.risk ?? '';
  }

  function link(): void {
    const fragment = fragmentOf(state);
    parts.line.value = notebookLine({ ...state, option: state.option ?? has.held });
    if (page && (fragment !== '' || location.hash.startsWith('#try=1')))
      history.replaceState(null, '', `#${fragment}`);
  }

  async function copyText(text: string, done: string): Promise<void> {
    try {
      await navigator.clipboard.writeText(text);
      tell(done);
    } catch {
      // Where a page may not write to the clipboard it can be selected.
      tell(copyByHand(text));
    }
  }

  async function saveWithThis(): Promise<void> {
    parts.send.disabled = true;
    tell('The copy is being made …');
    try {
      await page!.save(fragmentOf(state));
      tell('The copy is saved; it opens with what is tried here.');
    } catch (error) {
      tell(`The copy cannot be made: ${messageOf(error)}`);
    }
    parts.send.disabled = false;
  }

  // A link to a file is of no use to anyone else.
  const saves = page !== undefined && location.protocol === 'file:';
  parts.send.textContent = saves ? 'Save a copy with this' : page ? 'Copy a link' : 'Copy the line';
  parts.send.addEventListener('click', () => {
    if (saves) return saveWithThis();
    return page
      ? copyText(location.href, 'The link is copied.')
      : copyText(parts.line.value, 'The line is copied.');
  });
  parts.curve.addEventListener('toggle', drawCurve);
  parts.reset.addEventListener('click', () =>
    change(
      Object.fromEntries(Object.keys(state).map((key) => [key, key === 'units' ? state.units : undefined])),
    ),
  );
  if (!page) {
    const choice = choiceControl(
      'units',
      'Units',
      [
        ['metric', 'metric'],
        ['us', 'feet and inches'],
      ],
      () => units,
      (next) => change({ units: next as UnitSystem }),
    );
    controls.push(choice);
    parts.others.append(choice.element);
  }
  showControls();
  await step();
  if (options.left.length > 0) tell(leftOutOfLink(options.left));
  return { inUnits: (next) => change({ units: next }) };
}

/** Controls for what the survey has. */
function controlsOf(
  { numbers, choices }: Controls,
  state: () => State,
  change: (next: Partial<State>) => void,
  refused: (why: string) => void,
): Control[] {
  return [
    ...numbers.map((range) =>
      numberControl(
        range,
        () => state()[range[0]],
        (value) => change({ [range[0]]: value }),
        refused,
      ),
    ),
    ...choices.map(({ key, label, choices }) =>
      choiceControl(
        key,
        label,
        choices,
        () => state()[key],
        (value) => change({ [key]: value }),
      ),
    ),
  ];
}
