import type { Report } from './report.js';
import type { Situation } from './situation.js';

/** How a situation ends, as it is told and drawn: it holds, for a while only, or it fails. */
export type Holding = 'holds' | 'briefly' | 'fails';

/** A month that an empty pond outlasts is no limit to it, h. */
const MONTH_HOURS = 31 * 24;

/** How a situation ends, as it is drawn. */
export function holdingOf({ allowed, why, hours }: Pick<Situation, 'allowed' | 'why' | 'hours'>): Holding {
  if (!allowed) return 'fails';
  return why === 'briefly' || (hours !== null && hours < MONTH_HOURS) ? 'briefly' : 'holds';
}

/** How long it may stand empty, h; briefly: as planned, and no longer. */
export function hoursEmpty({ why, hours }: Situation, { pond }: Report): number | null {
  if (why !== 'briefly') return hours;
  return Math.min(hours ?? Number.POSITIVE_INFINITY, 24 * pond.days_empty);
}
