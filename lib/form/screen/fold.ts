/** A fold: it opens where there is a reason to, is the reader's from then on, and holds nothing while it is closed. */
import type { VNode } from 'preact';
import { rowToMendWords } from '../../text/formNotices.js';
import { type Cell, type FormRow, type TableFile, withRow } from '../answers.js';
import { cellKey, type Remark } from '../placed.js';
import type { Session } from './session.js';
import { view } from './view.js';

interface Fold {
  key: string;
  summary: string;
  /** opens it, once */
  reason: boolean;
  kind?: string;
}

/** @param body made only while it is open */
export function fold(
  session: Session,
  { key, summary, reason, kind = 'card' }: Fold,
  body: () => unknown,
): VNode {
  const open = session.unfolded(key, reason);
  const toggle = (event: Event) => session.toggle(key, (event.currentTarget as HTMLDetailsElement).open);
  return view`<details class=${kind} key=${key} open=${open} onToggle=${toggle}><summary>${summary}</summary>${open ? body() : null}</details>`;
}

/** What the reader says of a row, at any of its cells. */
function saidOf(session: Session, file: TableFile, row: FormRow): Remark[] {
  const key = cellKey(file, row.id);
  return [...session.shown.remarks].flatMap(([at, remarks]) =>
    at === key || at.startsWith(`${key} `) ? remarks : [],
  );
}

/** A row under its summary; what is new, or to be mended, stands open. */
export function rowFold(
  session: Session,
  file: TableFile,
  row: FormRow,
  summary: string,
  body: () => unknown,
): VNode {
  const wrong = saidOf(session, file, row).some(({ kind }) => kind !== 'noticed');
  const said = wrong ? rowToMendWords(summary) : summary;
  return fold(
    session,
    { key: cellKey(file, row.id), summary: said, reason: wrong || row.draft === true },
    body,
  );
}

/** Adds a row that stands open; the others of its file are folded. */
export function addRow(session: Session, file: TableFile, cells: Readonly<Record<string, Cell>>): void {
  session.foldAll(`${file} `);
  session.edit((all) => withRow(all, file, cells));
}

/** A cell as it is read aloud: with its unit. */
export function cellWords(cell: Cell | undefined): string {
  return [cell?.text, cell?.unit].filter(Boolean).join(' ');
}
