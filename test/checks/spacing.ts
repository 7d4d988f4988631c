import {
  donnanSpacing,
  drainReach,
  dupuitWell,
  equivalentDepth,
  ernstHead,
  gloverDummSpacing,
  hooghoudtSpacing,
  interceptedFlow,
  kirkhamHead,
  kirkhamTerm,
  lonePipeDrawdown,
  lonePipeRelief,
  loweringAt,
  sichardtRadius,
  soakedGroundInflow,
} from '../../lib/seepage/index.js';
import type { Check } from './check.js';

const DAY = 86400;
const exact = (
  covers: string[],
  what: string,
  source: string,
  ours: () => number,
  expected: number,
  tolerance: number,
): Check => ({
  covers,
  what,
  kind: 'exact',
  source,
  ours,
  expected,
  tolerance,
});
const recalled = (
  covers: string[],
  what: string,
  source: string,
  ours: () => number,
  expected: number,
  tolerance: number,
): Check => ({
  ...exact(covers, what, source, ours, expected, tolerance),
  kind: 'recalled',
});

/** Head relief per unit flow at a fraction of the half width: independent finite differences, cell b/80, b = 2 m, d = 0.5 m. */
const FINITE_DIFFERENCES: [number, number][] = [
  [0, 0.457],
  [0.25, 0.4165],
  [0.5, 0.3254],
  [0.75, 0.2126],
  [0.9, 0.1251],
];

export const spacingChecks: Check[] = [
  {
    covers: ['dupuitWell'],
    what: 'discharge for a drawdown of 20 m over that for 40 m, water 100 m thick',
    kind: 'published',
    source: 'curioustab item 69464: 0.5625',
    ours: () => dupuitWell.compute(1e-4, 100, 80, 50) / dupuitWell.compute(1e-4, 100, 60, 50),
    expected: 0.5625,
    tolerance: 1e-12,
  },
  exact(
    ['sichardtRadius'],
    '1 m lowered in sand of 1e-4 m/s',
    'arithmetic: 3000 × 0.01',
    () => sichardtRadius.compute(1, 1e-4),
    30,
    1e-12,
  ),
  recalled(
    ['hooghoudtSpacing'],
    'spacing with the table value d = 2.38, q 2 mm/d, K 0.14 m/d, h 0.6 m',
    'ILRI Publication 16 example 8.1: 30 m',
    () => hooghoudtSpacing.compute(0.14 / DAY, 0.14 / DAY, 2.38, 0.6, 0.002 / DAY),
    30,
    0.05,
  ),
  exact(
    ['hooghoudtSpacing', 'donnanSpacing'],
    'without depth below the drains Hooghoudt is the ellipse of Donnan',
    'limit d = 0 of both',
    () => hooghoudtSpacing.compute(1e-6, 1e-6, 0, 0.7, 1e-8) / donnanSpacing.compute(1e-6, 0.7, 0, 1e-8),
    1,
    1e-12,
  ),
  exact(
    ['donnanSpacing'],
    'K 0.5 m/d, water 0.5 m at and 1.5 m between the drains, 5 mm/d',
    'L² = 4K(b² − a²)/q = 800 m²',
    () => donnanSpacing.compute(0.5 / DAY, 1, 0.5, 0.005 / DAY),
    Math.sqrt(800),
    1e-9,
  ),
  exact(
    ['drainReach'],
    'twice the reach is the spacing of the ellipse',
    'symmetry about the water divide',
    () => (2 * drainReach.compute(0.8, 1e-7, 1e-8)) / donnanSpacing.compute(1e-7, 0.8, 0, 1e-8),
    1,
    1e-12,
  ),
  exact(
    ['loweringAt'],
    'all of it at the drain',
    'ellipse at its end',
    () => loweringAt.compute(1.2, 0),
    1.2,
    1e-12,
  ),
  exact(
    ['loweringAt'],
    'none beyond the reach',
    'ellipse at its middle',
    () => loweringAt.compute(1.2, 3),
    0,
    1e-12,
  ),
  exact(
    ['loweringAt'],
    'at 0.4 of the reach: 1 − √(1 − 0.6²) = 0.2',
    'Pythagoras',
    () => loweringAt.compute(1, 0.4),
    0.2,
    1e-12,
  ),
  exact(
    ['kirkhamHead'],
    'term F of Kirkham against L/(8d) of Hooghoudt at L 30, D 5, r 0.1 m',
    'the same boundary problem solved twice',
    () =>
      kirkhamHead.compute(30, 0.001, kirkhamTerm(30, 5, 0.1)) /
      kirkhamHead.compute(30, 0.001, 30 / 8 / equivalentDepth(30, 5, 0.1)),
    1,
    2e-5,
  ),
  exact(
    ['ernstHead'],
    'level flow alone (aD = u, no downward length) is q L²/8KD',
    'parabola of a confined layer',
    () =>
      ernstHead.compute(1e-8, 0, 1e-6, 20, 1e-6, 1e-6, 1, 0.5, 0.4) -
      (1e-8 * 20 * Math.log(0.5 / 0.4)) / (Math.PI * 1e-6),
    (1e-8 * 400) / 8e-6,
    1e-12,
  ),
  exact(
    ['gloverDummSpacing'],
    'water left 1.16/e: L = π√(Kdt/μ)',
    'ln(1.16 r) = 1',
    () => gloverDummSpacing.compute(1e-5, 2, 1e6, 0.05, Math.E / 1.16),
    Math.PI * Math.sqrt(400),
    1e-9,
  ),
  recalled(
    ['gloverDummSpacing'],
    'coefficient of √d, K 1 m/d, 10 days, μ 0.05, 0.8 to 0.3 m',
    'ILRI Publication 16 chapter 8: 41.8',
    () => gloverDummSpacing.compute(1 / DAY, 1, 10 * DAY, 0.05, 0.8 / 0.3),
    41.8,
    0.05,
  ),
  exact(
    ['interceptedFlow'],
    'K 0.1 m/d, fall 5 %, 2 m cut over 15 m, L/d',
    'Darcy, arithmetic: 150',
    () => interceptedFlow.compute(0.1 / DAY, 0.05, 2, 15) * DAY * 1000,
    150,
    1e-9,
  ),
  exact(
    ['soakedGroundInflow'],
    'head per unit flow, 1 m deep, radius 0.0104 m',
    'independent finite differences (node of 0.208 cell): 0.8444',
    () => 1 / soakedGroundInflow.compute(1, 1, 1 / 0.0104),
    0.8444,
    0.01,
  ),
  ...FINITE_DIFFERENCES.map(([x, s]) =>
    exact(
      ['lonePipeRelief'],
      `relief at ${x} of the half width`,
      'independent finite differences, cell b/80',
      () => lonePipeRelief.compute(1, 0.5, x),
      s,
      0.007,
    ),
  ),
  exact(
    ['lonePipeDrawdown'],
    'a floor of no width: drawdown of a pipe below open ground, ln(2d/r)/2π',
    'limit b → 0, d = 1 m, r = 0.05 m, b = 0.1 m',
    () => lonePipeDrawdown.compute(1, 20, 1),
    Math.log(40) / (2 * Math.PI),
    0.001,
  ),
];
