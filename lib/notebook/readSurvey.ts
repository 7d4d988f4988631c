import { basename, resolve } from 'node:path';
import { parseSurvey, type Survey } from '../survey/index.js';
import { readFolder } from './files.js';

/**
 * Reads a survey folder. Its name stands for the site where `site.csv` gives none.
 * @param folder path of a folder with the survey's CSV files
 * @returns what {@link siteModel} takes
 * @throws SurveyError with every problem found, each with file, line, column and remedy
 * @throws Error when the folder is missing or cannot be read
 */
export function readSurvey(folder: string): Survey {
  return parseSurvey(readFolder(folder), { name: basename(resolve(folder)) });
}
