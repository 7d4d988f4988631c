import type { Survey } from '../survey/index.js';
import type { PrivatePart } from './leaveOut.js';

/** What a page or a notebook gives the script. */
export interface LiveData {
  survey: Survey;
  seed: number;
  samples: number;
  version: string;
  /** what was left out of the page */
  leftOut: PrivatePart[];
  /** date of issue of the page, ISO 8601 */
  issued?: string;
}
