import { describe, expect, test } from 'vitest';
import { parseSurvey, SurveyError, type Warning } from '../../lib/survey/index.js';
import { correctSurvey, Dice, filesOf, type Sheet, type Sheets } from './generated.js';

const FACTOR = 3.28084;
/** Columns of depths, by file. */
const DEPTHS: Record<string, string[]> = {
  'pits.csv': ['top', 'bottom'],
  'water.csv': ['depth', 'hole_depth', 'open_from'],
  'soakage.csv': ['depth_to_water', 'hole_depth'],
  'heads.csv': ['depth'],
};

interface Slip {
  file: string;
  at: number;
  column: string;
  times: number;
}

/** Every column of depths that says something, in feet called metres and in metres called feet. */
function slipsIn(sheets: Sheets): Slip[] {
  return Object.entries(DEPTHS).flatMap(([file, columns]) => {
    const sheet = sheets[file];
    if (!sheet) return [];
    return columns.flatMap((column) => {
      const at = sheet.header.findIndex((name) => name === `${column}_m` || name === `${column}_ft`);
      const said = sheet.rows.some((row) => Number(row[at]) > 0);
      return said ? [FACTOR, 1 / FACTOR].map((times) => ({ file, at, column, times })) : [];
    });
  });
}

function slipped(sheets: Sheets, { file, at, times }: Slip): Sheets {
  const sheet = sheets[file] as Sheet;
  const rows = sheet.rows.map((row) =>
    row.map((cell, column) =>
      column === at && cell !== '' ? String(Number((Number(cell) * times).toFixed(2))) : cell,
    ),
  );
  return { ...sheets, [file]: { ...sheet, rows } };
}

function doubts(sheets: Sheets): { doubts: Warning[]; refused: boolean } {
  const of = (warnings: readonly Warning[]) => warnings.filter(({ code }) => code === 'unit-doubt');
  try {
    return { doubts: of(parseSurvey(filesOf(sheets)).warnings), refused: false };
  } catch (error) {
    if (!(error instanceof SurveyError)) throw error;
    return { doubts: of(error.warnings), refused: true };
  }
}

describe('a column in the wrong unit', () => {
  const surveys = Array.from({ length: 200 }, (_, seed) => correctSurvey(seed + 1));

  test('at most 3 % of 200 correct surveys are doubted', () => {
    const answers = surveys.map(doubts);
    expect(answers.filter(({ refused }) => refused)).toHaveLength(0);
    const wrong = answers.filter((answer) => answer.doubts.length > 0);
    for (const { doubts } of wrong) console.info(doubts.map(({ message }) => message).join('; '));
    console.info(`correct surveys doubted: ${wrong.length} of 200`);
    expect(wrong.length).toBeLessThanOrEqual(6);
  });

  test('a factor of 3.28 in any one column of depths is told in at least 90 % of trials', () => {
    const trials = surveys.flatMap((sheets, seed) => {
      const dice = new Dice(1000 + seed);
      const slips = slipsIn(sheets);
      return Array.from({ length: 3 }, () => {
        const slip = dice.one(slips);
        const answer = doubts(slipped(sheets, slip));
        return { ...slip, ...answer, told: answer.doubts.length > 0 };
      });
    });
    const share = (of: typeof trials) => of.filter(({ told }) => told).length / of.length;
    for (const [file, columns] of Object.entries(DEPTHS))
      for (const column of columns)
        for (const times of [FACTOR, 1 / FACTOR]) {
          const here = trials.filter(
            (one) => one.file === file && one.column === column && one.times === times,
          );
          const refused = here.filter((one) => !one.told && one.refused).length;
          console.info(
            `${file} ${column} x${times.toFixed(2)}: ${(share(here) * 100).toFixed(0)} % of ${here.length}, ${refused} more refused`,
          );
        }
    console.info(`told: ${(share(trials) * 100).toFixed(1)} % of ${trials.length} trials`);
    expect(share(trials)).toBeGreaterThanOrEqual(0.9);
  });
});
