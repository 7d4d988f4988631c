import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runNotebook } from '../../../lib/notebook/run.js';
import { itUnderJupyter, underJupyter } from '../../notebook/jupyter.js';
import { PROJECT } from '../../notebook/notebooks.js';

const UNDER_THE_LINER = join(PROJECT, 'notebooks', 'under-the-liner.ipynb');

/** What the cells of a notebook said, by their names. */
function saidBy(cells: { id?: string; outputs?: unknown[] }[]): Record<string, string> {
  return Object.fromEntries(
    cells
      .filter(({ outputs }) => outputs)
      .map(({ id, outputs }) => [
        id ?? '',
        (outputs as { text?: string | string[] }[]).flatMap(({ text }) => text ?? []).join(''),
      ]),
  );
}

test.each([
  ['clay-hollow', /Emptied .+ lifted most/, /turned up behind the sides: nothing lifts/],
  ['clay-slope', /Emptied .+ lifted most/, /turned up behind the sides: nothing lifts/],
  ['loam-terrace', /Emptied .+ nothing lifts/, /No pipe is needed/],
])(
  'under-the-liner.ipynb on %s ends with its answer and what to measure next',
  async (demo, bare, then) => {
    const { cells } = await runNotebook(UNDER_THE_LINER, {
      env: { UNDERPOND_SURVEY: join(PROJECT, 'datasets', demo) },
    });
    for (const { cell_type, id, outputs } of cells.filter((c) => c.cell_type === 'code')) {
      expect(outputs?.length, `${cell_type} ${id}`).toBeGreaterThan(0);
      expect(JSON.stringify(outputs)).not.toMatch(/"output_type":"error"|NaN|undefined|Infinity/);
    }
    const { bare: first, answer } = saidBy(cells);
    expect(first).toContain('less than 1e-8');
    expect(answer).toMatch(bare);
    expect(answer).toMatch(then);
    expect(answer).toContain('To measure next: ');
  },
  240_000,
);

itUnderJupyter('and under a real Jupyter with the same answer', async () => {
  const own = await runNotebook(UNDER_THE_LINER);
  expect(saidBy((await underJupyter(UNDER_THE_LINER)).cells)).toEqual(saidBy(own.cells));
});
