/** Small notebooks made of given cells, in folders that are gone when the test is over. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, onTestFinished } from 'vitest';
import { runNotebook } from '../../lib/notebook/run.js';

/** The project's own folder. */
export const PROJECT = fileURLToPath(new URL('../..', import.meta.url));

/** A folder that is gone when the test is over. */
export function passingFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'underpond-test-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A notebook of the given code cells after a heading; its code cells are numbered from 2. */
export function notebookOf(...sources: string[]): string {
  const path = join(passingFolder(), 'small.ipynb');
  const code = sources.map((source, index) => ({
    cell_type: 'code',
    id: `code-${index}`,
    metadata: {},
    source,
    outputs: [],
    execution_count: null,
  }));
  writeFileSync(
    path,
    JSON.stringify({
      nbformat: 4,
      nbformat_minor: 5,
      metadata: { kernelspec: { name: 'tslab', display_name: 'TypeScript', language: 'typescript' } },
      cells: [{ cell_type: 'markdown', id: 'heading', metadata: {}, source: ['# Small\n', 'one'] }, ...code],
    }),
  );
  return path;
}

/** A line of a cell that leaves the kernel's process id in a file. */
export const writePid = (path: string) =>
  `import { writeFileSync } from 'node:fs'; writeFileSync(${JSON.stringify(path)}, String(process.pid));`;

export function alive(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch {
    return false;
  }
}

/** Runs a notebook of these cells and expects it to be refused at a cell in such words. */
export async function refusalOf(sources: string[], cell: number, words: RegExp): Promise<void> {
  const failure = await runNotebook(notebookOf(...sources), { cellLimit_s: 20 }).catch((error) => error);
  expect(failure).toMatchObject({ name: 'NotebookError', cell });
  expect(failure.message).toContain(`small.ipynb, cell ${cell}: `);
  expect(failure.message).toMatch(words);
  if (!failure.message.includes('no end within')) expect(failure.stderr).toMatch(words);
}
