import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { runNotebook } from '../../lib/notebook/run.js';
import { notebookOf, PROJECT, passingFolder } from './notebooks.js';

vi.setConfig({ testTimeout: 60_000 });

/** A line of a cell that leaves the kernel's process id in a file. */
const writePid = (path: string) =>
  `import { writeFileSync } from 'node:fs'; writeFileSync(${JSON.stringify(path)}, String(process.pid));`;

function alive(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch {
    return false;
  }
}

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
    ['an exception', ['const a = 1;', 'a', "throw new Error('too wet to dig');"], 4, /too wet to dig/],
    ['standard error', ["console.error('mind the pipe');", '1'], 2, /mind the pipe/],
    [
      'a promise nobody awaited',
      ["Promise.reject(new Error('unheard'));", 'await new Promise((done) => setTimeout(done, 20));'],
      2,
      /unheard|no end within/,
    ],
    [
      'a promise nobody awaited, at the end',
      ["async function f() { await null; throw new Error('unheard'); }\nf();"],
      2,
      // On a busy computer the kernel was seen to swallow a refused promise and stay mute: that is refused too.
      /unheard|no end within/,
    ],
  ] as [string, string[], number, RegExp][])(
    'refuses %s, with the number of the cell',
    async (_, sources, cell, words) => {
      const failure = await runNotebook(notebookOf(...sources), { cellLimit_s: 20 }).catch((error) => error);
      expect(failure).toMatchObject({ name: 'NotebookError', cell });
      expect(failure.message).toContain(`small.ipynb, cell ${cell}: `);
      expect(failure.message).toMatch(words);
      if (!failure.message.includes('no end within')) expect(failure.stderr).toMatch(words);
    },
  );

  it('gives up on a cell that does not end, and leaves no process behind', async () => {
    const pid = join(passingFolder(), 'pid');
    const path = notebookOf(`${writePid(pid)}\nwhile (true) {}`);
    await expect(runNotebook(path, { cellLimit_s: 1 })).rejects.toThrow(
      'small.ipynb, cell 2: no end within the 1 s allowed',
    );
    expect(alive(Number(readFileSync(pid, 'utf8')))).toBe(false);
  });

  it('has a kernel that ends with the process that started it', async () => {
    const pid = join(passingFolder(), 'pid');
    const path = notebookOf(`${writePid(pid)}\nawait new Promise((done) => setTimeout(done, 100_000));`);
    const run = JSON.stringify(join(PROJECT, 'dist', 'notebook', 'run.js'));
    const code = `import { runNotebook } from ${run}; await runNotebook(${JSON.stringify(path)});`;
    const starter = spawn(process.execPath, ['--input-type=module', '--eval', code], { stdio: 'inherit' });
    await vi.waitUntil(() => existsSync(pid) && readFileSync(pid, 'utf8'), { timeout: 30_000 });
    const kernel = Number(readFileSync(pid, 'utf8'));
    expect(alive(kernel)).toBe(true);
    starter.kill('SIGKILL');
    await vi.waitUntil(() => !alive(kernel), { timeout: 5_000 });
  });

  it('does not mind a package that changes while it runs', async () => {
    const path = notebookOf(
      "import { deep } from 'spade';\nimport { mkdirSync, writeFileSync } from 'node:fs';\n" +
        "writeFileSync('node_modules/spade/index.d.ts', 'export const deep: number;\\n');\n" +
        'writeFileSync(\'node_modules/spade/package.json\', \'{ "main": "index.js" }\\n\');\n' +
        "mkdirSync('node_modules/fork');\nawait new Promise((done) => setTimeout(done, 500));",
      'deep',
    );
    const spade = join(path, '..', 'node_modules', 'spade');
    mkdirSync(spade, { recursive: true });
    writeFileSync(join(spade, 'package.json'), '{ "main": "index.js" }');
    writeFileSync(join(spade, 'index.d.ts'), 'export const deep: number;');
    writeFileSync(join(spade, 'index.js'), 'exports.deep = 1;');
    const notebook = await runNotebook(path);
    expect(notebook.cells.at(-1)!.outputs).toMatchObject([{ text: '1\n' }]);
  });

  it('says so when the kernel dies', async () => {
    await expect(runNotebook(notebookOf('process.exit(3);'))).rejects.toThrow(
      'small.ipynb, cell 2: kernel ended with exit status 3',
    );
  });
});
