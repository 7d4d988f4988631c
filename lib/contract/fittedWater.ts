import type { Percentiles } from '../sampling/index.js';

/** A parameter of the daily store of the water table: what was taken for likely, and what the looks left of it. */
export interface FittedParameter {
  name:
    | 'porosity'
    | 'recession'
    | 'baseDepth'
    | 'spillDepth'
    | 'extinctionDepth'
    | 'delay'
    | 'rootCapacity'
    | 'demandFactor'
    | 'crackShare'
    | 'drainDepth'
    | 'drainRate'
    | 'meltFactor'
    | 'missed';
  /** SI, rates by the day */
  before: Percentiles;
  /** of the sets that the water was simulated with */
  after: Percentiles;
}
