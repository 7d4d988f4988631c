/** Of the listed slips and absurdities in a demo survey nearly all are told. */
import { describe, expect, test } from 'vitest';
import { siteModel } from '../../lib/site/index.js';
import { parseSurvey, SurveyError, type Warning } from '../../lib/survey/index.js';
import { briefDemo, edited } from '../folder.js';
import { ABSURD, type Files, type Slip, UNIT_SLIPS } from './slips.js';

/** The day on which the demos are read, in days since 1970-01-01. */
export const TODAY = Date.parse('2026-01-01') / 86_400_000;

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

/** The tests of one demo. */
export function slipsAreTold(name: string): void {
  describe(name, () => {
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
}
