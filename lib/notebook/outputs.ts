/** What an analysis leaves in a folder besides its notebook. */
import { join } from 'node:path';
import type { Assessment } from '../decision/index.js';
import {
  type PrivatePart,
  pageHtml,
  pondCardHtml,
  settingOutCsv,
  waterYearCsv,
  workedCsv,
  yearlyHeadsCsv,
} from '../page/index.js';
import { reportOf, workedSheet } from '../report/index.js';
import { writeAtomically } from './files.js';
import { liveScript } from './liveScript.js';
import { photosOf } from './photos.js';
import { VERSION } from './project.js';

/** The files that `writeOutputs` makes. */
export const OUTPUTS = [
  'page.html',
  'pond-card.html',
  'setting-out.csv',
  'water-year.csv',
  'worked.csv',
  'yearly-heads.csv',
  'result.json',
] as const;

/**
 * Writes the shareable page, the pond card, the setting-out table, the water year, the worked steps,
 * the simulated years behind their percentiles and the result of an assessment, each whole or not at all.
 * @param assessment - from {@link assess}
 * @param folder must exist
 * @param surveyFolder where the photos lie that `pits.csv` names; absent: none is shown
 * @param leftOut what the page is not to hold, for one that is handed on
 * @throws Error when the folder is missing or cannot be written
 */
export async function writeOutputs(
  assessment: Assessment,
  folder: string,
  surveyFolder?: string,
  leftOut: readonly PrivatePart[] = [],
): Promise<void> {
  const report = reportOf(assessment);
  const worked = workedSheet(assessment);
  const { survey, seed, water } = assessment.site;
  const live = { script: await liveScript(), survey, seed, samples: water.samples };
  const issued = new Date().toISOString().slice(0, 10);
  const photos = surveyFolder === undefined ? {} : photosOf(survey, surveyFolder);
  const texts: Record<(typeof OUTPUTS)[number], string> = {
    'page.html': pageHtml(report, { worked, version: VERSION, photos, live, leftOut, issued }),
    'pond-card.html': pondCardHtml(report),
    'setting-out.csv': settingOutCsv(report),
    'water-year.csv': waterYearCsv(report),
    'worked.csv': workedCsv(worked),
    'yearly-heads.csv': yearlyHeadsCsv(worked, water),
    'result.json': `${JSON.stringify(report.result, null, 2)}\n`,
  };
  for (const name of OUTPUTS) writeAtomically(join(folder, name), texts[name]);
}
