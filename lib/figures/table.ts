/** Tables as plain data, and as HTML or text. */
import { escapeHtml } from './escape.js';
import { visible } from './visible.js';

/** A column of a table. */
export interface Column {
  /** name in code and CSV files, with the unit as suffix */
  key: string;
  /** heading for people, without the unit */
  label: string;
  unit?: string;
}

/** Rows hold one value a column, in order; null where there is none. */
export interface Table {
  name?: string;
  columns: Column[];
  rows: (string | number | null)[][];
}

/**
 * A table whose columns have a heading and no unit of their own.
 * @param headings - of the columns
 * @param rows - a value a column
 * @returns the table
 */
export function tableOf(headings: readonly string[], rows: Table['rows']): Table {
  return { columns: headings.map((label) => ({ key: label, label })), rows };
}

/**
 * A column's heading with its unit: `depth to water (m)`.
 * @param column - its label and unit
 * @returns label, with the unit in brackets where there is one
 */
export function heading({ label, unit }: Column): string {
  return visible(unit ? `${label} (${unit})` : label);
}

/**
 * A cell as people read it: numbers to 6 significant digits, text as `visible` shows it, nothing where there is no
 * value.
 * @param value - of a cell
 * @returns text
 */
export function cellText(value: string | number | null): string {
  if (value === null) return '';
  return typeof value === 'number' ? String(Number(value.toPrecision(6))) : visible(value);
}

/**
 * The table as an HTML `<table>`, numbers right-aligned.
 * @param table - as it is shown
 * @param stacks every cell with its heading, and roles said in words: what a style lays out as a list stays a table to
 * a screen reader
 * @returns HTML, escaped
 */
export function tableHtml(table: Table, stacks = false): string {
  const role = (name: string) => (stacks ? ` role="${name}"` : '');
  const caption = table.name ? `<caption>${escapeHtml(visible(table.name))}</caption>` : '';
  const labels = table.columns.map((column) => escapeHtml(heading(column)));
  const head = labels.map((label) => `<th${role('columnheader')} scope="col">${label}</th>`).join('');
  const body = table.rows.map((row) => {
    const cells = row.map((value, at) => {
      // An attribute rather than a style: pages allow no inline styles.
      const align = typeof value === 'number' ? ' align="right"' : '';
      const label = stacks ? ` data-label="${labels[at]}"` : '';
      return `<td${role('cell')}${label}${align}>${escapeHtml(cellText(value))}</td>`;
    });
    return `<tr${role('row')}>${cells.join('')}</tr>`;
  });
  return (
    `<table${role('table')}>${caption}<thead${role('rowgroup')}><tr${role('row')}>${head}</tr></thead>` +
    `<tbody${role('rowgroup')}>${body.join('')}</tbody></table>`
  );
}

/**
 * The table as text in columns, for a terminal or a reader without HTML.
 * @param table - as it is shown
 * @returns lines
 */
export function tableText(table: Table): string {
  const lines = [table.columns.map(heading), ...table.rows.map((row) => row.map(cellText))];
  const widths = table.columns.map((_, at) => Math.max(...lines.map((line) => line[at]!.length)));
  const text = lines.map((line) =>
    line
      .map((cell, at) => cell.padEnd(widths[at]!))
      .join('  ')
      .trimEnd(),
  );
  return [...(table.name ? [visible(table.name)] : []), ...text].join('\n');
}
