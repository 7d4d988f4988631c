import { flushIntakeShapeFactor } from '../../../lib/seepage/index.js';
import {
  augerHole,
  augerHoleOnTight,
  augerHoleTest,
  fallingHoleTest,
  holeFallRate,
  holeShapeFactor,
} from '../../../lib/soil/index.js';
import type { Check } from '../check.js';

const exact = (source: string) => ({ kind: 'exact' as const, source });

/** Two-head coefficient G2 (1/cm²) of a well permeameter from shape factors of a 3 cm hole with 5 and 10 cm of water. */
function twoHeads(which: 1 | 2): number {
  const [a, h1, h2] = [3, 5, 10];
  const c = (h: number) => holeShapeFactor.compute(h / a, 2.074, 0.093, 0.754);
  const [c1, c2] = [c(h1), c(h2)];
  const g2 = (h1 * c2) / (Math.PI * (2 * h1 * h2 * (h2 - h1) + a * a * (h1 * c2 - h2 * c1)));
  return which === 2 ? g2 : (g2 * h2 * c1) / (h1 * c2);
}

/** Fall of 300 mm square hole, 225 to 75 mm, at 1 s/mm, as the percolation-time equation has it: K (m/s) times s/mm. */
const percolation = (sorptive: number, [p, q, n]: [number, number, number]) => {
  const a = 0.3 / Math.sqrt(Math.PI);
  const c = holeShapeFactor.compute(0.15 / a, p, q, n);
  return 1e-3 / holeFallRate.compute(0.15, a, c, sorptive);
};

export const fieldTestChecks: Check[] = [
  ...(
    [
      [1, 0.0054],
      [2, 0.00408],
    ] as const
  ).map(
    ([which, expected]): Check => ({
      kind: 'published',
      source:
        "data sheet of a well permeameter, its two-head coefficients (the maker's shape factors differ by up to 3.5 %)",
      covers: ['holeShapeFactor'],
      what: `coefficient G${which}, 1/cm²`,
      ours: () => twoHeads(which),
      expected,
      tolerance: 0.035 * expected,
    }),
  ),
  ...(
    [
      [36, [2.074, 0.093, 0.754], 2.15521e-4],
      [12, [2.074, 0.093, 0.754], 1.73088e-4],
      [4, [1.992, 0.091, 0.683], 1.17876e-4],
      [1, [2.081, 0.121, 0.672], 4.32779e-5],
    ] as [number, [number, number, number], number][]
  ).map(
    ([sorptive, shape, expected]): Check => ({
      ...exact('Reynolds et al. 2015 on the UK percolation hole, computed by an independent port'),
      covers: ['holeFallRate', 'holeShapeFactor'],
      what: `permeability at 1 s/mm, α* ${sorptive}/m, m/s`,
      ours: () => percolation(sorptive, shape),
      expected,
      tolerance: 5e-6 * expected,
    }),
  ),
  {
    kind: 'recalled',
    source:
      'Mulqueen & Rodgers 2001, T-test: 4.2/T m/d (from memory); the shape-factor method at α* 12/m gives 4.05',
    covers: ['holeFallRate', 'holeShapeFactor'],
    what: 'permeability of an Irish T-test of 1 min, m/d',
    ours: () => {
      const a = 0.3 / Math.sqrt(Math.PI);
      const c = holeShapeFactor.compute(0.25 / a, 2.074, 0.093, 0.754);
      return (86400 * (0.025 / 60)) / holeFallRate.compute(0.25, a, c, 12);
    },
    expected: 4.2,
    tolerance: 0.21,
  },
  {
    ...exact('limit: without capillary suck a wide hole falls by gravity through its floor'),
    covers: ['holeFallRate'],
    what: 'fall rate over K of a hole with 5 mm of water, 1 m across, C 6',
    ours: () => holeFallRate.compute(0.005, 0.5, 6, 36),
    expected: 1 + (2 * 0.005 ** 2 + (2 * 0.005) / 36) / (6 * 0.25),
    tolerance: 1e-15,
  },
  ...(
    [
      [
        'augerHole',
        augerHole,
        0.690417,
        'van Beers in cm, s and m/d: 4000 r/((H/r + 20)(2 − y/H)) (1/y) dy/dt',
      ],
      ['augerHoleOnTight', augerHoleOnTight, 0.771104, 'van Beers, tight floor, with 3600 and H/r + 10'],
    ] as const
  ).map(
    ([name, formula, expected, source]): Check => ({
      ...exact(`${source}; r 4, H 126, y 28.4, dy/dt 0.112 by hand`),
      covers: [name],
      what: 'permeability, m/d',
      ours: () => 86400 * formula.compute(0.04, 1.26, 0.284, 0.00112),
      expected,
      tolerance: 1e-6,
    }),
  ),
  {
    ...exact('limit: looks close together give the formula at their mean'),
    covers: ['augerHole', 'augerHoleRecovery'],
    what: 'fit over formula',
    ours: () => {
      const [a, b] = [0.3, 0.29];
      const hole = { diameter: 0.08, depthBelowTable: 1.26 };
      const fit = augerHoleTest(
        [
          { time: 0, level: a },
          { time: 60, level: b },
        ],
        { ...hole, tape: 1e-5 },
      );
      return fit.permeability / augerHole.compute(0.04, 1.26, (a + b) / 2, (a - b) / 60);
    },
    expected: 1,
    tolerance: 2e-4,
  },
  {
    ...exact(
      'a hole without suck and with a full gradient only through its floor falls as K: levels made by hand from the fall rate',
    ),
    covers: ['fallingHole'],
    what: 'permeability from a fall of 1 mm at 0.3 m of water, ratio to fall over fall rate',
    ours: () => {
      const c = holeShapeFactor.compute(0.2995 / 0.05, 2.074, 0.093, 0.754);
      const k = 0.001 / 600 / holeFallRate.compute(0.2995, 0.05, c, 12);
      return (
        fallingHoleTest(
          [
            { time: 0, level: 0.3 },
            { time: 600, level: 0.299 },
          ],
          { diameter: 0.1, sorptive: 12, tape: 1e-6 },
        ).permeability / k
      );
    },
    expected: 1,
    tolerance: 1e-5,
  },
  {
    kind: 'recalled',
    source: 'Hvorslev 1951, flush end: 2.75 D (from memory)',
    covers: ['flushIntakeShapeFactor'],
    what: 'shape factor of a 100 mm pipe, m',
    ours: () => flushIntakeShapeFactor.compute(0.05),
    expected: 0.275,
    tolerance: 1e-15,
  },
  {
    ...exact('between a disc in a half-space (4 R) and the two sides of a disc in full space (8 R)'),
    covers: ['flushIntakeShapeFactor'],
    what: 'shape factor over R, from the middle of its bounds',
    ours: () => flushIntakeShapeFactor.compute(1) / 1,
    expected: 6,
    tolerance: 2,
  },
];
