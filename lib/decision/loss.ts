import type { Basis } from '../basis/index.js';
import type { OptionName } from '../contract/index.js';
import { method } from '../formula/index.js';
import { type Measures, namesOf } from '../heads/index.js';
import { verdictAt } from '../reliability/index.js';

export const lossMethod = method({
  title: 'What a decision costs',
  what: 'Cost of the measures and, if the liner or a side fails in the life of the pond, of the failure; in drains.',
  assumptions: [
    'the unit is one drain under the liner with its outlet; a failure costs five, everything out and in again',
    'waiting through a wet season costs half a drain',
    'measures that go together cost their sum',
    'all of these are our choice and can be changed: every owner weighs them otherwise',
  ],
  source: 'our choice',
});

/** What is weighed against each other; the unit is what one drain under the liner costs. */
export interface Loss {
  /** of liner or sides, once */
  failure: number;
  /** a wet season */
  waiting: number;
  measures: Record<OptionName, number>;
}

/** The usual loss, in drains. Our choice. */
export const LOSS: Loss = {
  failure: 5,
  waiting: 0.5,
  measures: {
    'no-drain': 0,
    'surface-water-only': 0.15,
    'raise-pond': 0.3,
    'cutoff-drain': 0.6,
    'drain-to-outlet': 1,
    'drain-to-sump': 1.3,
    ballast: 2,
  },
};

/** Expected loss of measures at a depth, one a sample: unlucky ground is unlucky every year of the life. */
export function lossesOf(basis: Basis, m: Measures, depth: number, loss: Loss): Float64Array {
  const { life } = basis.site;
  const cost = namesOf(m).reduce((sum, name) => sum + loss.measures[name], 0);
  const { chance } = verdictAt(basis, m, depth);
  return chance.shares.map((share) => cost + loss.failure * (1 - (1 - share) ** life));
}
