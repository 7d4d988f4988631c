/** What weather would gain, said before anybody asks for it; its figures were measured on surveys of our own. */

import type { Report } from '../contract/index.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';

/**
 * Measured on the five demos with ten years of weather, with the twelve means of it, and with neither; the README tells
 * the same, and `test/docs/weatherGain.long.ts` works them out again.
 */
export const WEATHER_GAIN = {
  /** width within which eight draws of ten have the yearly high, m, where a winter was looked at: the middle demo */
  band_m: { neither: 0.43, months: 0.43, days: 0.12 },
  /** demos that get an answer from their holes alone, in place of 'measure first' */
  answered: { neither: 0, months: 0, days: 3 },
  demos: 5,
} as const;

const COUNTED = ['none', 'one', 'two', 'three', 'four', 'five'] as const;

/**
 * What daily weather would settle for this survey, and what twelve months would.
 * @param report what was computed
 * @param units of the reader
 * @returns sentences; empty where weather is given, or would not be used
 */
export function weatherGainWords(report: Report, units: UnitSystem = report.units): string {
  const { without_weather } = report;
  if (without_weather === null) return '';
  const { water, twelve_months } = without_weather;
  const { band_m, answered, demos } = WEATHER_GAIN;
  const size = (metres: number) => formatQuantity(metres, 'length', units);
  const months = twelve_months
    ? 'The twelve months that you gave set which months are wet, and how far the pond falls where nobody tops it up; the winter water they leave as unsure.'
    : 'Twelve monthly means would set which months are wet, and how far the pond falls where nobody tops it up; the winter water they leave as unsure.';
  switch (water) {
    case 'by month':
      return 'Weather would not make the water in the ground surer here, for heads.csv tells it month by month. It would only tell how often rain fills what is filled back around the pond, and how far the pond falls in a dry summer.';
    case 'looks': {
      const { p10, p90 } = report.result.water.seasonal_high_depth_m;
      return `From your looks the highest water of a year is known within ${size(p90 - p10)}. Ten years of daily weather would make it surer: in the middle one of our ${COUNTED[demos]} invented gardens it came from ${size(band_m.neither)} to ${size(band_m.days)}. ${months}`;
    }
    case 'unknown':
      return `What was looked at so far does not tell how high the water comes in a wet winter, so it counts as at the ground, or as the colours in the soil say. With ten years of daily weather ${COUNTED[answered.days]} of our ${COUNTED[demos]} invented gardens got an answer from their holes alone; without it ${COUNTED[answered.neither]} did. ${months}`;
  }
}
