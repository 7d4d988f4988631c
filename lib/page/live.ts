/** Starts the what-if in the page, or lets a notebook start one. */
import type { UnitSystem } from '../units/index.js';
import { bodyInUnits } from './inUnits.js';
import type { LiveData } from './liveData.js';
import { offerCopy } from './saveCopy.js';
import { offerToday } from './todayBox.js';
import { whatIfPanel } from './whatIfPanel.js';

declare global {
  interface Window {
    /** Starts the what-if in the element of that id. */
    underpondWhatIf?: (id: string, data: LiveData) => void;
  }
}

/** Starts what the document asks for; in a worker of the form, which answers by the same script, there is none. */
export function startLive(): void {
  window.underpondWhatIf = (id, { survey, seed, samples }) => {
    const root = document.getElementById(id);
    if (root) whatIfPanel(root, survey, { seed, samples, linked: false });
  };
  const source = document.getElementById('survey')?.textContent;
  const place = document.getElementById('what-if');
  if (source && place) startPage(place, source);
}

/** The words of the page are read first: the controls are built when a reader comes near, or was sent to them. */
function startPage(place: HTMLElement, source: string): void {
  const data: LiveData = JSON.parse(source);
  const own = document.body.dataset.units === 'us' ? 'us' : 'metric';
  offerCopy(data, own);
  offerToday();
  let started = false;
  const start = () => {
    if (started) return;
    started = true;
    const onUnits = (units: UnitSystem) =>
      setTimeout(() => {
        bodyInUnits(data, units);
        unitsButton(units, start);
        offerCopy(data, units);
        offerToday();
      });
    whatIfPanel(place, data.survey, { ...data, linked: true, onUnits });
  };
  unitsButton(own, start);
  if (location.hash.startsWith('#try=1')) {
    place.scrollIntoView();
    setTimeout(start, 50);
    return;
  }
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

/** A button under the title that turns the page, by the control of the what-if, into the other units. */
function unitsButton(now: UnitSystem, start: () => void): void {
  const other = now === 'us' ? 'metric' : 'us';
  const button = document.createElement('button');
  button.type = 'button';
  button.className = 'units';
  button.textContent = other === 'us' ? 'Read in feet and inches' : 'Read in metres';
  button.addEventListener('click', () => {
    button.disabled = true;
    button.textContent = 'One moment …';
    setTimeout(() => {
      start();
      const control = document.querySelector<HTMLSelectElement>('#what-if [data-key=units]');
      if (!control) return;
      control.value = other;
      control.dispatchEvent(new Event('change'));
    }, 50);
  });
  document.querySelector('header .what')?.after(button);
}
