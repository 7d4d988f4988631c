import { method, SECONDS_PER_DAY } from '../formula/index.js';
import {
  donnanSpacing,
  drainSpacing,
  equivalentDepth,
  ernstHead,
  gloverDummSpacing,
  hooghoudtSpacing,
  kirkhamHead,
  kirkhamTerm,
} from '../seepage/index.js';

export const reachChecksMethod = method({
  title: 'Reach of a drain by the spacing formulas of fields',
  what: 'Half the spacing at which parallel drains would hold the water down: how far one drain is felt, by five formulas.',
  assumptions: [
    'uniform ground from the surface to a tight layer below the drain; steady recharge, for Glover–Dumm a month without',
    'a cross-check: a pond is no field, and the bed under it takes its own water only',
  ],
  source: 'Hooghoudt 1940, Kirkham 1958, Ernst 1962, Donnan 1946, Glover–Dumm 1954, each as declared',
});

/** Reach by one formula, m, and what that formula holds for. */
export interface ReachCheck {
  by: string;
  reach: number;
  scope: string;
}

/** Time in which Glover–Dumm lets the water fall to half, s: a month. Our choice. */
const MONTH = 30 * SECONDS_PER_DAY;

/** Widest spacing at which the head midway is not above what is allowed, m. */
function widest(head: number, at: (spacing: number) => number): number {
  let [low, high] = [0.01, 2000];
  for (let i = 0; i < 60; i++) {
    const middle = Math.sqrt(low * high);
    if (at(middle) < head) low = middle;
    else high = middle;
  }
  return low;
}

/**
 * Reach of a drain by every spacing formula, see {@link reachChecksMethod}.
 * @param ground - permeability, m/s; below: thickness of the same ground under the drain, m; porosity: drainable, 0–1
 * @param head - water midway above the drain, m, above 0
 * @param recharge - m/s, above 0
 * @param radius - effective, of the pipe, m
 * @returns by each formula, m, with what it holds for
 */
export function reachChecks(
  ground: { permeability: number; below: number; porosity: number },
  head: number,
  recharge: number,
  radius: number,
): ReachCheck[] {
  const { permeability: k, below, porosity } = ground;
  const hooghoudt = drainSpacing(k, below, radius, head, recharge);
  const kirkham = widest(head, (L) =>
    kirkhamHead.compute(L, Math.min(recharge / k, 0.9), kirkhamTerm(L, below, radius)),
  );
  const ernst = widest(head, (L) =>
    ernstHead.compute(recharge, head, k, L, k * (below + head / 2), k, 1, below, Math.PI * radius),
  );
  const glover = gloverDummSpacing.compute(k, equivalentDepth(hooghoudt, below, radius), MONTH, porosity, 2);
  return [
    { by: 'Hooghoudt', reach: hooghoudt / 2, scope: hooghoudtSpacing.validity },
    { by: 'Kirkham', reach: kirkham / 2, scope: kirkhamHead.validity },
    { by: 'Ernst', reach: ernst / 2, scope: ernstHead.validity },
    {
      by: 'Donnan',
      reach: donnanSpacing.compute(k, head, 0, recharge) / 2,
      scope: donnanSpacing.validity,
    },
    { by: 'Glover–Dumm', reach: glover / 2, scope: gloverDummSpacing.validity },
  ];
}
