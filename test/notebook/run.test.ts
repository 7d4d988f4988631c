/** Runs of notebooks in the real kernel; `run.long.ts` has more of them. */
import { describe, expect, it, vi } from 'vitest';
import { runNotebook } from '../../lib/notebook/run.js';
import { notebookOf, refusalOf } from './notebooks.js';

vi.setConfig({ testTimeout: 60_000 });

describe('runNotebook, in the real kernel', () => {
  it('runs cells in order and keeps what they show', async () => {
    const seen: string[] = [];
    const notebook = await runNotebook(
      notebookOf(
        "import { display } from 'tslab';\nconst depth: number = 1.2;\nconsole.log('one'); console.log('two');",
        'display.html(String(depth));\nawait new Promise((done) => setTimeout(done, 20));',
        'process.env.UNDERPOND_SURVEY',
      ),
      { env: { UNDERPOND_SURVEY: '../somewhere' }, onProgress: (...told) => seen.push(told.join(' ')) },
    );
    expect(notebook).toMatchObject({ nbformat: 4, nbformat_minor: 5, cells: { length: 4 } });
    expect(notebook.cells.map((cell) => cell.execution_count)).toEqual([undefined, 1, 2, 3]);
    expect(notebook.cells.slice(1).map((cell) => cell.outputs)).toEqual([
      [{ output_type: 'stream', name: 'stdout', text: 'one\ntwo\n' }],
      [{ output_type: 'display_data', data: { 'text/html': '1.2' }, metadata: {} }],
      [{ output_type: 'stream', name: 'stdout', text: '../somewhere\n' }],
    ]);
    expect(seen[0]).toBe('2 4 Small');
  });

  it.each([
    [
      'a type error',
      ['const a: number = 1;', "const b: number = 'deep';"],
      3,
      /Type 'string' is not assignable/,
    ],
  ] as [string, string[], number, RegExp][])(
    'refuses %s, with the number of the cell',
    (_, sources, cell, words) => refusalOf(sources, cell, words),
  );

  it('says so when the kernel dies', async () => {
    await expect(runNotebook(notebookOf('process.exit(3);'))).rejects.toThrow(
      'small.ipynb, cell 2: kernel ended with exit status 3',
    );
  });
});
