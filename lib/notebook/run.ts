/** Runs a notebook from its first cell to its last, stopping at the first that complains. */
import { randomUUID } from 'node:crypto';
import { basename, dirname, resolve } from 'node:path';
import { UnderpondError } from '../units/index.js';
import { type Answer, Kernel } from './kernel.js';
import { type Cell, type ExecutedNotebook, outputsOf, readNotebook, sourceOf } from './nbformat.js';

/** A cell is given up after this many seconds unless said otherwise. */
const CELL_LIMIT_S = 600;

/** How a notebook is run. */
export interface RunOptions {
  /** folder from which cells resolve imports and files; the notebook's own unless given */
  cwd?: string;
  /** variables added to this process's environment for the kernel */
  env?: Record<string, string>;
  /** seconds one cell may take, 600 unless given */
  cellLimit_s?: number;
  /** told before each code cell: its place among all cells, counted from 1, how many there are, the heading above */
  onProgress?: (cell: number, cells: number, heading: string) => void;
}

/** A cell failed: which, and what it wrote to its standard error. */
export class NotebookError extends UnderpondError {
  override readonly name = 'NotebookError';
  override readonly code = 'cell-failed';

  constructor(
    readonly notebook: string,
    readonly cell: number,
    readonly stderr: string,
    reason: string,
    options?: ErrorOptions,
  ) {
    super(`${notebook}, cell ${cell}: ${reason}${stderr && `\n${stderr.trimEnd()}`}`, options);
  }
}

interface Ran {
  cell: Cell;
  number: number;
  answer: Answer;
}

/**
 * Runs every code cell of a notebook in order in a fresh TypeScript kernel (tslab).
 *
 * A cell fails when the kernel's reply is not `ok` or anything at all stands on its standard error: the kernel
 * itself reports a rejected promise that nobody awaited there and goes on.
 * @param path the notebook; it is read, never written
 * @param options - environment, limit in s for a cell, and whom to tell of progress
 * @returns the notebook, format 4.5, with outputs and execution counts
 * @throws NotebookError with the number of the cell and its standard error
 * @throws EnvironmentError when it is no notebook, tslab or zeromq is missing, or the kernel does not start; Error when it cannot be read
 */
export async function runNotebook(path: string, options: RunOptions = {}): Promise<ExecutedNotebook> {
  const { cwd = dirname(resolve(path)), env, cellLimit_s = CELL_LIMIT_S, onProgress } = options;
  const notebook = await readNotebook(path);
  const name = basename(path);
  const kernel = await Kernel.start(cwd, { ...process.env, ...env });
  const ran: Ran[] = [];
  let heading = '';
  try {
    for (const [index, cell] of notebook.cells.entries()) {
      const source = sourceOf(cell);
      if (cell.cell_type === 'markdown') heading = /^#+ (.*)$/m.exec(source)?.[1] ?? heading;
      if (cell.cell_type !== 'code' || !source.trim()) continue;
      const number = index + 1;
      onProgress?.(number, notebook.cells.length, heading);
      const answer = await kernel.execute(source, cellLimit_s).catch((cause: Error) => {
        throw new NotebookError(name, number, '', cause.message, { cause });
      });
      ran.push({ cell, number, answer });
      check(name, ran);
    }
    // What an earlier cell left running may complain after its end.
    await kernel.flush();
    check(name, ran);
    await kernel.shutdown();
  } finally {
    await kernel.kill();
  }
  return {
    nbformat: 4,
    nbformat_minor: 5,
    metadata: notebook.metadata,
    cells: notebook.cells.map((cell) => executed(cell, ran.find((one) => one.cell === cell)?.answer)),
  };
}

function check(notebook: string, ran: readonly Ran[]): void {
  for (const { number, answer } of ran) {
    const stderr = outputsOf(answer.published)
      .map((output) => (output.output_type === 'stream' && output.name === 'stderr' ? output.text : ''))
      .join('');
    const status = answer.reply?.content.status;
    if (status !== 'ok') throw new NotebookError(notebook, number, stderr, `the kernel answered '${status}'`);
    if (stderr) throw new NotebookError(notebook, number, stderr, 'it wrote to standard error');
  }
}

function executed(cell: Cell, answer: Answer | undefined): Cell {
  const id = cell.id ?? randomUUID().slice(0, 8);
  if (cell.cell_type !== 'code') return { ...cell, id };
  const count = answer?.reply?.content.execution_count as number | undefined;
  return { ...cell, id, execution_count: count ?? null, outputs: answer ? outputsOf(answer.published) : [] };
}
