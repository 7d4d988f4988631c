import type { Basis } from '../basis/index.js';
import type { DepthCurve } from '../contract/index.js';
import { worstDig } from '../digging/index.js';
import { depthsOf, micrometres, verdictsAt } from '../reliability/index.js';
import type { Option } from './option.js';

/**
 * Risk against depth of one option.
 * @param at - a depth that is judged as well, m; 0: none
 */
export function depthCurve(basis: Basis, option: Option, at = 0): DepthCurve {
  const all = depthsOf(basis.site);
  const extra = at > 0 && all.every((each) => micrometres(each) !== micrometres(at));
  const depths = extra ? [...all, at].sort((a, b) => a - b) : all;
  const { name, measures } = option;
  const curve: DepthCurve = {
    option: name,
    possible: measures !== undefined,
    depth_m: depths,
    per_year: [],
    upkeep: [],
    per_dig: [],
    governs: [],
    safe: [],
  };
  if (!measures) return curve;
  for (const v of verdictsAt(basis, measures, depths)) {
    curve.per_year.push(v.chance.perYear);
    curve.upkeep.push(v.chance.upkeep);
    curve.per_dig.push(worstDig(v.dig).chance);
    curve.governs.push(v.governs);
    curve.safe.push(v.safe);
  }
  return curve;
}

/** Place of the deepest of depths that is safe with every shallower one; −1 where not even the first is. */
export function deepestOf(safe: readonly boolean[]): number {
  const first = safe.indexOf(false);
  return (first < 0 ? safe.length : first) - 1;
}

/**
 * Deepest depth that is safe with every shallower one: 0 where none is, null where all are.
 * @param wish - judged by itself: it may lie between two depths of the curve, m
 */
export function safeDepth(
  curve: DepthCurve,
  wish?: { depth: number; safe: boolean },
): {
  depth: number | null;
  governs: DepthCurve['governs'][number];
} {
  const deepest = deepestOf(curve.safe);
  if (deepest === curve.safe.length - 1) return { depth: null, governs: 'none' };
  const last = curve.depth_m[deepest] ?? 0;
  const between = wish?.safe && last > 0 && wish.depth > last && wish.depth < curve.depth_m[deepest + 1];
  return { depth: between ? wish.depth : last, governs: curve.governs[deepest + 1] };
}
