import { type Basis, standingAbove } from '../basis/index.js';
import type { ChanceRange } from '../contract/index.js';
import { LEVEL_RESOLUTION } from '../formula/index.js';
import { emptiedHold, type Measures, reliefBounds, withoutDrain } from '../heads/index.js';
import type { CountedCourse } from '../reliability/index.js';

/**
 * Years in which water stands above what holds an empty liner, whether or not it comes in time; with a drain as often as that
 * is out of order.
 * @param month - 1–12, in which it is emptied
 * @param works - the drain counts
 */
export function emptiedCounted(
  basis: Basis,
  m: Measures,
  depth: number,
  month: number,
  works: boolean,
): { counted: CountedCourse[]; from: ChanceRange['from'] } {
  const hold = emptiedHold(basis.site, m, depth);
  const fails = standingAbove(basis, m, month, hold);
  const { drain, cutoff } = m;
  const { blocked, pumpOut } = basis.draws;
  const found = (state: CountedCourse['state'], weight: Float64Array, fails: Float64Array) => ({
    state,
    flooded: false,
    weight,
    fails,
  });
  if (cutoff !== undefined) {
    const without = standingAbove(basis, withoutDrain(m), month, hold);
    const counted = [
      found('blocked', blocked, without),
      found(
        'works',
        blocked.map((p) => 1 - p),
        fails,
      ),
    ];
    return { counted, from: 'water' };
  }
  const certain = blocked.map(() => 1);
  const flood = drain?.kind === 'outlet' ? drain.flood : Number.NEGATIVE_INFINITY;
  if (!drain || !works || reliefBounds(m, hold, 'works', flood).most > hold + LEVEL_RESOLUTION)
    return { counted: [found('none', certain, fails)], from: 'water' };
  return drain.kind === 'sump'
    ? {
        counted: [
          found(
            'pumps-out',
            blocked.map((p, s) => Math.max(p, pumpOut[s]!)),
            fails,
          ),
        ],
        from: 'upkeep',
      }
    : { counted: [found('blocked', blocked, fails)], from: 'upkeep' };
}
