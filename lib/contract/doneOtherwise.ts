import { BEFORE_DIGGING } from './advisedOption.js';
import type { Recommendation } from './result.js';

/** Whether the recommended pond is another than the one wished with nothing done. */
export function isDoneOtherwise({ option, also, depth_m, change }: Recommendation, wish: number): boolean {
  if (BEFORE_DIGGING.includes(option)) return false;
  return option !== 'no-drain' || also.length > 0 || depth_m !== wish || change !== null;
}
