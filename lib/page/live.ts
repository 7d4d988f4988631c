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
if (data?.textContent) window.underpondWhatIf('what-if', JSON.parse(data.textContent), true);
