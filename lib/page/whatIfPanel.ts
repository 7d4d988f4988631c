/** The what-if in a browser: controls, answer and figures in one element. */

import type { OptionName } from '../contract/index.js';
import type { Judged } from '../decision/index.js';
import { DESIGN_WIDTH, type FigureSize } from '../figures/layout.js';
import { figureSvg } from '../figures/svg.js';
import { ADVICE_NAMES } from '../figures/words.js';
import { outletsOf } from '../options/index.js';
import type { Survey } from '../survey/index.js';
import type { UnitSystem } from '../units/index.js';
import { hasWeatherYears } from './inYears.js';
import { table } from './markup.js';
import { surveyedNumbers } from './tried.js';
import { explorer, type WhatIf, waterKey } from './whatIf.js';
import { type Control, choiceControl, element, numberControl } from './whatIfControls.js';
import { decoded, fragmentOf, notebookLine, type State, stateOf } from './whatIfState.js';
import { type View, viewOf } from './whatIfView.js';

export interface PanelOptions {
  seed: number;
  samples: number;
  /** keeps the state in the address of the page */
  linked: boolean;
  onUnits?: (units: UnitSystem) => void;
}

/** Window narrower than this is drawn for a phone, px. */
const PHONE = 560;
/** A slider that runs the water again waits for a rest of the hand, ms. */
const REST = 120;

/** Makes an element the what-if of a survey. */
export function whatIfPanel(root: HTMLElement, survey: Survey, options: PanelOptions): void {
  root.classList.add('what-if');
  const judge = explorer(survey, options);
  const own = judge({});
  const read = options.linked ? stateOf(decoded(location.hash.slice(1))) : undefined;
  let state: State = read?.state ?? {};
  let shown: { key: string; view: View } | undefined;
  let resting = 0;
  let frame = 0;
  const parts = layoutOf(root);
  const controls = controlsOf(own, () => state, change);
  for (const { first, element } of controls) (first ? parts.controls : parts.others).append(element);
  const units = () => state.units ?? survey.site.show_units ?? 'metric';

  function change(next: Partial<State>): void {
    state = Object.fromEntries(
      Object.entries({ ...state, ...next }).filter(([, value]) => value !== undefined),
    ) as State;
    if (next.units) options.onUnits?.(next.units);
    // Without a ring the water does not know how large the pond is.
    const water = own.site.tub !== undefined && shown !== undefined && waterKey(state) !== shown.key;
    for (const control of controls) control.show(units());
    clearTimeout(resting);
    cancelAnimationFrame(frame);
    if (!water) {
      frame = requestAnimationFrame(() => step('step'));
      return;
    }
    root.classList.add('stale');
    parts.told.textContent = 'The water is computed again; the answer shown is the old one.';
    resting = window.setTimeout(() => step('water'), REST);
  }

  function step(kind: 'step' | 'water'): void {
    performance.mark('what-if');
    const { units: _, ...tried } = state;
    try {
      shown = { key: waterKey(state), view: viewOf(judge(tried), units()) };
      draw(shown.view);
      parts.told.textContent = '';
    } catch (error) {
      parts.told.textContent = `This cannot be computed: ${error instanceof Error ? error.message : error}`;
    }
    root.classList.remove('stale');
    performance.measure(`what-if ${kind}`, 'what-if');
    link();
  }

  function draw(view: View): void {
    const size: FigureSize = root.clientWidth < PHONE ? 'narrow' : 'wide';
    parts.headline.textContent = view.headline;
    parts.headline.className = view.safe ? 'safe' : 'unsafe';
    parts.governs.textContent = view.governs;
    parts.chances.textContent = view.chances;
    parts.buy.innerHTML =
      view.buy.rows.length > 0 ? table(view.buy) : '<p>No drain: nothing to buy or to dig for one.</p>';
    for (const name of ['section', 'risk'] as const)
      parts[name].innerHTML = figureSvg(view[name](size), DESIGN_WIDTH[size], `${root.id}-${name}`);
  }

  function link(): void {
    const fragment = fragmentOf(state);
    parts.line.value = notebookLine(state);
    if (options.linked && (fragment !== '' || location.hash.startsWith('#try=1')))
      history.replaceState(null, '', `#${fragment}`);
  }

  parts.copy.addEventListener('click', async () => {
    const text = options.linked ? location.href : notebookLine(state);
    try {
      await navigator.clipboard.writeText(text);
      parts.told.textContent = options.linked ? 'The link is copied.' : 'The line is copied.';
    } catch {
      // Where a page may not write to the clipboard the line below can be selected.
      parts.told.textContent = `Copy it by hand: ${text}`;
    }
  });
  parts.copy.textContent = options.linked ? 'Copy a link to this state' : 'Copy the line';
  parts.reset.addEventListener('click', () =>
    change(Object.fromEntries(Object.keys(state).map((key) => [key, undefined]))),
  );
  for (const control of controls) control.show(units());
  step('step');
  if (read && read.left.length > 0)
    parts.told.textContent = `Of the link this cannot be tried and was left out: ${read.left.join(', ')}.`;
}

/** Controls for what the survey has; those that would change nothing are left out. */
function controlsOf(own: Judged, state: () => State, change: (next: Partial<State>) => void): Control[] {
  const { site, options } = own;
  const numbers = surveyedNumbers(site, outletsOf(own.basis)[0]).map(([key, value]) =>
    numberControl(
      key,
      value,
      () => state()[key],
      (next) => change({ [key]: next }),
    ),
  );
  const possible = options
    .filter(({ measures }) => measures)
    .map(({ name }): [OptionName, string] => [name, ADVICE_NAMES[name]]);
  const pick = <K extends keyof WhatIf | 'units'>(key: K, label: string, choices: [string, string][]) =>
    choiceControl(
      key,
      label,
      choices,
      () => state()[key] as string | undefined,
      (next) => change({ [key]: next }),
    );
  return [
    ...numbers,
    pick('option', 'Drain or other measure', [['', 'as recommended for the rest'], ...possible]),
    ...(site.water.tub
      ? [
          pick('runoff', 'Run-off from uphill and roof', [
            ['', 'as surveyed'],
            ['kept-out', 'kept out, ring capped'],
          ]),
        ]
      : []),
    ...(hasWeatherYears(site)
      ? [
          pick('years', 'Years counted', [
            ['', 'every year of the weather'],
            ['ordinary', 'ordinary years (middle fifth)'],
            ['wet', 'wet years (wettest fifth)'],
          ]),
        ]
      : []),
    pick('units', 'Units', [
      ['metric', 'metric'],
      ['us', 'feet and inches'],
    ]),
  ];
}

/** The panel's elements. */
function layoutOf(root: HTMLElement) {
  const controls = element('div', 'controls');
  const others = element('div', 'controls');
  const headline = element('p', '');
  const governs = element('p', '');
  const chances = element('p', 'note');
  const answer = element('div', 'answer', headline, governs);
  answer.setAttribute('aria-live', 'polite');
  const section = element('div', 'drawing');
  const risk = element('div', 'drawing');
  const copy = element('button', '');
  const reset = element('button', '');
  copy.type = 'button';
  reset.type = 'button';
  reset.textContent = 'Back to the survey';
  const told = element('p', 'told');
  told.setAttribute('role', 'status');
  const line = element('textarea', '');
  line.readOnly = true;
  line.rows = 2;
  line.id = `${root.id}-line`;
  const lineLabel = element('label', '');
  lineLabel.htmlFor = line.id;
  lineLabel.textContent = 'The same in a notebook';
  const summary = element('summary', '');
  summary.textContent = 'Size, level, pipe, weather and units';
  const more = element('details', '', summary, others);
  more.open = root.clientWidth >= PHONE;
  const buy = element('div', '');
  const buySummary = element('summary', '');
  buySummary.textContent = 'To buy and to dig for this';
  const buttons = element('div', 'buttons', reset, copy);
  root.replaceChildren(
    element('div', 'form', controls, more, told),
    answer,
    element('div', 'pictures', section, chances, risk),
    element('details', '', buySummary, buy),
    buttons,
    lineLabel,
    line,
  );
  return { controls, others, buy, headline, governs, chances, section, risk, copy, reset, told, line };
}
