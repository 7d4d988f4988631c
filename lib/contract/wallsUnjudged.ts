import type { Recommendation } from './result.js';

/** Whether upright walls hold the sides: what is said of depth is of liner and ground then, never of the wall. */
export function wallsUnjudged({ rules }: Pick<Recommendation, 'rules'>): boolean {
  return rules.some(({ code, subject }) => code === 'ask-engineer' && subject === 'walls');
}
