/** Surveys with mistakes, as spreadsheets of any region save them: read or refused in words, and to an object and back. */

import { expect, test } from 'vitest';
import { givenSurvey, parseSurvey, type Survey, SurveyError, surveyFrom } from '../../lib/survey/index.js';
import { WHOLE } from '../sweep.js';
import { correctSurvey, Dice } from './generated.js';
import { mutated } from './mutations.js';
import { SAVED, type Saved, save } from './spreadsheets.js';

type Files = Record<string, string | Uint8Array>;

/** Cells are split at commas, quoted or not: one more mistake. */
function savedSo(files: Files, how: Saved, dice: Dice): Files {
  return Object.fromEntries(
    Object.entries(files).map(([name, text]) => {
      if (typeof text !== 'string') return [name, text];
      const [header = [], ...rows] = text
        .trimEnd()
        .split('\n')
        .map((line) => line.split(','));
      return [dice.chance(0.1) ? name.toUpperCase() : name, save({ header, rows }, how)];
    }),
  );
}

const said = ({
  digest: _digest,
  digests: _digests,
  origins: _origins,
  warnings: _warnings,
  files: _files,
  ...rest
}: Survey) => JSON.parse(JSON.stringify(rest, (key, value) => (key === 'origin' ? undefined : value)));

/** Surveys to try. */
const COUNT = WHOLE ? 300 : 120;

test(`${COUNT} surveys`, () => {
  const tally = { read: 0, refused: 0 };
  for (let seed = 1; seed <= COUNT; seed++) {
    const dice = new Dice(seed * 31);
    const how = dice.one(SAVED);
    const files = savedSo(mutated(correctSurvey(seed), dice), how, dice);
    const name = `seed ${seed}, ${how.name}`;
    try {
      const survey = parseSurvey(files);
      expect(said(surveyFrom(givenSurvey(files))), name).toEqual(said(survey));
      tally.read++;
    } catch (error) {
      if (!(error instanceof SurveyError)) throw new Error(name, { cause: error });
      tally.refused++;
      for (const { file, message, remedy, line } of error.problems) {
        expect(message, name).toMatch(/^(invalid|unknown|missing|outside) /);
        expect(remedy, name).toMatch(/[.?]$/);
        expect(file, name).not.toBe('');
        expect(line ?? 1, name).toBeGreaterThanOrEqual(1);
      }
    }
  }
  // Both ways out are tried often.
  expect(tally.read).toBeGreaterThan(COUNT / 5);
  expect(tally.refused).toBeGreaterThan(COUNT / 5);
});
