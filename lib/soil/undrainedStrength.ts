import { method } from '../formula/index.js';
import type { LogEstimate } from './estimate.js';
import type { Consistency } from './words.js';

export const strengthFromThumb = method({
  title: 'Undrained strength from the thumb test',
  what: 'Median and spread of the undrained shear strength of a clay from its consistency word.',
  assumptions: [
    'word to strength by the North American classes (soft 12–25, firm 25–50, stiff 50–100, very stiff 100–200 kPa)',
    'wet clay softens once it is cut and unloaded: half a class of spread',
  ],
  source:
    'Terzaghi & Peck consistency classes, from memory; BS 5930 uses the same words for about 1.5 times as much',
});

const KPA: Record<Consistency, number> = {
  'very soft': 8,
  soft: 17,
  firm: 35,
  stiff: 70,
  'very stiff': 140,
  hard: 220,
};

/**
 * Undrained strength by consistency, see {@link strengthFromThumb}.
 * @param word - how the thumb finds it
 * @returns Pa, with its spread
 */
export function strengthFromConsistency(word: Consistency): LogEstimate {
  return { median: KPA[word] * 1000, spread: 0.4, evidence: [`thumb test: ${word}`] };
}

/**
 * Undrained strength from measurements (vane, pocket penetrometer); 25 % scatter is common practice.
 * @param values - undrained strengths, Pa, above 0, at least one
 * @returns Pa, with its spread
 */
export function strengthFromTests(values: number[]): LogEstimate {
  const mean = values.reduce((a, b) => a + Math.log(b), 0) / values.length;
  return {
    median: Math.exp(mean),
    spread: Math.hypot(0.25 / Math.sqrt(values.length), 0.15),
    evidence: [`measured here ${values.length === 1 ? 'once' : `${values.length} times`}`],
  };
}
