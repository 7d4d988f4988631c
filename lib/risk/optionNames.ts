/** The options, in the order in which they are listed. */
export const OPTIONS = [
  'no-drain',
  'surface-water-only',
  'cutoff-drain',
  'drain-to-outlet',
  'drain-to-sump',
  'raise-pond',
  'ballast',
] as const;
/** What may be built, by name. */
export type OptionName = (typeof OPTIONS)[number];
