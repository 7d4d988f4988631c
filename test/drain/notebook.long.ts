import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runNotebook } from '../../lib/notebook/run.js';
import { PROJECT } from '../notebook/notebooks.js';

test.each(['clay-slope', 'clay-hollow', 'loam-terrace'])(
  'the drain notebook runs on %s and shows every part',
  async (demo) => {
    const file = join(PROJECT, 'notebooks', 'the-drain.ipynb');
    const notebook = await runNotebook(file, { env: { UNDERPOND_SURVEY: join(PROJECT, 'datasets', demo) } });
    for (const cell of notebook.cells.filter((c) => c.cell_type === 'code'))
      expect(cell.outputs?.length, cell.id).toBeGreaterThan(0);
    const said = notebook.cells
      .flatMap((cell) => cell.outputs ?? [])
      .map((output) => ('text' in output ? output.text : (output.data['text/plain'] ?? '')))
      .join('\n');
    expect(said).toMatch(/weakest link is the/);
    expect(said).toContain('will silt up');
    expect(said).toContain('item,metric,metric_unit,us,us_unit');
    expect(said).not.toMatch(/NaN|undefined|Infinity/);
  },
);
