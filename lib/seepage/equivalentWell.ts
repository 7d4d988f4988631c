import { formula } from '../formula/index.js';

const K = { meaning: 'hydraulic conductivity', unit: 'm/s', min: 1e-12, max: 1e-2 };

/** Flow to a pond in sand, taken as a well. */
export const dupuitWell = formula({
  title: 'Flow to a pit in a water-bearing layer (Dupuit–Forchheimer)',
  symbol: 'Q',
  unit: 'm³/s',
  expression: 'pi*K*(H^2 - h^2)/log(r)',
  parameters: {
    K,
    H: { meaning: 'water above the tight layer, far', unit: 'm', min: 0, max: 100 },
    h: { meaning: 'water above the tight layer, at the pit', unit: 'm', min: 0, max: 100 },
    r: {
      meaning: 'distance at which the water is not lowered, over the radius of the pit',
      unit: '-',
      min: 1.05,
      max: 1e5,
    },
  },
  compute: (K: number, H: number, h: number, r: number) => (Math.PI * K * (H * H - h * h)) / Math.log(r),
  validity: 'gentle slopes of the water, pit down to the tight layer; sand and gravel only',
  source: 'Dupuit 1863, Forchheimer 1886; teaching examples',
});

/** Distance at which pumping from sand is not felt. */
export const sichardtRadius = formula({
  title: 'Distance at which pumping is not felt (Sichardt)',
  symbol: 'R',
  unit: 'm',
  expression: '3000*s*sqrt(K)',
  parameters: {
    s: { meaning: 'water lowered at the pit', unit: 'm', min: 0, max: 20 },
    K: { ...K, min: 1e-6 },
  },
  compute: (s: number, K: number) => 3000 * s * Math.sqrt(K),
  validity: 'empirical, sand and gravel; meaningless in clay, where it gives less than a metre',
  source: 'Sichardt 1928, as in CIRIA C515 and TM 5-818-5, from memory',
});
