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

describe.each(names)('%s', async (name) => {
  const notebook = await readNotebook(join(FOLDER, name));
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
      expect(
        cells.filter((cell) => /readSurvey\(|UNDERPOND_SURVEY|datasets\//.test(sourceOf(cell))),
      ).toHaveLength(1);
    });
  }

  /** The kernel checks types loosely, and loses what fails in a promise that no cell awaits. */
  it('passes the strict compiler as one module, and awaits every promise', () => {
    const file = join(FOLDER, 'cells.mts');
    const text = cells.map(sourceOf).join('\n');
    const options: ts.CompilerOptions = {
      module: ts.ModuleKind.NodeNext,
      target: ts.ScriptTarget.ES2022,
      strict: true,
      noEmit: true,
      skipLibCheck: true,
      types: ['node'],
    };
    const host = ts.createCompilerHost(options);
    const { getSourceFile, fileExists } = host;
    host.fileExists = (path) => path === file || fileExists(path);
    host.getSourceFile = (path, ...rest) =>
      path === file
        ? ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true)
        : getSourceFile(path, ...rest);
    const program = ts.createProgram([file], options, host);
    const faults = ts.getPreEmitDiagnostics(program, program.getSourceFile(file));
    expect(faults.map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, '\n'))).toEqual([]);

    const checker = program.getTypeChecker();
    const left: string[] = [];
    const visit = (node: ts.Node): void => {
      if (ts.isExpressionStatement(node) && checker.getTypeAtLocation(node.expression).getProperty('then'))
        left.push(node.getText());
      ts.forEachChild(node, visit);
    };
    visit(program.getSourceFile(file)!);
    expect(left).toEqual([]);
  }, 60_000);
});
