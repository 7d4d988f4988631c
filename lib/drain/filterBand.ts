import { formula, method, type Use, unrecorded } from '../formula/index.js';
import { type CurvePoint, finerThan, regraded, sizeFiner } from './gradation.js';

export const filterBandMethod = method({
  title: 'Filter band for a base soil (NRCS)',
  what:
    'Category of the base soil by its fines; largest D15 of the filter so that the soil stays, least D15 so that the ' +
    'water passes; limits against gap-graded and segregating stone.',
  assumptions: [
    'fines finer than 0.075 mm after regrading: above 85 % category 1, 40–85 % 2, 15–39 % 3, below 15 % 4',
    'largest D15: 9 d85 but not below 0.2 mm (6.5 d85 for clays that disperse); 0.7 mm; between; 4 d85',
    'least D15: 4 d15 of the soil before regrading, not below 0.1 mm; band of D15 at most 5 wide',
    'D60/D10 of the filter 2 to 6, D90 by D10 so that it does not part while it is tipped, at most 5 % finer than 0.075 mm, largest grain 75 mm',
  ],
  source:
    'USDA NRCS National Engineering Handbook part 633 chapter 26 (1994, 2017): factors 9, 6.5, 4 and the floors of 0.2 ' +
    'and 0.1 mm read in a summary, the rest from memory',
});

const d85 = { meaning: 'd85 of the regraded base soil', unit: 'm', min: 1e-7, max: 4.75e-3 };

/** Largest D15 of a filter on fine silt and clay. */
export const retentionFine = formula({
  title: 'Largest D15 of a filter on fine silt and clay (category 1)',
  symbol: 'D15',
  unit: 'm',
  expression: 'max(f*d, 0.0002)',
  parameters: { f: { meaning: '9, or 6.5 for clay that disperses', unit: '-', min: 6.5, max: 9 }, d: d85 },
  compute: (f: number, d: number) => Math.max(f * d, 0.0002),
  validity: 'more than 85 % finer than 0.075 mm after regrading',
  source: filterBandMethod.source,
});

/** Largest D15 of a filter on silty and clayey sand. */
export const retentionMixed = formula({
  title: 'Largest D15 of a filter on silty or clayey sand (category 3)',
  symbol: 'D15',
  unit: 'm',
  expression: '(40 - a)/25*(max(4*d, 0.0007) - 0.0007) + 0.0007',
  parameters: { a: { meaning: 'percent finer than 0.075 mm', unit: '%', min: 15, max: 40 }, d: d85 },
  compute: (a: number, d: number) => ((40 - a) / 25) * (Math.max(4 * d, 0.0007) - 0.0007) + 0.0007,
  validity: '15 to 39 % finer than 0.075 mm after regrading; 4 d85 taken as at least 0.7 mm',
  source: filterBandMethod.source,
});

/** Largest D15 of a filter on sand and gravel. */
export const retentionCoarse = formula({
  title: 'Largest D15 of a filter on sand and gravel (category 4)',
  symbol: 'D15',
  unit: 'm',
  expression: '4*d',
  parameters: { d: d85 },
  compute: (d: number) => 4 * d,
  validity: 'less than 15 % finer than 0.075 mm after regrading',
  source: filterBandMethod.source,
});

/** Largest D15 of a filter on fine sand, silt and clay of the middle category, m. */
const MIDDLE_D15 = 0.0007;

/** Soil that a filter must hold back. */
export interface BaseSoil {
  /** sizes in m and shares finer, 0–1, rising */
  curve: readonly CurvePoint[];
  /** clay that goes into suspension by itself */
  dispersive?: boolean;
}

/** What the filter on a soil may be; sizes in m. */
export interface FilterBand {
  /** of the soil: 1 the finest, 4 sand and gravel */
  category: 1 | 2 | 3 | 4;
  /** share finer than 0.075 mm */
  fines: number;
  /** sizes of which 85 % (of what passes 4.75 mm) and 15 % of the soil are finer */
  d85: number;
  d15: number;
  /** what the D15 of a filter may be */
  largestD15: number;
  leastD15: number;
}

/** No. 200 sieve, m. */
export const FINES_SIZE = 7.5e-5;
/** Limits of a filter: D60/D10, share finer than 0.075 mm (0–1), largest grain, m. */
export const FILTER_LIMITS = { leastUniformity: 2, mostUniformity: 6, fines: 0.05, largest: 0.0762 };

/** Largest D90 of a filter by its D10, both m: below the first size the second holds. From memory (table 26-6). */
const D90_BY_D10 = [
  [0.5e-3, 20e-3],
  [1e-3, 25e-3],
  [2e-3, 30e-3],
  [5e-3, 40e-3],
  [10e-3, 50e-3],
] as const;

/**
 * Largest D90 at which a filter does not part into coarse and fine while it is tipped (NEH 633-26).
 * @param d10 - D10 of the filter, the size of which 10 % is finer, m
 * @returns m
 */
export function largestD90(d10: number): number {
  return D90_BY_D10.find(([below]) => d10 < below)?.[1] ?? 60e-3;
}

/**
 * Filter band for a soil, see {@link filterBandMethod}.
 * @param base - grain-size curve of the soil, and whether it disperses
 * @param use - what evaluates the formulas, for a record
 * @returns category of the soil, and the range of the filter's D15, m
 */
export function filterBand({ curve, dispersive = false }: BaseSoil, use: Use = unrecorded): FilterBand {
  const fine = regraded(curve);
  const fines = finerThan(fine, FINES_SIZE);
  const d85 = sizeFiner(fine, 0.85, use);
  const d15 = sizeFiner(curve, 0.15, use);
  const category = fines > 0.85 ? 1 : fines >= 0.4 ? 2 : fines >= 0.15 ? 3 : 4;
  const largestD15 =
    category === 1
      ? use(retentionFine, dispersive ? 6.5 : 9, d85)
      : category === 2
        ? MIDDLE_D15
        : category === 3
          ? use(retentionMixed, 100 * fines, d85)
          : use(retentionCoarse, d85);
  // A band wider than 5 is narrowed from below; the rule for water to pass comes second to that for soil to stay.
  const leastD15 = Math.min(Math.max(4 * d15, 1e-4, largestD15 / 5), largestD15);
  return { category, fines, d85, d15, largestD15, leastD15 };
}
