import {
  firstOrderFromSample,
  measurementValue,
  replicateChance,
  sobolNormals,
  sobolUniforms,
} from '../../lib/sampling/index.js';
import { limitState } from '../sampling/limitStates.js';
import { sobolIndices } from '../sampling/modelIndices.js';
import { gFunction, ishigami, type TestFunction } from '../sampling/testFunctions.js';
import { twoActions } from '../sampling/twoActions.js';
import type { Check } from './check.js';

const REPLICATES = 8;
const CLOSED = 'closed form';

/** Chances found from one seeded sample; tolerances are 3 standard errors or more. */
const state = limitState([1, 1, 1, 1, 1], 0.1);
const chanceOf = (n: number, of: (z: Float64Array, s: number) => number) => {
  const z = sobolNormals(n, 5, 11, REPLICATES);
  return replicateChance(
    Float64Array.from({ length: n }, (_, s) => of(z, s)),
    REPLICATES,
  ).value;
};

const indices = (name: string, f: TestFunction, input: number): Check[] => [
  {
    covers: ['varianceIndices'],
    what: `${name}, total index of input ${input + 1}`,
    kind: 'exact',
    source: CLOSED,
    ours: () => sobolIndices(f.of, f.inputs, 2048, 3).total[input].value,
    expected: f.total[input],
    tolerance: 0.04,
  },
  {
    covers: ['givenDataIndices', 'scrambledSobol'],
    what: `${name}, first-order index of input ${input + 1} from one sample of 2,048`,
    kind: 'exact',
    source: CLOSED,
    ours: () => {
      const u = sobolUniforms(2048, f.inputs, 3, REPLICATES);
      const y = Float64Array.from({ length: 2048 }, (_, s) =>
        f.of(u.subarray(s * f.inputs, (s + 1) * f.inputs)),
      );
      return firstOrderFromSample(u, f.inputs, y, REPLICATES)[input].value;
    },
    expected: f.first[input],
    tolerance: 0.015,
  },
];

const known = twoActions(4096, -0.5, 0.5, 3, REPLICATES);
const reading = () => measurementValue(known.losses, known.reading, REPLICATES);

export const samplingChecks: Check[] = [
  {
    covers: ['scrambledSobol', 'replicateError'],
    what: 'normal limit state of 5 inputs, 4,096 samples counted yes or no',
    kind: 'exact',
    source: `${CLOSED} Φ(−β)`,
    ours: () => chanceOf(4096, state.fails),
    expected: state.chance,
    tolerance: 0.0075,
  },
  {
    covers: ['scrambledSobol', 'replicateError'],
    what: 'the same by the share of failing years',
    kind: 'exact',
    source: `${CLOSED}, mean of Φ over the years`,
    ours: () => chanceOf(4096, state.share),
    expected: state.meanShare,
    tolerance: 0.0025,
  },
  ...[0, 1].flatMap((input) => indices('Ishigami', ishigami, input)),
  ...[0, 1].flatMap((input) => indices("Sobol' g-function", gFunction, input)),
  {
    covers: ['preposteriorAnalysis'],
    what: 'value of a reading, two actions with linear loss, normal state and error',
    kind: 'exact',
    source: 'unit normal loss integral (Raiffa & Schlaifer 1961)',
    ours: () => reading().value.value,
    expected: known.value,
    tolerance: 0.005,
  },
  {
    covers: ['preposteriorAnalysis'],
    what: 'chance that it changes the decision',
    kind: 'exact',
    source: `${CLOSED} Φ(−|μ|/s)`,
    ours: () => reading().change.value,
    expected: known.change,
    tolerance: 0.02,
  },
];
