/** Which years fail, by what a drain may be found to be in them, and how often it is. */
import { formula } from '../formula/index.js';
import type { Course } from './courses.js';

/** Chance by what was counted. */
export const chanceAYear = formula({
  title: 'Chance, of the years counted',
  symbol: 'P',
  unit: '-',
  expression: 'min(n/(S*Y), 1)',
  parameters: {
    n: { meaning: 'failing years', unit: 'years', min: 0, max: 1e7 },
    S: { meaning: 'samples', unit: '-', min: 1, max: 1e5 },
    Y: { meaning: 'years of a sample', unit: 'years', min: 1, max: 1000 },
  },
  compute: (n: number, S: number, Y: number) => Math.min(n / (S * Y), 1),
  validity: 'what is found out of order counts as often as it is; see the method of the chance a year',
  source: 'Monte Carlo: mean of what was counted',
});

/** A course of a drain, and its failing years. */
export interface CountedCourse extends Pick<Course, 'state'> {
  /** with the ditch in flood */
  flooded: boolean;
  /** chance of it, one a sample */
  weight: Float64Array;
  /** share of each year that fails, index sample × years + year */
  fails: Float64Array;
}

/**
 * Share of failing years, one a sample.
 * @param counted - every course in which years fail
 */
export function sharesBySample(counted: CountedCourse[]): Float64Array {
  return counted[0].weight.map((_, s) => {
    let sum = 0;
    for (const { weight, fails } of counted) {
      const years = fails.length / weight.length;
      let failing = 0;
      for (let i = s * years; i < (s + 1) * years; i++) failing += fails[i];
      sum += (weight[s] * failing) / years;
    }
    return sum;
  });
}

/**
 * Share of samples failing, one a year of the weather's record.
 * @param counted - every course
 * @param record - years of it; a short one is counted more than once, as what it says of a year is one thing
 */
export function sharesByYear(counted: CountedCourse[], record: number): Float64Array {
  const sums = new Float64Array(record);
  for (const { weight, fails } of counted) {
    const years = fails.length / weight.length;
    for (let s = 0, i = 0; s < weight.length; s++)
      for (let y = 0; y < years; y++, i++) sums[y % record] += weight[s] * fails[i];
  }
  const { weight, fails } = counted[0];
  const each = weight.length * (fails.length / weight.length / record);
  return sums.map((sum) => sum / each);
}
