import { join } from 'node:path';
import { expect, it } from 'vitest';
import { runNotebook } from '../../lib/notebook/run.js';
import { PROJECT } from './notebooks.js';

it.each(['clay-slope', 'clay-hollow', 'loam-terrace'])(
  'what lifts the liner, asked of %s',
  async (survey) => {
    const notebook = await runNotebook(join(PROJECT, 'notebooks', 'what-lifts-the-liner.ipynb'), {
      env: { UNDERPOND_SURVEY: join(PROJECT, 'datasets', survey) },
    });
    const said = notebook.cells
      .flatMap((cell) => cell.outputs ?? [])
      .map((output) => ('text' in output ? output.text : (output.data['text/plain'] ?? '')))
      .join('\n');
    expect(said).toMatch(/Full, the liner \w+/);
    expect(said).toContain('Measure next:');
    expect(said).not.toMatch(/NaN|undefined/);
  },
);
