/** What is too much is refused in words, soon and without filling the memory. */
import { describe, expect, test } from 'vitest';
import { parseSurvey, type SurveyError } from '../../lib/survey/index.js';
import { GOOD, problem, problems, read } from './folder.js';

const inSeconds = (limit: number, work: () => void) => {
  const start = performance.now();
  work();
  expect((performance.now() - start) / 1000).toBeLessThan(limit);
};

describe('too much', () => {
  test('fifty years of hourly weather: a row a day is asked for', () => {
    const hours = 50 * 365.25 * 24;
    const rows = `2000-01-01,0.1,1,2\n`.repeat(hours);
    inSeconds(10, () =>
      expect(problem({ 'weather.csv': `date,rain_mm,tmin_c,tmax_c\n${rows}` })).toMatchObject({
        code: 'too-large',
        file: 'weather.csv',
        found: '438301 lines',
        remedy: expect.stringContaining('a row a day'),
      }),
    );
  });

  test('fifty years of a logger in water.csv', () => {
    const rows = 'P1,2000-01-01,09:00,level,1\n'.repeat(438_000);
    expect(problem({ 'water.csv': `pit,date,time,reading,depth_m\n${rows}` })).toMatchObject({
      code: 'too-large',
      remedy: expect.stringContaining('one level a day'),
    });
  });

  test.each([
    ['in a note', (long: string) => `pit,top_m,bottom_m,note\nP1,0,1,${long}\n`, 2],
    ['in a number', (long: string) => `pit,top_m,bottom_m\nP1,0,1${long}\n`, 2],
    ['in the header', (long: string) => `pit,top_m,bottom_m,${long}\nP1,0,1,\n`, 1],
  ])('a cell of 10 MB, or of three pages, %s', (_name, text, line) => {
    for (const length of [10 * 1024 * 1024, 5000])
      inSeconds(10, () => {
        const found = problem({ 'pits.csv': text('1'.repeat(length)) });
        expect(found).toMatchObject({ code: 'too-large', file: 'pits.csv', line });
        expect(found.message.length).toBeLessThan(300);
      });
  });

  test.each([
    ['quotes in quotes', '"'.repeat(1_000_001)],
    ['doubled quotes', `"${'""'.repeat(500_000)}"`],
    ['quotes and commas', '",'.repeat(300_000)],
    ['quotes and lines', '"\n'.repeat(9_000)],
    ['commas', `${','.repeat(1_000_000)}x`],
  ])('%s', (_name, text) => {
    inSeconds(10, () => {
      for (const one of problems({ 'pits.csv': `pit,top_m,bottom_m,note\nP1,0,1,${text}\n` })) {
        expect(one.file).toBe('pits.csv');
        expect(one.message.length).toBeLessThan(3000);
      }
    });
  });

  test('a file of more than 32 MB', () => {
    expect(problem({ 'pits.csv': new Uint8Array(40 * 1024 * 1024).fill(32) })).toMatchObject({
      code: 'too-large',
      found: 'more than 32 MB',
    });
  });

  test('a record in which most days are missing is no record', () => {
    const weather = 'date,rain_mm,tmin_c,tmax_c\n2024-01-01,1,2,3\n2180-01-02,1,2,3\n';
    expect(problem({ 'weather.csv': weather })).toMatchObject({
      code: 'missing-days',
      line: 2,
      column: 'date',
    });
  });
});

test('five hundred pits are read', () => {
  const pits = Array.from({ length: 500 }, (_, n) =>
    [0, 0.3, 1, 1.6].map((top, at, tops) => `P${n},${top},${tops[at + 1] ?? 2.4},clay,${n} spade`).join('\n'),
  );
  const water = Array.from({ length: 500 }, (_, n) => `Q${n},2024-02-03,level,0.4,2`);
  inSeconds(10, () => {
    const survey = read({
      'pits.csv': `pit,top_m,bottom_m,texture,note\n${pits.join('\n')}\n`,
      'water.csv': `pit,date,reading,depth_m,hole_depth_m\n${water.join('\n')}\n`,
    });
    expect(survey.layers).toHaveLength(2000);
    expect(survey.looks).toHaveLength(500);
  });
});

test('of one kind of problem a hundred are told, and how many more there are', () => {
  const pits = `pit,top_m,bottom_m,texture\n${'P1,0,x,clay\n'.repeat(1500)}`;
  try {
    parseSurvey({ ...GOOD, 'pits.csv': pits });
    expect.unreachable();
  } catch (error) {
    const all = (error as SurveyError).problems;
    expect(all).toHaveLength(101);
    expect(all.some(({ message }) => message.includes('1400 more places'))).toBe(true);
  }
});
