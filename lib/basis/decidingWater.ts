import type { Water } from '../contract/index.js';
import { ALIKE, drainLevel, floorLevel, type Measures, relievedBy } from '../heads/index.js';
import { LEVEL_RIM } from '../site/index.js';
import type { Basis } from './basis.js';

/**
 * Which water decides in the years that a share 1 − p exceeds: the one that is the highest in most of them, or what the
 * drain holds it down to. Without an uphill side the clay stands alike all round. Where the ring stands as high as the clay it is the ring, as that touches the liner.
 * @param basis - of a judgement
 * @param m - measures of an option
 * @param depth - to the liner's lowest point, m
 * @param p - share of years that stay below, 0–1
 * @param month - 1–12; absent: of the yearly highs
 * @returns its name
 */
export function decidingWater(basis: Basis, m: Measures, depth: number, p: number, month?: number): Water {
  const { highs } = basis;
  const undrained = month === undefined ? highs.yearly(m, p) : highs.monthly(m, month, p);
  if (m.drain) {
    const floor = floorLevel(depth, m);
    const receiver = m.drain.kind === 'outlet' ? m.drain.flood : Number.NEGATIVE_INFINITY;
    const head = relievedBy(m, floor, 'works', receiver)(undrained);
    if (head < undrained - ALIKE) return receiver > drainLevel(m, floor) ? 'receiver' : 'drain';
  }
  const which = highs.highest(m, p, month);
  return which === 'uphill wall' && basis.site.places.highRim <= LEVEL_RIM ? 'low side' : which;
}
