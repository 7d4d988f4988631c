/** A folder of the grammar, laid on the disk, read, and run through to the page: what must hold of each. */
import { execFileSync } from 'node:child_process';
import {
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { assess } from '../../lib/decision/index.js';
import { readSurvey } from '../../lib/notebook/readSurvey.js';
import { inert } from '../../lib/notebook/terminal.js';
import { pageHtml, pondCardHtml, waterYearCsv, workedCsv } from '../../lib/page/index.js';
import { reportOf, workedSheet } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { formatWarning, parseSurvey, type Survey, SurveyError } from '../../lib/survey/index.js';
import { checkResult, orRefusal } from '../survey/verdict.js';
import { type Folder, folderOf } from './grammar.js';

/** Seconds of the processor in which a folder is read, and in which it is answered with few samples. */
const [READ_S, ANSWER_S] = [4, 30];
const SAMPLES = 8;

export interface Tally {
  folders: number;
  read: number;
  orderly: number;
  orderlyRead: number;
  answered: number;
  codes: Map<string, number>;
  slowest: { read: number; answer: number };
}

export const newTally = (): Tally => ({
  folders: 0,
  read: 0,
  orderly: 0,
  orderlyRead: 0,
  answered: 0,
  codes: new Map(),
  slowest: { read: 0, answer: 0 },
});

/** How many of the folders have weather, and how many of those that can be read are run to the page. */
export interface Shares {
  weather: number;
  answered: number;
}

/** Judges the folders of some seeds. @throws Error with every fault and its seed */
export function judgeFolders(from: number, to: number, shares: Shares, tally: Tally): void {
  const home = mkdtempSync(join(tmpdir(), 'folders-'));
  const faults: string[] = [];
  try {
    for (let seed = from; seed < to; seed++) {
      try {
        judge(seed, home, shares, tally);
      } catch (error) {
        const lines = error instanceof Error ? (error.stack ?? '').split('\n').slice(0, 5) : [String(error)];
        faults.push(`seed ${seed}: ${lines.map((line) => line.slice(0, 300)).join(' | ')}`);
      }
    }
  } finally {
    rmSync(home, { recursive: true, force: true });
  }
  if (faults.length > 0) throw new Error(`${faults.length} folders\n${faults.slice(0, 60).join('\n')}`);
}

function judge(seed: number, home: string, shares: Shares, tally: Tally): void {
  const folder = folderOf(seed, shares.weather);
  tally.folders += 1;
  if (folder.orderly) tally.orderly += 1;
  // Plain files read the same from memory, and sooner.
  const onDisk = seed % 5 === 0 || folder.entries.some(([, { kind }]) => kind !== 'file');
  const { outcome, seconds } = onDisk ? fromDisk(folder, home) : fromMemory(folder);
  tally.slowest.read = within(READ_S, seconds, 'reading', tally.slowest.read);
  if ('kind' in outcome) {
    for (const code of outcome.codes) tally.codes.set(code, (tally.codes.get(code) ?? 0) + 1);
    return;
  }
  tally.read += 1;
  if (folder.orderly) tally.orderlyRead += 1;
  for (const warning of outcome.warnings) checkTerminal(formatWarning(warning));
  if (seed % 1000 >= 1000 * shares.answered) return;
  const begun = process.cpuUsage();
  answer(outcome, folder.mark);
  tally.slowest.answer = within(ANSWER_S, since(begun), 'the answer', tally.slowest.answer);
  tally.answered += 1;
}

function fromMemory({ name, entries }: Folder) {
  const files = entries.flatMap(([file, entry]) =>
    entry.kind === 'file' ? [[file, entry.bytes] as const] : [],
  );
  return timed(() => parseSurvey(Object.fromEntries(files), { name }));
}

/** The folder keeps what is in it. */
function fromDisk(folder: Folder, home: string) {
  const path = join(home, folder.name);
  try {
    lay(folder, path);
    const before = listing(path);
    const read = timed(() => readSurvey(path));
    if (listing(path) !== before) throw new Error('the folder is not as it was');
    return read;
  } finally {
    rmSync(path, { recursive: true, force: true });
  }
}

function timed(read: () => Survey) {
  const start = process.cpuUsage();
  const outcome = orRefusal(() => told(read));
  return { outcome, seconds: since(start) };
}

/** A refusal is checked as it would reach a terminal. */
function told(read: () => Survey): Survey {
  try {
    return read();
  } catch (error) {
    if (error instanceof SurveyError) checkTerminal(error.message);
    throw error;
  }
}

/** Seconds of the processor, which do not hang on what else runs. */
function since(start: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1e6;
}

function within(limit: number, seconds: number, what: string, slowest: number): number {
  if (seconds > limit) throw new Error(`${what} took ${seconds.toFixed(1)} s`);
  return Math.max(slowest, seconds);
}

function lay({ entries }: Folder, path: string): void {
  mkdirSync(path);
  for (const [name, entry] of entries) {
    const at = join(path, name);
    rmSync(at, { recursive: true, force: true });
    if (entry.kind === 'file') writeFileSync(at, entry.bytes);
    else if (entry.kind === 'folder') mkdirSync(at);
    else if (entry.kind === 'link') symlinkSync(entry.to, at);
    else if (entry.kind === 'pipe') execFileSync('mkfifo', ['--', at]);
    else {
      writeFileSync(at, '');
      truncateSync(at, entry.size);
    }
  }
}

const listing = (path: string) =>
  readdirSync(path)
    .map((name) => {
      const { size, mtimeMs, mode } = lstatSync(join(path, name));
      return `${name} ${size} ${mtimeMs} ${mode}`;
    })
    .join('\n');

/** All that is made of a survey. */
function answer(survey: Survey, mark: string): void {
  const site = orRefusal(() => siteModel(survey, { samples: SAMPLES }));
  if ('codes' in site) return;
  const assessment = assess(site);
  const report = reportOf(assessment);
  checkResult(report.result);
  const worked = workedSheet(assessment);
  for (const html of [pageHtml(report, { worked, version: '0.0.0' }), pondCardHtml(report)])
    checkHtml(html, mark);
  checkCsv(workedCsv(worked));
  checkCsv(waterYearCsv(report));
}

/** Anything a terminal acts on, or that turns or hides the text after it. */
const ACTING = /[^\n\P{C}]/u;

function checkTerminal(text: string): void {
  if (ACTING.test(inert(text))) throw new Error(`acts on a terminal: ${JSON.stringify(text.slice(0, 200))}`);
}

function checkHtml(html: string, mark: string): void {
  if (ACTING.test(html)) throw new Error(`not seen on the page: ${JSON.stringify(ACTING.exec(html))}`);
  const seen = html.replace(/<style>[\s\S]*?<\/style>/, '');
  // Of a tag only its own name and attributes stay: values stand in quotes.
  for (const [tag] of seen.replace(/"[^"]*"/g, '""').matchAll(/<[^>]*>/g))
    if (tag.includes(mark) || /<(script|img|iframe)|javascript:|\son\w+=/i.test(tag))
      throw new Error(`a tag of a stranger: ${tag.slice(0, 200)}`);
  const words = seen.replace(/<[^>]*>/g, ' ');
  const wrong = /\b(NaN|undefined|Infinity)\b|\[object/.exec(words);
  if (wrong)
    throw new Error(
      `'${wrong[0]}' on the page: ${words.slice(Math.max(0, wrong.index - 80), wrong.index + 40)}`,
    );
}

function checkCsv(text: string): void {
  const rows: string[][] = parse(text);
  if (rows.some((row) => row.length !== rows[0]!.length)) throw new Error('rows of a CSV differ in length');
  const cells = [...rows.flat(), ...text.split(/[;\r\n]+/).map((cell) => cell.replace(/^"/, ''))];
  for (const cell of cells)
    if (/^\s*[=+@]|^\s*-(?![-\d.])/.test(cell) || ACTING.test(cell))
      throw new Error(`a formula in a CSV: ${JSON.stringify(cell.slice(0, 100))}`);
}
