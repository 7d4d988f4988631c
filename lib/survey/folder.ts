/** Which files of a folder belong to a survey. */

import { decode } from './encoding.js';
import { isGhcnDaily, readGhcnDaily } from './ghcnDaily.js';
import type { Findings } from './problem.js';
import { readSheet, type Sheet } from './sheet.js';
import { suggest } from './suggest.js';
import { headsWeather } from './weather.js';

/** The files of the contract. */
export const SURVEY_FILES = [
  'site.csv',
  'pond.csv',
  'pits.csv',
  'water.csv',
  'soakage.csv',
  'heads.csv',
  'levels.csv',
  'weather.csv',
  'climate.csv',
  'prices.csv',
] as const;
export type SurveyFile = (typeof SURVEY_FILES)[number];

type Content = string | Uint8Array;
type Files = Readonly<Record<string, Content>>;

const NO_DATA = /(^|\/)(\.[^/]*|~\$[^/]*|readme[^/]*|[^/]*\.(md|html?|pdf|jpe?g|png|webp|heic|gif|zip))$/i;

/**
 * The file of the contract that a name means: in any case, and with what browsers and editors add to it
 * (`Pits.CSV`, `pits (1).csv`, `pits - Copy.csv`, `pits.csv.txt`), or a sheet of a workbook (`garden.xlsx/pits.csv`).
 */
export function surveyFileOf(name: string): SurveyFile | undefined {
  const plain = name
    .toLowerCase()
    .replace(/^.*\.(xlsx|ods)\//, '')
    .replace(/\.csv\.(txt|csv)$|\.tsv$/, '.csv')
    .replace(/(\s*\(\d+\)|\s*-?\s*copy(\s*\(\d+\))?)\.csv$/, '.csv')
    .trim();
  return SURVEY_FILES.find((file) => file === plain);
}

/** What was found in a folder. */
interface Folder {
  sheets: Partial<Record<SurveyFile, Sheet>>;
  /** by the names of the contract */
  contents: Partial<Record<SurveyFile, Content>>;
}

/**
 * Opens the files of the contract, reports the others and refuses a folder in which a needed one is missing.
 * @param files everything in the folder, by name; those in its folder `later` with that before their name
 */
export function openFolder(files: Files, findings: Findings): Folder {
  const contents: Folder['contents'] = {};
  const names = new Map<SurveyFile, string>();
  const strays: string[] = [];
  for (const name of Object.keys(files).sort()) {
    const content = files[name] as Content;
    const file = surveyFileOf(name) ?? (isDailyWeather(name, content) ? 'weather.csv' : undefined);
    if (name.startsWith(LATER)) tellLeft(name, content, findings);
    else if (file === undefined) {
      if (!NO_DATA.test(name)) strays.push(name);
    } else if (names.has(file)) refuseTwins(file, [names.get(file) as string, name], findings);
    else {
      names.set(file, name);
      contents[file] = content;
      if (name !== file)
        findings.warn({ file, code: 'read-as', message: `the file '${name}' is read as ${file}` });
    }
  }
  for (const file of strays) {
    const meant = suggest(file, SURVEY_FILES);
    const hint = meant ? `; did you mean '${meant}'?` : '; a survey has no file of that name';
    findings.warn({ file, code: 'unknown-file', message: `unknown file '${file}' was not read${hint}` });
  }
  const refuseMissing = (file: SurveyFile, why: string, remedy: string) => {
    const stray = strays.find((name) => suggest(name, SURVEY_FILES) === file);
    const message = `missing file '${file}' - ${why}`;
    findings.refuse({
      file,
      code: 'missing-file',
      message,
      expected: file,
      remedy: stray ? `Rename '${stray}' to '${file}'.` : remedy,
    });
  };
  if (contents['pond.csv'] === undefined) {
    refuseMissing(
      'pond.csv',
      'the pond is not described',
      'Add it, with at least its depth, length and width.',
    );
  }
  if (contents['pits.csv'] === undefined && contents['heads.csv'] === undefined) {
    refuseMissing(
      'pits.csv',
      'neither the ground nor its water is described',
      'Add pits.csv (layers in a hole) or heads.csv (water levels known).',
    );
  }
  const sheets: Folder['sheets'] = {};
  for (const file of SURVEY_FILES) {
    const content = contents[file];
    if (content !== undefined) sheets[file] = openSheet(file, content, findings);
  }
  return { sheets, contents };
}

/** Characters at the beginning of a file by which daily weather is told. */
const BEGINNING = 4000;

function beginningOf(content: Content): string {
  return typeof content === 'string'
    ? content.slice(0, BEGINNING)
    : new TextDecoder().decode(content.subarray(0, BEGINNING));
}

/** Daily weather under the name that a service gave the file. */
function isDailyWeather(name: string, content: Content): boolean {
  if (!/\.(csv|tsv|txt|dly)$/i.test(name)) return false;
  const text = beginningOf(content);
  const [header = ''] = text.split(/\r?\n/).filter((line) => line.trim() !== '' && !/^"?#/.test(line));
  return (
    isGhcnDaily(text) || headsWeather(header.split(/[,;\t]/).map((cell) => cell.replaceAll('"', '').trim()))
  );
}

function openSheet(file: SurveyFile, content: Content, findings: Findings): Sheet | undefined {
  if (file !== 'weather.csv' || !isGhcnDaily(beginningOf(content))) return readSheet(file, content, findings);
  const text = decode(file, content, findings);
  return text === undefined ? undefined : readGhcnDaily(file, text, findings);
}

function refuseTwins(file: SurveyFile, names: [string, string], findings: Findings): void {
  findings.refuse({
    file,
    code: 'duplicate-file',
    message: `invalid folder - '${names[0]}' and '${names[1]}' are both ${file}`,
    found: names[1],
    expected: `one ${file}`,
    remedy: 'Keep the one that is right, and take the other out of the folder.',
  });
}

/** Where a new survey keeps the files that are not needed at once. */
export const LATER = 'later/';

/** A file filled in and left in `later` would be lost in silence. */
function tellLeft(name: string, content: Content, findings: Findings): void {
  const file = surveyFileOf(name.slice(LATER.length));
  const text = typeof content === 'string' ? content : new TextDecoder().decode(content);
  const rows = text.split(/\r\n?|\n/).filter((line) => /[^\s,;"]/.test(line) && !/^\s*"?\s*#/.test(line));
  const filled = rows
    .slice(1)
    .filter((line) => line.split(/[,;\t]/).filter((cell) => /[^\s"]/.test(cell)).length > 1);
  if (!file || filled.length === 0) return;
  findings.warn({
    file,
    code: 'left-in-later',
    message: `'${name}' holds ${filled.length} ${filled.length === 1 ? 'row' : 'rows'} and was not read: move it up, next to pond.csv`,
  });
}
