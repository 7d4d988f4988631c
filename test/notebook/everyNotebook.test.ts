import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { readNotebook, sourceOf } from '../../lib/notebook/nbformat.js';
import { PROJECT } from './notebooks.js';

const FOLDER = join(PROJECT, 'notebooks');
const names = readdirSync(FOLDER).filter((name) => name.endsWith('.ipynb'));

it('the README lists every notebook and no other, in an order to work through', () => {
  const readme = readFileSync(join(PROJECT, 'README.md'), 'utf8');
  const listed = [...readme.matchAll(/^\| (\d+) +\| `([a-z-]+)` +\|/gm)].map(([, at, name]) => ({
    at: Number(at),
    name: `${name}.ipynb`,
  }));
  expect(listed.map(({ at }) => at)).toEqual(listed.map((_, at) => at));
  expect(listed.map(({ name }) => name).sort()).toEqual(names.sort());
});

/** Notebooks by name, and of each the file that its cells would make as one module. */
const notebooks = new Map(
  await Promise.all(names.map(async (name) => [name, await readNotebook(join(FOLDER, name))] as const)),
);
const moduleOf = (name: string) => join(FOLDER, name.replace('.ipynb', '.cells.mts'));

let made: ts.Program | undefined;

/** One program of them all, as what they import is read and bound but once. */
function program(): ts.Program {
  if (made) return made;
  const options: ts.CompilerOptions = {
    module: ts.ModuleKind.NodeNext,
    target: ts.ScriptTarget.ES2022,
    strict: true,
    noEmit: true,
    skipLibCheck: true,
    types: ['node'],
  };
  const texts = new Map(
    Array.from(notebooks, ([name, { cells }]) => [
      moduleOf(name),
      cells
        .filter(({ cell_type }) => cell_type === 'code')
        .map(sourceOf)
        .join('\n'),
    ]),
  );
  const host = ts.createCompilerHost(options);
  const { getSourceFile, fileExists } = host;
  host.fileExists = (path) => texts.has(path) || fileExists(path);
  host.getSourceFile = (path, ...rest) => {
    const text = texts.get(path);
    return text === undefined
      ? getSourceFile(path, ...rest)
      : ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true);
  };
  made = ts.createProgram([...texts.keys()], options, host);
  return made;
}

describe.each(names)('%s', (name) => {
  const notebook = notebooks.get(name)!;
  const cells = notebook.cells.filter(({ cell_type }) => cell_type === 'code');

  it('is kept without outputs, in format 4.5, for the kernel that npm start runs', () => {
    expect(notebook).toMatchObject({
      nbformat: 4,
      nbformat_minor: 5,
      metadata: { kernelspec: { name: 'tslab' } },
    });
    for (const cell of cells) expect(cell).toMatchObject({ outputs: [], execution_count: null });
    const ids = notebook.cells.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-zA-Z0-9_-]{1,64}$/);
  });

  it('has cells that can be taken in at a glance, of twelve lines at most', () => {
    for (const cell of cells)
      expect(sourceOf(cell).split('\n').length, sourceOf(cell).slice(0, 200)).toBeLessThanOrEqual(12);
  });

  if (name !== 'checked-against.ipynb') {
    it('begins with a question and ends with its answer and what to measure next', () => {
      const words = notebook.cells.filter(({ cell_type }) => cell_type === 'markdown').map(sourceOf);
      expect(notebook.cells[0]).toMatchObject({ cell_type: 'markdown' });
      expect(words[0]).toMatch(/^# .*\?/);
      expect(words.filter((text) => text.startsWith('## The answer, and what to measure next'))).toHaveLength(
        1,
      );
      expect(words[0]).toContain('The demo survey is invented');
    });

    it('says in one cell which survey it is about', () => {
      expect(cells.filter((cell) => /UNDERPOND_SURVEY|datasets\//.test(sourceOf(cell)))).toHaveLength(1);
    });
  }

  /** The kernel checks types loosely, and loses what fails in a promise that no cell awaits. */
  it('passes the strict compiler as one module, and awaits every promise', () => {
    const file = program().getSourceFile(moduleOf(name))!;
    const faults = ts.getPreEmitDiagnostics(program(), file);
    expect(faults.map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, '\n'))).toEqual([]);

    const checker = program().getTypeChecker();
    const left: string[] = [];
    const visit = (node: ts.Node): void => {
      if (ts.isExpressionStatement(node) && checker.getTypeAtLocation(node.expression).getProperty('then'))
        left.push(node.getText());
      ts.forEachChild(node, visit);
    };
    visit(file);
    expect(left).toEqual([]);
  }, 60_000);
});
