import { expect, vi } from 'vitest';
import { itUnderJupyter, underJupyter } from './jupyter.js';
import { notebookOf } from './notebooks.js';

vi.setConfig({ testTimeout: 60_000 });

itUnderJupyter('the kernelspec lets a real Jupyter run a notebook', async () => {
  const [notebook] = await underJupyter([
    notebookOf(
      'const depth: number = 1.2;',
      "import { display } from 'tslab';\ndisplay.text(String(depth * 2));",
    ),
  ]);
  expect(notebook!.cells[2]!.outputs).toMatchObject([{ data: { 'text/plain': ['2.4'] } }]);
});
