import { formula } from '../formula/index.js';
import { InputError } from '../units/index.js';

const fao56 = 'Allen, Pereira, Raes & Smith 1998, FAO Irrigation and Drainage Paper 56';
const J = { meaning: 'day of the year', unit: 'd', min: 1, max: 366 };

/** Farthest latitude of the formulas of the sun, degrees: nearer the poles it may stay up or down all day. */
export const SUN_LATITUDE = 65;

/**
 * Refuses a latitude at which the sun may not rise or set in a day.
 * @param latitude - degrees, south negative
 * @throws InputError for latitudes nearer the poles than {@link SUN_LATITUDE}
 */
export function checkSunLatitude(latitude: number): void {
  if (!(Math.abs(latitude) <= SUN_LATITUDE))
    throw new InputError(
      'invalid-input',
      `latitude ${latitude} deg is outside -${SUN_LATITUDE} to ${SUN_LATITUDE} deg`,
    );
}

/** Solar declination. */
export const solarDeclination = formula({
  title: 'Solar declination',
  symbol: 'δ',
  unit: 'rad',
  expression: '0.409*sin(2*pi*J/365 - 1.39)',
  parameters: { J },
  compute: (J: number) => 0.409 * Math.sin((2 * Math.PI * J) / 365 - 1.39),
  validity: 'every latitude',
  source: `${fao56}, eq. 24`,
});

/** Extraterrestrial radiation from latitude, declination and day. */
export const extraterrestrialRadiation = formula({
  title: 'Extraterrestrial radiation',
  symbol: 'Ra',
  unit: 'MJ/m²/d',
  expression:
    '1440/pi*0.082*(1 + 0.033*cos(2*pi*J/365))*(acos(-tan(f)*tan(d))*sin(f)*sin(d) + cos(f)*cos(d)*sin(acos(-tan(f)*tan(d))))',
  parameters: {
    f: { meaning: 'latitude', unit: 'rad', min: -1.135, max: 1.135 },
    d: { meaning: 'solar declination', unit: 'rad', min: -0.41, max: 0.41 },
    J,
  },
  compute: (f: number, d: number, J: number) => {
    const sunset = Math.acos(-Math.tan(f) * Math.tan(d));
    return (
      (1440 / Math.PI) *
      0.082 *
      (1 + 0.033 * Math.cos((2 * Math.PI * J) / 365)) *
      (sunset * Math.sin(f) * Math.sin(d) + Math.cos(f) * Math.cos(d) * Math.sin(sunset))
    );
  },
  validity: 'between the polar circles; doubtful above 55° in winter',
  source: `${fao56}, eq. 21`,
});
