import {
  donnanSpacing,
  dupuitWell,
  equivalentDepth,
  ernstHead,
  gloverDummSpacing,
  hooghoudtSpacing,
  interceptedFlow,
  kirkhamHead,
  kirkhamTerm,
  loweringAt,
  sichardtRadius,
  waterRoundDrain,
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

export const spacingChecks: Check[] = [
  {
    covers: ['kirkhamMethod'],
    what: "Kirkham's F for a radius of half the spacing: the series falls away",
    kind: 'exact',
    source: 'cos(2nπr/L) = cos nπ: F = ln(2/π)/π',
    ours: () => kirkhamTerm(10, 1, 5),
    expected: Math.log(2 / Math.PI) / Math.PI,
    tolerance: 1e-14,
  },
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
    ['waterRoundDrain'],
    'none at the drain',
    'boundary condition',
    () => waterRoundDrain.compute(1e-6, 1e-8, 2, 3, 20, 3),
    0,
    1e-12,
  ),
  exact(
    ['waterRoundDrain'],
    'level at the end of the reach: slope there, m/m',
    'no flow comes from beyond',
    () =>
      (waterRoundDrain.compute(1e-6, 1e-8, 2, 3, 20, 20) -
        waterRoundDrain.compute(1e-6, 1e-8, 2, 3, 20, 20 - 1e-4)) /
      1e-4,
    0,
    1e-6,
  ),
  exact(
    ['waterRoundDrain'],
    'flow into the drain over rain on the ground within the reach',
    'conservation: 2πr K d dy/dp = q π (R² − r²)',
    () =>
      (2 * Math.PI * 3 * 1e-6 * 2 * waterRoundDrain.compute(1e-6, 1e-8, 2, 3, 20, 3 + 1e-6)) /
      1e-6 /
      (1e-8 * Math.PI * (400 - 9)),
    1,
    1e-5,
  ),
  exact(
    ['waterRoundDrain'],
    'a wide circle is a straight drain: y² = q/K (x (2L − x)) on a tight layer, x 2 of L 5 m',
    'limit r → ∞: half the ellipse of Donnan',
    () => {
      const y = (r: number) => waterRoundDrain.compute(1e-6, 1e-8, 0, r, r + 5, r + 2);
      return 2 * y(2e4) ** 2 - y(1e4) ** 2;
    },
    0.01 * 2 * 8,
    1e-5,
  ),
  exact(
    ['loweringMethod'],
    'lowered 1 m at the drain: all of it at the edge of the pond',
    'boundary condition',
    () => loweringAt({ lowered: 1, permeability: 1e-6, recharge: 1e-8, below: 3, radius: 2 }, 0),
    1,
    1e-9,
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
    ['ernstHead'],
    'a drain as wide as its layer: nothing converges',
    'level flow alone',
    () => ernstHead.compute(1e-8, 0, 1e-6, 20, 1e-6, 1e-6, 1, 0.1, 0.4),
    (1e-8 * 400) / 8e-6,
    1e-15,
  ),
  exact(
    ['ernstHead'],
    'a layer deeper than a quarter of the spacing converges as one of L/4',
    'range of the formula',
    () =>
      ernstHead.compute(1e-8, 0, 1e-6, 20, 1e-5, 1e-6, 1, 20, 0.2) -
      ernstHead.compute(1e-8, 0, 1e-6, 20, 1e-5, 1e-6, 1, 5, 0.2),
    0,
    1e-15,
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
];
