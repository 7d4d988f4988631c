import type { Survey } from '../survey/index.js';

/** What a page or a notebook gives the script. */
export interface LiveData {
  survey: Survey;
  seed: number;
  samples: number;
  version: string;
}
