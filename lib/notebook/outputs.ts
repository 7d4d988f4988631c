/** What an analysis leaves in a folder besides its notebook. */
import { join } from 'node:path';
import { pageHtml, waterYearCsv } from '../page/index.js';
import { type Assessment, reportOf, workedSheet } from '../risk/index.js';
import { writeAtomically } from './files.js';
import { plotlySource } from './plotly.js';

/** The files that `writeOutputs` makes. */
export const OUTPUTS = ['page.html', 'water-year.csv', 'result.json'] as const;

/**
 * Writes the shareable page, the water year and the result of an assessment, each whole or not at all.
 * @param folder must exist
 * @throws Error when the folder is missing or cannot be written, or plotly.js-dist-min is missing
 */
export async function writeOutputs(assessment: Assessment, folder: string): Promise<void> {
  const report = reportOf(assessment);
  const texts: Record<(typeof OUTPUTS)[number], string> = {
    'page.html': pageHtml(report, { plotly: await plotlySource(), worked: workedSheet(assessment) }),
    'water-year.csv': waterYearCsv(report),
    'result.json': `${JSON.stringify(report.result, null, 2)}\n`,
  };
  for (const name of OUTPUTS) writeAtomically(join(folder, name), texts[name]);
}
