import { method } from '../formula/index.js';

export const degreeDaySnow = method({
  title: 'Snow by degree-day',
  what: 'Holds precipitation back on days with a mean below 0 °C and releases it in proportion to the degrees above.',
  assumptions: [
    'rain–snow limit at a daily mean of 0 °C',
    'melt factor 3 mm/°C/d, mid-range for open ground; drawn with the table where there is snow',
  ],
  source: 'common practice (melt factors 2–6 mm/°C/d)',
});

/** Melt per degree and day, m. */
export const MELT_FACTOR = 0.003;

/**
 * Liquid water reaching the ground day by day, and asserts that nothing is lost.
 * @param rain - precipitation, m
 * @param tmean - mean temperature, °C
 * @param meltFactor - m a degree and day
 * @param liquid - filled, m a day
 * @returns snow left at the end, m of water
 * @throws Error when the balance does not close to 1e-9 m
 */
export function runSnow(
  rain: Float64Array,
  tmean: Float64Array,
  meltFactor: number,
  liquid: Float64Array,
): { snowLeft: number; closure: number } {
  let pack = 0;
  let closure = 0;
  for (let d = 0; d < rain.length; d++) {
    const before = pack;
    const warmth = tmean[d];
    let water = 0;
    if (warmth < 0) pack += rain[d];
    else {
      let melt = meltFactor * warmth;
      if (melt > pack) melt = pack;
      pack -= melt;
      water = rain[d] + melt;
    }
    liquid[d] = water;
    closure += rain[d] - water - (pack - before);
  }
  if (!(Math.abs(closure) <= 1e-9)) throw new Error(`snow balance does not close: ${closure} m`);
  return { snowLeft: pack, closure };
}
