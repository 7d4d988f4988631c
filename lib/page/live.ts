/** Starts the what-if in the page, or lets a notebook start one. */

import type { UnitSystem } from '../units/index.js';
import { photosShown, putBody } from './inUnits.js';
import type { LiveData } from './liveData.js';
import { joined } from './liveScripts.js';
import { openWords } from './openWords.js';
import { unpacked } from './packed.js';
import { type Library, pageWorker } from './pageWorker.js';
import { offerCopy, saveCopy } from './saveCopy.js';
import { offerToday } from './todayBox.js';
import { type Panel, whatIfPanel } from './whatIfPanel.js';
import { decoded, stateOf } from './whatIfState.js';
import { offerMonths } from './yearMonths.js';

declare global {
  interface Window {
    /** Starts the what-if in the element of that id. */
    underpondWhatIf?: (id: string, data: LiveData) => void;
  }
}

/** Starts what the document asks for. */
export function startLive(): void {
  const own = (document.currentScript as HTMLScriptElement | null)?.text ?? '';
  window.underpondWhatIf = (id, data) => {
    const root = document.getElementById(id);
    // Under a cell the whole script has run: it is worker and stand-in in one.
    const ask = pageWorker({ text: async () => own, here() {} }, JSON.stringify(data));
    const units = data.survey.site.show_units ?? 'metric';
    // What cannot be computed is told in its place.
    if (root) whatIfPanel(root, { ask, state: {}, left: [], units }).catch(() => {});
  };
  const source = document.getElementById('survey');
  const place = document.getElementById('what-if');
  if (source && place) startPage(place, source, own);
}

/** The library as the page holds it: packed, until a worker is made of it. */
function libraryOf(packed: string): Library {
  return {
    text: () => unpacked(packed),
    here(text) {
      const script = document.createElement('script');
      script.text = text;
      document.body.append(script);
      script.remove();
    },
  };
}

/** The words of the page are read first: the controls are built when a reader comes near, or was sent to them. */
function startPage(place: HTMLElement, source: HTMLElement, own: string): void {
  openWords();
  const held = document.getElementById('library');
  const library = held?.textContent ?? '';
  const allowed = held?.dataset.allowed ?? '';
  const ask = pageWorker(libraryOf(library), source.textContent ?? '');
  const written: UnitSystem = document.body.dataset.units === 'us' ? 'us' : 'metric';
  const sent = location.hash.startsWith('#try=1') ? decoded(location.hash.slice(1)) : source.dataset.tried;
  const { state, left } = (sent && stateOf(sent)) || { state: {}, left: [] };
  let units = written;
  let panel: Promise<Panel> | undefined;
  const copying = { ask, script: joined({ own, allowed, library }), units: () => units };

  const start = () => {
    panel ??= whatIfPanel(place, {
      ask,
      state,
      left,
      units,
      page: { save: (tried) => saveCopy(copying, [], tried) },
    });
    panel.catch(() => {});
  };
  const offer = () => {
    offerCopy(copying);
    offerToday();
    offerMonths();
    unitsButton(units, turn);
  };
  /** Turns the whole page into other units. */
  const turn = async (next: UnitSystem) => {
    putBody(await ask.about('body', { units: next, photos: photosShown() }));
    units = next;
    offer();
    (await panel)?.inUnits(next);
  };
  offer();
  if (state.units && state.units !== units) turnFirst(turn, state.units, start).catch(() => {});
  else if (sent) {
    place.scrollIntoView();
    setTimeout(start, 50);
  } else nearby(place, start);
}

async function turnFirst(
  turn: (units: UnitSystem) => Promise<void>,
  units: UnitSystem,
  start: () => void,
): Promise<void> {
  // Where the page cannot be turned it is still read, and tried, as written.
  await turn(units).catch(() => {});
  document.getElementById('what-if')?.scrollIntoView();
  start();
}

function nearby(place: HTMLElement, start: () => void): void {
  const near = new IntersectionObserver(
    (entries) => {
      if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
      near.disconnect();
      setTimeout(start);
    },
    { rootMargin: '1200px' },
  );
  near.observe(place);
}

/** A button under the title that turns the page into the other units. */
function unitsButton(now: UnitSystem, turn: (units: UnitSystem) => Promise<void>): void {
  const other = now === 'us' ? 'metric' : 'us';
  const button = document.createElement('button');
  button.type = 'button';
  button.className = 'units';
  button.textContent = other === 'us' ? 'Read in feet and inches' : 'Read in metres';
  button.addEventListener('click', async () => {
    button.disabled = true;
    button.textContent = 'One moment …';
    try {
      await turn(other);
    } catch (error) {
      button.textContent = `It cannot be turned: ${error instanceof Error ? error.message : error}`;
    }
  });
  document.querySelector('header .what')?.after(button);
}
