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
import { basename, dirname, extname, join } from 'node:path';
import { MOST_BYTES } from '../survey/index.js';

/**
 * The files of a folder by name, CSV files as bytes, of others (photos, notes) the name alone. Hidden files and
 * subfolders are no part of a survey.
 * @param folder - path of the survey
 * @returns bytes by file name
 * @throws Error when the folder is missing or cannot be read
 */
export function readFolder(folder: string): Record<string, Uint8Array> {
  if (!statSync(folder, { throwIfNoEntry: false })?.isDirectory())
    throw new Error(`missing folder '${folder}': name a folder that holds the CSV files of a survey`);
  return Object.fromEntries(
    readdirSync(folder, { withFileTypes: true })
      .map((entry) => entry.name)
      .filter(
        (name) => !name.startsWith('.') && statSync(join(folder, name), { throwIfNoEntry: false })?.isFile(),
      )
      .sort()
      .map((name) => [name, extname(name) === '.csv' ? beginning(join(folder, name)) : new Uint8Array()]),
  );
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
