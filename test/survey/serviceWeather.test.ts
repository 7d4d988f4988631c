/** Daily weather as services give it out. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { PROJECT } from '../notebook/notebooks.js';
import { problem, read, warnings } from './folder.js';

const DAY_MS = 86_400_000;
const dayOf = (date: string) => Date.parse(date) / DAY_MS;

/** One month of an element at fixed width, by the columns of readme.txt, section III. */
function month(id: string, yearMonth: string, element: string, values: string[]): string {
  return `${id}${yearMonth}${element}${Array.from({ length: 31 }, (_, at) => values[at] ?? '-9999   ').join('')}`;
}
const value = (tenths: number, flags = '  S') => `${String(tenths).padStart(5)}${flags}`;

describe('GHCN-Daily by station, lines with commas', () => {
  // Lines of a station as quoted in a public repository's tests of its own reader, one flagged value among them.
  const LINES = [
    'USC00417983,19500101,PRCP,254,,,6,',
    'USC00417983,19500102,PRCP,0,T,,6,',
    'USC00417983,19500103,PRCP,-9999,,,6,',
    'USC00417983,19500101,TMAX,350,,,6,',
    'USC00417983,19500102,TMAX,500,,X,6,',
    'USC00417983,19500101,TMIN,-50,,,6,',
    'USC00417983,19500101,SNOW,0,,,6,',
  ];

  test.each(['weather.csv', 'USC00417983.csv', 'download.txt'])('goes in unchanged, as %s', (name) => {
    const survey = read({ [name]: `${LINES.join('\n')}\n` });
    expect(survey.weather).toEqual([
      { day: dayOf('1950-01-01'), rain: expect.closeTo(0.0254, 12), tmin: -5, tmax: 35 },
      { day: dayOf('1950-01-02'), rain: 0 },
    ]);
    const told = survey.warnings.map(({ message }) => message).join(' | ');
    expect(told).toContain('the station USC00417983 of GHCN-Daily; 1950-01-01 to 1950-01-02');
    expect(told).toContain('1 values that failed a check of the network count as missing');
    expect(told).toContain('not used: SNOW');
    expect(survey.files).toContain('weather.csv');
  });

  test('two stations, two values of one day and a line in another form are refused', () => {
    const file = (more: string) => ({ 'weather.csv': `${LINES.join('\n')}\n${more}\n` });
    expect(problem(file('USC00417984,19500101,PRCP,1,,,6,'))).toMatchObject({ code: 'contradiction' });
    expect(problem(file('USC00417983,19500101,PRCP,255,,,6,'))).toMatchObject({
      code: 'contradiction',
      line: 8,
    });
    expect(problem(file('1950-01-04,3'))).toMatchObject({ code: 'ragged-row', line: 8 });
    expect(problem(file('USC00417983,19500231,PRCP,1,,,6,'))).toMatchObject({
      code: 'invalid-date',
      line: 8,
    });
  });

  test('beside a weather.csv it is one too many', () => {
    const weather = 'date,rain_mm\n1950-01-01,1\n';
    expect(problem({ 'weather.csv': weather, 'USC00417983.csv': LINES.join('\n') })).toMatchObject({
      code: 'duplicate-file',
    });
  });
});

describe('GHCN-Daily at fixed width', () => {
  const ID = 'XX000000001';
  const text = [
    month(ID, '202402', 'PRCP', [value(12), value(0, 'T S'), value(0, 'P S'), value(99, ' DS'), value(7)]),
    month(ID, '202402', 'TMAX', [value(81), value(-5)]),
    month(ID, '202402', 'TMIN', [value(-12)]),
    month(ID, '202402', 'MDPR', [value(300)]),
  ].join('\n');

  test('has lines of 269 signs, whose columns are those of the readme', () => {
    for (const line of text.split('\n')) expect(line).toHaveLength(269);
    expect(text.slice(11, 29)).toBe('202402PRCP   12  S');
  });

  test.each(['\n', '\r\n'])('goes in unchanged, its flags by the rules (line end %j)', (end) => {
    const survey = read({ 'XX000000001.dly': `${text.replaceAll('\n', end)}${end}` });
    expect(survey.weather.map(({ day, rain }) => [day - dayOf('2024-02-01'), rain])).toEqual([
      [0, expect.closeTo(0.0012, 12)],
      [1, 0],
      [2, 0],
      [4, expect.closeTo(0.0007, 12)],
    ]);
    expect(survey.weather[0]).toMatchObject({ tmin: -1.2, tmax: 8.1 });
    expect(survey.weather[1]).toMatchObject({ tmax: -0.5 });
    const told = survey.warnings.map(({ message }) => message).join(' | ');
    for (const part of [
      '1 sums over several days',
      '1 missing days are presumed dry',
      '1 values that failed',
    ])
      expect(told).toContain(part);
  });

  test('the form with stations of six figures, in hundredths of inches, is none of these', () => {
    const line = month('011084', '202402', 'PRCP', [value(12)]);
    expect(warnings({ 'state.txt': line })).toMatchObject([{ code: 'unknown-file' }]);
  });
});

describe('a table with named columns', () => {
  const seattle = () =>
    readFileSync(join(PROJECT, 'node_modules', 'vega-datasets', 'data', 'seattle-weather.csv'), 'utf8');

  test('a public one without units is refused, and read once they are named', () => {
    expect(
      problem({ 'weather.csv': seattle().replace('temp_max,temp_min', 'temp_max_c,temp_min_c') }),
    ).toMatchObject({
      code: 'missing-unit',
      column: 'precipitation',
    });
    const header = 'Date,Precipitation (mm),temp_max (°C),temp_min (°C),wind,weather';
    const survey = read({ 'seattle.csv': seattle().replace(/^.*/, header) });
    // As the data package has them: 1461 days, the second of them with 10.9 mm.
    expect(survey.weather).toHaveLength(1461);
    expect(survey.weather[1]).toMatchObject({
      day: dayOf('2012-01-02'),
      rain: 0.0109,
      tmin: 2.8,
      tmax: 10.6,
    });
    expect(survey.warnings.map(({ code, message }) => [code, message])).toEqual([
      ['read-as', "the file 'seattle.csv' is read as weather.csv"],
      ['unused-column', 'columns that are not used: wind, weather'],
    ]);
  });

  test('year, month and day apart, codes for gaps, traces and sums of a day', () => {
    const text =
      'Station;Year;Month;Day;Rainfall amount (mm/day);Minimum temperature (°C);Maximum temperature (°C)\n' +
      '7;2024;2;1;1,2;-0,5;8,1\n7;2024;2;2;Tr;NA;-99,9\n7;2024;2;3;-9999;---;7\n';
    const survey = read({ 'weather.csv': text });
    expect(survey.weather).toEqual([
      { day: dayOf('2024-02-01'), rain: 0.0012, tmin: -0.5, tmax: 8.1 },
      { day: dayOf('2024-02-02'), rain: 0 },
      { day: dayOf('2024-02-03'), tmax: 7 },
    ]);
    expect(survey.warnings.map(({ message }) => message)).toEqual([
      'columns that are not used: Station',
      "'NA' is read as missing, in 1 cells",
      "'-99,9' is read as missing, in 1 cells",
      "'-9999' is read as missing, in 1 cells",
      "'---' is read as missing, in 1 cells",
      'a trace of rain is read as none, in 1 cells',
    ]);
  });

  test('tenths of millimetres are no unit that is guessed', () => {
    expect(problem({ 'weather.csv': 'date,rain (0.1 mm),tmin_c,tmax_c\n2024-02-01,12,1,5\n' })).toMatchObject(
      {
        code: 'unknown-unit',
      },
    );
  });
});
