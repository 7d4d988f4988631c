import { describe, expect, test } from 'vitest';
import { problem, read, warnings } from './folder.js';

describe('heads.csv', () => {
  const heads = (rows: string) => ({ 'heads.csv': `place,month,depth_in,spread_in,source\n${rows}\n` });

  test('by place, months in order, above ground as given', () => {
    const survey = read(
      heads('Site,1,12,2,six winters\nsite,high,10,,\nbelow: P1,high,-16,2,pipe in the sand\nuphill,3,4,,'),
    );
    expect(survey.warnings).toEqual([]);
    expect(survey.heads).toMatchObject([
      { place: 'below:P1', month: 'high', depth: expect.closeTo(-0.4064, 12) },
      {
        place: 'site',
        month: 1,
        depth: expect.closeTo(0.3048, 12),
        spread: expect.closeTo(0.0508, 12),
        source: 'six winters',
      },
      { place: 'site', month: 'high', depth: expect.closeTo(0.254, 12) },
      { place: 'uphill', month: 3 },
    ]);
  });

  test('one level for a place and month', () => {
    expect(problem(heads('site,1,12,,\nsite,1,13,,'))).toMatchObject({
      code: 'contradiction',
      file: 'heads.csv',
      line: 3,
      column: 'depth_in',
      found: '13',
      remedy: 'Keep the row that is right.',
    });
    expect(warnings(heads('site,1,12,,\nsite,1,12,,said again'))).toMatchObject([
      { code: 'duplicate-row', line: 3 },
    ]);
  });

  test.each(['0', '13', 'Januray', 'low', '1.5'])('month %s', (month) => {
    expect(problem(heads(`site,${month},12,,`))).toMatchObject({
      code: 'invalid-month',
      line: 2,
      column: 'month',
      found: month,
    });
  });

  test('a hole no other file describes is told', () => {
    expect(warnings(heads('P7,1,12,,\nbelow:P1,1,12,,'))).toMatchObject([
      { code: 'unknown-pit', line: 2, column: 'place' },
    ]);
  });
});

describe('levels.csv', () => {
  const levels = (rows: string) => ({
    'levels.csv': `point,role,x_m,y_m,distance_ft,level_m,note\n${rows}\n`,
  });

  test('in the order of the file', () => {
    expect(read(levels('B,rim,1,2,,10,\nA,Rim,,,3 ft 6 in,32 ft 9 in,by hose')).levels).toEqual([
      { point: 'B', role: 'rim', x: 1, y: 2, level: 10, origin: { file: 'levels.csv', line: 2 } },
      {
        point: 'A',
        role: 'rim',
        distance: expect.closeTo(1.0668, 12),
        level: expect.closeTo(9.9822, 12),
        note: 'by hose',
        origin: { file: 'levels.csv', line: 3 },
      },
    ]);
  });

  test.each<[string, string, string, number, string, RegExp]>([
    ['unknown role', 'A,rimm,,,,10,', 'unknown-word', 2, 'role', /'rim'/],
    ['half a place', 'A,rim,1,,,10,', 'missing-value', 2, 'y_m', /both, or neither/],
    ['two levels', 'A,rim,,,,10,\nA,rim,,,,10.2,', 'contradiction', 3, 'level_m', /Keep/],
    ['no level', 'A,rim,,,,,', 'missing-value', 2, 'level_m', /Fill it in/],
  ])('%s', (_name, rows, code, line, column, remedy) => {
    expect(problem(levels(rows))).toMatchObject({
      code,
      file: 'levels.csv',
      line,
      column,
      remedy: expect.stringMatching(remedy),
    });
  });
});
