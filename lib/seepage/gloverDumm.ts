import { formula } from '../formula/index.js';

/** Spacing at which drains let the water fall in a given time. */
export const gloverDummSpacing = formula({
  title: 'Spacing for a fall of the water in a given time (Glover–Dumm)',
  symbol: 'L',
  unit: 'm',
  expression: 'pi*sqrt(K*d*t/n)/sqrt(log(1.16*r))',
  parameters: {
    K: { meaning: 'hydraulic conductivity', unit: 'm/s', min: 1e-10, max: 1e-2 },
    d: { meaning: 'equivalent depth below the drains', unit: 'm', min: 0.05, max: 20 },
    t: { meaning: 'time', unit: 's', min: 3600, max: 1e7 },
    n: { meaning: 'drainable porosity', unit: '-', min: 0.005, max: 0.4 },
    r: { meaning: 'water above the drains at first over that after the time', unit: '-', min: 1, max: 100 },
  },
  compute: (K: number, d: number, t: number, n: number, r: number) =>
    (Math.PI * Math.sqrt((K * d * t) / n)) / Math.sqrt(Math.log(1.16 * r)),
  validity: 'one recharge, then none; flow mostly below the drains',
  source: 'Dumm 1954, 1960; ILRI Publication 16, from memory',
});
