/** The steps of invented gardens, worked out again from their print. */
import { parseSurvey, SurveyError } from '../../lib/survey/index.js';
import { generatedGarden } from '../guard/generate.js';
import { missedOf } from './covered.js';
import { problemsOf, stepsOf } from './parse.js';
import { printed } from './printed.js';

/** What is wrong with the printed steps of gardens by their seed; none where nothing is. A garden that cannot be read has no page. */
export function wrongGardens(seeds: number[]): { read: number; wrong: Record<number, string[]> } {
  const wrong: Record<number, string[]> = {};
  let read = 0;
  for (const seed of seeds) {
    const { files } = generatedGarden(seed);
    try {
      parseSurvey(files, { name: 'garden' });
    } catch (error) {
      if (error instanceof SurveyError) continue;
      throw error;
    }
    read++;
    const { text, card, beside } = printed(files, 32);
    const page = text('metric');
    const problems = [...problemsOf(page, beside), ...missedOf(page, card('metric'), stepsOf(page))];
    if (problems.length > 0) wrong[seed] = problems;
  }
  return { read, wrong };
}
