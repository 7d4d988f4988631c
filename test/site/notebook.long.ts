import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runNotebook } from '../../lib/notebook/run.js';
import { PROJECT } from '../notebook/notebooks.js';

test.each(['clay-slope', 'clay-hollow', 'loam-terrace'])(
  'water through the year, asked of %s',
  async (demo) => {
    const file = join(PROJECT, 'notebooks', 'water-through-the-year.ipynb');
    const notebook = await runNotebook(file, { env: { UNDERPOND_SURVEY: join(PROJECT, 'datasets', demo) } });
    for (const cell of notebook.cells.filter((c) => c.cell_type === 'code'))
      expect(cell.outputs?.length, cell.id).toBeGreaterThan(0);
    const said = notebook.cells
      .flatMap((cell) => cell.outputs ?? [])
      .map((output) => ('text' in output ? output.text : (output.data['text/plain'] ?? '')))
      .join('\n');
    expect(said).toMatch(/In the worst month, \w+, the water stands/);
    expect(said).toContain('with a dry floor');
    expect(said).toContain('Measure next:');
    expect(said).not.toMatch(/NaN|undefined|Infinity/);
  },
);
