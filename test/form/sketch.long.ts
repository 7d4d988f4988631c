/** Levels typed by tapping a sketch, on a phone, and found in the survey that is saved. */
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, vi } from 'vitest';
import { unzipped } from '../../lib/form/screen/zip.js';
import { itInChromium } from '../chromium.js';
import { asked, openForm, press, tapSketch, walkTo } from './formPage.js';

vi.setConfig({ testTimeout: 120_000 });

const focused = (page: Page) => page.evaluate(() => document.activeElement?.id ?? '');
const mark = (page: Page, name: RegExp) => page.locator('.sketch').getByRole('button', { name });

/** What levels.csv holds in the zip. */
async function levels(page: Page): Promise<string> {
  await walkTo(page, 'Answer');
  const [download] = await Promise.all([page.waitForEvent('download'), press(page, 'Save the survey (zip)')]);
  const text = new TextDecoder().decode(unzipped(readFileSync(await download.path()))['levels.csv']);
  await walkTo(page, 'Levels');
  return text;
}

async function typeHeight(page: Page, name: string, height: string, role?: string): Promise<void> {
  await expect.poll(() => focused(page)).toMatch(/^levels-\d+-level$/);
  await page.keyboard.type(height);
  await asked(page, 'Name of the point').fill(name);
  if (role) await asked(page, 'What is it?').selectOption(role);
}

itInChromium('points are tapped, moved by key and by hand, and stand in the survey', async (page) => {
  const { faults } = await openForm(page);
  await asked(page, 'How long?').fill('4');
  await asked(page, 'How wide?').fill('3');
  await walkTo(page, 'Levels');
  await page.getByText('A square is 1.00 m.').waitFor();

  await tapSketch(page, 2, 0);
  await typeHeight(page, 'low edge', '0.62');
  await tapSketch(page, -4, 3);
  await typeHeight(page, 'P1', '0.5', 'pit');
  expect(await levels(page)).toBe(
    [
      'point,role,x_m,y_m,level_m,note',
      'low edge,rim,2,0,-0.62,placed on the sketch',
      'P1,pit,-4,3,-0.5,placed on the sketch',
      '',
    ].join('\n'),
  );

  // A mark is reached, told and moved by keys; Enter leads to its height.
  const hole = mark(page, /^P1, Ground at a hole: 4\.00 m left and 3\.00 m up from the pond’s middle$/);
  await hole.focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Shift+ArrowDown');
  await mark(page, /^P1.*3\.90 m left and 2\.00 m up/).waitFor();
  expect(await focused(page)).toMatch(/^sketch-\d+$/);
  await page.keyboard.press('Enter');
  await expect.poll(() => focused(page)).toMatch(/^levels-\d+-level$/);
  expect(await page.locator('details[open] > summary').allTextContents()).toContain('P1, Ground at a hole');

  // And by hand: no new point comes of it.
  const low = mark(page, /^low edge/);
  await low.scrollIntoViewIfNeeded();
  const from = (await low.boundingBox())!;
  const [x, y] = [from.x + from.width / 2, from.y + from.height / 2];
  const side = (await page.locator('.sketch svg').boundingBox())!.width / 12;
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + side, y + 2 * side, { steps: 4 });
  await page.mouse.up();
  await mark(page, /^low edge.*3\.00 m right and 2\.00 m down/).waitFor();
  expect(await page.locator('.mark').count()).toBe(2);

  // One typed without a place is put on it without a pointer.
  await press(page, 'Add a point');
  await asked(page, 'Name of the point').fill('ditch end');
  await page.getByText('Not on it yet: ditch end.').waitFor();
  await page.getByRole('button', { name: 'Put it on the sketch' }).focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => focused(page)).toMatch(/^sketch-\d+$/);
  await page.keyboard.press('ArrowUp');
  await mark(page, /^ditch end: 3\.00 m right and 0\.10 m up/).waitFor();
  const text = await levels(page);
  expect(text).toContain('low edge,rim,3,-2,-0.62,');
  expect(text).toContain('P1,pit,-3.9,2,-0.5,');
  expect(text).toContain('ditch end,,3,0.1,,placed on the sketch');

  // In feet what is moved from now on stands in feet, by halves of one.
  await page.getByLabel('Units').selectOption('us');
  await page.getByText('A square is 5 ft.').waitFor();
  await mark(page, /^P1/).focus();
  await page.keyboard.press('ArrowLeft');
  await expect.poll(() => levels(page)).toMatch(/^P1,pit,-13\.5 ft,6\.5 ft,-0\.5,/m);
  expect(faults).toEqual([]);
});

itInChromium('a finger on a point moves it, and beside the points the page', async (page) => {
  const hand = await page.context().newCDPSession(page);
  await hand.send('Emulation.setTouchEmulationEnabled', { enabled: true });
  const { faults } = await openForm(page);
  await walkTo(page, 'Levels');
  await tapSketch(page, 2, 0);
  await typeHeight(page, 'low edge', '0.62');
  await page.locator('.sketch').evaluate((sketch) => sketch.scrollIntoView());
  const point = mark(page, /^low edge/);
  const { x, y, width, height } = (await point.boundingBox())!;
  const drag = async (x: number, y: number, by: number) => {
    const before = await page.evaluate(() => scrollY);
    await hand.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }] });
    for (let i = 1; i <= 8; i++)
      await hand.send('Input.dispatchTouchEvent', {
        type: 'touchMove',
        touchPoints: [{ x, y: y - (by * i) / 8 }],
      });
    await hand.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    return async () => (await page.evaluate(() => scrollY)) - before;
  };
  const stays = await drag(x + width / 2, y + height / 2, 70);
  await mark(page, /^low edge.* and [\d.]+ (m|cm) up/).waitFor();
  expect(await stays()).toBe(0);
  const scrolled = await drag(x - 80, y + height / 2 + 60, 70);
  await expect.poll(scrolled).toBeGreaterThan(20);
  expect(await page.locator('.mark').count()).toBe(1);
  expect(faults).toEqual([]);
});
