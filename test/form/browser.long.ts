/** The form as somebody uses it who has never seen it: on a phone, offline, from nothing to an answer and a file. */
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Download, Page } from 'playwright-core';
import { expect, onTestFinished, vi } from 'vitest';
import { assess } from '../../lib/decision/index.js';
import { unzipped } from '../../lib/form/screen/zip.js';
import { STEPS } from '../../lib/form/steps.js';
import { writeOutputs } from '../../lib/notebook/outputs.js';
import { readSurvey } from '../../lib/notebook/readSurvey.js';
import { siteModel } from '../../lib/site/index.js';
import { itInChromium } from '../chromium.js';
import { briefDemo } from '../folder.js';
import { PROJECT } from '../notebook/notebooks.js';
import { answered, asked, openForm, press, tapSketch, typeSaturday, walkTo } from './formPage.js';

vi.setConfig({ testTimeout: 240_000 });

/** A task that keeps the hand waiting, ms. */
const LONG = 200;

const folder = () => {
  const path = mkdtempSync(join(tmpdir(), 'underpond-form-'));
  onTestFinished(() => rmSync(path, { recursive: true, force: true }));
  return path;
};
async function saved(page: Page, name: string): Promise<Download> {
  const [download] = await Promise.all([page.waitForEvent('download'), press(page, name)]);
  return download;
}

itInChromium('from nothing to an answer, with a slip mended on the spot, without a request', async (page) => {
  const { faults } = await openForm(page);
  await asked(page, 'How deep do you wish it?').fill('1.O');
  await page.getByText("To mend: Unknown '1.O' - 'O' is no unit of length.").waitFor();
  expect(await asked(page, 'How deep do you wish it?').getAttribute('aria-invalid')).toBe('true');
  await page.evaluate(() => (window as unknown as { tasks: number[] }).tasks.splice(0));
  await typeSaturday(page);
  await answered(page);
  const tasks = await page.evaluate(() => (window as unknown as { tasks: number[] }).tasks);
  expect(Math.max(0, ...tasks)).toBeLessThan(LONG);
  expect(await page.locator('p.wrong').count()).toBe(0);
  await press(page, 'Answer');
  await page.getByRole('heading', { name: 'How often it fails' }).waitFor();
  expect(await page.locator('.most').textContent()).toMatch(/What would help most now.*standpipe.*in March/);
  expect(await page.locator('.drawing svg').count()).toBe(2);

  // What is given up on is told, and led to.
  await walkTo(page, 'Levels');
  await press(page, 'Add a point');
  await asked(page, 'Name of the point').fill('low edge');
  await asked(page, 'How far down from the string?').fill('0,6 miles');
  await page.getByText(/^To mend: .*miles/).waitFor();
  await press(page, 'Answer');
  await page.getByText('This is the answer of before').waitFor();
  await press(page, 'Go there');
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toMatch(/^levels-\d+-level$/);
  await page.keyboard.type('0,6');
  expect(faults).toEqual([]);
});

itInChromium('every step is open to everybody, by day and by night, and fits a phone', async (page) => {
  const { faults } = await openForm(page);
  await page.evaluate(readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8'));
  await typeSaturday(page);
  await answered(page);
  for (const { short } of STEPS) {
    await walkTo(page, short);
    for (const name of [
      'Add a look of now',
      'Add what you know',
      'Add a point',
      'Begin a test',
      'Fill in twelve months',
    ])
      if (await page.getByRole('button', { name }).count()) await press(page, name);
    if (short === 'Levels') {
      await tapSketch(page, 5, 0);
      await tapSketch(page, -5, 0);
    }
    // Folds within folds are made when the outer one is opened.
    for (let round = 0; round < 2; round++) {
      await page.evaluate(() => {
        document.querySelectorAll('details').forEach((one) => {
          one.open = true;
        });
      });
      await page.waitForTimeout(300);
    }
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      const said = await page.evaluate(async () => {
        const { axe } = window as unknown as {
          axe: {
            run: (
              options: object,
            ) => Promise<{ violations: { id: string; nodes: { html: string; failureSummary: string }[] }[] }>;
          };
        };
        const { violations } = await axe.run({
          runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
        });
        return violations.flatMap(({ id, nodes }) =>
          nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary}`),
        );
      });
      expect(said, `${short}, ${colorScheme}`).toEqual([]);
    }
    expect(
      await page.evaluate('document.documentElement.scrollWidth - innerWidth'),
      short,
    ).toBeLessThanOrEqual(0);
    const small = await page
      .locator('button, select, input:not([type=checkbox]), .tick, summary, .mark')
      .evaluateAll((all) =>
        all
          .map((one) => ({ what: one.outerHTML.slice(0, 90), ...one.getBoundingClientRect().toJSON() }))
          .filter(({ width, height }) => width > 0 && (height < 43.5 || width < 43.5))
          .map(({ what }) => what),
      );
    expect(small, short).toEqual([]);
  }
  expect(faults).toEqual([]);
});

itInChromium(
  'a survey goes in as a zip and comes out as it was, with its page, and is kept',
  async (page) => {
    const { faults, url } = await openForm(page);
    const garden = join(folder(), 'garden');
    mkdirSync(garden);
    for (const [name, text] of Object.entries(briefDemo('clay-hollow')))
      writeFileSync(join(garden, name), text);
    await walkTo(page, 'Answer');
    const names = Object.keys(briefDemo('clay-hollow'));
    await asked(page, 'Open a survey').setInputFiles(names.map((name) => join(garden, name)));
    await page.getByText('Opened.').waitFor();
    await answered(page);

    const zip = readFileSync(await (await saved(page, 'Save the survey (zip)')).path());
    const out = folder();
    for (const [name, bytes] of Object.entries(unzipped(zip))) writeFileSync(join(out, name), bytes);
    for (const name of names)
      expect(readFileSync(join(out, name), 'utf8')).toBe(briefDemo('clay-hollow')[name]);

    const survey = readSurvey(out);
    await writeOutputs(assess(siteModel(survey, { seed: 1 })), out, out);
    const ownPage = readFileSync(await (await saved(page, 'Save the page')).path(), 'utf8');
    // What the balance fails to close by is the last bit of two engines' arithmetic.
    const told = (html: string) => html.replace(/Largest error of the water balance: \S+?\smm/, 'closed');
    expect(told(ownPage)).toBe(told(readFileSync(join(out, 'page.html'), 'utf8')));
    const card = readFileSync(await (await saved(page, 'Save the pond card')).path(), 'utf8');
    expect(card).toBe(readFileSync(join(out, 'pond-card.html'), 'utf8'));

    // Closed and opened again it is all there, the weather with it.
    await page.goto('about:blank');
    await page.goto(url);
    await walkTo(page, 'Weather');
    await page.getByText(/^weather\.csv, \d+ kB/).waitFor();
    await answered(page);
    await walkTo(page, 'Answer');
    await press(page, 'Begin a new survey');
    await press(page, 'Undo');
    await walkTo(page, 'Pond');
    expect(await asked(page, 'How long?').inputValue()).toBe('4.2');
    expect(faults).toEqual([]);
  },
);

itInChromium('a photo is made small and loses what the camera wrote into it', async (page) => {
  const { faults } = await openForm(page);
  await typeSaturday(page);
  const file = readFileSync(join(PROJECT, 'test', 'fixtures', 'photos', 'baseline.jpg'));
  expect(file.includes('Owner of no camera')).toBe(true);
  await page
    .getByLabel('A photo of it')
    .last()
    .setInputFiles({ name: 'DSC_1.jpg', mimeType: 'image/jpeg', buffer: file });
  await page.locator('img.photo').waitFor();
  await answered(page);
  await press(page, 'Answer');
  const zip = unzipped(readFileSync(await (await saved(page, 'Save the survey (zip)')).path()));
  const [name] = Object.keys(zip).filter((one) => one.endsWith('.jpg'));
  const photo = Buffer.from(zip[name!]!);
  expect(photo.length).toBeLessThanOrEqual(120_000);
  expect(photo.includes('Exif') || photo.includes('Owner')).toBe(false);
  expect(new TextDecoder().decode(zip['pits.csv'])).toContain(name);
  const shared = readFileSync(await (await saved(page, 'Save the page')).path(), 'utf8');
  expect(shared).toContain('data:image/jpeg;base64,');
  const shown = join(folder(), 'page.html');
  writeFileSync(shown, shared);
  expect(existsSync(shown)).toBe(true);
  await page.goto(pathToFileURL(shown).href);
  await page.locator('#evidence > summary').click();
  await page.locator('.photo img').first().waitFor();
  expect(faults).toEqual([]);
});
