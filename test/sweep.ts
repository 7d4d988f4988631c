/** A test that says the same of many cases: the first few in `npm test`, all of them in `npm run test:long`. */
const ALL = process.env.UNDERPOND_SWEEP === 'all';

/** The first cases of a sweep, or all. */
export const sweep = <T>(cases: readonly T[], first: number): T[] =>
  ALL ? [...cases] : cases.slice(0, first);
