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

/**
 * Whether an advice is to build, or to do without, one of the options.
 * @param advice - any
 * @returns true for an option
 */
export function isOption(advice: Advice): advice is OptionName {
  return (OPTIONS as readonly string[]).includes(advice);
}

/** What may be advised: an option, or something else than building. */
export type Advice =
  | OptionName
  | 'shallower'
  | 'move'
  | 'vent'
  | 'relieve-and-keep-full'
  | 'measure-first'
  | 'do-not-dig';
