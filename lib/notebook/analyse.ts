/** From a survey folder to its output folder: the worked notebook where it can be run, the answer without it elsewhere. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Result } from '../contract/index.js';
import { assess } from '../decision/index.js';
import { siteModel } from '../site/index.js';
import { noticeLines, type Survey } from '../survey/index.js';

import { answerLines } from '../text/answerLines.js';
import { cellProgress } from '../text/commandWords.js';
import { writeAtomically } from './files.js';
import { passingFolder, takePlace } from './outFolder.js';
import { OWNER, outPlace, ownerOf } from './outPlace.js';
import { OUTPUTS, writeOutputs } from './outputs.js';
import { progress } from './progress.js';
import { PROJECT } from './project.js';
import { readSurvey, surveyFolder } from './readSurvey.js';
import { runNotebook } from './run.js';

const NOTEBOOK = 'worked-analysis.ipynb';
/** What a run may leave, with the notebook or without. */
const SET = [NOTEBOOK, OWNER, ...OUTPUTS];
const NOTEBOOK_PATH = join(PROJECT, 'notebooks', NOTEBOOK);

/** The survey that is analysed where none is named; absent in a package from the registry. */
export const DEMO = join(PROJECT, 'datasets', 'clay-slope');

/** What a run left. */
interface Analysed {
  /** the output folder */
  out: string;
  /** the answer in five lines */
  lines: string[];
  /** what was given and not used, and what else is worth telling, under headings */
  noticed: string[];
}

/** Whether the worked notebook and its kernel are here. */
function notebookRuns(): boolean {
  if (!existsSync(NOTEBOOK_PATH)) return false;
  try {
    for (const name of ['tslab', 'zeromq', 'danfojs', 'plotly.js-dist-min']) import.meta.resolve(name);
    return true;
  } catch {
    return false;
  }
}

/**
 * Analyses a survey and puts what it makes in the place of what an earlier run of the same survey left.
 * @param path of the survey's folder, or of a file in it
 * @param parent of output folders
 * @param quick without the notebook, even where it can be run
 * @throws SurveyError when the survey is refused, Error when a folder is missing or cannot be written
 */
export async function analyse(path: string, parent: string, quick: boolean): Promise<Analysed> {
  const folder = surveyFolder(path);
  progress(`reading ${folder}`);
  // A survey that is refused never gets as far as a kernel.
  const survey = readSurvey(folder);
  const out = outPlace(folder, parent);
  const passing = passingFolder(out, SET);
  const made =
    quick || !notebookRuns() ? await answer(survey, folder, passing) : await worked(folder, passing);
  const missing = made.filter((name) => !existsSync(join(passing, name)));
  if (missing.length > 0) throw new Error(`missing ${missing.join(', ')}: ${NOTEBOOK} did not write it`);
  const result = JSON.parse(readFileSync(join(passing, 'result.json'), 'utf8')) as Result;
  writeAtomically(join(passing, OWNER), ownerOf(folder));
  takePlace(passing, out, SET);
  return {
    out,
    lines: answerLines(result, survey.site.show_units ?? 'metric'),
    noticed: noticeLines(result.warnings),
  };
}

async function worked(folder: string, passing: string): Promise<string[]> {
  const notebook = await runNotebook(NOTEBOOK_PATH, {
    env: { UNDERPOND_SURVEY: folder, UNDERPOND_OUT: passing },
    onProgress: (cell, cells, heading) => progress(cellProgress(cell, cells, heading)),
  });
  writeAtomically(join(passing, NOTEBOOK), `${JSON.stringify(notebook, null, 1)}\n`);
  return [NOTEBOOK, ...OUTPUTS];
}

async function answer(survey: Survey, folder: string, passing: string): Promise<string[]> {
  progress('water through the years');
  const site = siteModel(survey, { seed: 1 });
  progress('chances of every option');
  const assessment = assess(site);
  progress('page');
  await writeOutputs(assessment, passing, folder);
  return [...OUTPUTS];
}
