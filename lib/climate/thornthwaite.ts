import { formula } from '../formula/index.js';
import { InputError } from '../units/index.js';
import { DAYS_OF_MONTH, monthlyDayLength } from './dayLength.js';

const source =
  'Thornthwaite 1948, Geographical Review 38:55–94 (formula read in the documentation of a library)';
const L = { meaning: 'mean day length of the month', unit: 'h', min: 0, max: 24 };
const D = { meaning: 'days in the month', unit: 'd', min: 28, max: 31 };

/** A month's part in the yearly heat index. */
export const heatIndex = formula({
  title: "A month's part in the heat index (Thornthwaite)",
  symbol: 'i',
  unit: '-',
  expression: '(T/5)^1.514',
  parameters: { T: { meaning: 'mean temperature of the month', unit: '°C', min: 0, max: 40 } },
  compute: (T: number) => (T / 5) ** 1.514,
  validity: 'months above freezing; colder ones count nought',
  source,
});

/** Exponent of Thornthwaite's formula from the yearly heat index. */
export const heatExponent = formula({
  title: 'Exponent from the heat index (Thornthwaite)',
  symbol: 'a',
  unit: '-',
  expression: '6.75e-7*I^3 - 7.71e-5*I^2 + 1.792e-2*I + 0.49239',
  parameters: { I: { meaning: 'heat index, sum of twelve months', unit: '-', min: 0, max: 170 } },
  compute: (I: number) => 6.75e-7 * I ** 3 - 7.71e-5 * I ** 2 + 1.792e-2 * I + 0.49239,
  validity: 'temperate climates',
  source,
});

/** Evapotranspiration of a month from mean temperatures alone. */
export const thornthwaite = formula({
  title: 'Potential evapotranspiration of a month (Thornthwaite)',
  symbol: 'PE',
  unit: 'm',
  expression: '0.016*(L/12)*(D/30)*(10*T/I)^a',
  parameters: {
    L,
    D,
    T: { meaning: 'mean temperature of the month', unit: '°C', min: 0, max: 26.5 },
    I: { meaning: 'heat index, sum of twelve months', unit: '-', min: 5, max: 170 },
    a: { meaning: 'exponent from the heat index', unit: '-', min: 0.4, max: 4.3 },
  },
  compute: (L: number, D: number, T: number, I: number, a: number) =>
    0.016 * (L / 12) * (D / 30) * ((10 * T) / I) ** a,
  validity: 'means over years; low in dry and windy climates, late in spring',
  source,
});

/** The same for hot months, where the heat index no longer matters. */
export const thornthwaiteHot = formula({
  title: 'Potential evapotranspiration of a hot month (Thornthwaite, Willmott)',
  symbol: 'PE',
  unit: 'm',
  expression: '(-415.85 + 32.24*T - 0.43*T^2)/1000*(L/12)*(D/30)',
  parameters: { L, D, T: { meaning: 'mean temperature of the month', unit: '°C', min: 26.5, max: 38 } },
  compute: (L: number, D: number, T: number) =>
    ((-415.85 + 32.24 * T - 0.43 * T ** 2) / 1000) * (L / 12) * (D / 30),
  validity: 'above 26.5 °C; up to 2 % above the table it stands for',
  source:
    'Willmott, Rowe & Mintz 1985, J. Climatology 5:589–606, for Thornthwaite 1948 Fig. 13 (both read second-hand)',
});

/**
 * Potential evapotranspiration of the months of an ordinary year, by {@link thornthwaite}; above 26.5 °C by
 * {@link thornthwaiteHot}, in months at or below 0 °C none.
 * @param tmean - twelve mean temperatures, January first, °C, at most 38
 * @param latitude - degrees, −65 to 65, south negative
 * @returns 12 values, January first, m a month
 * @throws InputError for other than twelve months, a month without a temperature, temperatures above 38 °C, or latitudes
 *   nearer the poles
 */
export function thornthwaiteYear(tmean: readonly number[], latitude: number): number[] {
  if (tmean.length !== 12)
    throw new InputError('invalid-input', `invalid year: ${tmean.length} months instead of 12`);
  const unknown = tmean.findIndex((T) => Number.isNaN(T));
  if (unknown >= 0)
    throw new InputError('missing-input', `missing temperature: month ${unknown + 1} has none`);
  const hottest = Math.max(...tmean);
  if (!(hottest <= 38))
    throw new InputError('invalid-input', `mean temperature ${hottest} °C is outside -60 to 38 °C`);
  const I = tmean.reduce((sum, T) => sum + (T > 0 ? heatIndex.compute(T) : 0), 0);
  const a = heatExponent.compute(I);
  const hours = monthlyDayLength(latitude);
  return tmean.map((T, m) => {
    if (T <= 0) return 0;
    if (T > 26.5) return thornthwaiteHot.compute(hours[m], DAYS_OF_MONTH[m], T);
    return thornthwaite.compute(hours[m], DAYS_OF_MONTH[m], T, I, a);
  });
}
