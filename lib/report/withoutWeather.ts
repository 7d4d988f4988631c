import type { Report } from '../contract/index.js';
import type { Site } from '../site/index.js';

/** How the water is known where no daily weather is given; null where it is, or would not be used for want of a winter in heads.csv. */
export function withoutWeather({ record, ordinary, survey, waterModel }: Site): Report['without_weather'] {
  if (record) return null;
  const twelve_months = ordinary !== undefined;
  if (waterModel === 'heads.csv') return { water: 'by month', twelve_months };
  if (waterModel === 'dips') return { water: 'looks', twelve_months };
  // Levels of the summer alone stand before any weather.
  return survey.heads.length > 0 ? null : { water: 'unknown', twelve_months };
}
