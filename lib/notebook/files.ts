/** Reading a survey folder into memory, and writing so that nobody ever sees half a file. */

import { randomUUID } from 'node:crypto';
import {
  closeSync,
  openSync,
  readdirSync,
  readFileSync,
  readSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { LATER, MOST_BYTES, type Problem, SurveyError } from '../survey/index.js';
import { EnvironmentError } from './environmentError.js';
import { isWorkbook, workbookFiles } from './workbook.js';

/** Files that may hold rows; of others (photos, notes) the name is enough. */
const HOLDS_ROWS = /\.(csv|tsv|dly|txt)(\.gz)?$/i;

/**
 * The files of a folder by name, those that may hold rows as bytes, of others (photos, notes) the name alone. Hidden
 * files and subfolders are no part of a survey; of `later` the files are told of, with that before their names.
 * @param folder - path of the survey
 * @returns bytes by file name
 * @throws EnvironmentError when the folder is missing, Error when it cannot be read
 * @throws SurveyError when what has the name of a survey's file is none, or cannot be read
 */
export function readFolder(folder: string): Record<string, Uint8Array> {
  if (!statSync(folder, { throwIfNoEntry: false })?.isDirectory())
    throw new EnvironmentError(
      'missing-folder',
      `missing folder '${folder}': name a folder that holds the CSV files of a survey`,
    );
  const problems: Problem[] = [];
  const files: Record<string, Uint8Array> = {};
  const later = readdirSync(folder, { withFileTypes: true }).some(
    (one) => `${one.name}/` === LATER && one.isDirectory(),
  );
  const below = later ? readdirSync(join(folder, LATER)).map((name) => `${LATER}${name}`) : [];
  for (const name of [...readdirSync(folder), ...below].sort()) {
    if (basename(name).startsWith('.')) continue;
    const path = join(folder, name);
    const isFile = isFileAt(path);
    if (isFile && isWorkbook(name) && !basename(name).startsWith(LOCK)) {
      Object.assign(files, sheetsOf(name, path));
      continue;
    }
    if (!HOLDS_ROWS.test(name)) {
      if (isFile) files[name] = new Uint8Array();
      continue;
    }
    try {
      if (!isFile) throw new Error('a folder, a pipe or a link to nothing');
      const plain = name.replace(/\.gz$/i, '');
      if (Object.hasOwn(files, plain)) throw new Error('it stands there unpacked too');
      files[plain] = plain === name ? beginning(path) : unzipped(path);
    } catch (error) {
      problems.push({
        file: name,
        code: 'not-a-file',
        message: `invalid '${name}' - ${(error as Error).message}`,
        remedy: 'Put the file itself there, readable by you, or take that away.',
      });
    }
  }
  if (problems.length > 0) throw new SurveyError(problems, []);
  return files;
}

/** What a spreadsheet program puts beside a workbook that is open. */
const LOCK = '~$';

function sheetsOf(name: string, path: string): Record<string, Uint8Array> {
  const sheets = Object.entries(workbookFiles(name, beginning(path)));
  return Object.fromEntries(sheets.map(([sheet, text]) => [sheet, new TextEncoder().encode(text)]));
}

/** A file that was packed, as weather services hand them out. */
function unzipped(path: string): Uint8Array {
  return gunzipSync(beginning(path), { maxOutputLength: MOST_BYTES });
}

/** Whether a file, or a link to one, stands there; what cannot be told, such as a link to itself, is none. */
function isFileAt(path: string): boolean {
  try {
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

/** A file, or as much of it as shows that it is too large to be read. */
function beginning(path: string): Uint8Array {
  if (statSync(path).size <= MOST_BYTES) return readFileSync(path);
  const bytes = new Uint8Array(MOST_BYTES + 1);
  const file = openSync(path, 'r');
  try {
    readSync(file, bytes, 0, bytes.length, 0);
  } finally {
    closeSync(file);
  }
  return bytes;
}

/**
 * Writes a text file whole or not at all: under a passing name in the same folder, then renamed.
 * @param path - of the file
 * @param text - all of it
 * @throws Error when the folder is missing or cannot be written; nothing is left behind then
 */
export function writeAtomically(path: string, text: string): void {
  const passing = join(dirname(path), `.${basename(path)}-${randomUUID()}`);
  try {
    writeFileSync(passing, text, { flag: 'wx' });
    renameSync(passing, path);
  } catch (cause) {
    rmSync(passing, { force: true });
    throw cause;
  }
}
