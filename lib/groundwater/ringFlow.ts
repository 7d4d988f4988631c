import { formula } from '../formula/index.js';

/** Flow along a filled ring to one way out. */
export const ringFlow = formula({
  title: 'Flow along a ring to its way out',
  symbol: 'Q',
  unit: 'm³/s',
  expression: '4*K*w*(h^2 - o^2)/P',
  parameters: {
    K: { meaning: 'conductivity of the fill', unit: 'm/s', min: 1e-9, max: 1 },
    w: { meaning: 'width of the ring', unit: 'm', min: 0.001, max: 5 },
    P: { meaning: 'length all round', unit: 'm', min: 0.5, max: 1000 },
    h: { meaning: 'water over the floor of the ring, farthest from the way out', unit: 'm', min: 0, max: 6 },
    o: { meaning: 'way out over the floor of the ring', unit: 'm', min: 0, max: 6 },
  },
  compute: (K: number, w: number, P: number, h: number, o: number) => (4 * K * w * (h ** 2 - o ** 2)) / P,
  validity: 'floor level, evenly fed, flow nearly level; both ways round reach the same way out',
  source: 'Dupuit with uniform inflow over half the length, as between two ditches (Donnan 1946)',
});
