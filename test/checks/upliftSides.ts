import {
  crackedCut,
  infiniteSlopeFactor,
  leaningCut,
  seepingSlope,
  softeningTime,
  wallLoad,
  wetCrackedCut,
} from '../../lib/uplift/index.js';
import type { Check } from './check.js';

const YEAR = 365.25 * 86400;

/** Share of a swelling that is done at a time factor: Terzaghi's series. */
function doneAt(T: number): number {
  let left = 0;
  for (let m = 0; m < 200; m++) {
    const M = ((2 * m + 1) * Math.PI) / 2;
    left += (2 / (M * M)) * Math.exp(-M * M * T);
  }
  return 1 - left;
}

export const sideChecks: Check[] = [
  {
    covers: ['wetCrackedCut'],
    what: 'plane wedge with a full crack to half height: moment of forces left over, kN/m',
    kind: 'exact',
    source: '2c(H−z) = γ(H²−z²)/2 + γw z²/2 at z = H/2 (Terzaghi 1943 wedge)',
    ours: () => {
      const [c, g] = [20000, 18000];
      const H = wetCrackedCut.compute(c, g);
      const z = H / 2;
      return 2 * c * (H - z) - (g * (H * H - z * z)) / 2 - (9810 * z * z) / 2;
    },
    expected: 0,
    tolerance: 1e-6,
  },
  {
    covers: ['leaningCut'],
    what: 'side at 53°: stability number c/(γH) of an upright cut of 1/0.261 c/γ carried over',
    kind: 'recalled',
    source: 'Taylor 1937: 0.181 at 53°, from memory',
    ours: () => 20000 / (18000 * leaningCut.compute(20000 / (0.261 * 18000), 0.181, 0, 18000)),
    expected: 0.181,
    tolerance: 1e-12,
  },
  {
    covers: ['infiniteSlopeFactor'],
    what: 'slope angle with factor 1.5 at φ = 34°, γ = 18, γw = 10 kN/m³, degrees',
    kind: 'published',
    source: 'GATE Civil 2014 Q16 (with γw = 10; ours is put in with the same ratio γw/γ): 11.3°',
    ours: () => {
      const flat = infiniteSlopeFactor.compute(
        0,
        (18000 * 9810) / 10000,
        1,
        1,
        (34 * Math.PI) / 180,
        Math.PI / 4,
      );
      return (Math.atan(flat / 1.5) * 180) / Math.PI;
    },
    expected: 11.3,
    tolerance: 0.05,
  },
  {
    covers: ['crackedCut'],
    what: 'plane wedge with an empty crack to half height: forces left over, N/m',
    kind: 'exact',
    source: '2c(H−z) = γ(H²−z²)/2 at z = H/2 (Terzaghi 1943 wedge)',
    ours: () => {
      const [c, g] = [20000, 18000];
      const H = crackedCut.compute(c, g);
      const z = H / 2;
      return 2 * c * (H - z) - (g * (H * H - z * z)) / 2;
    },
    expected: 0,
    tolerance: 1e-6,
  },
  {
    covers: ['infiniteSlopeFactor'],
    what: 'resisting over driving force of a slice on a slope with cohesion and water half way up: ratio to ours',
    kind: 'exact',
    source: 'equilibrium of a slice 1 m long on plan: N = γz cos²β − γw m z cos²β',
    ours: () => {
      const [c, g, z, m, p, b] = [3000, 18500, 0.8, 0.5, 0.42, 0.6];
      const area = 1 / Math.cos(b);
      const effective = g * z * Math.cos(b) - 9810 * m * z * Math.cos(b);
      const resisting = c * area + effective * Math.tan(p);
      return resisting / (g * z * Math.sin(b)) / infiniteSlopeFactor.compute(c, g, z, m, p, b);
    },
    expected: 1,
    tolerance: 1e-12,
  },
  ...(
    [
      [0.197, 0.61, 0.5],
      [0.848, 2.65, 0.9],
    ] as const
  ).flatMap(([T, years, share]): Check[] => [
    {
      covers: ['softeningTime'],
      what: `time factor ${T}, 1 m, 0.32 m² a year: years`,
      kind: 'published',
      source: 'worked example read in a translated geotechnical textbook page (0.61 and 2.65 years)',
      ours: () => softeningTime.compute(T, 1, 0.32 / YEAR) / YEAR,
      expected: years,
      tolerance: 0.006,
    },
    {
      covers: ['softeningTime'],
      what: `share done at the time of time factor ${T}, by Terzaghi's series`,
      kind: 'exact',
      source: 'series solution of the diffusion equation',
      ours: () => doneAt((softeningTime.compute(T, 0.3, 3e-8) * 3e-8) / 0.3 ** 2),
      expected: share,
      tolerance: 0.0005,
    },
  ]),
  {
    covers: ['seepingSlope'],
    what: 'angle of repose of dry sand of 30°, its slope: cot 30°',
    kind: 'exact',
    source: 'a dry face without cohesion slips at its angle of friction',
    ours: () => seepingSlope.compute(1, 0, Math.PI / 6, 19000),
    expected: Math.sqrt(3),
    tolerance: 1e-12,
  },
  {
    covers: ['seepingSlope'],
    what: 'factor of the long slope at the slope asked for 1.25 with water along half its height',
    kind: 'exact',
    source: 'inverse of the long slope without cohesion',
    ours: () =>
      infiniteSlopeFactor.compute(
        0,
        19000,
        1,
        0.5,
        0.55,
        Math.atan(1 / seepingSlope.compute(1.25, 0.5, 0.55, 19000)),
      ),
    expected: 1.25,
    tolerance: 1e-12,
  },
  {
    covers: ['wallLoad'],
    what: 'earth at rest and water on a wall 2 m high, φ = 30°, γ = 19.81 kN/m³, no load: 0.5 × 10 × 2² ÷ 2 + 9.81 × 2² ÷ 2, N/m',
    kind: 'exact',
    source: 'sum of the two triangles, K0 = 1 − sin 30° = 0.5',
    ours: () => wallLoad.compute(Math.PI / 6, 19810, 2, 0),
    expected: 10000 + 19620,
    tolerance: 1e-6,
  },
];
