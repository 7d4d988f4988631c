/** Of the listed slips and absurdities nearly all are told, and a right survey is not troubled. */
import { describe, expect, test } from 'vitest';
import { siteModel } from '../../lib/site/index.js';
import { parseSurvey, SurveyError, type Warning } from '../../lib/survey/index.js';
import { briefDemo, edited } from '../folder.js';
import { correctSurvey, filesOf } from './generated.js';
import { ABSURD, type Files, type Slip, UNIT_SLIPS } from './slips.js';

const TODAY = Date.parse('2026-01-01') / 86_400_000;
const DEMOS = ['clay-slope', 'clay-hollow'];

/** What is told of a survey, by the reader or else by the model of the site; nothing where it is refused. */
function* told(files: Files): Generator<string[] | undefined> {
  const words = (warnings: readonly Warning[]) => warnings.map(({ code, message }) => `${code} ${message}`);
  try {
    const survey = parseSurvey(files, { today: TODAY });
    yield words(survey.warnings);
    yield words(siteModel(survey, { samples: 8 }).warnings);
  } catch (error) {
    if (!(error instanceof SurveyError)) throw error;
    yield undefined;
  }
}

/** The header and three years of days: enough to doubt, and quickly read. */
const lastYears = (weather: string) => {
  const lines = weather.trim().split('\n');
  return `${[lines[0], ...lines.slice(-1096)].join('\n')}\n`;
};

describe.each(DEMOS)('%s', (name) => {
  const files = edited(briefDemo(name), 'weather.csv', lastYears);
  const before = new Set([...told(files)].flat());
  const isSilent = (slip: Slip) => {
    const slipped = slip.make(files);
    if (Object.keys(slipped).every((file) => slipped[file] === files[file])) return false;
    for (const words of told(slipped)) if (!words?.every((word) => before.has(word))) return false;
    return true;
  };

  test.each([
    ['unit slips', UNIT_SLIPS],
    ['absurdities', ABSURD],
  ])('95 of 100 %s are told or refused', (_, slips) => {
    const missed = slips.filter(isSilent);
    console.info(
      `${name}: ${missed.length} of ${slips.length} silent: ${missed.map((s) => s.name).join('; ')}`,
    );
    expect(missed.length).toBeLessThanOrEqual(0.05 * slips.length);
  });
});

test('no demo and no right survey has a doubtful fact', () => {
  const doubtful = (files: Files) => {
    const doubts = parseSurvey(files, { today: TODAY }).warnings.filter(
      ({ code }) => code === 'doubtful-value',
    );
    return doubts.map(({ file, message }) => `${file}: ${message}`);
  };
  for (const name of [...DEMOS, 'loam-terrace']) expect(doubtful(briefDemo(name))).toEqual([]);
  const right = Array.from({ length: 200 }, (_, seed) => doubtful(filesOf(correctSurvey(seed + 1))));
  expect(right.flat()).toEqual([]);
});
