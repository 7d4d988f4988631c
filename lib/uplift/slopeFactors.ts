import { formula, UNIT_WEIGHT_OF_WATER } from '../formula/index.js';
import { taylorNumber } from './sideStability.js';

const W = UNIT_WEIGHT_OF_WATER;

/** Undrained factor of a side by Taylor's stability number. */
export const taylorFactor = formula({
  title: "Factor of a clay side by Taylor's stability number",
  symbol: 'FS',
  unit: '-',
  expression: 'c/(N*g*H)',
  parameters: {
    c: { meaning: 'undrained strength', unit: 'Pa', min: 1000, max: 400000 },
    N: { meaning: "Taylor's stability number of the slope", unit: '-', min: 0.05, max: 0.27 },
    g: {
      meaning: 'unit weight that drives: submerged when full, saturated after emptying',
      unit: 'N/m³',
      min: 4000,
      max: 23000,
    },
    H: { meaning: 'height of the side', unit: 'm', min: 0.1, max: 10 },
  },
  compute: (c: number, N: number, g: number, H: number) => c / (N * g * H),
  validity: 'uniform clay, no crack; emptied faster than the clay can follow',
  source: 'Taylor 1937; canal example of public question bank ques10 item 39478',
});

/** Factor of a long slope with its own water seeping along it. */
export const infiniteSlopeFactor = formula({
  title: 'Long slope with seepage along it, with cohesion',
  symbol: 'FS',
  unit: '-',
  expression: 'c/(g*z*sin(b)*cos(b)) + (1 - 9810*m/g)*tan(p)/tan(b)',
  parameters: {
    c: { meaning: 'effective cohesion', unit: 'Pa', min: 0, max: 20000 },
    g: { meaning: 'saturated unit weight', unit: 'N/m³', min: 14000, max: 23000 },
    z: { meaning: 'depth of the slip', unit: 'm', min: 0.2, max: 10 },
    m: { meaning: 'share of that depth under water', unit: '-', min: 0, max: 1 },
    p: { meaning: 'angle of friction', unit: 'rad', min: 0.2, max: 0.8 },
    b: { meaning: 'slope angle', unit: 'rad', min: 0.02, max: 1.2 },
  },
  compute: (c: number, g: number, z: number, m: number, p: number, b: number) =>
    c / (g * z * Math.sin(b) * Math.cos(b)) + ((1 - (W * m) / g) * Math.tan(p)) / Math.tan(b),
  validity: 'long-term, drained, shallow slip parallel to the face',
  source: 'Skempton & DeLory 1957, from memory; GATE Civil 2014 Q16 as worked example without cohesion',
});

/** Time in which clay takes up water and loses the strength of the fresh cut. */
export const softeningTime = formula({
  title: 'Time for clay beside a cut to take up water',
  symbol: 't',
  unit: 's',
  expression: 'T*d^2/c',
  parameters: {
    T: { meaning: 'time factor (0.197 half way, 0.848 to 90 %)', unit: '-', min: 0.01, max: 2 },
    d: { meaning: 'way the water has to go', unit: 'm', min: 0.01, max: 5 },
    c: { meaning: 'coefficient of consolidation in swelling', unit: 'm²/s', min: 1e-10, max: 1e-5 },
  },
  compute: (T: number, d: number, c: number) => (T * d * d) / c,
  validity: 'one-dimensional; cracks shorten the way',
  source: 'Terzaghi 1943; worked example (0.61 and 2.65 years) read in a translated textbook page',
});

/** Time factor of {@link softeningTime} at which half of the change is done, dimensionless. */
export const HALF_DONE = 0.197;

/**
 * Factors of safety of an uncracked side with the pond full and after it was emptied fast, by Taylor's numbers.
 * @param strength - undrained, Pa
 * @param saturatedWeight - unit weight of the clay full of water, N/m³, above 9810
 * @param sideSlope - horizontal to 1 vertical, 0 (upright) and more
 * @param height - of the side, m, above 0
 * @returns factors of safety; below 1 it fails
 * @throws RangeError for a side that overhangs
 */
export function drawdownFactors(
  strength: number,
  saturatedWeight: number,
  sideSlope: number,
  height: number,
): { full: number; emptied: number } {
  const number = taylorNumber((Math.atan2(1, sideSlope) * 180) / Math.PI);
  return {
    full: taylorFactor.compute(strength, number, saturatedWeight - W, height),
    emptied: taylorFactor.compute(strength, number, saturatedWeight, height),
  };
}
