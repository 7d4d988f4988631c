/** What can be read and is hard to believe is told, with its reason. */
import { describe, expect, test } from 'vitest';
import { problem, problems, warnings } from './folder.js';

const doubts = (files: Record<string, string>) => warnings(files).filter(({ code }) => code === 'unit-doubt');
const WATER = 'pit,date,time,reading,depth_m,hole_depth_m,open_from_m\n';

describe('depths out of proportion', () => {
  test('a 12 m deep dip in a 1.2 m hole is refused, and the slip named', () => {
    const files = { 'water.csv': `${WATER}P1,2024-02-03,,level,12,1.2,\n` };
    expect(problems(files)).toMatchObject([{ code: 'below-floor', file: 'water.csv', line: 2 }]);
    expect(() => warnings(files)).toThrow(/water\.csv:2 depth_m: [^\n]*12 m[^\n]*1.2 m[^\n]*decimal point/);
  });

  test('a hole opened to 8 m that pits.csv logs to 2.5 m: feet', () => {
    expect(doubts({ 'water.csv': `${WATER}P1,2024-02-03,,opened,8.2,,\n` })).toMatchObject([
      {
        file: 'water.csv',
        line: 2,
        column: 'depth_m',
        message: expect.stringMatching(/8.2 m, pits.csv logs it to 2.5 m.*feet and metres/),
      },
    ]);
  });

  test('tops in feet and bottoms in metres', () => {
    const pits = 'pit,top_m,bottom_m,texture\nP1,0,0.3,clay loam\nP1,0.98,2.5,clay\n';
    expect(doubts({ 'pits.csv': pits })).toMatchObject([
      { file: 'pits.csv', line: 3, column: 'top_m', message: expect.stringContaining('3.3 times deeper') },
    ]);
  });

  test('a pipe slotted from half a metre down is ordinary in a deep hole, from a hand below the ground it is not', () => {
    const pipe = (from: number) => doubts({ 'water.csv': `${WATER}P1,2024-02-03,,level,0.8,3,${from}\n` });
    expect(pipe(0.5)).toEqual([]);
    expect(pipe(0.2)).toMatchObject([{ column: 'open_from_m', message: expect.stringContaining('0.45 m') }]);
  });

  test('a pipe cannot be open only below the floor', () => {
    expect(problem({ 'water.csv': `${WATER}P1,2024-02-03,,level,0.8,1.6,1.6\n` })).toMatchObject({
      code: 'below-floor',
      column: 'open_from_m',
    });
  });

  test('water known below every hole', () => {
    expect(doubts({ 'heads.csv': 'place,month,depth_m\nsite,high,2.9\n' })).toMatchObject([
      { file: 'heads.csv', line: 2, column: 'depth_m' },
    ]);
  });
});

describe('seasons', () => {
  const looks = `${WATER}P1,2024-02-03,,level,1.2,2,\nP1,2024-03-03,,level,1.1,2,\nP1,2024-08-10,,level,0.4,2,\n`;
  const odd = (files: Record<string, string>) =>
    warnings(files).filter(({ code }) => code === 'summer-above-winter');
  const at = (latitude: number) => ({ 'site.csv': `item,value,unit,note\nlatitude,${latitude},deg,\n` });

  test('higher in summer is told in the north and ordinary in the south', () => {
    expect(odd({ ...at(52), 'water.csv': looks })).toMatchObject([
      { file: 'water.csv', line: 4, message: expect.stringContaining('0.7 m higher in summer') },
    ]);
    expect(odd({ ...at(-35), 'water.csv': looks })).toEqual([]);
    expect(odd({ ...at(-35), 'heads.csv': 'place,month,depth_m\nsite,2,0.2\nsite,8,0.9\n' })).toHaveLength(1);
  });

  test('is ordinary where late winter freezes, by the weather or an ordinary year', () => {
    const weather = (cold: number) => {
      const days = Array.from({ length: 91 }, (_, d) =>
        new Date(Date.UTC(2024, 0, 1 + d)).toISOString().slice(0, 10),
      );
      return `date,rain_mm,tmin_c,tmax_c\n${days.map((date) => `${date},1,${cold - 5},${cold + 5}`).join('\n')}\n`;
    };
    const climate = (cold: number) =>
      `month,rain_mm,tmean_c\n${Array.from({ length: 12 }, (_, m) => `${m + 1},50,${m < 3 ? cold : 8}`).join('\n')}\n`;
    const told = (files: Record<string, string>) => odd({ ...at(60), 'water.csv': looks, ...files });
    expect(told({ 'weather.csv': weather(-4) })).toEqual([]);
    expect(told({ 'weather.csv': weather(3) })).toHaveLength(1);
    expect(told({ 'climate.csv': climate(-4) })).toEqual([]);
    expect(told({ 'climate.csv': climate(3) })).toHaveLength(1);
  });

  test('the highest looks count, not those while a hole fills', () => {
    expect(odd({ 'water.csv': looks.replace('level,1.2', 'level,0.3') })).toEqual([]);
  });
});
