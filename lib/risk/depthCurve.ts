import type { Site } from '../site/index.js';
import { deepestFloor } from '../uplift/index.js';
import type { Basis } from './basis.js';
import { worstDig } from './digging.js';
import type { Option } from './options.js';
import type { DepthCurve } from './result.js';
import { verdictsAt } from './verdict.js';

/** Spacing of the depths searched, m. */
const STEP = 0.05;

/** Depths searched: from 0.2 m to twice the wish, at least to 1.5 m, while the sides leave a floor. */
export function depthsOf(site: Site): number[] {
  const deepest = Math.min(Math.max(2 * site.pond.depth, 1.5), deepestFloor(site.pond.shape), 3);
  const count = Math.max(Math.floor((deepest - 0.2) / STEP + 1e-9) + 1, 1);
  return Array.from({ length: count }, (_, i) => Number((0.2 + i * STEP).toFixed(4)));
}

/** Risk against depth of one option. */
export function depthCurve(basis: Basis, option: Option, depths: number[]): DepthCurve {
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
