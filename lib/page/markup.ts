/** Pieces of HTML: what is put into a template is text, and escaped, unless it is markup itself. */
import { escapeHtml } from '../figures/escape.js';
import { type Table, tableHtml } from '../figures/table.js';
import { visible } from '../figures/visible.js';

/** A number and the unit after it. */
const QUANTITY = /(?<=\d) (?=(?:%|mm?[²³]?|L|kPa|ft[²³]?|in|gal|yd³|h|min|days?|lb)(?![A-Za-z]))/g;

/** HTML that may stand in the page as it is. */
export class Markup {
  constructor(readonly html: string) {}

  toString(): string {
    return this.html;
  }
}

/** What may be put into a template: text, markup, or several of these one after another. */
export type Part = string | number | Markup | readonly Part[];

/** Any text, fit to stand between tags or in a quoted attribute; a unit stays on the line of its number. */
const text = (value: string) => escapeHtml(visible(value).replace(QUANTITY, '\u00a0'));

function set(part: Part): string {
  if (part instanceof Markup) return part.html;
  return typeof part === 'object' ? part.map(set).join('') : text(`${part}`);
}

/**
 * Markup from a template.
 * @param pieces - HTML as written here
 * @param parts - what is put between: text is escaped, markup is not
 */
export function html(pieces: TemplateStringsArray, ...parts: Part[]): Markup {
  return new Markup(pieces.reduce((sum, piece, i) => sum + set(parts[i - 1]!) + piece));
}

/** Nothing. */
export const NONE = new Markup('');

/** Markup on lines of its own, one after another; what is empty leaves no line. */
export function lines(...content: Part[]): Markup {
  return new Markup(content.map(set).filter(Boolean).join('\n'));
}

/** A part of the page under its heading; nothing where it would be empty. */
export function section(id: string, title: string, ...content: Part[]): Markup {
  const body = lines(...content);
  return body.html === ''
    ? NONE
    : html`<section id="${id}" aria-labelledby="${id}-title">\n<h2 id="${id}-title">${title}</h2>\n${body}\n</section>`;
}

export function paragraph(value: string, kind?: string): Markup {
  return html`<p${kind ? html` class="${kind}"` : ''}>${value}</p>`;
}

export function list(items: readonly Part[]): Markup {
  return items.length === 0 ? NONE : html`<ul>${items.map((item) => html`<li>${item}</li>`)}</ul>`;
}

/** Columns that stand side by side on a phone; a table with more is stacked there, a row under the other. */
const SIDE_BY_SIDE = 3;

/** A table that a phone shows as a list where it is wide, and that scrolls by itself if need be; nothing without rows. */
export function table(content: Table, kind = ''): Markup {
  if (content.rows.length === 0) return NONE;
  const tidy = (value: string) => visible(value).replace(QUANTITY, '\u00a0');
  const shown: Table = {
    ...content,
    columns: content.columns.map((column) => ({ ...column, label: tidy(column.label) })),
    rows: content.rows.map((row) => row.map((cell) => (typeof cell === 'string' ? tidy(cell) : cell))),
  };
  const stacks = content.columns.length > SIDE_BY_SIDE;
  const classes = ['table', ...(stacks ? ['stacks'] : []), kind].filter(Boolean).join(' ');
  return html`<div class="${classes}" tabindex="0" role="group" aria-label="${content.name ?? 'table'}">${new Markup(tableHtml(shown, stacks))}</div>`;
}
