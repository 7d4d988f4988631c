import { method } from '../formula/index.js';
import { percentiles } from '../sampling/index.js';
import type { Basis } from './basis.js';
import { NO_SHIFT, type Shift } from './chance.js';
import { type Decision, decide } from './decide.js';
import { NOTHING } from './measures.js';
import type { Option } from './options.js';
import type { TippingPoint } from './result.js';

export const tippingMethod = method({
  title: 'Tipping points',
  what: 'The nearest value of an input, with all others as they are, at which the recommendation changes.',
  assumptions: [
    'the whole distribution of the input is shifted',
    'options are decided again; their design stays as it is',
  ],
  source: 'bisection on the decision',
});

const STEPS = 9;

/** Tipping points of a decision: the water outside, the pond's level and the permeability of the ground. */
export function tippingPoints(basis: Basis, options: Option[], base: Decision): TippingPoint[] {
  if (!base.verdict) return [];
  const points: TippingPoint[] = [];
  const search = (
    shiftAt: (t: number) => Shift,
    input: string,
    unit: string,
    valueAt: (t: number) => number,
  ) => {
    for (const direction of [1, -1]) {
      const at = (t: number) => decide(basis, options, { shift: shiftAt(direction * t) }).option;
      if (at(1) === base.option) continue;
      let inside = 0;
      let outside = 1;
      for (let i = 0; i < STEPS; i++) {
        const middle = (inside + outside) / 2;
        if (at(middle) === base.option) inside = middle;
        else outside = middle;
      }
      points.push({ input, value: valueAt(direction * outside), unit, from: base.option, to: at(outside) });
    }
  };
  const high = basis.highs.yearly(NOTHING, 0.5);
  search(
    (t) => ({ ...NO_SHIFT, water: 1.5 * t }),
    'water outside, yearly high (middle of all years) above the lowest rim ground',
    'm',
    (t) => high + 1.5 * t,
  );
  search(
    (t) => ({ ...NO_SHIFT, pond: 0.6 * t }),
    'full level of the pond above the lowest rim ground',
    'm',
    (t) => basis.site.pond.fullLevel + 0.6 * t,
  );
  const k = percentiles(basis.site.water.conductivity).p50;
  search(
    (t) => ({ ...NO_SHIFT, conductivity: 100 ** t }),
    'permeability of the ground (middle estimate)',
    'm/s',
    (t) => k * 100 ** t,
  );
  return points;
}
