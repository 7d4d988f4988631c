import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { fieldSheetHtml } from '../../lib/notebook/fieldSheet.js';
import { readSurvey } from '../../lib/notebook/readSurvey.js';
import { newSurvey } from '../../lib/notebook/surveyFolder.js';
import { recommend, resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { SurveyError, type Warning } from '../../lib/survey/index.js';
import { CAUTIONS } from '../../lib/text/cautions.js';
import { itInChromium } from '../chromium.js';
import { briefDemo, surveyOf } from '../folder.js';
import { sweep, WHOLE } from '../sweep.js';
import { PROJECT, passingFolder } from './notebooks.js';

const made = (units: 'us' | 'metric') => {
  const folder = join(passingFolder(), 'garden', 'pond');
  newSurvey(folder, units);
  return folder;
};
const edit = (folder: string, file: string, change: (text: string) => string) => {
  const path = join(folder, file);
  writeFileSync(path, change(readFileSync(path, 'utf8')));
};
const codes = (warnings: readonly Warning[]) => new Set(warnings.map(({ code }) => code));

describe.each(['metric', 'us'] as const)('a new survey, %s', (units) => {
  const unit = units === 'us' ? 'ft' : 'm';
  const lengths = units === 'us' ? ['3.3', '13', '10'] : ['1', '4', '3'];

  test('as it comes is refused, naming what to fill in and nothing else', () => {
    const folder = made(units);
    try {
      readSurvey(folder);
      expect.unreachable();
    } catch (error) {
      const { problems, warnings } = error as SurveyError;
      expect(error).toBeInstanceOf(SurveyError);
      expect(problems.map(({ file, code, expected }) => [file, code, expected])).toEqual([
        ['pits.csv', 'empty-file', 'a header line and at least one row'],
        ['pond.csv', 'missing-item', 'depth'],
        ['pond.csv', 'missing-item', 'length'],
      ]);
      expect(codes(warnings)).toEqual(new Set(['empty-item', 'missing-latitude']));
    }
  });

  test('with three lengths and two layers it gives a result', () => {
    const folder = made(units);
    edit(folder, 'pond.csv', (text) =>
      ['depth', 'length', 'width'].reduce(
        (all, item, at) => all.replace(`${item},,`, `${item},${lengths[at]},`),
        text,
      ),
    );
    edit(folder, 'site.csv', (text) => text.replace('latitude,,', 'latitude,52,'));
    edit(
      folder,
      'pits.csv',
      (text) => `${text}P1,0,0.3 m,clay loam,rooted,few,firm,\nP1,0.3 m,1.8 m,clay,massive,grey,stiff,\n`,
    );
    const survey = readSurvey(folder);
    expect(survey.site.show_units).toBe(units);
    expect(codes(survey.warnings)).toEqual(new Set(['empty-item']));
    expect(recommend(judge(siteModel(survey, { samples: 20 }))).option).toBe('measure-first');

    // Water, when there is some: the file is moved up and written on.
    renameSync(join(folder, 'later', 'water.csv'), join(folder, 'water.csv'));
    edit(
      folder,
      'water.csv',
      (text) => `${text}P1,2024-01-10,09:00,opened,1.8 m,,,,,\nP1,2024-03-10,09:00,level,0.4 m,,,,,\n`,
    );
    expect(readSurvey(folder).looks).toHaveLength(2);
  });

  test('asks in those units, and every file of it can be read when filled in', () => {
    const folder = made(units);
    expect(readdirSync(folder).sort()).toEqual([
      'field-sheet.html',
      'later',
      'pits.csv',
      'pond.csv',
      'site.csv',
    ]);
    expect(readFileSync(join(folder, 'pond.csv'), 'utf8')).toContain(`depth,,${unit},`);
    const rows: Record<string, string> = {
      'soakage.csv': 'P1,1,0,30,60,15,yes',
      'levels.csv': `A,rim,0,10,`,
      'water.csv': `P1,2024-01-10,09:00,level,1,2,4,1,1.5,`,
      'climate.csv': '',
    };
    edit(folder, 'later/climate.csv', (text) => text.replace(/^(\d+),,,$/gm, '$1,2,10,'));
    for (const [file, row] of Object.entries(rows)) {
      renameSync(join(folder, 'later', file), join(folder, file));
      edit(folder, file, (text) => `${text}${row}\n`);
    }
    expect(() => readSurvey(folder)).toThrow(SurveyError);
    try {
      readSurvey(folder);
    } catch (error) {
      const { problems } = error as SurveyError;
      expect(new Set(problems.map(({ file }) => file))).toEqual(new Set(['pits.csv', 'pond.csv']));
    }
  });

  test('its prices name all that is bought, whatever is recommended', () => {
    const rows = readFileSync(join(made(units), 'later', 'prices.csv'), 'utf8');
    const prices = rows.replace(/^# ([^,]+,[^,\n]+,)$/gm, (_, row) => `${row}1`);
    expect(prices.match(/,1$/gm)!.length).toBeGreaterThan(20);
    for (const demo of sweep(['clay-slope', 'clay-hollow', 'loam-terrace', 'meadow-scrape'], 1)) {
      const files = { ...briefDemo(demo), 'prices.csv': prices };
      const { options, build } = resultOf(judge(siteModel(surveyOf(files), { samples: 20 })));
      expect(build!.unpriced).toEqual([]);
      expect(build!.cost).toBeGreaterThan(20);
      for (const { work } of options) expect(work?.unpriced ?? []).toEqual([]);
    }
  });

  test('asks how a drain is kept, with what is taken where nobody says', () => {
    const folder = made(units);
    const site = readFileSync(join(folder, 'site.csv'), 'utf8');
    const html = fieldSheetHtml(units);
    const asked: [string, number][] = [
      ['flood_every', 5],
      ['drain_blocked_once_in', 200],
      ['flap_stuck_once_in', 20],
      ['pump_out_once_in', 200],
      ['power_cut_hours', 24],
      ['power_cut_once_in', 10],
    ];
    for (const [item, years] of asked) {
      expect(site).toMatch(new RegExp(`^${item},,\\w+,.*empty: ${years}\\b`, 'm'));
      expect(html).toMatch(new RegExp(`\\(${years}\\b`));
      edit(folder, 'site.csv', (text) => text.replace(`${item},,`, `${item},7,`));
    }
    try {
      readSurvey(folder);
    } catch (error) {
      // Said with its unit, each is read.
      expect((error as SurveyError).problems.filter(({ file }) => file === 'site.csv')).toEqual([]);
    }
  });

  test('the field sheet carries the cautions and the units, and needs nothing else', () => {
    const html = fieldSheetHtml(units);
    for (const { title, drained } of CAUTIONS) expect(html.includes(`<b>${title}.</b>`)).toBe(!drained);
    expect(html).toContain(`Depth (${unit})`);
    // The name of a language, which nobody asks for.
    const asks = html.replaceAll('xmlns="http://www.w3.org/2000/svg"', '');
    expect(asks).not.toMatch(/https?:|<script|src=/);
  });
});

it('the twelve months change which of them count as wet', () => {
  const folder = made('metric');
  edit(folder, 'pond.csv', (text) =>
    text.replace('depth,,', 'depth,1,').replace('length,,', 'length,4,').replace('width,,', 'width,3,'),
  );
  edit(folder, 'site.csv', (text) => text.replace('latitude,,', 'latitude,52,'));
  edit(folder, 'pits.csv', (text) => `${text}P1,0,1.8 m,clay,massive,grey,stiff,\n`);
  const wet = () =>
    siteModel(readSurvey(folder), { samples: 20 }).assumptions.find(({ item }) => item === 'wet months');
  expect(wet()?.reason ?? 'hemisphere').toContain('hemisphere');
  // Rain at midsummer, a dry winter.
  renameSync(join(folder, 'later', 'climate.csv'), join(folder, 'climate.csv'));
  edit(folder, 'climate.csv', (text) =>
    text.replace(/^(\d+),,,$/gm, (_, month: string) => {
      const summer = 1 - Math.cos((2 * Math.PI * (Number(month) - 1)) / 12);
      return `${month},${Math.round(10 + 80 * summer)},,${Math.round(20 + 20 * summer)}`;
    }),
  );
  expect(wet()?.reason).toContain('climate.csv');
  expect(String(wet()?.value)).toMatch(/\b6;7;8\b/);
});

it('never writes over anything', () => {
  const folder = passingFolder();
  writeFileSync(join(folder, 'pits.csv'), 'mine');
  expect(() => newSurvey(folder, 'metric')).toThrow('not empty');
  expect(readdirSync(folder)).toEqual(['pits.csv']);
  expect(readFileSync(join(folder, 'pits.csv'), 'utf8')).toBe('mine');
});

it('as a command tells what it wrote and what to do next', () => {
  const run = (...args: string[]) =>
    spawnSync(process.execPath, [join(PROJECT, 'dist', 'notebook', 'underpond.js'), 'new', ...args], {
      encoding: 'utf8',
    });
  const folder = join(passingFolder(), 'lawn');
  expect(run(folder, '--units', 'us')).toMatchObject({
    status: 0,
    stderr: '',
    stdout: expect.stringContaining('Three files are enough: site, pond, pits; add water when you have it.'),
  });
  expect(run(folder, '--units', 'us')).toMatchObject({
    status: 1,
    stderr: expect.stringContaining('not empty'),
  });
  expect(run(folder, '--units', 'yards')).toMatchObject({
    status: 1,
    stderr: expect.stringContaining('us or metric'),
  });
  expect(run()).toMatchObject({ status: 1, stderr: expect.stringContaining('missing FOLDER') });
});

const A4 = /\/MediaBox\s*\[0 0 59[45][\d.]* 84[12][\d.]*\]/;
const LETTER = /\/MediaBox\s*\[0 0 612 792\]/;

if (WHOLE)
  itInChromium('the field sheet prints on seven pages of A4 or Letter, nothing cut off', async (page) => {
    for (const units of ['metric', 'us'] as const) {
      await page.setContent(fieldSheetHtml(units));
      const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
      expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(7);
      expect(pdf).toMatch(units === 'us' ? LETTER : A4);
      await page.setViewportSize({ width: 703, height: 1000 });
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(703);
      const tooSmall = () =>
        Array.from(document.querySelectorAll('.box')).filter((box) => box.scrollHeight > box.clientHeight)
          .length;
      expect(await page.evaluate(tooSmall)).toBe(0);
    }
  });
