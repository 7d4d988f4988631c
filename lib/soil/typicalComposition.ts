import { method } from '../formula/index.js';
import type { UsdaClass } from './words.js';

export const classComposition = method({
  title: 'Typical composition of a texture class',
  what: 'Sand and clay of a class named in the pit log, with the spread within the class.',
  assumptions: [
    'the middle is the composition for which Saxton & Rawls 2006 print their Table 3 (2.5 % organic matter)',
    'spread: every composition of the class equally likely, standard deviation over its area in the triangle',
  ],
  source: 'Saxton & Rawls 2006, Soil Sci. Soc. Am. J. 70:1569, Table 3; areas of the USDA triangle',
});

/** Sand and clay, mass fractions, with one standard deviation of each within the class. */
export interface TypicalComposition {
  sand: number;
  clay: number;
  sandSpread: number;
  claySpread: number;
}

function typical(sand: number, clay: number, sandSpread: number, claySpread: number): TypicalComposition {
  return { sand, clay, sandSpread, claySpread };
}

/** Typical composition of each class; see {@link classComposition}. */
export const TYPICAL_COMPOSITION: Record<UsdaClass, TypicalComposition> = {
  sand: typical(0.88, 0.05, 0.031, 0.024),
  'loamy sand': typical(0.8, 0.05, 0.043, 0.037),
  'sandy loam': typical(0.65, 0.1, 0.091, 0.056),
  loam: typical(0.4, 0.2, 0.066, 0.054),
  'silt loam': typical(0.2, 0.15, 0.115, 0.075),
  silt: typical(0.1, 0.05, 0.047, 0.034),
  'sandy clay loam': typical(0.6, 0.25, 0.082, 0.042),
  'clay loam': typical(0.3, 0.35, 0.072, 0.038),
  'silty clay loam': typical(0.1, 0.35, 0.058, 0.038),
  'sandy clay': typical(0.5, 0.4, 0.047, 0.047),
  'silty clay': typical(0.1, 0.45, 0.047, 0.047),
  clay: typical(0.25, 0.5, 0.121, 0.138),
};
