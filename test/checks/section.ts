import { gardnerConductivity } from '../../lib/seepage/index.js';
import { EXACT_CASES, errorsOf } from '../seepage/section/exactCases.js';
import type { Check } from './check.js';

/** Each exact solution on the default grid, as a part of the total head or of the flow over conductivity and head. */
export const sectionChecks: Check[] = [
  {
    covers: ['gardnerConductivity'],
    what: 'at a suction of one fringe, 1/α, one e-th is left',
    kind: 'exact',
    source: 'exp(−1)',
    ours: () => gardnerConductivity.compute(5, -0.2),
    expected: Math.exp(-1),
    tolerance: 1e-15,
  },
  ...EXACT_CASES.flatMap((exact) =>
    Object.entries(exact.exact).map(
      ([what, expected]): Check => ({
        covers: ['saturatedSectionMethod', 'conjugateGradientsMethod'],
        what: `${exact.name}: ${what}`,
        kind: 'exact',
        source: exact.source,
        ours: () => expected + errorsOf(exact, 1).errors[what],
        expected,
        tolerance: 0.01,
      }),
    ),
  ),
];
