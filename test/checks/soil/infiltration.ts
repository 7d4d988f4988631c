import {
  curveNumberOf,
  curveNumberRetention,
  curveNumberRunoff,
  greenAmptParameters,
  greenAmptRate,
  greenAmptTime,
  pondedInfiltration,
  pondingTime,
  runGreenAmpt,
  triangularRain,
} from '../../../lib/soil/index.js';
import type { Check } from '../check.js';

const CM_H = 0.01 / 3600;
const CHOW = 'Chow, Maidment & Mays 1988, Applied Hydrology';
const recalled = (example: string) => ({
  kind: 'recalled' as const,
  source: `${CHOW}, ${example}, from memory`,
});
const sheet = { kind: 'published' as const, source: 'course spreadsheet, silty clay half wet (public copy)' };
const exact = (source: string) => ({ kind: 'exact' as const, source });

/** Silt loam of the examples: K 0.65 cm/h, P 5.68 cm. */
const [K, P] = [0.65 * CM_H, 0.0568];
const SILTY = greenAmptParameters('silty clay');
const SILTY_P = SILTY.suction * SILTY.effectivePorosity * (1 - 0.45);
const inches = (rain: number, cn: number) =>
  curveNumberRunoff.compute(rain * 0.0254, curveNumberRetention.compute(cn)) / 0.0254;

const greenAmpt: Check[] = [
  {
    ...sheet,
    covers: ['greenAmptTime', 'greenAmptTable'],
    what: 'water soaked in after 0.1 h, cm',
    ours: () => 100 * pondedInfiltration(SILTY.conductivity, SILTY_P, 360),
    expected: 0.264,
    tolerance: 0.0005,
  },
  {
    ...sheet,
    covers: ['greenAmptRate', 'greenAmptTable'],
    what: 'rate after 0.1 h, cm/h',
    ours: () =>
      greenAmptRate.compute(
        SILTY.conductivity,
        SILTY_P,
        pondedInfiltration(SILTY.conductivity, SILTY_P, 360),
      ) / CM_H,
    expected: 1.33714,
    tolerance: 5e-6,
  },
  {
    ...recalled('Example 4.3.1'),
    covers: ['greenAmptTime'],
    what: 'water soaked in after 1 h, cm',
    ours: () => 100 * pondedInfiltration(K, P, 3600),
    expected: 3.17,
    tolerance: 0.005,
  },
  {
    ...recalled('Example 4.3.1'),
    covers: ['greenAmptRate'],
    what: 'rate after 1 h, cm/h',
    ours: () => greenAmptRate.compute(K, P, pondedInfiltration(K, P, 3600)) / CM_H,
    expected: 1.81,
    tolerance: 0.01,
  },
  ...(
    [
      [1, 10.5],
      [5, 0.17],
    ] as const
  ).map(
    ([rain, expected]): Check => ({
      ...recalled('Example 4.4.1'),
      covers: ['pondingTime'],
      what: `ponding time under ${rain} cm/h, h`,
      ours: () => pondingTime.compute(K, P, (rain - 0.65) * CM_H) / 3600,
      expected,
      tolerance: rain === 1 ? 0.05 : 0.005,
    }),
  ),
  {
    ...recalled('Example 4.4.2'),
    covers: ['greenAmptStorm'],
    what: 'soaked in after an hour of 5 cm/h, cm',
    ours: () =>
      100 *
      runGreenAmpt(
        new Float64Array(6).fill(0.05 / 6),
        600,
        { conductivity: K, suctionDeficit: P },
        new Float64Array(6),
      ).infiltration,
    expected: 3.02,
    tolerance: 0.005,
  },
  {
    ...exact('the rate is the slope of the depth soaked in: difference over 2 ms'),
    covers: ['greenAmptRate', 'greenAmptTime'],
    what: 'rate of clay after an hour, ratio',
    ours: () => {
      const [k, p] = [8.3e-8, 0.06];
      const f = (t: number) => pondedInfiltration(k, p, t);
      return greenAmptRate.compute(k, p, f(3600)) / ((f(3601) - f(3599)) / 2);
    },
    expected: 1,
    tolerance: 1e-7,
  },
  {
    ...exact('time for the depth that soaks in within the time, once round'),
    covers: ['greenAmptTime'],
    what: 'an hour, s',
    ours: () => greenAmptTime.compute(K, P, pondedInfiltration(K, P, 3600)),
    expected: 3600,
    tolerance: 1e-8,
  },
  {
    ...exact('at ponding the intake rate is the rain rate'),
    covers: ['pondingTime'],
    what: 'intake over rain at ponding',
    ours: () => greenAmptRate.compute(K, P, pondingTime.compute(K, P, 2e-6) * (K + 2e-6)) / (K + 2e-6),
    expected: 1,
    tolerance: 1e-14,
  },
];

const other: Check[] = [
  {
    ...exact('conservation: the storm adds up to its rain'),
    covers: ['triangularRain'],
    what: 'rain at the end, m',
    ours: () => triangularRain.compute(0.05, 1),
    expected: 0.05,
    tolerance: 1e-17,
  },
];

const TR55 = 'USDA-NRCS TR-55 (1986)';
const runoff: Check[] = [
  {
    kind: 'published',
    source: `${TR55}, eqs 2-1 to 2-4: storage of curve number 80 (public copy)`,
    covers: ['curveNumberRetention'],
    what: 'potential retention, mm',
    ours: () => 1000 * curveNumberRetention.compute(80),
    expected: 63.5,
    tolerance: 1e-9,
  },
  {
    kind: 'published',
    source: `${TR55}, eqs 2-1 to 2-4: no run-off below 0.2 S (public copy)`,
    covers: ['curveNumberRunoff'],
    what: 'run-off of 0.4 inches on 60',
    ours: () => inches(0.4, 60),
    expected: 0,
    tolerance: 0,
  },
  ...(
    [
      [4, 80, 2.04],
      [5, 75, 2.45],
      [3, 90, 1.98],
      [6, 70, 2.81],
      [4, 95, 3.43],
      [2, 80, 0.56],
    ] as const
  ).map(
    ([rain, cn, expected]): Check => ({
      kind: 'recalled',
      source: `${TR55}, Table 2-1, from memory`,
      covers: ['curveNumberRunoff', 'curveNumberRetention'],
      what: `run-off of ${rain} inches on ${cn}, inches`,
      ours: () => inches(rain, cn),
      expected,
      tolerance: 0.005,
    }),
  ),
  // The chart readings of this report lie up to 0.06 inches from the equation they were read off.
  ...(
    [
      [0.66, 0.08],
      [1.01, 0.28],
      [1.43, 0.55],
      [2.15, 1.1],
      [3.05, 1.9],
      [5.25, 3.9],
      [8.12, 6.65],
      [9.37, 7.85],
    ] as const
  ).map(
    ([rain, expected]): Check => ({
      kind: 'published',
      source:
        'a state water board report on a dam, chart of curve number 88 (readings from the chart: within 0.07 inches)',
      covers: ['curveNumberRunoff', 'curveNumberRetention'],
      what: `run-off of ${rain} inches on 88, inches`,
      ours: () => inches(rain, 88),
      expected,
      tolerance: 0.07,
    }),
  ),
  ...(
    [
      [90, 78, 96],
      [80, 63, 91],
      [70, 51, 85],
      [60, 40, 78],
      [50, 31, 70],
      [40, 22, 60],
      [30, 15, 50],
      [100, 100, 100],
    ] as const
  ).flatMap(([ordinary, ...by]) =>
    (['dry', 'wet'] as const).map(
      (when, at): Check => ({
        kind: 'published',
        source: 'NEH-4 Table 10.1 as printed by Beven, Rainfall-Runoff Modelling, Table B6.3.2',
        covers: ['curveNumberCondition'],
        what: `curve number ${ordinary}, ${when}`,
        ours: () => curveNumberOf(ordinary, when),
        expected: by[at],
        tolerance: 0.5,
      }),
    ),
  ),
  ...(
    [
      [98, 94, 99],
      [86, 72, 94],
      [77, 59, 89],
      [74, 55, 88],
      [61, 41, 78],
      [39, 21, 59],
    ] as const
  ).flatMap(([ordinary, ...by]) =>
    (['dry', 'wet'] as const).map(
      (when, at): Check => ({
        kind: 'recalled',
        source: 'NEH-4 Table 10.1, rows between the tens, from memory',
        covers: ['curveNumberCondition'],
        what: `curve number ${ordinary}, ${when}`,
        ours: () => curveNumberOf(ordinary, when),
        expected: by[at],
        tolerance: 1,
      }),
    ),
  ),
];

export const infiltrationChecks: Check[] = [...greenAmpt, ...other, ...runoff];
