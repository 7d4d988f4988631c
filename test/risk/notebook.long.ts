import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runNotebook } from '../../lib/notebook/run.js';
import { PROJECT } from '../notebook/notebooks.js';

test.each([
  ['clay-hollow', 'drain with sump'],
  ['clay-slope', 'drain'],
  ['loam-terrace', 'no drain'],
])(
  'how-deep.ipynb on %s ends with its answer and what to measure next',
  async (demo, answer) => {
    const notebook = await runNotebook(join(PROJECT, 'notebooks', 'how-deep.ipynb'), {
      env: { UNDERPOND_SURVEY: join(PROJECT, 'datasets', demo) },
    });
    const said = notebook.cells
      .filter((cell) => cell.cell_type === 'code')
      .map((cell) => (cell.outputs ?? []).map((output) => JSON.stringify(output)).join(''));
    for (const outputs of said) expect(outputs).not.toContain('"output_type":"error"');
    const last = said.at(-1)!.toLowerCase();
    expect(last).toContain(answer.split(' ')[0]);
    expect(last).toContain('to measure next');
    expect(said.join('')).toContain('where the answer turns'.replace('w', 'W'));
  },
  240_000,
);
