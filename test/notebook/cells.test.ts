import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { type Notebook, readNotebook, sourceOf } from '../../lib/notebook/nbformat.js';
import { PROJECT } from './notebooks.js';

const FOLDER = join(PROJECT, 'notebooks');
const names = readdirSync(FOLDER).filter((name) => name.endsWith('.ipynb'));
const notebooks = await Promise.all(
  names.map(async (name): Promise<[string, Notebook]> => [name, await readNotebook(join(FOLDER, name))]),
);
const codeOf = ({ cells }: Notebook) => cells.filter(({ cell_type }) => cell_type === 'code');

describe.each(notebooks)('%s', (_, notebook) => {
  const cells = codeOf(notebook);

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

  it('says in one cell which survey it is about', () => {
    expect(cells.filter((cell) => /UNDERPOND_SURVEY|datasets\//.test(sourceOf(cell)))).toHaveLength(1);
  });

  it('starts with a question and ends with its answer and what to measure next', () => {
    expect(sourceOf(notebook.cells[0]!)).toMatch(/^# .*\?$/m);
    const answer = notebook.cells.findIndex((cell) => /^## The answer/m.test(sourceOf(cell)));
    expect(answer).toBeGreaterThan(0);
    const after = notebook.cells.slice(answer).map(sourceOf).join('\n');
    expect(after).toMatch(/Measure next:/);
  });
});

/** The kernel checks types loosely, and loses what fails in a promise that no cell awaits. */
it('every notebook passes the strict compiler as one module, and awaits every promise', () => {
  const texts = new Map(
    notebooks.map(([name, notebook]) => [
      join(FOLDER, `${name}.mts`),
      codeOf(notebook).map(sourceOf).join('\n'),
    ]),
  );
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
  host.fileExists = (name) => texts.has(name) || fileExists(name);
  host.getSourceFile = (name, ...rest) => {
    const text = texts.get(name);
    return text === undefined
      ? getSourceFile(name, ...rest)
      : ts.createSourceFile(name, text, ts.ScriptTarget.ES2022, true);
  };
  const program = ts.createProgram([...texts.keys()], options, host);
  const checker = program.getTypeChecker();
  for (const name of texts.keys()) {
    const source = program.getSourceFile(name)!;
    const faults = ts.getPreEmitDiagnostics(program, source);
    expect(
      faults.map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, '\n')),
      name,
    ).toEqual([]);
    const left: string[] = [];
    const visit = (node: ts.Node): void => {
      if (ts.isExpressionStatement(node) && checker.getTypeAtLocation(node.expression).getProperty('then'))
        left.push(node.getText());
      ts.forEachChild(node, visit);
    };
    visit(source);
    expect(left, name).toEqual([]);
  }
}, 60_000);
