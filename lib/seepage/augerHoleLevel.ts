import { formula } from '../formula/index.js';

const source =
  'Ernst 1950 as in van Beers, The Auger Hole Method, ILRI Bulletin 1 (constants from memory), solved for the level over time';

/** How quickly an open hole fills. */
export const augerHoleRate = formula({
  title: 'Filling rate of an open hole (Ernst)',
  symbol: 'a',
  unit: '1/s',
  expression: 'K*(D + 20*r)/(4000/864*r^2)',
  parameters: {
    K: { meaning: 'hydraulic conductivity', unit: 'm/s', min: 1e-12, max: 1e-2 },
    D: { meaning: 'depth of the floor below the water outside', unit: 'm', min: 0.02, max: 5 },
    r: { meaning: 'radius of the hole', unit: 'm', min: 0.01, max: 0.5 },
  },
  compute: (K: number, D: number, r: number) => (K * (D + 20 * r)) / ((4000 / 864) * r ** 2),
  validity:
    'best for a radius of 30–70 mm, 0.2–2 m below the water, ground going on below the floor for at least D/2',
  source,
});

/** Part of an open hole still to fill. */
export const augerHoleUnfilled = formula({
  title: 'Part of an open hole still to fill',
  symbol: 'u',
  unit: '-',
  expression: '2*b*exp(-2*a*t)/(2 - b + b*exp(-2*a*t))',
  parameters: {
    b: { meaning: 'part still to fill at the start: 1 for an empty hole', unit: '-', min: 0, max: 1 },
    a: { meaning: 'filling rate', unit: '1/s', min: 1e-12, max: 1e-3 },
    t: { meaning: 'time since', unit: 's', min: 0, max: 1e7 },
  },
  compute: (b: number, a: number, t: number) => {
    const e = Math.exp(-2 * a * t);
    return (2 * b * e) / (2 - b + b * e);
  },
  validity:
    'an empty hole fills by tanh(a t): straight at first, so early looks tell the rate and not the level; the last fifth of ' +
    'the way lies outside the range of the equation',
  source,
});
