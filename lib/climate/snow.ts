import { method } from '../formula/index.js';

export const degreeDaySnow = method({
  title: 'Snow by degree-day',
  what: 'Holds precipitation back on days with a mean below 0 °C and releases it at 3 mm a day and degree above.',
  assumptions: [
    'rain–snow limit at a daily mean of 0 °C',
    'melt factor 3 mm/°C/d, mid-range for open ground',
  ],
  source: 'common practice (melt factors 2–6 mm/°C/d)',
});

/**
 * Liquid water reaching the ground, m a day.
 * @param rain - precipitation, m
 * @param tmean - mean temperature, °C
 */
export function liquidWater(
  rain: Float64Array,
  tmean: Float64Array,
): { liquid: Float64Array; snowLeft: number } {
  const liquid = new Float64Array(rain.length);
  let pack = 0;
  for (let d = 0; d < rain.length; d++) {
    if (tmean[d] < 0) pack += rain[d];
    else {
      const melt = Math.min(pack, 0.003 * tmean[d]);
      pack -= melt;
      liquid[d] = rain[d] + melt;
    }
  }
  return { liquid, snowLeft: pack };
}
