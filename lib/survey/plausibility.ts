/** Every fact judged against the others of the survey. */

import { levelDoubts } from './levelDoubts.js';
import { lookDoubts } from './lookDoubts.js';
import { pondDoubts } from './pondDoubts.js';
import type { Findings } from './problem.js';
import type { Survey } from './survey.js';
import { weatherDoubts } from './weatherDoubts.js';

/**
 * Warns of facts that fit none of the others, each once.
 * @param survey as far as it could be read
 * @param today days since 1970-01-01
 */
export function checkPlausibility(survey: Survey, today: number, findings: Findings): void {
  const doubts = [
    ...pondDoubts(survey),
    ...levelDoubts(survey),
    ...lookDoubts(survey, today),
    ...weatherDoubts(survey, today),
  ];
  for (const { where, message } of doubts)
    findings.warn({ ...where, code: 'doubtful-value', message: `doubtful - ${message}` });
}
