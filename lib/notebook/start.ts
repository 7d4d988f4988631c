/**
 * `npm start [-- FOLDER]`: runs the worked notebook on a survey and lays what it makes into `out/`; with two folders it
 * says what changed from one to the other.
 */
import { existsSync, mkdirSync, mkdtempSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { formatWarning, SurveyError } from '../survey/index.js';
import { compareFolders } from './compare.js';
import { writeAtomically } from './files.js';
import type { ExecutedNotebook } from './nbformat.js';
import { OUTPUTS } from './outputs.js';
import { PROJECT } from './project.js';
import { readSurvey } from './readSurvey.js';
import { runNotebook } from './run.js';

const NOTEBOOK = 'worked-analysis.ipynb';
const DEMO = join(PROJECT, 'datasets', 'clay-slope');

const print = (line: string) => process.stdout.write(`${line}\n`);

/** What the notebook printed in the cells tagged `verdict`. */
function verdictOf({ cells }: ExecutedNotebook): string {
  return cells
    .filter(({ metadata }) => (metadata.tags as string[] | undefined)?.includes('verdict'))
    .flatMap(({ outputs = [] }) => outputs)
    .map((output) => (output.output_type === 'stream' ? output.text : ''))
    .join('');
}

/** @returns the verdict in words, and where the rest is */
async function start(folder: string): Promise<string> {
  // A survey that is refused never gets as far as a kernel.
  for (const warning of readSurvey(folder).warnings) print(`noticed: ${formatWarning(warning)}`);
  const out = join(PROJECT, 'out', basename(folder));
  mkdirSync(dirname(out), { recursive: true });
  const passing = mkdtempSync(`${out}-`);
  process.once('exit', () => rmSync(passing, { recursive: true, force: true }));
  const notebook = await runNotebook(join(PROJECT, 'notebooks', NOTEBOOK), {
    env: { UNDERPOND_SURVEY: folder, UNDERPOND_OUT: passing },
    onProgress: (cell, cells, heading) => print(`cell ${cell} of ${cells}: ${heading}`),
  });
  writeAtomically(join(passing, NOTEBOOK), `${JSON.stringify(notebook, null, 1)}\n`);
  const made = [NOTEBOOK, ...OUTPUTS];
  const missing = made.filter((name) => !existsSync(join(passing, name)));
  if (missing.length > 0) throw new Error(`missing ${missing.join(', ')}: ${NOTEBOOK} did not write it`);
  mkdirSync(out, { recursive: true });
  for (const name of made) renameSync(join(passing, name), join(out, name));
  return `${verdictOf(notebook)}\nAll of it is in ${out}`;
}

/** @returns the exit status: 0 result, 2 survey refused, 1 anything else */
async function main([folder, other, ...more]: string[]): Promise<number> {
  try {
    if (more.length > 0)
      throw new Error(`unknown '${more.join(' ')}': npm start takes a folder, or two to compare`);
    if (folder && other) {
      print(compareFolders(process.env.INIT_CWD ?? '', folder, other));
      return 0;
    }
    // npm runs this in the project's folder; the user means one from where they stand.
    print(`\n${await start(folder ? resolve(process.env.INIT_CWD ?? '', folder) : DEMO)}`);
    return 0;
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : error}\n`);
    return error instanceof SurveyError ? 2 : 1;
  }
}

for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => process.exit(1));
process.exitCode = await main(process.argv.slice(2));
