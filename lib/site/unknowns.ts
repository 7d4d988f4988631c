import { method } from '../formula/index.js';
import { sobolNormals } from '../sampling/index.js';
import { InputError } from '../units/index.js';

export const unknownsMethod = method({
  title: 'What is unknown but fixed',
  what: 'One draw of everything about a site that is not known and does not change from year to year.',
  assumptions: [
    'standard normal scores, independent of each other; what they are the score of is said where they are used',
    'what one permeability does it does everywhere: to the ring, to the seepage and to the time to lift',
    'the parameters of the water table are drawn with the fit, together, and keep the correlation the dips give them',
    'weather years are not drawn: every sample runs through all of them, each whole from autumn to autumn, so that a ' +
      'wet winter stays whole',
  ],
  source: "scrambled Sobol' sequence in replicates",
});

/** Independent scrambles of the sample; their spread gives the sampling error. */
export const REPLICATES = 8;

/** The unknowns, what matters most first: the first columns of the sequence are the evenest. */
const UNKNOWNS = [
  'place',
  'permeability',
  'uphill rise',
  'water level',
  'reading',
  'strength',
  'drain',
  'pump',
  'seam',
  'unit weight',
  'open water',
  'topping up',
] as const;
/** What is drawn besides the parameters of the water, by name. */
type Unknown = (typeof UNKNOWNS)[number];

/** Scores of each unknown, one a sample. */
export type Unknowns = Record<Unknown, Float64Array>;

/**
 * @param samples - {@link REPLICATES} or more; eight times a power of two is best
 * @param seed - whole number
 * @throws InputError for fewer samples
 */
export function unknownsOf(samples: number, seed: number): Unknowns {
  if (!(samples >= REPLICATES))
    throw new InputError(
      'invalid-input',
      `outside: ${samples} samples; draw ${REPLICATES} or more, so that their error can be told.`,
    );
  const rows = sobolNormals(samples, UNKNOWNS.length, seed, REPLICATES);
  const column = (j: number) =>
    Float64Array.from({ length: samples }, (_, s) => rows[s * UNKNOWNS.length + j]);
  return Object.fromEntries(UNKNOWNS.map((name, j) => [name, column(j)])) as Unknowns;
}
