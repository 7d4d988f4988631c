/** Which files of a folder belong to a survey. */

import type { Findings } from './problem.js';
import { readSheet, type Sheet } from './sheet.js';
import { suggest } from './suggest.js';

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

const NO_DATA = /(^|\/)(\.[^/]*|readme[^/]*|[^/]*\.(md|html?|pdf|jpe?g|png|webp|heic|gif))$/i;

/**
 * Opens the files of the contract, reports the others and refuses a folder in which a needed one is missing.
 * @param files everything in the folder, by name
 */
export function openFolder(
  files: Readonly<Record<string, string | Uint8Array>>,
  findings: Findings,
): Partial<Record<SurveyFile, Sheet>> {
  const strays = Object.keys(files).filter((name) => !isSurveyFile(name) && !NO_DATA.test(name));
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
  if (files['pond.csv'] === undefined) {
    refuseMissing(
      'pond.csv',
      'the pond is not described',
      'Add it, with at least its depth, length and width.',
    );
  }
  if (files['pits.csv'] === undefined && files['heads.csv'] === undefined) {
    refuseMissing(
      'pits.csv',
      'neither the ground nor its water is described',
      'Add pits.csv (layers in a hole) or heads.csv (water levels known).',
    );
  }
  const sheets: Partial<Record<SurveyFile, Sheet>> = {};
  for (const file of SURVEY_FILES) {
    const content = files[file];
    if (content !== undefined) sheets[file] = readSheet(file, content, findings);
  }
  return sheets;
}

export function isSurveyFile(name: string): name is SurveyFile {
  return (SURVEY_FILES as readonly string[]).includes(name);
}
