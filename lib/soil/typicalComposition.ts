import type { UsdaClass } from './words.js';

/**
 * Typical sand and clay of each class, mass fractions: the compositions for which Saxton & Rawls 2006 print
 * their Table 3 (2.5 % organic matter).
 */
export const TYPICAL_COMPOSITION: Record<UsdaClass, { sand: number; clay: number }> = {
  sand: { sand: 0.88, clay: 0.05 },
  'loamy sand': { sand: 0.8, clay: 0.05 },
  'sandy loam': { sand: 0.65, clay: 0.1 },
  loam: { sand: 0.4, clay: 0.2 },
  'silt loam': { sand: 0.2, clay: 0.15 },
  silt: { sand: 0.1, clay: 0.05 },
  'sandy clay loam': { sand: 0.6, clay: 0.25 },
  'clay loam': { sand: 0.3, clay: 0.35 },
  'silty clay loam': { sand: 0.1, clay: 0.35 },
  'sandy clay': { sand: 0.5, clay: 0.4 },
  'silty clay': { sand: 0.1, clay: 0.45 },
  clay: { sand: 0.25, clay: 0.5 },
};
