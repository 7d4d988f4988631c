/** The form and the folder are two ways to the same survey. */
import { describe, expect, test } from 'vitest';
import type { Measurement } from '../../lib/contract/index.js';
import { assess } from '../../lib/decision/index.js';
import { assessmentOf, outputsOf } from '../../lib/form/answer.js';
import {
  type Answers,
  FORM_FILES,
  factRow,
  textOf,
  withCell,
  withFact,
  withRows,
} from '../../lib/form/answers.js';
import { folderOf, readable } from '../../lib/form/folder.js';
import { openedFolder } from '../../lib/form/opened.js';
import { readingOf } from '../../lib/form/reading.js';
import { unzipped, zipOf } from '../../lib/form/screen/zip.js';
import { stepOfMeasurement } from '../../lib/form/steps.js';
import { TableFits } from '../../lib/groundwater/index.js';
import { pondCardHtml } from '../../lib/page/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { parseSurvey, type Survey } from '../../lib/survey/index.js';
import { measurementText } from '../../lib/text/measurementText.js';
import { briefDemo, demoFiles } from '../folder.js';

const DEMOS = ['clay-hollow', 'clay-slope', 'loam-terrace'];
const bytesOf = (files: Record<string, string>) =>
  Object.fromEntries(Object.entries(files).map(([name, text]) => [name, new TextEncoder().encode(text)]));
const textsOf = (files: Record<string, Uint8Array>) =>
  Object.fromEntries(Object.entries(files).map(([name, bytes]) => [name, new TextDecoder().decode(bytes)]));

/** Every file written anew, as if each had been typed in. */
const typedAnew = (answers: Answers) =>
  FORM_FILES.reduce((all, file) => withRows(all, file, all.rows[file]), answers);

test('what is to be measured next has its step', () => {
  const steps: Record<Measurement, string> = {
    'season-of-dips': 'looks',
    'recovery-test': 'looks',
    'ditch-in-flood': 'levels',
    'outlet-at-spill': 'levels',
    'deeper-hole': 'holes',
    'seam-pipe': 'looks',
    'rim-corners': 'levels',
  };
  for (const [what, step] of Object.entries(steps))
    expect(stepOfMeasurement(measurementText(what as Measurement, 'metric')), what).toBe(step);
});

describe.each(DEMOS)('%s', (name) => {
  const files = demoFiles(name);
  const { answers, attached, asTheyCame } = openedFolder(bytesOf(files));

  test('opens into the form whole, and is saved byte for byte', () => {
    expect(asTheyCame).toEqual([]);
    expect([...attached.keys()]).toEqual(['weather.csv']);
    const zip = zipOf(folderOf(answers, attached));
    expect(textsOf(unzipped(zip))).toEqual(files);
    expect(parseSurvey(readable(answers, attached))).toEqual(parseSurvey(files));
  });

  test('says the same where every file is written anew', () => {
    const files = briefDemo(name);
    const { answers, attached } = openedFolder(bytesOf(files));
    const again = typedAnew(answers);
    const { digest: _, digests: _digests, ...survey } = parseSurvey(readable(again, attached), { name });
    const { digest: __, digests: _digests2, ...before } = parseSurvey(files, { name });
    expect(survey).toEqual(before);
    const back = openedFolder(unzipped(zipOf(folderOf(again, attached))));
    const cells = (all: Answers) => FORM_FILES.map((file) => all.rows[file].map((row) => row.cells));
    expect(cells(back.answers)).toEqual(cells(again));
  });
});

test('the answer of the form is the answer of the folder, byte for byte', () => {
  const files = briefDemo('clay-hollow');
  const { answers, attached } = openedFolder(bytesOf(files));
  const { survey, findings } = readingOf({ files: readable(answers, attached), name: 'x' });
  expect(findings.problems).toEqual([]);
  const samples = 16;
  const { result, card } = outputsOf(assessmentOf(JSON.parse(survey!) as Survey, samples, new TableFits()), {
    script: '',
    version: '0',
    photos: {},
  });
  const ofFolder = reportOf(assess(siteModel(parseSurvey(files, { name: 'x' }), { seed: 1, samples })));
  expect(result).toBe(`${JSON.stringify(ofFolder.result, null, 2)}\n`);
  expect(card).toBe(pondCardHtml(ofFolder));
});

test('what stands beside the survey is kept: photos, notes, remarks, a file of nobody’s', () => {
  const files = {
    ...bytesOf({
      'pond.csv': '# mine\nitem,value,unit,note\ndepth,"0,9",m,"a guess, ""so"""\nlength,4,m,\nwidth,3,m,\n',
      'pits.csv': 'pit,top_m,bottom_m,texture,photo\nP1,0,150 cm,clay,p1.jpg\n',
      'later/heads.csv': 'place,month,depth_m\n',
      'weather (1).csv': 'date,rain_mm,tmin_c,tmax_c\n2020-01-01,1,2,3\n',
    }),
    'p1.jpg': new Uint8Array([255, 216, 1]),
    'notes.md': new Uint8Array([35]),
  };
  const { answers, attached } = openedFolder(unzipped(zipOf(files)));
  expect(unzipped(zipOf(folderOf(answers, attached)))).toEqual(files);
  const changed = withFact(answers, 'pond.csv', 'depth', '3 ft 2 in', 'm');
  expect(new TextDecoder().decode(folderOf(changed, attached)['pond.csv'])).toBe(
    '# mine\nitem,value,unit,note\ndepth,3 ft 2 in,,"a guess, ""so"""\nlength,4,m,\nwidth,3,m,\n',
  );
});

test('a number keeps the unit it was typed in when the units of the form are changed', () => {
  let { answers } = openedFolder(
    bytesOf({
      'pond.csv': 'item,value,unit\ndepth,1,m\nlength,4,m\nwidth,3,m\n',
      'pits.csv': 'pit,top_m,bottom_m,texture\nP1,0,0.3,clay loam\nP1,0.3,1.6,clay\n',
    }),
  );
  const before = parseSurvey(readable(answers, new Map()));
  answers = withFact(answers, 'site.csv', 'show_units', 'us');
  const [, second] = answers.rows['pits.csv'];
  answers = withCell(answers, 'pits.csv', second!.id, 'bottom', '6', 'ft');
  const after = parseSurvey(readable(answers, new Map()));
  expect(after.layers.map(({ top, bottom }) => [top, bottom])).toEqual([
    [0, 0.3],
    [0.3, 1.8288],
  ]);
  expect(after.pond).toEqual(before.pond);
  expect(textOf(factRow(answers, 'pond.csv', 'depth'), 'unit')).toBe('m');
});

describe('a file that cannot be shown row by row counts as it came', () => {
  const others = { 'pond.csv': 'item,value,unit\ndepth,1,m\nlength,4,m\nwidth,3,m\n' };
  test.each([
    ['a column of nobody’s', 'pit,top_m,bottom_m,texture,colour\nP1,0,2,clay,red\n'],
    ['a row that breaks off', 'pit,top_m,bottom_m,texture\nP1,0\n'],
    ['no rows', 'pit,top_m,bottom_m,texture\n'],
  ])('%s', (_, pits) => {
    const files = { ...others, 'pits.csv': pits };
    const { answers, attached, asTheyCame } = openedFolder(bytesOf(files));
    expect(asTheyCame).toEqual(['pits.csv']);
    expect(textsOf(folderOf(answers, attached))).toEqual(files);
    const { findings } = readingOf({ files: readable(answers, attached), name: 'x' });
    expect(findings.problems.map(({ file }) => file)).toContain('pits.csv');
  });
});

test('semicolons and decimal commas are read, and written with points once something is changed', () => {
  const files = bytesOf({
    'pond.csv': 'item;value;unit\ndepth;0,95;m\nlength;4,5;m\nwidth;3;m\n',
    'pits.csv': 'pit;top_m;bottom_m;texture\nP1;0;0,3;clay loam\nP1;0,3;1,6;clay\n',
  });
  const { answers, attached } = openedFolder(files);
  expect(folderOf(answers, attached)).toEqual(files);
  const {
    digest: _,
    digests: _digests3,
    warnings: __,
    ...again
  } = parseSurvey(readable(typedAnew(answers), attached));
  const { digest: ___, digests: _digests4, warnings: ____, ...before } = parseSurvey(files);
  expect(again).toEqual(before);
});
