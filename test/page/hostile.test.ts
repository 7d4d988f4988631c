/** A survey whose texts are an attack: on the page, the card, the CSV for spreadsheets and the terminal. */
import { homedir, userInfo } from 'node:os';
import { parse } from 'csv-parse/sync';
import { describe, expect, it, vi } from 'vitest';
import { changesText, pondCardHtml, shoppingCsv, workedCsv } from '../../lib/page/index.js';
import { reportOf, workedSheet } from '../../lib/report/index.js';
import type { Survey } from '../../lib/survey/index.js';
import { itInChromium } from '../chromium.js';
import { surveyOf } from '../folder.js';
import { baseSurvey } from '../risk/base.js';
import { WHOLE } from '../sweep.js';
import { assessmentOf, demoPage, fileOf } from './demoPage.js';

vi.setConfig({ testTimeout: 60_000 });

const SCRIPT = `</script><script>document.title="taken"</script><img src=x onerror="document.title='taken'"><svg onload=alert(1)>`;
const FORMULA = '=HYPERLINK("https://example.org/?"&A1,"click")';
const CONTROL = '\u001b[31mred\u0007\u202Egnp.exe\u0000\u2028';

/** Every text that a stranger may write, made hostile; the rows still belong together. */
function hostile(): Survey {
  const files = baseSurvey({ depth: 0.1, level: 0.1 });
  const pit = `P1 ${SCRIPT}`;
  const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`;
  files['pits.csv'] =
    `pit,top_m,bottom_m,texture,structure,mottles,consistency,ksat_m_s,strength_kpa,photo,note
${quoted(pit)},0,0.25,clay loam,rooted,none,firm,,,${quoted('../../etc/passwd')},${quoted(FORMULA)}
${quoted(pit)},0.25,2.6,clay,blocky,,stiff,1e-7,60,photo.jpg,${quoted(SCRIPT)}
`;
  files['site.csv'] = files['site.csv']!.replace('Test Ground', quoted(SCRIPT)).replace(
    'discharge_allowed,no',
    'discharge_allowed,yes',
  );
  files['levels.csv'] = `point,role,x_m,y_m,level_m,note
${quoted(`rim ${SCRIPT}`)},rim,0,0,10,${quoted(SCRIPT)}
B,rim,4,0,10.1,
C,rim,2,3,10.05,
${quoted(FORMULA)},outlet,2,-20,8,
`;
  const survey = surveyOf(files);
  survey.name = `${SCRIPT}${CONTROL}`;
  for (const row of survey.heads) row.source = `${CONTROL}${SCRIPT}`;
  for (const row of survey.layers) row.note = `${row.note ?? ''}${CONTROL}`;
  return survey;
}

/** Characters that turn or hide the text after them, or steer a terminal. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not be there
const UNSEEN = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f\u202a-\u202e]/u;

const withoutScripts = (html: string) => html.replace(/<script[\s\S]*?<\/script>/g, '');

describe('a hostile survey', () => {
  const survey = hostile();
  const assessment = assessmentOf(survey);
  const report = reportOf(assessment);

  it('stands on the page and the card as letters', async () => {
    for (const html of [await demoPage(survey), pondCardHtml(report)]) {
      const seen = withoutScripts(html);
      expect(seen).not.toMatch(/<img|<svg onload|<script/i);
      expect(seen).not.toMatch(/ on[a-z]+=["']/i);
      expect(seen).not.toMatch(UNSEEN);
    }
    expect((await demoPage(survey)).match(/<script/g)).toHaveLength(3);
  });

  it('shows no photo but one that was handed over under its name', async () => {
    const html = await demoPage(survey, {
      'photo.jpg': 'javascript:alert(1)',
      constructor: 'data:image/png;base64,AA==',
    });
    expect(html).not.toContain('javascript:');
    expect(withoutScripts(html)).not.toContain('<img');
    const shown = await demoPage(survey, { 'photo.jpg': 'data:image/png;base64,iVBORw0KGgo=' });
    expect(withoutScripts(shown).match(/<img src="data:image\/png;base64,iVBORw0KGgo="/g)).toHaveLength(1);
  });

  it('gives a spreadsheet no formula in the worked steps', () => {
    const sheet = workedSheet(assessment);
    sheet[0]!.heading = FORMULA;
    sheet[0]!.steps[0]!.inputs[0]!.from = `@${CONTROL}"x"`;
    const text = workedCsv(sheet);
    const rows: string[][] = parse(text);
    expect(rows.every((row) => row.length === rows[0]!.length)).toBe(true);
    for (const cell of rows.flat()) if (Number.isNaN(Number(cell))) expect(cell).not.toMatch(/^[=+\-@\t\r]./);
    expect(text).not.toMatch(UNSEEN);
    expect(rows.some((row) => row[0] === `'${FORMULA}`)).toBe(true);
  });

  it.each([FORMULA, `x;${FORMULA}`, ` ${FORMULA}`, 'a, b;\t=1+1;\u202e@SUM(A1)', '"x";-2+3', '\uff1d1+1'])(
    'gives a spreadsheet no formula, split at commas or at semicolons: %j',
    (text) => {
      const written = shoppingCsv([
        { item: text, amount: 1, unit: 'm' },
        { item: `pipe "${text}"`, amount: 2, unit: text },
      ]);
      const cells = [
        ...parse(written).flat(),
        // What is quoted in the middle of a cell is quoted to nobody who splits there.
        ...written.split(/[;\r\n]+/).map((cell) => cell.replace(/^"/, '')),
      ];
      expect(cells.length).toBeGreaterThan(10);
      for (const cell of cells)
        if (Number.isNaN(Number(cell))) expect(cell.trimStart()).not.toMatch(/^[=+\-@\uff1d]/);
      expect(parse(written)[1]).toHaveLength(5);
    },
  );

  it('keeps what is no formula', () => {
    const rows: string[][] = parse(shoppingCsv([{ item: '-0.5; to -3.5 m', amount: 1, unit: '--01' }]));
    expect(rows[1]!.slice(0, 3)).toEqual(['-0.5; to -3.5 m', '1', '--01']);
  });

  it('does not steer the terminal that compares it', () => {
    expect(changesText({ survey, report }, { survey: { ...survey, name: 'B' }, report })).not.toMatch(UNSEEN);
  });

  it('names nobody and no folder of this computer', async () => {
    const html = await demoPage(survey);
    expect(html).not.toContain(process.cwd());
    if (homedir().length > 3) expect(html).not.toContain(homedir());
    if (userInfo().username !== 'root') expect(html).not.toContain(userInfo().username);
    expect(html).not.toMatch(/(?:file:\/\/|\/home\/|\/Users\/|[A-Z]:\\)/);
  });
});

if (WHOLE)
  itInChromium('a hostile survey runs nothing, asks for nothing and can be tried', async (page) => {
    const told: string[] = [];
    page.on('console', (message) => told.push(message.text()));
    await page.setViewportSize({ width: 1280, height: 800 });
    await page.goto(
      `${fileOf(await demoPage(hostile()))}#try=1&depth=0.5&option=<img src=x onerror=alert(1)>`,
    );
    await page.locator('#what-if .answer').getByText('0.50 m').first().waitFor();
    await page.getByRole('button', { name: 'Read in feet and inches' }).click();
    await page.getByRole('button', { name: 'Read in metres' }).waitFor();
    expect(await page.evaluate('document.title')).not.toBe('taken');
    expect(await page.evaluate('document.querySelectorAll("img").length')).toBe(0);
    expect(await page.evaluate('document.querySelectorAll("script").length')).toBe(3);
    expect(told).toEqual([]);
  });
