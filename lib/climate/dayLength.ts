import { formula } from '../formula/index.js';
import { calendarOf, dayNumber } from './calendar.js';
import { checkSunLatitude, solarDeclination } from './extraterrestrialRadiation.js';

const fao56 = 'Allen, Pereira, Raes & Smith 1998, FAO Irrigation and Drainage Paper 56';

/** Hour angle of sunset. */
export const sunsetAngle = formula({
  title: 'Sunset hour angle',
  symbol: 'ωs',
  unit: 'rad',
  expression: 'acos(-tan(f)*tan(d))',
  parameters: {
    f: { meaning: 'latitude', unit: 'rad', min: -1.135, max: 1.135 },
    d: { meaning: 'solar declination', unit: 'rad', min: -0.41, max: 0.41 },
  },
  compute: (f: number, d: number) => Math.acos(-Math.tan(f) * Math.tan(d)),
  validity: 'between the polar circles; level horizon, no refraction',
  source: `${fao56}, eq. 25`,
});

/** Hours from sunrise to sunset. */
export const dayLength = formula({
  title: 'Day length',
  symbol: 'N',
  unit: 'h',
  expression: '24/pi*w',
  parameters: { w: { meaning: 'sunset hour angle', unit: 'rad', min: 0, max: 3.14 } },
  compute: (w: number) => (24 / Math.PI) * w,
  validity: 'hours of possible sunshine; twilight not counted',
  source: `${fao56}, eq. 34`,
});

/** Days in each month of an ordinary year. */
export const DAYS_OF_MONTH = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/**
 * Mean day length of each month, by {@link dayLength}.
 * @param latitude - degrees, −65 to 65, south negative
 * @returns 12 values, January first, h
 * @throws InputError for latitudes nearer the poles, where the sun may stay up or down all day
 */
export function monthlyDayLength(latitude: number): number[] {
  checkSunLatitude(latitude);
  const f = (latitude * Math.PI) / 180;
  return DAYS_OF_MONTH.map((days, m) => {
    let sum = 0;
    for (let date = 1; date <= days; date++) {
      // Any year without a 29 February.
      const { dayOfYear } = calendarOf(dayNumber(2001, m + 1, date));
      sum += dayLength.compute(sunsetAngle.compute(f, solarDeclination.compute(dayOfYear)));
    }
    return sum / days;
  });
}
