/** A survey as an object: the same as through files, to and from them. */
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { readSurvey } from '../../lib/notebook/readSurvey.js';
import { writeSurvey } from '../../lib/notebook/surveyFolder.js';
import { resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import {
  formatProblem,
  type GivenSurvey,
  givenSurvey,
  parseSurvey,
  type Survey,
  SurveyError,
  surveyFiles,
  surveyFrom,
} from '../../lib/survey/index.js';
import { briefDemo } from '../folder.js';
import { passingFolder } from '../notebook/notebooks.js';
import { correctSurvey, filesOf } from './generated.js';
import { SAVED, save } from './spreadsheets.js';

const GARDEN: GivenSurvey = {
  site: { name: 'Invented Lawn', latitude: 52, uphill_cover: 'lawn', life: 25 },
  pond: {
    shape: 'box',
    depth: '1.2 m',
    length: '14 ft',
    width: '3 m 10 cm',
    emptied_in: [3, 9],
    accepted_risk: 0.02,
  },
  pits: [
    { pit: 'P1', top: 0, bottom: '28 cm', texture: 'clay loam', note: 'dark, with "roots"' },
    { pit: 'P1', top: '28 cm', bottom: '6 ft', texture: 'clay', mottles: 'grey', ksat: '2e-8 m/s' },
  ],
  water: [
    { pit: 'P1', date: '2024-01-10', time: '9am', reading: 'opened', depth: '1.8 m' },
    { pit: 'P1', date: '2024-03-10', time: '09:00', reading: 'level', depth: '0.4 m' },
  ],
  heads: [{ place: 'site', month: 3, depth: '0.3 m', spread: '0.1 m' }],
};

/** What a survey says, without where it stood. */
const said = ({
  digest: _digest,
  digests: _digests,
  origins: _origins,
  warnings: _warnings,
  ...rest
}: Survey) => JSON.parse(JSON.stringify(rest, (key, value) => (key === 'origin' ? undefined : value)));

const failure = (given: unknown) => {
  try {
    surveyFrom(given as GivenSurvey);
  } catch (error) {
    if (error instanceof SurveyError) return error.problems.map(formatProblem);
    throw error;
  }
  throw new Error('it was read');
};

test('facts and rows in SI', () => {
  const survey = surveyFrom(GARDEN);
  expect(survey.pond).toMatchObject({
    depth: 1.2,
    length: expect.closeTo(4.2672, 12),
    width: 3.1,
    emptied_in: [3, 9],
  });
  expect(survey.layers[1]).toMatchObject({ bottom: expect.closeTo(1.8288, 12), ksat: 2e-8 });
  expect(survey.warnings).toEqual([]);
});

test('through a folder and through the object the result is the same to the byte', () => {
  const folder = join(passingFolder(), 'garden');
  writeSurvey(folder, GARDEN);
  const result = (survey: Survey) =>
    JSON.stringify(resultOf(judge(siteModel(survey, { seed: 1, samples: 32 }))));
  expect(result(readSurvey(folder))).toBe(result(surveyFrom(GARDEN)));
});

describe('from files and back', () => {
  test.each(['clay-hollow', 'clay-slope', 'loam-terrace'])('%s says the same', (name) => {
    const files = briefDemo(name);
    const given = givenSurvey(files);
    expect(said(surveyFrom(given, { name }))).toEqual(said(parseSurvey(files, { name })));
    // What comes of an object stands still.
    expect(givenSurvey(surveyFiles(given) as Record<string, string>)).toEqual(given);
  });

  test('generated surveys, typed and as spreadsheets of any region save them', () => {
    for (let seed = 1; seed <= 24; seed++) {
      const typed = correctSurvey(seed);
      const how = SAVED[seed % SAVED.length]!;
      const saved = Object.fromEntries(
        Object.entries(typed).map(([name, sheet]) => [name, save(sheet, how)]),
      );
      for (const files of [filesOf(typed), saved]) {
        let survey: Survey;
        try {
          survey = parseSurvey(files);
        } catch {
          continue;
        }
        expect(said(surveyFrom(givenSurvey(files))), `seed ${seed}, ${how.name}`).toEqual(said(survey));
      }
    }
  });
});

describe('what is wrong is placed by its property', () => {
  test.each<[string, unknown, RegExp]>([
    [
      'a unit missing',
      { ...GARDEN, pond: { ...GARDEN.pond, margin: 5 } },
      /^pond\.margin: missing unit in '5'.*Write m, cm/,
    ],
    [
      'an item unknown',
      { ...GARDEN, pond: { ...GARDEN.pond, lenght: '4 m' } },
      /^pond\.lenght: unknown item 'lenght'.*'length'/,
    ],
    [
      'a cell',
      { ...GARDEN, pits: [{ ...GARDEN.pits![0], bottom: '0.3' }, GARDEN.pits![1]] },
      /^pits\[0\] bottom: missing unit in '0\.3'/,
    ],
    [
      'a column',
      { ...GARDEN, pits: [{ ...GARDEN.pits![0], colour: 'red' }, GARDEN.pits![1]] },
      /^pits colour: unknown column 'colour'/,
    ],
    [
      'a word',
      { ...GARDEN, pits: [{ pit: 'P1', top: 0, bottom: '2 m', texture: 'caly' }] },
      /^pits\[0\] texture: .*'clay'/,
    ],
    ['a fact needed', { pits: GARDEN.pits, pond: {} }, /^pond: missing file 'pond\.csv'/],
  ])('%s', (_name, given, told) => {
    expect(failure(given)).toEqual([expect.stringMatching(told)]);
  });
});

test('types know the names and words', () => {
  // @ts-expect-error no such shape
  const shape: GivenSurvey = { pond: { shape: 'kidney' } };
  // @ts-expect-error no such item
  const item: GivenSurvey = { pond: { lenght: '4 m' } };
  // @ts-expect-error a layer has a bottom
  const layer: GivenSurvey = { pond: {}, pits: [{ pit: 'P1', top: 0 }] };
  expect([shape, item, layer]).toHaveLength(3);
});
