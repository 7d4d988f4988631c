import { formula } from '../formula/index.js';

/** What is left between two numbers that a trial made one: the check that it was carried far enough. */
export const leftByTrial = formula({
  title: 'What the trial leaves: nought',
  symbol: 'δ',
  unit: 'm',
  expression: 'a - b',
  parameters: {
    a: { meaning: 'one side', unit: 'm', min: -100, max: 100 },
    b: { meaning: 'the other', unit: 'm', min: -100, max: 100 },
  },
  compute: (a: number, b: number) => a - b,
  validity: 'found by halving',
  source: 'definition',
});
