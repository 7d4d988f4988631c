#!/usr/bin/env node
/** The command `underpond`: a survey analysed, begun or compared, and the notebooks opened. */
import { constants } from 'node:os';
import { join, relative, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { SurveyError } from '../survey/problem.js';
import { nextWithSurvey, wroteFormWords, wroteIntoWords } from '../text/commandWords.js';
import { progress, progressDone, terminalWidth } from './progress.js';
import { print, printError } from './terminal.js';

const HELP = `underpond: what groundwater will do to a lined pond on clay

  underpond FOLDER           the answer: page, pond card, tables, result.json
  underpond new FOLDER       a survey to fill in, with a field sheet to print
  underpond form [FILE]      a form to fill in on a phone, offline, that answers
  underpond compare A B      what changed from one survey to another, and a page
  underpond verify PAGE DIR  whether a page was made from these files
  underpond lab              the notebooks in Jupyter, in a clone

  --out DIR                  output into a folder of DIR instead of out/
  --quick                    the answer without running the notebook
  --units us | metric        units in which a new survey asks (metric)
  --help, --version

Examples
  npx underpond new garden --units us
  npx underpond garden
  npx underpond garden/pits.csv --out ~/Documents
  npx underpond compare garden-2024 garden-2025

A FOLDER holds pond.csv, pits.csv or heads.csv, and what else is known.
Status: 0 an answer, or every file the same; 2 a survey refused, every reason
told; 1 anything else.
`;

/** What a user writes wrong on the command line. */
class Misuse extends Error {
  constructor(what: string) {
    super(`${what}. See underpond --help`);
  }
}

const OPTIONS = {
  out: { type: 'string' },
  quick: { type: 'boolean' },
  units: { type: 'string' },
  help: { type: 'boolean', short: 'h' },
  version: { type: 'boolean' },
} as const;

/** npm runs its scripts in the project's folder; the user means one from where they stand. */
const here = (path: string) => resolve(process.env.INIT_CWD ?? '', path);
/** A path as it is shortest to type from where the user stands. */
const shown = (path: string) => {
  const short = relative(here(''), path);
  return short.startsWith('..') ? path : short;
};

/** Where output goes. */
const parentOf = (out: string | undefined) => (out === undefined ? resolve('out') : here(out));

/** Takes exactly so many folders, each with a name. */
function folders(given: string[], ...names: string[]): string[] {
  names.forEach((name, at) => {
    if (given[at] === undefined) throw new Misuse(`missing ${name}`);
    if (given[at] === '') throw new Misuse(`missing ${name}: its name is empty`);
  });
  if (given.length > names.length) throw new Misuse(`unknown '${given.slice(names.length).join(' ')}'`);
  return given;
}

async function answer(given: string[], { out, quick }: { out?: string; quick?: boolean }): Promise<void> {
  progress('underpond: starting');
  const { analyse, DEMO } = await import('./analyse.js');
  const { fitted } = await import('./fitted.js');
  const { existsSync } = await import('node:fs');
  if (given.length === 0 && !existsSync(DEMO)) throw new Misuse('missing FOLDER');
  const [folder] = given.length === 0 ? [DEMO] : folders(given, 'FOLDER');
  const done = await analyse(here(folder as string), parentOf(out), quick ?? false);
  progressDone();
  for (const line of done.noticed) print(line);
  if (done.noticed.length > 0) print('');
  for (const line of fitted(done.lines, terminalWidth())) print(line);
  printOpener(join(done.out, 'page.html'));
}

/** The command that opens a page; not broken, so that it can be copied. */
function printOpener(path: string): void {
  const opener = { darwin: 'open', win32: 'start' }[process.platform as string] ?? 'xdg-open';
  const page = shown(path);
  print(`open       ${opener} ${/\s/.test(page) ? `"${page}"` : page}`);
}

async function begin(given: string[], units = 'metric'): Promise<void> {
  const [folder = ''] = folders(given, 'FOLDER');
  if (units !== 'metric' && units !== 'us') throw new Misuse(`unknown '${units}' for --units: us or metric`);
  const { FIELD_SHEET, newSurvey } = await import('./surveyFolder.js');
  const path = here(folder);
  print(wroteIntoWords(path, newSurvey(path, units)));
  print('Three files are enough: site, pond, pits; add water when you have it.');
  print(nextWithSurvey(FIELD_SHEET, folder));
}

async function form(given: string[]): Promise<void> {
  const [path = '.'] = given.length === 0 ? [] : folders(given, 'FILE');
  const { writeForm } = await import('./formFile.js');
  print(wroteFormWords(shown(await writeForm(here(path)))));
}

async function compare(given: string[], out?: string): Promise<void> {
  const [before = '', after = ''] = folders(given, 'BEFORE', 'AFTER');
  const { compareFolders } = await import('./compare.js');
  const { text, page } = compareFolders(here(before), here(after), parentOf(out));
  print(text);
  print('');
  printOpener(page);
}

/** @returns whether every file is as it was */
async function verify(given: string[]): Promise<boolean> {
  const [page = '', folder = ''] = folders(given, 'PAGE', 'DIR');
  const { verifyPage } = await import('./verify.js');
  const files = verifyPage(here(page), here(folder));
  for (const { file, says } of files) print(`${says.padEnd(15)}  ${file}`);
  return files.every(({ says }) => says === 'same');
}

/** @returns the exit status: 0 done, 2 survey refused, 1 anything else */
async function main(args: string[]): Promise<number> {
  try {
    if (args[0] === 'lab') return await (await import('./lab.js')).lab(args.slice(1));
    const { values, positionals } = parseArgs({ args, options: OPTIONS, allowPositionals: true });
    const [first, ...rest] = positionals;
    if (values.help) process.stdout.write(HELP);
    else if (values.version) print((await import('./project.js')).VERSION);
    else if (first === 'new') await begin(rest, values.units);
    else if (first === 'form') await form(rest);
    else if (first === 'compare') await compare(rest, values.out);
    else if (first === 'verify') return (await verify(rest)) ? 0 : 1;
    else await answer(positionals, values);
    return 0;
  } catch (error) {
    progressDone();
    printError(error);
    return error instanceof SurveyError ? 2 : 1;
  }
}

for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const)
  process.once(signal, () => {
    progressDone();
    printError('ended before it was finished: what an earlier run left stands as it was');
    process.exit(128 + constants.signals[signal]);
  });
process.exitCode = await main(process.argv.slice(2));
