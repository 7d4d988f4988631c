import type { Check } from './check.js';
import { drainChecks } from './drain.js';
import { soilChecks } from './soil.js';
import { upliftChecks } from './uplift.js';
import { waterChecks } from './water.js';

/** Every check against the outside, by group. */
export const CHECKS: Record<string, Check[]> = {
  soil: soilChecks,
  water: waterChecks,
  uplift: upliftChecks,
  drain: drainChecks,
};
