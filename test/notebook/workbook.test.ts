/** Workbooks, written by the library that reads them as spreadsheet programs keep their cells. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type CellObject, utils, type WorkSheet, write } from '@e965/xlsx';
import { describe, expect, it } from 'vitest';
import { readFolder } from '../../lib/notebook/files.js';
import { readSurvey } from '../../lib/notebook/readSurvey.js';
import { workbookFiles } from '../../lib/notebook/workbook.js';
import { parseSurvey, type Survey } from '../../lib/survey/index.js';
import { correctSurvey, filesOf, type Sheet, type Sheets } from '../survey/generated.js';
import { passingFolder } from './notebooks.js';

const DAY_MS = 86_400_000;

/** As a program keeps what was typed: numbers, days and times as numbers with a format. */
function kept(text: string): CellObject {
  if (/^\d{4}-\d\d-\d\d$/.test(text))
    return { t: 'n', v: Date.parse(text) / DAY_MS + 25_569, z: 'dd/mm/yyyy' };
  const [, hours, minutes] = /^(\d\d):(\d\d)$/.exec(text) ?? [];
  if (hours) return { t: 'n', v: (Number(hours) * 60 + Number(minutes)) / 1440, z: 'hh:mm:ss' };
  return /^-?\d+(\.\d+)?$/.test(text) ? { t: 'n', v: Number(text) } : { t: 's', v: text };
}

function sheetOf({ header, rows }: Sheet, remark = '# typed in'): WorkSheet {
  const sheet: WorkSheet = {};
  const all = [[remark], header, ...rows];
  all.forEach((cells, r) => {
    cells.forEach((text, c) => {
      if (text !== '') sheet[utils.encode_cell({ r, c })] = kept(text);
    });
  });
  sheet['!ref'] = utils.encode_range({ s: { r: 0, c: 0 }, e: { r: all.length - 1, c: header.length + 1 } });
  return sheet;
}

function bookOf(sheets: Sheets, bookType: 'xlsx' | 'ods'): Uint8Array {
  const book = utils.book_new();
  for (const [name, sheet] of Object.entries(sheets))
    utils.book_append_sheet(book, sheetOf(sheet), name.replace('.csv', ''));
  return new Uint8Array(write(book, { type: 'array', bookType }) as ArrayBuffer);
}

const said = ({
  digest: _digest,
  digests: _digests,
  origins: _origins,
  warnings: _warnings,
  files: _files,
  ...rest
}: Survey) => JSON.parse(JSON.stringify(rest, (key, value) => (key === 'origin' ? undefined : value)));

describe.each(['xlsx', 'ods'] as const)('a workbook, %s', (type) => {
  it('says the same as the files that were typed', () => {
    for (let seed = 1; seed <= 12; seed++) {
      const typed = correctSurvey(seed);
      const survey = parseSurvey(workbookFiles(`garden.${type}`, bookOf(typed, type)));
      expect(said(survey), `seed ${seed}`).toEqual(said(parseSurvey(filesOf(typed))));
      expect(survey.warnings).toContainEqual({
        file: 'pits.csv',
        code: 'read-as',
        message: `the file 'garden.${type}/pits.csv' is read as pits.csv`,
      });
      // A place is the row of the sheet.
      expect(survey.layers[0]?.origin).toEqual({ file: 'pits.csv', line: 3 });
    }
  });
});

it('is read in its folder, beside other files and what a program that has it open puts there', () => {
  const folder = passingFolder();
  const { 'pits.csv': pits, ...rest } = correctSurvey(3);
  writeFileSync(join(folder, 'pits.xlsx'), bookOf({ Table1: pits as Sheet }, 'xlsx'));
  writeFileSync(join(folder, '~$pits.xlsx'), 'open');
  for (const [name, text] of Object.entries(filesOf(rest))) writeFileSync(join(folder, name), text);
  expect(Object.keys(readFolder(folder))).toContain('pits.xlsx/pits.csv');
  expect(said(readSurvey(folder)).layers).toEqual(said(parseSurvey(filesOf(correctSurvey(3)))).layers);
  writeFileSync(join(folder, 'pits.csv'), filesOf({ 'pits.csv': pits as Sheet })['pits.csv'] as string);
  expect(() => readSurvey(folder)).toThrow(/'pits\.csv' and 'pits\.xlsx\/pits\.csv' are both pits\.csv/);
});

it('shares, logical values, errors and breaks within a cell are taken for what they are', () => {
  const sheet: WorkSheet = {
    A1: { t: 'n', v: 0.4, z: '0%' },
    B1: { t: 'b', v: true },
    C1: { t: 'e', v: 0x17, w: '#REF!' },
    A2: { t: 's', v: 'two\nlines' },
    B2: { t: 'n', v: 0.1 + 0.2, z: '0.0' },
    C2: { t: 'n', v: 45_599.6, z: 'yyyy-mm-dd hh:mm' },
    '!ref': 'A1:C2',
  };
  const book = utils.book_new();
  utils.book_append_sheet(book, sheet, 'x');
  const bytes = new Uint8Array(write(book, { type: 'array', bookType: 'xlsx' }) as ArrayBuffer);
  expect(workbookFiles('x.xlsx', bytes)['x.xlsx/x.csv']).toBe(
    '"40 %","true","error"\n"two lines","0.30000000000000004","2024-11-03 14:24:00"',
  );
});

it('a file that is no workbook is an error in words', () => {
  const folder = passingFolder();
  writeFileSync(join(folder, 'garden.xlsx'), new Uint8Array([0x50, 0x4b, 3, 4, 0]));
  expect(() => readFolder(folder)).toThrow(/garden\.xlsx: invalid 'garden\.xlsx'.*Save it again/);
});
