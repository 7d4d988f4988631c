import { saxtonRawls } from '../../lib/soil/index.js';
import type { Check } from './check.js';

const covers = ['wiltingPoint', 'fieldCapacityEstimate', 'fieldCapacity', 'freeWater', 'saturation', 'saturatedConductivity'];
const source = 'Saxton & Rawls 2006, Soil Sci. Soc. Am. J. 70:1569, Table 3 (2.5 % organic matter; values in a public web table)';

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

/** One table, so one published check in any count: see `published` in the test. */
export const soilChecks: Check[] = TABLE_3.flatMap(([name, sand, clay, wp, fc, sat, ks]) => {
  const r = () => saxtonRawls(sand, clay, 2.5);
  const row = { covers, kind: 'published' as const, source };
  return [
    { ...row, what: `wilting point of ${name}, %`, ours: () => 100 * r().wiltingPoint, expected: wp, tolerance: 0.55 },
    { ...row, what: `field capacity of ${name}, %`, ours: () => 100 * r().fieldCapacity, expected: fc, tolerance: 0.55 },
    { ...row, what: `saturation of ${name}, %`, ours: () => 100 * r().saturation, expected: sat, tolerance: 0.55 },
    { ...row, what: `Ks of ${name}, mm/h`, ours: () => r().ksat * 3.6e6, expected: ks, tolerance: 0.06 },
  ];
});
