import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runNotebook } from '../../lib/notebook/run.js';
import { PROJECT } from '../notebook/notebooks.js';

test.each(['clay-slope', 'clay-hollow', 'loam-terrace'])(
  'the ground notebook runs on %s and ends with its answer and what to measure next',
  async (demo) => {
    const file = join(PROJECT, 'notebooks', 'the-ground.ipynb');
    const notebook = await runNotebook(file, { env: { UNDERPOND_SURVEY: join(PROJECT, 'datasets', demo) } });
    const code = notebook.cells.filter((cell) => cell.cell_type === 'code');
    for (const cell of code) expect(cell.outputs?.length, cell.id).toBeGreaterThan(0);
    const said = code
      .flatMap((cell) => cell.outputs ?? [])
      .map((output) => ('text' in output ? output.text : (output.data['text/plain'] ?? '')))
      .join('\n');
    expect(said).toMatch(/test d in P2 is not used: .*rose during a falling test/);
    expect(said).toMatch(/Around the pond water moves at .*four times out of five/);
    expect(said).toContain('Measure next:');
    expect(said).not.toMatch(/NaN|undefined/);
  },
);
