/** Starts the what-if in the page, or lets a notebook start one; bundled into one script when the library is built. */
import type { Survey } from '../survey/index.js';
import { whatIfPanel } from './whatIfPanel.js';

/** What a page or a notebook gives the script. */
export interface LiveData {
  survey: Survey;
  seed: number;
  samples: number;
}

declare global {
  interface Window {
    /** Starts the what-if in the element of that id. */
    underpondWhatIf?: (id: string, data: LiveData, linked?: boolean) => void;
  }
}

window.underpondWhatIf = (id, { survey, seed, samples }, linked = false) => {
  const root = document.getElementById(id);
  if (root) whatIfPanel(root, survey, { seed, samples, linked });
};

const data = document.getElementById('survey');
const place = document.getElementById('what-if');
if (data?.textContent && place) {
  const start = () => window.underpondWhatIf?.(place.id, JSON.parse(data.textContent!), true);
  // The words are read first: the controls are built when a reader comes near them, or was sent to them.
  const near = new IntersectionObserver(
    (entries) => {
      if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
      near.disconnect();
      setTimeout(start);
    },
    { rootMargin: '1200px' },
  );
  if (location.hash.startsWith('#try=1')) {
    place.scrollIntoView();
    setTimeout(start, 50);
  } else near.observe(place);
}
