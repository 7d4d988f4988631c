/** A copy saved from the page itself. */
import { readFileSync } from 'node:fs';
import { expect } from 'vitest';
import { itInChromium } from '../chromium.js';
import { demoPage, fileOf } from './demoPage.js';
import { photos, survey } from './photographed.js';

itInChromium('a copy is saved without what is chosen, and works where it still can', async (page) => {
  await page.goto(fileOf(await demoPage(survey, photos)));
  await page.locator('#evidence > summary').click();
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
  await page.locator('#what-if .answer').getByText('0.50 m').first().waitFor();
  expect(await page.locator('#held input').count()).toBe(1);
});
