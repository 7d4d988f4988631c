import type { Report } from '../contract/index.js';
/** From the first look into the ground to the last; nothing where nobody looked. */
export function lookedWords({ dips }: Report): string[] {
  const dates = dips.map(({ date }) => date).sort();
  const [first, last] = [dates[0], dates.at(-1)];
  if (!first || !last) return [];
  return [first === last ? `water looked at on ${first}` : `water looked at from ${first} to ${last}`];
}
