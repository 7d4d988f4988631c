import {
  airEntryEstimate,
  airEntrySuction,
  compactedFieldCapacity,
  compactedSaturation,
  freeWater,
  roomAboveTable,
  saxtonRawls,
  stonyPermeabilityRatio,
} from '../../../lib/soil/index.js';
import type { Check } from '../check.js';

const covers = [
  'wiltingPoint',
  'fieldCapacityEstimate',
  'fieldCapacity',
  'freeWater',
  'saturation',
  'saturatedPermeability',
];
const source =
  'Saxton & Rawls 2006, Soil Sci. Soc. Am. J. 70:1569, Table 3 (2.5 % organic matter; values in a public web table)';

/** class, sand, clay, wilting point, field capacity, saturation (% by volume), Ks (mm/h) */
const TABLE_3: [string, number, number, number, number, number, number][] = [
  ['sand', 0.88, 0.05, 5, 10, 46, 108.1],
  ['loamy sand', 0.8, 0.05, 5, 12, 46, 96.7],
  ['sandy loam', 0.65, 0.1, 8, 18, 45, 50.3],
  ['loam', 0.4, 0.2, 14, 28, 46, 15.5],
  ['silt loam', 0.2, 0.15, 11, 31, 48, 16.1],
  ['silt', 0.1, 0.05, 6, 30, 48, 22.0],
  ['sandy clay loam', 0.6, 0.25, 17, 27, 43, 11.3],
  ['clay loam', 0.3, 0.35, 22, 36, 48, 4.3],
  ['silty clay loam', 0.1, 0.35, 22, 38, 51, 5.7],
  ['silty clay', 0.1, 0.45, 27, 41, 52, 3.7],
];

/** Clay as in Table 3. */
const clay = () => saxtonRawls(0.25, 0.5, 2.5);

const table3: Check[] = TABLE_3.flatMap(([name, sand, c, wp, fc, sat, ks]) => {
  const r = () => saxtonRawls(sand, c, 2.5);
  const row = { covers, kind: 'published' as const, source };
  return [
    {
      ...row,
      what: `wilting point of ${name}, %`,
      ours: () => 100 * r().wiltingPoint,
      expected: wp,
      tolerance: 0.55,
    },
    {
      ...row,
      what: `field capacity of ${name}, %`,
      ours: () => 100 * r().fieldCapacity,
      expected: fc,
      tolerance: 0.55,
    },
    {
      ...row,
      what: `saturation of ${name}, %`,
      ours: () => 100 * r().saturation,
      expected: sat,
      tolerance: 0.55,
    },
    {
      ...row,
      what: `Ks of ${name}, mm/h`,
      ours: () => r().permeability * 3.6e6,
      expected: ks,
      tolerance: 0.06,
    },
  ];
});

/** The two rows of Table 3 that were written down from memory. */
const recalled: Check[] = (
  [
    ['sandy clay', 0.5, 0.4, 1.4],
    ['clay', 0.25, 0.5, 1.1],
  ] as const
).map(([name, sand, c, ks]) => ({
  covers,
  kind: 'recalled',
  source: 'Saxton & Rawls 2006, Table 3, from memory',
  what: `Ks of ${name}, mm/h`,
  ours: () => saxtonRawls(sand, c, 2.5).permeability * 3.6e6,
  expected: ks,
  tolerance: 0.06,
}));

const help =
  'help page of SPAW-style functions, cug-hydro.github.io (its comment quotes 13.8 % where the equations give 13.65 %)';
const exact = { kind: 'exact' as const };

/** Water that clay has given up at a suction, Pa, up to field capacity: none before air enters, then a straight line. */
function deficit(suction: number): number {
  const { saturation, fieldCapacity, airEntry } = clay();
  return (Math.max(suction - airEntry, 0) * (saturation - fieldCapacity)) / (33_000 - airEntry);
}

export const saxtonRawlsChecks: Check[] = [
  ...table3,
  ...recalled,
  ...(
    [
      ['wilting point', 'wiltingPoint', 0.136545],
      ['field capacity', 'fieldCapacity', 0.320877],
      ['saturation', 'saturation', 0.482125],
    ] as const
  ).map(
    ([what, key, expected]): Check => ({
      covers,
      kind: 'published',
      source: help,
      what: `${what} of sand 0.2, clay 0.2`,
      ours: () => saxtonRawls(0.2, 0.2, 2.5)[key],
      expected,
      tolerance: 1.1e-6,
    }),
  ),
  {
    ...exact,
    covers: ['compactedSaturation'],
    source: 'conservation: solids 1 − θS times the density factor',
    what: 'solids of a clay pressed 10 % denser, over those before',
    ours: () => (1 - compactedSaturation.compute(clay().saturation, 1.1)) / (1 - clay().saturation),
    expected: 1.1,
    tolerance: 1e-14,
  },
  {
    ...exact,
    covers: ['compactedFieldCapacity'],
    source: 'limit: no compaction',
    what: 'field capacity at the usual density',
    ours: () => compactedFieldCapacity.compute(0.42, 0.5, 0.5),
    expected: 0.42,
    tolerance: 0,
  },
  {
    ...exact,
    covers: ['stonyPermeabilityRatio'],
    source: 'spheres that let nothing through, dilute limit of Maxwell: 2 (1 − Rv)/(2 + Rv)',
    what: 'conductivity of stony soil, ratio',
    ours: () => stonyPermeabilityRatio.compute(0.4, 0.55),
    // 0.4 by mass among fine earth of 0.55 times the density of stone is 0.22 / 0.82 by volume.
    expected: (2 * (1 - 0.22 / 0.82)) / (2 + 0.22 / 0.82),
    tolerance: 1e-15,
  },
  {
    ...exact,
    covers: ['airEntryEstimate', 'airEntrySuction'],
    source:
      'the equations by hand for sand 0.25, clay 0.5, 2.5 % organic matter (kPa): an independent port gives 5.32831',
    what: 'air-entry suction of clay, kPa',
    ours: () =>
      airEntrySuction.compute(airEntryEstimate.compute(0.25, 0.5, freeWater.compute(0.25, 0.5, 2.5))) / 1000,
    expected: 5.32831,
    tolerance: 5e-6,
  },
  {
    ...exact,
    covers: ['retentionCurve'],
    source: 'the deficit summed over 20 000 slices',
    what: 'room above a table at 1.5 m in clay, ratio',
    ours: () => {
      const n = 20000;
      let sum = 0;
      for (let i = 0; i < n; i++) {
        const height = (1.5 * (i + 0.5)) / n;
        sum += (deficit(9810 * height) * 1.5) / n;
      }
      return roomAboveTable(clay(), 1.5) / sum;
    },
    expected: 1,
    tolerance: 1e-7,
  },
];
