/** What the page holds is said, and a copy without it does not hold it. */
import { expect, it } from 'vitest';
import { demoPage } from './demoPage.js';
import { files, PHOTO, photos, survey } from './photographed.js';

const DATES = /\d{4}-\d{2}-\d{2}/g;

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
  const answer = (html: string) => /<div class="headline">[\s\S]*?<\/header>/.exec(html)![0];
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
