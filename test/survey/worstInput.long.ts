/** Every reader given about a megabyte of its worst: it answers or refuses in words, and soon. */
import { expect, test } from 'vitest';
import { assess } from '../../lib/decision/index.js';
import { resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { parseSurvey, SurveyError } from '../../lib/survey/index.js';
import { QuantityError, readQuantity } from '../../lib/units/index.js';

const POND = 'item,value,unit\nlength,4,m\nwidth,3,m\ndepth,1,m\n';
const PITS = 'pit,top_m,bottom_m,texture\nP1,0,1.5,clay\n';
const MEGABYTE = 1_000_000;
/** Rows made by number until they are a megabyte, or as many as are read. */
function rows(header: string, row: (i: number) => string): string {
  let text = `${header}\n`;
  for (let i = 0; i < 19_000 && text.length < MEGABYTE; i++) text += `${row(i)}\n`;
  return text;
}

/** Milliseconds until a survey is read or refused in words. */
function readingTime(files: Record<string, string>): number {
  const start = performance.now();
  try {
    parseSurvey({ 'pond.csv': POND, 'pits.csv': PITS, ...files });
  } catch (error) {
    if (!(error instanceof SurveyError)) throw error;
  }
  return performance.now() - start;
}

const long = (i: number) => `${'ab'.repeat(900)}${i}`;
const worst: Record<string, Record<string, string>> = {
  'names of holes that no file describes': {
    'heads.csv': rows('place,month,depth_m', (i) => `H ${i},high,0.4`),
    'pits.csv': rows('pit,top_m,bottom_m,texture', (i) => `h_${i},0,1.5,clay`),
  },
  'long unknown words': { 'pits.csv': rows('pit,top_m,bottom_m,texture', (i) => `P${i},0,1,${long(i)}`) },
  'long unknown items': { 'site.csv': rows('item,value,unit', (i) => `${long(i)},1,m`) },
  'long unknown roles': { 'levels.csv': rows('point,role,level_m', (i) => `P${i},${long(i)},1`) },
  'numbers of two thousand digits': {
    'levels.csv': rows('point,role,level_m', (i) => `P${i},rim,${'1 '.repeat(900)}`),
  },
  'outlets without end': {
    'levels.csv': rows('point,role,distance_m,level_m', (i) =>
      i === 0 ? 'R,rim,0,1' : `O${i},outlet,${i % 90},${(i % 7) / 10}`,
    ),
  },
  'looks into one hole in one minute': {
    'water.csv': rows(
      'pit,date,time,reading,depth_m',
      (i) => `P1,2024-01-0${1 + (i % 9)},09:00,level,0.${i}`,
    ),
  },
  'tests in one hole': {
    'soakage.csv': rows('pit,test,minutes,depth_to_water_m,hole_depth_m', (i) => `P1,A,${i},0.3,0.6`),
  },
  'prices of nothing': { 'prices.csv': rows('item,unit,price', (i) => `${long(i)},m,1`) },
  'columns of nothing': { 'water.csv': `pit,date,time,reading,${'x,'.repeat(90)}depth_m\nP1\n` },
};

test.each(Object.entries(worst))('%s', (_, files) => {
  const small = readingTime(Object.fromEntries(Object.entries(files).map(([f, t]) => [f, halfOf(t)])));
  const whole = readingTime(files);
  // Twice as much may take a little more than twice as long; by pairs it takes four times.
  expect(whole).toBeLessThan(3.2 * small + 1000);
});

const halfOf = (text: string) => {
  const lines = text.split('\n');
  return `${lines.slice(0, Math.ceil(lines.length / 2)).join('\n')}\n`;
};

test.each([
  '1'.repeat(2000),
  '1,'.repeat(1000),
  '1.'.repeat(1000),
  '1 '.repeat(1000),
  '1e'.repeat(1000),
  '1/'.repeat(1000),
  `1${' '.repeat(1998)}x`,
  '½'.repeat(2000),
  '⁻¹'.repeat(1000),
  '10^'.repeat(660),
  '-'.repeat(2000),
  "1'".repeat(1000),
  `1${'0'.repeat(1000)} m`,
])('a quantity of 2,000 signs', (text) => {
  for (const dimension of ['length', 'none', 'speed', 'time'] as const) {
    const start = performance.now();
    try {
      readQuantity(text, dimension, dimension === 'none' ? undefined : 's');
    } catch (error) {
      expect(error).toBeInstanceOf(QuantityError);
    }
    expect(performance.now() - start).toBeLessThan(200);
  }
});

test('as many outlets as are read are judged', () => {
  const levels = rows('point,role,distance_m,level_m', (i) => (i === 0 ? 'R,rim,0,1' : `O${i},outlet,9,0.1`))
    .split('\n')
    .slice(0, 22) // header, rim, twenty outlets
    .join('\n');
  const survey = parseSurvey({ 'pond.csv': POND, 'pits.csv': PITS, 'levels.csv': levels });
  expect(resultOf(assess(siteModel(survey, { samples: 16 }))).options.length).toBeGreaterThan(3);
});
