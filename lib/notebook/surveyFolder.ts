/** A survey folder to fill in, and a sheet to take outside. */

import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  renameSync,
  rmdirSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { type GivenSurvey, surveyFiles } from '../survey/index.js';
import type { UnitSystem } from '../units/index.js';
import { EnvironmentError } from './environmentError.js';
import { fieldSheetHtml } from './fieldSheet.js';
import { surveyTemplates } from './templates.js';

/** The sheet's name in the folder; the reader of surveys passes over it. */
export const FIELD_SHEET = 'field-sheet.html';

/**
 * Makes a survey folder of templates and the printable field sheet, whole or not at all.
 * @param folder must not exist, or be empty: nothing is ever written over
 * @param units in which the files ask
 * @returns the names of the files written
 * @throws EnvironmentError when the folder holds anything, Error when it cannot be written
 */
export function newSurvey(folder: string, units: UnitSystem): string[] {
  return writeNew(folder, { ...surveyTemplates(units), [FIELD_SHEET]: fieldSheetHtml(units) });
}

/**
 * Writes a survey that is given as an object into a folder of its own, whole or not at all; `readSurvey` of it is the
 * same survey as `surveyFrom` of the object.
 * @param folder must not exist, or be empty: nothing is ever written over
 * @param given facts and rows
 * @returns the names of the files written
 * @throws EnvironmentError when the folder holds anything, Error when it cannot be written
 */
export function writeSurvey(folder: string, given: GivenSurvey): string[] {
  return writeNew(folder, surveyFiles(given));
}

function writeNew(folder: string, files: Readonly<Record<string, string>>): string[] {
  if (existsSync(folder) && readdirSync(folder).length > 0)
    throw new EnvironmentError(
      'folder-not-empty',
      `invalid folder '${folder}': it is not empty. Name a new one; nothing was written`,
    );
  mkdirSync(dirname(folder), { recursive: true });
  const passing = mkdtempSync(`${folder}-`);
  try {
    for (const [name, text] of Object.entries(files)) {
      mkdirSync(dirname(join(passing, name)), { recursive: true });
      writeFileSync(join(passing, name), text, { flag: 'wx' });
    }
    if (existsSync(folder)) rmdirSync(folder);
    renameSync(passing, folder);
  } catch (cause) {
    rmSync(passing, { recursive: true, force: true });
    throw cause;
  }
  return Object.keys(files);
}
