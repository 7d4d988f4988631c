import { basename, join } from 'node:path';
import { assess } from '../decision/index.js';
import { TableFits } from '../groundwater/index.js';
import { type Case, changesPage, changesText } from '../page/index.js';
import { reportOf } from '../report/index.js';
import { siteModel } from '../site/index.js';
import { noticeLines, type Survey, SurveyError } from '../survey/index.js';
import { writeAtomically } from './files.js';
import { passingFolder, takePlace } from './outFolder.js';
import { OWNER, ownerOf, placeOf } from './outPlace.js';
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

/** The page of a comparison. */
const PAGE = 'compared.html';
const SET = [PAGE, OWNER];

/** What a comparison says and leaves. */
interface Compared {
  /** for the terminal */
  text: string;
  /** path of the page */
  page: string;
}

/**
 * What changed between two survey folders: inputs, decision, depth and chances, as text and as a page.
 * @param parent of output folders
 * @throws SurveyError when a survey is refused, Error when a folder is missing or cannot be written
 */
export function compareFolders(before: string, after: string, parent: string): Compared {
  const fits = new TableFits();
  const [was, is] = [before, after].map((path) => {
    const folder = surveyFolder(path);
    const survey = named(path);
    const report = reportOf(assess(siteModel(survey, { seed: 1, fits })));
    return { folder, called: basename(folder), survey, report };
  }) as [Compare, Compare];
  const noticed = [was, is].flatMap(({ called, survey }) => {
    const lines = noticeLines(survey.warnings);
    return lines.length === 0 ? [] : [`In ${called}`, ...lines, ''];
  });
  const owner = `${ownerOf(was.folder)}${ownerOf(is.folder)}`;
  const out = placeOf(`${was.called}-to-${is.called}`, owner, parent);
  const passing = passingFolder(out, SET);
  writeAtomically(join(passing, PAGE), changesPage(was, is, noticed));
  writeAtomically(join(passing, OWNER), owner);
  takePlace(passing, out, SET);
  return { text: [...noticed, changesText(was, is)].join('\n'), page: join(out, PAGE) };
}

type Compare = Case & { folder: string; called: string };
