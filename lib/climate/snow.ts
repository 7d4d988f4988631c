import { formula, method } from '../formula/index.js';

/** Melt of a day. */
export const degreeDayMelt = formula({
  title: 'Melt of snow by degree-day',
  symbol: 'M',
  unit: 'm',
  expression: 'max(0, min(f*T, S))',
  parameters: {
    f: { meaning: 'melt factor, water a degree and day', unit: 'm/°C', min: 0.001, max: 0.01 },
    T: { meaning: 'mean temperature of the day', unit: '°C', min: -50, max: 50 },
    S: { meaning: 'water held as snow', unit: 'm', min: 0, max: 5 },
  },
  compute: (f: number, T: number, S: number) => {
    let melt = T < 0 ? 0 : f * T;
    if (melt > S) melt = S;
    return melt;
  },
  validity: 'open ground; no rain on snow, no cold content',
  source: 'common practice (melt factors 2–6 mm/°C/d)',
});

export const degreeDaySnow = method({
  title: 'Snow by degree-day',
  what: 'Holds precipitation back on days with a mean below 0 °C and releases it in proportion to the degrees above.',
  assumptions: [
    'rain–snow limit at a daily mean of 0 °C',
    'melt factor 3 mm/°C/d, mid-range for open ground; drawn with the table where there is snow',
  ],
  source: 'common practice (melt factors 2–6 mm/°C/d)',
});

/** Melt per degree and day, m/°C. Common practice. */
export const MELT_FACTOR = 0.003;
