import { formula, UNIT_WEIGHT_OF_WATER } from '../formula/index.js';

const W = UNIT_WEIGHT_OF_WATER;

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
