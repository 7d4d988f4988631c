/** How far a problem reaches, so that a report can begin with what hides the most. */

/** What a problem keeps from being read, the farthest-reaching first. */
export const CONSEQUENCES = ['file', 'column', 'row', 'cell'] as const;
type Consequence = (typeof CONSEQUENCES)[number];

/** Each in words, as the heading of its part of a report. */
export const CONSEQUENCE_WORDS: Record<Consequence, string> = {
  file: 'a whole file is lost',
  column: 'a column, or a fact the answer needs, is lost',
  row: 'rows contradict each other or are lost',
  cell: 'a single cell is lost',
};

const REACH: Record<string, Consequence> = {
  'missing-file': 'file',
  'duplicate-file': 'file',
  'empty-file': 'file',
  'not-utf8': 'file',
  'not-text': 'file',
  'too-large': 'file',
  'invalid-quotes': 'file',
  'wrong-separator': 'file',
  'missing-column': 'column',
  'unknown-column': 'column',
  'duplicate-column': 'column',
  'missing-item': 'column',
  'unknown-item': 'column',
  'missing-level': 'column',
  'missing-month': 'column',
  'ragged-row': 'row',
  contradiction: 'row',
  'below-floor': 'row',
  'layers-overlap': 'row',
  'layer-upside-down': 'row',
  'missing-time': 'row',
};

/**
 * What a problem keeps from being read.
 * @param problem as found; a fault in a header's own cell costs the column
 */
export function consequenceOf({
  code,
  column,
  found,
}: {
  code: string;
  column?: string;
  found?: string;
}): Consequence {
  const inHeader = (code === 'missing-unit' || code === 'unknown-unit') && column === found;
  return inHeader ? 'column' : (REACH[code] ?? 'cell');
}
