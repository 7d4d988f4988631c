/** The page of a survey, written to a file that is gone when the test is over. */
import { rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { onTestFinished } from 'vitest';
import { type Assessment, assess } from '../../lib/decision/index.js';
import { liveScript } from '../../lib/notebook/liveScript.js';
import { type PrivatePart, pageHtml } from '../../lib/page/index.js';
import { reportOf, workedSheet } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import type { Survey } from '../../lib/survey/index.js';

const SEED = 1;
const SAMPLES = 64;
let count = 0;

const made = new Map<string, Assessment>();

/** The assessment of a survey, made once however often it is asked for. */
export function assessmentOf(survey: Survey): Assessment {
  const key = JSON.stringify(survey);
  const assessment = made.get(key) ?? assess(siteModel(survey, { seed: SEED, samples: SAMPLES }));
  made.set(key, assessment);
  return assessment;
}

/** HTML of the page with its what-if. */
export async function demoPage(
  survey: Survey,
  photos: Record<string, string> = {},
  leftOut: PrivatePart[] = [],
): Promise<string> {
  const assessment = assessmentOf(survey);
  return pageHtml(reportOf(assessment), {
    worked: workedSheet(assessment),
    version: '0.0.0',
    photos,
    live: { script: await liveScript(), survey, seed: SEED, samples: SAMPLES },
    leftOut,
  });
}

/** Address of a file that holds a text. */
export function fileOf(html: string): string {
  const file = join(tmpdir(), `underpond-page-${process.pid}-${count++}.html`);
  onTestFinished(() => rmSync(file, { force: true }));
  writeFileSync(file, html);
  return pathToFileURL(file).href;
}
