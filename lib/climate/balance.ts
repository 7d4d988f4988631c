/** Largest error a water balance may end with, m of water. */
const CLOSES_TO = 1e-9;

/**
 * Asserts that a balance closes.
 * @param what - the store, for the message
 * @param closure - what came less what left less what stayed, m of water
 * @param days - of the record, for the message
 * @throws Error when it is off by more than {@link CLOSES_TO}, or is no number
 */
export function assertClosed(what: string, closure: number, days: number): void {
  if (!(Math.abs(closure) <= CLOSES_TO))
    throw new Error(`${what} balance does not close: ${closure} m over ${days} days`);
}

/** What stands above a limit, in the unit of both; 0 where it is below. */
export const excess = (held: number, limit: number): number => (held > limit ? held - limit : 0);
