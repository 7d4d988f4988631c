import { carriedChecks } from './carried.js';
import type { Check } from './check.js';
import { climateChecks } from './climate.js';
import { drainChecks } from './drain.js';
import { drainDesignChecks } from './drainDesign.js';
import { pondChecks } from './pond.js';
import { samplingChecks } from './sampling.js';
import { sectionChecks } from './section.js';
import { soilChecks } from './soil.js';
import { spacingChecks } from './spacing.js';
import { upliftChecks } from './uplift.js';
import { waterChecks } from './water.js';

/** Every check against the outside, by group. */
export const CHECKS: Record<string, Check[]> = {
  sampling: samplingChecks,
  soil: soilChecks,
  climate: climateChecks,
  water: waterChecks,
  uplift: upliftChecks,
  pond: pondChecks,
  drain: drainChecks,
  'drain, link by link': drainDesignChecks,
  spacing: spacingChecks,
  section: sectionChecks,
  'numbers carried on': carriedChecks,
};
