import { formula } from '../formula/index.js';

/** Flow per metre to a trench from a line of known level. */
export const dupuitSlot = formula({
  title: 'Flow to a trench (Dupuit)',
  symbol: 'q',
  unit: 'm²/s',
  expression: 'K*(H^2 - h^2)/(2*L)',
  parameters: {
    K: { meaning: 'hydraulic conductivity', unit: 'm/s', min: 1e-12, max: 1e-2 },
    H: { meaning: 'water above the tight layer, far', unit: 'm', min: 0, max: 100 },
    h: { meaning: 'water above the tight layer, at the trench', unit: 'm', min: 0, max: 100 },
    L: { meaning: 'distance between the two', unit: 'm', min: 0.1, max: 500 },
  },
  compute: (K: number, H: number, h: number, L: number) => (K * (H * H - h * h)) / (2 * L),
  validity:
    'flow nearly level, trench down to the tight layer; the discharge is exact for any seepage face (Charny)',
  source: 'Dupuit 1863; Charny 1951, from memory',
});
