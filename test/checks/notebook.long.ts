import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runNotebook } from '../../lib/notebook/run.js';
import { PROJECT } from '../notebook/notebooks.js';
import { CHECKS } from './index.js';

const NOTEBOOK = join(PROJECT, 'notebooks', 'checked-against.ipynb');
const textOf = (cells: { id?: string; outputs?: unknown[] }[], id: string) =>
  (cells.find((cell) => cell.id === id)!.outputs as { text?: string | string[] }[])
    .flatMap(({ text }) => text ?? [])
    .join('');

test('the notebook of checks tells all of them, none outside its tolerance', async () => {
  const { cells } = await runNotebook(NOTEBOOK);
  const all = Object.values(CHECKS).flat();
  expect(textOf(cells, 'read')).toMatch(
    new RegExp(`^${all.length} checks, \\d+ published sources; 0 outside their tolerance\\.`),
  );
  const published = cells.find(({ id }) => id === 'published')!.outputs![0];
  const html = 'data' in published ? String(published.data['text/html']) : '';
  expect(html.match(/<tr>/g)).toHaveLength(1 + all.filter(({ kind }) => kind === 'published').length);
});
