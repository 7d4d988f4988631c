/** Pieces of HTML; every text goes through `text`. */
import { escapeHtml } from '../figures/escape.js';
import { type Table, tableHtml } from '../figures/table.js';
import { visible } from '../figures/visible.js';

/** A number and the unit after it. */
const QUANTITY = /(?<=\d) (?=(?:%|mm?[²³]?|L|kPa|ft[²³]?|in|gal|yd³|h|min|days?|lb)(?![A-Za-z]))/g;

/** Any text, fit to stand between tags or in a quoted attribute; a unit stays on the line of its number. */
export function text(value: string): string {
  return escapeHtml(visible(value).replace(QUANTITY, '\u00a0'));
}

/** A part of the page under its heading; nothing where it would be empty. */
export function section(id: string, title: string, ...content: string[]): string {
  const body = content.filter(Boolean).join('\n');
  return body === ''
    ? ''
    : `<section id="${id}" aria-labelledby="${id}-title">\n<h2 id="${id}-title">${title}</h2>\n${body}\n</section>`;
}

export function paragraph(value: string, kind?: string): string {
  return `<p${kind ? ` class="${kind}"` : ''}>${text(value)}</p>`;
}

export function list(items: string[]): string {
  return items.length === 0 ? '' : `<ul>${items.map((item) => `<li>${item}</li>`).join('')}</ul>`;
}

/** Columns that stand side by side on a phone; a table with more is stacked there, a row under the other. */
const SIDE_BY_SIDE = 3;

/** A table that a phone shows as a list where it is wide, and that scrolls by itself if need be; nothing without rows. */
export function table(content: Table, kind = ''): string {
  if (content.rows.length === 0) return '';
  const tidy = (value: string) => visible(value).replace(QUANTITY, '\u00a0');
  const shown: Table = {
    ...content,
    columns: content.columns.map((column) => ({ ...column, label: tidy(column.label) })),
    rows: content.rows.map((row) => row.map((cell) => (typeof cell === 'string' ? tidy(cell) : cell))),
  };
  const stacks = content.columns.length > SIDE_BY_SIDE;
  const classes = ['table', ...(stacks ? ['stacks'] : []), kind].filter(Boolean).join(' ');
  return `<div class="${classes}" tabindex="0" role="group" aria-label="${text(content.name ?? 'table')}">${tableHtml(shown, stacks)}</div>`;
}
