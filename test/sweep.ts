/**
 * `npm test` says each thing once; `npm run test:long` runs every file that imports this whole: with all cases, and with
 * the looks at drawings and pages that take seconds each.
 */
export const WHOLE = process.env.UNDERPOND_SWEEP === 'all';

/** The first cases of a sweep, or all. */
export const sweep = <T>(cases: readonly T[], first: number): T[] =>
  WHOLE ? [...cases] : cases.slice(0, first);
