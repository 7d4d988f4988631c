import type { SiteFacts, Survey, Warning } from '../survey/index.js';

/** Facts that are read and checked but do not enter the answer yet. */
const SITE_FACTS: (keyof SiteFacts)[] = ['highest_water_mark', 'wet_plants'];

/** A warning for everything the survey says that the answer does not use. */
export function notUsed(survey: Survey): Warning[] {
  const warnings: Warning[] = [];
  const tell = (what: string, place: Pick<Warning, 'file' | 'line'>) =>
    warnings.push({
      code: 'not-used',
      message: `${what} is read and checked but not used in the answer`,
      ...place,
    });
  for (const item of SITE_FACTS)
    if (survey.site[item] !== undefined) tell(item, survey.origins.site[item] ?? { file: 'site.csv' });
  if (survey.site.outlet_setback !== undefined && !survey.levels.some((p) => p.role === 'boundary'))
    warnings.push({
      code: 'not-used',
      message: 'outlet_setback is not used: levels.csv has no boundary points to measure it from',
      ...(survey.origins.site.outlet_setback ?? { file: 'site.csv' }),
    });
  if (survey.climate.length > 0) tell('climate.csv', { file: 'climate.csv' });
  return warnings;
}
