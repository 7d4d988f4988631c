import { formula } from '../formula/index.js';

/** How far the water outside may stand above a pond below its brim before it lifts the liner. */
export const excessTaken = formula({
  title: 'Excess that a pond below its brim takes without a lift',
  symbol: 'e',
  unit: 'm',
  expression: 'd*A/B',
  parameters: {
    d: { meaning: 'water over the floor that counts as lifted', unit: 'm', min: 0, max: 0.2 },
    A: { meaning: 'floor area', unit: 'm²', min: 0, max: 1e4 },
    B: { meaning: 'area of the water', unit: 'm²', min: 0.01, max: 1e4 },
  },
  compute: (d: number, A: number, B: number) => (d * A) / B,
  validity:
    'the pond lacks at least as much below its brim: it rises by what comes under the liner, until the levels are one',
  source: 'balance of volumes',
});
