import { resolve } from 'node:path';
import { changesText } from '../page/index.js';
import { assess, reportOf } from '../risk/index.js';
import { siteModel } from '../site/index.js';
import { readSurvey } from './readSurvey.js';

/**
 * What changed between two survey folders: inputs, decision, depth and chances, as text.
 * @param from where relative paths start
 * @throws SurveyError when a survey is refused, Error when a folder is missing
 */
export function compareFolders(from: string, before: string, after: string): string {
  const cases = [before, after].map((folder) => {
    const survey = readSurvey(resolve(from, folder));
    return { survey, report: reportOf(assess(siteModel(survey, { seed: 1 }))) };
  });
  return changesText(cases[0]!, cases[1]!);
}
