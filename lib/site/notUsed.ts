import type { PondFacts, SiteFacts, Survey, Warning } from '../survey/index.js';

/** Facts that are read and checked but do not enter the answer yet. */
const SITE_FACTS: (keyof SiteFacts)[] = ['outlet_setback', 'highest_water_mark', 'wet_plants'];
const POND_FACTS: (keyof PondFacts)[] = ['shelf_depth', 'shelf_width', 'floor_fall', 'filled_in'];

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
  for (const item of POND_FACTS)
    if (survey.pond[item] !== undefined) tell(item, survey.origins.pond[item] ?? { file: 'pond.csv' });
  if (survey.climate.length > 0) tell('climate.csv', { file: 'climate.csv' });
  if (survey.prices.length > 0) tell('prices.csv', { file: 'prices.csv' });
  return warnings;
}
