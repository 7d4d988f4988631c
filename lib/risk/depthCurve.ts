import type { Basis } from './basis.js';
import { depthsOf } from './depths.js';
import { worstDig } from './digging.js';
import type { Option } from './options.js';
import type { DepthCurve } from './result.js';
import { verdictsAt } from './verdict.js';

/** Risk against depth of one option. */
export function depthCurve(basis: Basis, option: Option): DepthCurve {
  const depths = depthsOf(basis.site);
  const { name, measures } = option;
  const curve: DepthCurve = {
    option: name,
    possible: measures !== undefined,
    depth_m: depths,
    per_year: [],
    per_dig: [],
    governs: [],
    safe: [],
  };
  if (!measures) return curve;
  for (const v of verdictsAt(basis, measures, depths)) {
    curve.per_year.push(v.chance.perYear);
    curve.per_dig.push(worstDig(v.dig).chance);
    curve.governs.push(v.governs);
    curve.safe.push(v.safe);
  }
  return curve;
}

/** Deepest depth that is safe with every shallower one: 0 where none is, null where all are. */
export function safeDepth(curve: DepthCurve): {
  depth: number | null;
  governs: DepthCurve['governs'][number];
} {
  const first = curve.safe.indexOf(false);
  if (first < 0) return { depth: null, governs: 'none' };
  return { depth: first === 0 ? 0 : curve.depth_m[first - 1], governs: curve.governs[first] };
}
