import { basename } from 'node:path';
import { assess } from '../decision/index.js';
import { changesText } from '../page/index.js';
import { reportOf } from '../report/index.js';
import { siteModel } from '../site/index.js';
import { noticeLines, type Survey, SurveyError } from '../survey/index.js';
import { readSurvey, surveyFolder } from './readSurvey.js';

/** A survey, or the reasons why not with the folder they belong to. */
function named(folder: string): Survey {
  try {
    return readSurvey(folder);
  } catch (error) {
    if (error instanceof SurveyError) error.message = `${folder}: ${error.message}`;
    throw error;
  }
}

/**
 * What changed between two survey folders: inputs, decision, depth and chances, as text.
 * @throws SurveyError when a survey is refused, Error when a folder is missing
 */
export function compareFolders(before: string, after: string): string {
  const cases = [before, after].map((folder) => {
    const survey = named(folder);
    return { folder, survey, report: reportOf(assess(siteModel(survey, { seed: 1 }))) };
  });
  const noticed = cases.flatMap(({ folder, survey }) => {
    const lines = noticeLines(survey.warnings);
    return lines.length === 0 ? [] : [`In ${basename(surveyFolder(folder))}`, ...lines, ''];
  });
  return [...noticed, changesText(cases[0]!, cases[1]!)].join('\n');
}
