import type { SituationName } from '../contract/index.js';

/** Items of the assumptions that decide in a situation. */
const ITEMS: Record<SituationName, readonly string[]> = {
  full: ['overflow', 'ring_fill', 'ring_cap'],
  'drawn-down': ['usual_drawdown', 'kept_within', 'leak', 'overflow', 'ring_fill', 'ring_cap'],
  emptied: ['days_empty', 'edging_load', 'margin', 'ring_fill', 'ring_cap'],
  'drain-blocked': ['drain_blocked_once_in'],
  'power-out': [
    'power_cut_once_in',
    'power_cut_hours',
    'pump_out_once_in',
    'chance that the battery fails with the power',
  ],
  'outlet-flood': ['flood_every', 'flood', 'flap_stuck_once_in'],
  dig: ['consistency', 'strength', 'footing', 'built_in'],
  seam: ['seam'],
  'seam-full': ['seam', 'overflow'],
  'seam-drawn-down': ['seam', 'usual_drawdown', 'kept_within', 'leak', 'overflow'],
  'seam-emptied': ['seam', 'days_empty'],
};

/**
 * What of the assumptions made a situation rests on.
 * @param assumed - items of `assumptions`
 */
export function restingOn(situation: SituationName, assumed: readonly string[]): string[] {
  const decides = ITEMS[situation];
  return assumed.filter((item) => decides.some((each) => item === each || item.startsWith(`${each} `)));
}
