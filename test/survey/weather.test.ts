import { describe, expect, test } from 'vitest';
import { problem, read } from './folder.js';

describe('weather.csv, climate.csv and prices.csv', () => {
  const weather = (rows: string, header = 'date,rain_in,tmin_f,tmax_f,et0_mm') => ({
    'weather.csv': `${header}\n${rows}\n`,
  });
  const months = (count: number) => Array.from({ length: count }, (_, at) => `${at + 1},60,8,40`).join('\n');
  const climate = (rows: string) => ({ 'climate.csv': `month,rain_mm,tmean_c,et0_mm\n${rows}\n` });

  test('days in SI and in order; gaps, disorder and repetition are told', () => {
    const survey = read(weather('2024-01-02,0.5,32,50,1\n2024-01-01,0,,,\n2024-01-04,,,,\n2024-01-04,,,,'));
    expect(survey.weather).toEqual([
      { day: 19_723, rain: 0 },
      { day: 19_724, rain: expect.closeTo(0.0127, 12), tmin: 0, tmax: expect.closeTo(10, 12), et0: 0.001 },
      { day: 19_726 },
    ]);
    expect(survey.warnings).toMatchObject([
      { code: 'duplicate-row', line: 5 },
      { code: 'out-of-order', line: 3 },
      { code: 'missing-days', file: 'weather.csv' },
    ]);
  });

  test.each<[string, string, string, number, string]>([
    ['a day said twice', '2024-01-01,0,,,\n2024-01-01,1,,,', 'contradiction', 3, 'date'],
    ['night warmer than day', '2024-01-01,0,50,32,', 'contradiction', 2, 'tmin_f'],
    ['less than no rain', '2024-01-01,-1,,,', 'outside-range', 2, 'rain_in'],
    ['a trace of cold', '2024-01-01,,T,,', 'invalid-number', 2, 'tmin_f'],
  ])('%s', (_name, rows, code, line, column) => {
    expect(problem(weather(rows))).toMatchObject({ code, file: 'weather.csv', line, column });
  });

  test('an ordinary year has twelve months', () => {
    expect(read(climate(months(12))).climate).toHaveLength(12);
    expect(read(climate(months(12))).climate[6]).toMatchObject({ month: 7, rain: 0.06, tmean: 8, et0: 0.04 });
    expect(problem(climate(months(11)))).toMatchObject({
      code: 'missing-month',
      file: 'climate.csv',
      column: 'month',
      remedy: expect.stringContaining('Add the rows'),
    });
    expect(problem(climate(`${months(12)}\n3,70,8,40`))).toMatchObject({
      code: 'contradiction',
      line: 14,
      column: 'month',
    });
  });

  test('prices', () => {
    const prices = (rows: string) => ({ 'prices.csv': `item,unit,price\n${rows}\n` });
    expect(read(prices('pipe,m,3.5\ngravel,m3,60')).prices).toMatchObject([
      { item: 'pipe', unit: 'm', price: 3.5 },
      { price: 60 },
    ]);
    expect(problem(prices('pipe,m,3.5\npipe,m,4'))).toMatchObject({
      code: 'contradiction',
      line: 3,
      column: 'price',
      found: '4',
    });
    expect(problem(prices('pipe,m,about 4'))).toMatchObject({
      code: 'invalid-number',
      line: 2,
      column: 'price',
    });
  });

  test('thirty years of days are read in a second or two', () => {
    const day = (at: number) => new Date(at * 86_400_000).toISOString().slice(0, 10);
    const rows = Array.from({ length: 30 * 365 }, (_, at) => `${day(8000 + at)},2.5,4.1,12.3,1.2`).join('\n');
    const start = performance.now();
    expect(read(weather(rows, 'date,rain_mm,tmin_c,tmax_c,et0_mm')).weather).toHaveLength(30 * 365);
    expect(performance.now() - start).toBeLessThan(4000);
  });
});
