/** Tables as data frames of danfo.js, to work on in a notebook. The only place that knows danfo.js. */
// biome-ignore lint/suspicious/noTsIgnore: stays in the declarations, where it may be needed or not
/** @ts-ignore the type is there for who has danfojs and its types, and `any` for who has not */
import type { DataFrame } from 'danfojs';
import type { Table } from '../figures/table.js';
import { optional } from './optional.js';

/** What of a data frame is needed to show it. */
export interface Frame {
  columns: string[];
  values: unknown;
  shape: number[];
}

/**
 * The table as a data frame, its columns named by their keys.
 * @param table - of the library
 * @returns a frame of danfo.js
 * @throws EnvironmentError when the optional package danfojs is missing
 */
export async function toDataFrame(table: Table): Promise<DataFrame> {
  const danfo = await optional('danfojs', 'work on tables as data frames', () => import('danfojs'));
  return new danfo.DataFrame(table.rows, {
    columns: table.columns.map(({ key }) => key),
    // Left to itself it looks at the first rows alone and takes a column that begins with zeros for integers.
    dtypes: table.columns.map((_, at) =>
      table.rows.some((row) => typeof row[at] === 'string') ? 'string' : 'float32',
    ),
  });
}

/**
 * A data frame as a table again, headed by its column names.
 * @param frame - of danfo.js
 * @returns a table without units
 */
export function tableOfFrame(frame: Frame): Table {
  return {
    columns: frame.columns.map((key) => ({ key, label: key })),
    rows: frame.values as Table['rows'],
  };
}
