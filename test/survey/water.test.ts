import { describe, expect, test } from 'vitest';
import { problem, problems, read, warnings } from './folder.js';

describe('water.csv', () => {
  const water = (rows: string, header = 'pit,date,time,reading,depth_m,hole_depth_m,hole_diameter_cm') => ({
    'water.csv': `${header}\n${rows}\n`,
  });
  const looks = (rows: string, header?: string) => read(water(rows, header)).looks;

  test('days since 1970, noon where no time is given, the floor carried on', () => {
    const [opened, dry, level] = looks(
      'P1,2024-10-20,14:00,opened,2,,10\nP1,2024-11-03,09:00,dry,,,\nP1,2024-11-10,,level,1.9,,\n',
    );
    // 2024-10-20 is day 20016: 54 years of 365 days, 14 leap days of 1972 to 2024, 293 days before it in its year.
    expect(opened).toMatchObject({
      day: 54 * 365 + 13 + 293 + 14 / 24,
      depth: 2,
      holeDepth: 2,
      holeDiameter: 0.1,
    });
    expect(dry).toMatchObject({ day: 20_030 + 9 / 24, holeDepth: 2, holeDiameter: 0.1 });
    expect(dry?.depth).toBeUndefined();
    expect(level).toMatchObject({ day: 20_037.5, depth: 1.9, holeDepth: 2 });
  });

  test('depths from a mark on the pipe are brought to the ground', () => {
    const [look] = looks(
      'P1,2024-11-03,level,1.5,2.4,1.8,30',
      'pit,date,reading,depth_m,hole_depth_m,open_from_m,pipe_top_cm',
    );
    expect(look).toMatchObject({
      depth: expect.closeTo(1.2, 12),
      holeDepth: expect.closeTo(2.1, 12),
      openFrom: expect.closeTo(1.5, 12),
    });
  });

  test('the pond, its dip pipe and the dig', () => {
    const levels = 'point,role,level_ft\npond,pond,99 ft 10 in\ndip,dip-pipe,100\nA,rim,100\n';
    const rows = 'pond,2025-02-10,level,2,\nDip Pipe,2025-02-10,level,-2.5,\ndig,2025-02-10,level,30,yes\n';
    const survey = read({ ...water(rows, 'pit,date,reading,depth_in,covered'), 'levels.csv': levels });
    expect(survey.looks.map(({ pit, covered }) => [pit, covered])).toEqual([
      ['pond', undefined],
      ['dip-pipe', undefined],
      ['dig', 'yes'],
    ]);
    expect(survey.looks[1]?.depth).toBeCloseTo(-0.0635, 12);
  });

  test.each<[string, string, string, number, string, RegExp]>([
    [
      'a date of another form',
      'P1,03/11/2024,,level,1,2,',
      'ambiguous-date',
      2,
      'date',
      /2024-03-11 or 2024-11-03/,
    ],
    ['no such day', 'P1,2023-02-29,,level,1,2,', 'invalid-date', 2, 'date', /2024-11-03/],
    ['no such time', 'P1,2024-11-03,25:00,level,1,2,', 'invalid-time', 2, 'time', /09:00/],
    ['an unknown reading', 'P1,2024-11-03,,levle,1,2,', 'unknown-word', 2, 'reading', /'level'/],
    ['a level without depth', 'P1,2024-11-03,,level,,2,', 'missing-value', 2, 'depth_m', /dry/],
    ['dry, and a level', 'P1,2024-11-03,,dry,1.5,2,', 'contradiction', 2, 'depth_m', /hole_depth/],
    [
      'dry, nobody knows how deep',
      'P1,2024-11-03,,dry,,,',
      'missing-value',
      2,
      'hole_depth_m',
      /floor's depth/,
    ],
    [
      'below the floor',
      'P1,2024-11-02,,opened,2,,\nP1,2024-11-03,,level,2.1,,',
      'below-floor',
      3,
      'depth_m',
      /same mark/,
    ],
    ['two floors', 'P1,2024-11-02,,opened,2,2.2,', 'below-floor', 2, 'depth_m', /same mark/],
    [
      'said twice',
      'P1,2024-11-03,09:00,level,1,2,\nP1,2024-11-03,09:00,level,1.1,2,',
      'contradiction',
      3,
      'depth_m',
      /Keep/,
    ],
    ['the pond is not dug', 'pond,2024-11-03,,bailed,0.1,,', 'unknown-word', 2, 'reading', /'level'/],
    [
      'opened some time that day',
      'P1,2024-11-03,,opened,2,2,\nP1,2024-11-03,09:00,level,1,2,',
      'missing-time',
      2,
      'time',
      /both rows/,
    ],
  ])('%s', (_name, rows, code, line, column, remedy) => {
    const levels = 'point,role,level_m\nA,rim,10\npond,pond,10\n';
    expect(problem({ ...water(rows), 'levels.csv': levels })).toMatchObject({
      code,
      file: 'water.csv',
      line,
      column,
      remedy: expect.stringMatching(remedy),
    });
  });

  test('five centimetres below the floor is the tape, six is not', () => {
    expect(looks('P1,2024-11-03,,level,2.05,2,')).toHaveLength(1);
    expect(problems(water('P1,2024-11-03,,level,2.06,2,'))).toHaveLength(1);
  });

  test('depths of the pond need its level', () => {
    expect(problem(water('pond,2024-11-03,,level,0.1,,'))).toMatchObject({
      code: 'missing-level',
      file: 'water.csv',
      line: 2,
      expected: 'pond',
      remedy: expect.stringContaining('levels.csv'),
    });
  });

  test('dates out of order are sorted with a warning, pits may follow each other', () => {
    const rows = 'P1,2024-11-03,,level,1,2,\nP1,2024-11-17,,level,1.2,2,\nP2,2024-11-03,,level,1,2,\n';
    const noted = (survey: ReturnType<typeof read>) =>
      survey.warnings.filter(({ code }) => code !== 'hole-without-ground');
    expect(noted(read(water(rows)))).toEqual([]);
    const survey = read(water(`${rows}P2,2024-11-01,,level,0.9,2,\n`));
    expect(noted(survey)).toMatchObject([{ code: 'out-of-order', file: 'water.csv', line: 5 }]);
    const days = survey.looks.map((look) => look.day);
    expect(days).toEqual([...days].sort((a, b) => a - b));
  });

  test('a hole named otherwise than in pits.csv is told', () => {
    expect(warnings(water('p1,2024-11-03,,level,1,2,'))).toMatchObject([
      {
        code: 'unknown-pit',
        file: 'water.csv',
        line: 2,
        message: expect.stringContaining("did you mean 'P1'?"),
      },
    ]);
  });

  test('a hole that no row of pits.csv describes is told once, with what to do', () => {
    expect(warnings(water('A7,2024-11-03,,level,1,2,\nA7,2024-11-10,,level,1,2,'))).toMatchObject([
      {
        code: 'hole-without-ground',
        file: 'water.csv',
        line: 2,
        message: expect.stringMatching(/'A7'.*not known.*pits\.csv$/),
      },
    ]);
  });
});

describe('soakage.csv', () => {
  const soakage = (rows: string) => ({
    'soakage.csv': `pit,test,minutes,depth_to_water_cm,hole_depth_cm,hole_diameter_cm,soaked_before\n${rows}\n`,
  });

  test('what is said of the hole once holds for the test', () => {
    expect(read(soakage('S1,1,0,10,60,30,yes\nS1,1,1 h 30 min,25,,,\nS1,2,0,12,,,')).soakage).toMatchObject([
      { test: '1', time: 0, depthToWater: 0.1, holeDepth: 0.6, holeDiameter: 0.3, soakedBefore: 'yes' },
      { test: '1', time: 5400, depthToWater: 0.25, holeDepth: 0.6, holeDiameter: 0.3, soakedBefore: 'yes' },
      { test: '2', holeDepth: undefined },
    ]);
  });

  test.each<[string, string, string, number, string]>([
    ['below the floor', 'S1,1,0,10,60,30,\nS1,1,5,70,,,', 'below-floor', 3, 'depth_to_water_cm'],
    ['said twice', 'S1,1,0,10,60,30,\nS1,1,5,20,,,\nS1,1,5,21,,,', 'contradiction', 4, 'depth_to_water_cm'],
    ['before the start', 'S1,1,-5,10,60,30,', 'outside-range', 2, 'minutes'],
    ['not a time', 'S1,1,5 m,10,60,30,', 'wrong-unit', 2, 'minutes'],
  ])('%s', (_name, rows, code, line, column) => {
    expect(problem(soakage(rows))).toMatchObject({
      code,
      file: 'soakage.csv',
      line,
      column,
      remedy: expect.stringMatching(/\.$/),
    });
  });

  test('a single look and rising water are told', () => {
    expect(warnings(soakage('S1,1,0,10,60,30,\nS1,1,5,9,,,\nS1,2,0,10,60,30,'))).toMatchObject([
      { code: 'rising-water', line: 3 },
      { code: 'short-test', line: 4 },
    ]);
  });
});
