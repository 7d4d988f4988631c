/** What the page holds is said, and a copy without it does not hold it. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { itInChromium } from '../chromium.js';
import { briefDemo, surveyOf } from '../folder.js';
import { demoPage, fileOf } from './demoPage.js';

const PHOTO = 'data:image/jpeg;base64,/9j/4AAQ';
const DATES = /\d{4}-\d{2}-\d{2}/g;

const files = briefDemo('clay-slope');
const survey = surveyOf({
  ...files,
  'prices.csv': 'item,unit,price\nperforated pipe,m,4321.5\n',
  'pits.csv': files['pits.csv']!.replace(/\n/, ',photo\n').replace(/(?<=\n)(.+)/g, '$1,spade-of-soil.jpg'),
});
const photos = { 'spade-of-soil.jpg': PHOTO };
/** Days of looks; the weather has many days of its own. */
const looked = new Set(files['water.csv']!.match(DATES));
const lookedIn = (html: string) => [...new Set(html.match(DATES))].filter((date) => looked.has(date));

it('says what it holds', async () => {
  const html = await demoPage(survey, photos);
  const [, held] = /<section id="held"[^>]*>([\s\S]*?)<\/section>/.exec(html)!;
  const { looks, layers, levels, weather } = survey;
  for (const count of [
    `${layers.length} layers`,
    `${looks.length} looks into the holes`,
    `${levels.length} levelled points`,
    `${weather.length} days of weather`,
    '1 price',
    '1 photo',
  ])
    expect(held!.replaceAll('\u00a0', ' ')).toContain(count);
  for (const part of ['photos', 'looks', 'prices']) expect(held).toContain(`value="${part}"`);
  expect(lookedIn(html).length).toBeGreaterThan(5);
});

it('without a part it holds nothing of it, and the answer stays', async () => {
  const whole = await demoPage(survey, photos);
  const answer = (html: string) => /<div class="advice">[\s\S]*?<\/header>/.exec(html)![0];
  const without = {
    photos: await demoPage(survey, photos, ['photos']),
    looks: await demoPage(survey, photos, ['looks']),
    prices: await demoPage(survey, photos, ['prices']),
  };
  expect(whole).toContain('4321.5');
  for (const html of Object.values(without)) expect(answer(html)).toBe(answer(whole));
  expect(whole).toContain('spade-of-soil.jpg');
  for (const part of ['spade-of-soil', PHOTO]) expect(without.photos).not.toContain(part);
  expect(without.prices).not.toContain('4321.5');
  expect(lookedIn(without.looks)).toEqual([]);
  expect(without.looks).not.toMatch(/<script|water\.csv:|id="try"|4321\.5/);
  expect(without.looks).toContain('Left out of this copy: the looks into the holes.');
});

itInChromium('a copy is saved without what is chosen, and works where it still can', async (page) => {
  await page.goto(fileOf(await demoPage(survey, photos)));
  const saved = async (...parts: string[]) => {
    for (const part of ['photos', 'looks', 'prices'])
      await page.locator(`#held input[value=${part}]`).setChecked(parts.includes(part));
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save a copy without' }).click(),
    ]);
    return readFileSync(await download.path(), 'utf8');
  };
  const copy = await saved('photos', 'prices');
  expect(copy).toBe(await demoPage(survey, photos, ['photos', 'prices']));
  expect(await saved('looks')).toBe(await demoPage(survey, photos, ['looks']));
  await page.goto(`${fileOf(copy)}#try=1&depth=0.5`);
  await page.locator('#what-if .answer').getByText('deep').waitFor();
  expect(await page.locator('#held input').count()).toBe(1);
});
