/** Reading a survey folder into memory, and writing so that nobody ever sees half a file. */
import { randomUUID } from 'node:crypto';
import { readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';

/**
 * The files of a folder by name, as bytes. Hidden files and subfolders are no part of a survey.
 * @throws Error when the folder is missing or cannot be read
 */
export function readFolder(folder: string): Record<string, Uint8Array> {
  if (!statSync(folder, { throwIfNoEntry: false })?.isDirectory())
    throw new Error(`missing folder '${folder}': name a folder that holds the CSV files of a survey`);
  return Object.fromEntries(
    readdirSync(folder, { withFileTypes: true })
      .filter((entry) => !entry.isDirectory() && !entry.name.startsWith('.'))
      .map((entry) => entry.name)
      .sort()
      .map((name) => [name, readFileSync(join(folder, name))]),
  );
}

/**
 * Writes a text file whole or not at all: under a passing name in the same folder, then renamed.
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
