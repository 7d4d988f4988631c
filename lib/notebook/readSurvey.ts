import { statSync } from 'node:fs';
import { basename, dirname, resolve } from 'node:path';
import { parseSurvey, type Survey } from '../survey/index.js';
import { readFolder } from './files.js';
import { photoWarnings } from './photos.js';

/**
 * The folder of a survey: a path to one of its files is as good as one to the folder.
 * @param path of either
 */
export function surveyFolder(path: string): string {
  const found = resolve(path);
  return statSync(found, { throwIfNoEntry: false })?.isFile() ? dirname(found) : found;
}

/**
 * Reads a survey folder. Its name stands for the site where `site.csv` gives none.
 * @param path of a folder with the survey's CSV files, or of one of them
 * @returns what {@link siteModel} takes; photos that will not be shown are among its warnings
 * @throws SurveyError with every problem found, each with file, line, column and remedy
 * @throws EnvironmentError when the folder is missing, Error when it cannot be read
 */
export function readSurvey(path: string): Survey {
  const folder = surveyFolder(path);
  const survey = parseSurvey(readFolder(folder), { name: basename(folder) });
  return { ...survey, warnings: [...survey.warnings, ...photoWarnings(survey, folder)] };
}
