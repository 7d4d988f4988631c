import { fallNeeded, manningFull, orificeFlow, rationalRunoff } from '../../lib/drain/index.js';
import type { Check } from './check.js';

const GPM = 3.785411784e-3 / 60;
const INCH = 0.0254;
const CFS = 0.3048 ** 3;

/** Inside diameter (in) of Schedule 40 pipe and gpm at 1/16, 1/8, 1/4 and 1/2 in/ft. */
const IPC: [number, number[]][] = [
  [3.068, [39, 55, 79, 111]],
  [4.026, [81, 115, 163, 231]],
  [6.065, [243, 344, 487, 689]],
  [7.981, [505, 714, 1010, 1429]],
];

export const drainChecks: Check[] = [
  ...IPC.flatMap(([inches, flows]) =>
    flows.map(
      (gpm, i): Check => ({
        covers: ['manningFull'],
        what: `capacity of ${inches} in at 1/${16 / 2 ** i} in/ft, n = 0.010, gpm`,
        kind: 'published',
        source: 'International Plumbing Code 2018, Table 1106.2 (as reproduced by engineersedge)',
        ours: () => manningFull.compute(inches * INCH, 2 ** i / 16 / 12, 0.01) / GPM,
        expected: gpm,
        tolerance: 0.02 * gpm,
      }),
    ),
  ),
  {
    covers: ['rationalRunoff'],
    what: 'run-off of 30 acres, C = 0.11, 1.25 in/h, cfs (the US form takes 1 acre·in/h as 1 cfs; exactly 1.00833)',
    kind: 'published',
    source: 'worked problem 079, engineeringprep: 4.125 cfs',
    ours: () =>
      rationalRunoff.compute(0.11, (1.25 * INCH) / 3600, 30 * 4046.8564224) / CFS / (43560 / 12 / 3600),
    expected: 4.125,
    tolerance: 1e-4,
  },
  {
    covers: ['rationalRunoff'],
    what: 'gallons a minute from 1 ft² of roof at 1 in/h',
    kind: 'published',
    source: '2015 National Standard Plumbing Code Illustrated, Appendix A.1: 0.0104',
    ours: () => rationalRunoff.compute(1, INCH / 3600, 0.3048 ** 2) / GPM,
    expected: 0.0104,
    tolerance: 5e-5,
  },
  {
    covers: ['rationalRunoff'],
    what: 'roof that loads a leader of 144 gpm at 1 in/h, ft²',
    kind: 'published',
    source: '2006 National Standard Plumbing Code, Table 13.6.1: 13,840 ft²',
    ours: () => (144 * GPM) / rationalRunoff.compute(1, INCH / 3600, 0.3048 ** 2),
    expected: 13840,
    tolerance: 28,
  },
  {
    covers: ['orificeFlow'],
    what: 'orifice under 5.0989 m of head: velocity 10 m/s times 0.6',
    kind: 'exact',
    source: "Torricelli's law: v² = 2 g h",
    ours: () => orificeFlow.compute(1e-3, 100 / (2 * 9.80665)) / 1e-3,
    expected: 6,
    tolerance: 1e-12,
  },
  {
    covers: ['fallNeeded'],
    what: '1 % over 50 ft, in',
    kind: 'published',
    source: 'drainage leaflet quoted in forum answers: 6 in in 50 ft',
    ours: () => fallNeeded.compute(0.01, 50 * 0.3048) / INCH,
    expected: 6,
    tolerance: 1e-9,
  },
];
