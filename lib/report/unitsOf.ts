import type { Judged } from '../decision/index.js';
import type { UnitSystem } from '../units/index.js';

/** The system of units that a survey asks for. */
export function unitsOf({ site }: Pick<Judged, 'site'>): UnitSystem {
  return site.survey.site.show_units ?? 'metric';
}
