/** Runs the library on a folder's files, as the guard is to judge it. */
import { judge } from '../../lib/decision/index.js';
import { resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { parseSurvey } from '../../lib/survey/index.js';
import type { Told } from './told.js';

/** Few, for speed: a danger by a wide margin does not hide between them. */
const SAMPLES = 64;

export function asTold(files: Record<string, string | Uint8Array>, samples = SAMPLES): Told {
  return resultOf(judge(siteModel(parseSurvey(files, { name: 'guarded' }), { seed: 1, samples })));
}
