import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { DisplayOutput } from '../../lib/notebook/nbformat.js';
import { runNotebook } from '../../lib/notebook/run.js';
import { itUnderJupyter, underJupyter } from './jupyter.js';
import { PROJECT } from './notebooks.js';

const WHAT_IF = join(PROJECT, 'notebooks', 'what-if.ipynb');

test.each(['clay-slope', 'clay-hollow', 'loam-terrace'])('the what-if notebook runs on %s', async (demo) => {
  const notebook = await runNotebook(WHAT_IF, {
    env: { UNDERPOND_SURVEY: join(PROJECT, 'datasets', demo) },
  });
  const shown = notebook.cells.find(({ id }) => id === 'try')!.outputs![0] as DisplayOutput;
  expect(shown.data['text/plain']).toMatch(/deep: (?:not )?safe/);
  expect(shown.data['text/html']).toContain('underpondWhatIf');
});

itUnderJupyter('and under a real Jupyter with the same answer', async () => {
  const answer = (cells: { id?: string; outputs?: unknown[] }[]) =>
    (cells.find(({ id }) => id === 'answer')!.outputs as { text: string | string[] }[])
      .flatMap(({ text }) => text)
      .join('');
  const own = await runNotebook(WHAT_IF);
  expect(answer((await underJupyter(WHAT_IF)).cells)).toBe(answer(own.cells));
});
