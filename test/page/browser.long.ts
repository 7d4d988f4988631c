/** The pages of the demos with all of their weather; and one of them in feet, audited, and timed. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { itInChromium } from '../chromium.js';
import { briefDemo, demoFiles, surveyOf } from '../folder.js';
import { demoPage, fileOf } from './demoPage.js';
import { itIsDrawn } from './drawnPage.js';
import { labelFaults } from './labels.js';

/** Text of a part of the page with plain spaces. */
const plain = async (page: Page, part: string) =>
  ((await page.locator(part).textContent()) ?? '').replaceAll('\u00a0', ' ');

for (const name of ['clay-slope', 'clay-hollow', 'loam-terrace']) itIsDrawn(name, demoFiles(name));

itInChromium(
  'meets WCAG 2.2 AA by the automated audit on a phone and wide, controls opened',
  async (page) => {
    const url = fileOf(await demoPage(surveyOf(briefDemo('clay-hollow'))));
    await page.setViewportSize({ width: 360, height: 800 });
    await page.goto(`${url}#try=1&depth=1.2`);
    await page.locator('#what-if [data-key=depth]').waitFor();
    await page.locator('details').evaluateAll((all) => {
      for (const one of all as HTMLDetailsElement[]) one.open = true;
    });
    // The page runs no scripts but its own; the audit comes in by the debugger.
    const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
    await page.evaluate(axe);
    for (const width of [360, 1280]) {
      await page.setViewportSize({ width, height: 800 });
      const faults = await page.evaluate(async () => {
        const { axe } = window as unknown as {
          axe: {
            run: (options: object) => Promise<{
              violations: { id: string; nodes: { html: string; failureSummary: string }[] }[];
              passes: unknown[];
            }>;
          };
        };
        const { violations, passes } = await axe.run({
          runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
        });
        return {
          checked: passes.length,
          said: violations.flatMap(({ id, nodes }) =>
            nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary}`),
          ),
        };
      });
      expect(faults.said, `at ${width}`).toEqual([]);
      expect(faults.checked).toBeGreaterThan(20);
    }
  },
);

itInChromium('the verdict is read before anything is computed', async (page) => {
  const url = fileOf(await demoPage(surveyOf(briefDemo('clay-slope'))));
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.goto(url);
  await page.getByRole('heading', { name: 'When it is full' }).waitFor();
  const paint = await page.evaluate(
    () =>
      new Promise<number>((done) =>
        new PerformanceObserver((list) => done(list.getEntries()[0]!.startTime)).observe({
          type: 'paint',
          buffered: true,
        }),
      ),
  );
  expect(paint).toBeLessThan(1500);
});

itInChromium('turns the whole page into feet and inches, with the same numbers', async (page) => {
  const url = fileOf(await demoPage(surveyOf(briefDemo('clay-hollow'))));
  await page.setViewportSize({ width: 360, height: 800 });
  await page.goto(url);
  expect(await plain(page, 'header')).toContain('dug 0.90 m deep');
  await page.getByRole('button', { name: 'Read in feet and inches' }).click();
  await page.getByRole('button', { name: 'Read in metres' }).waitFor();
  expect(await plain(page, 'header')).toContain('dug 2 ft 11 1/2 in deep');
  expect(await plain(page, '#depth')).not.toMatch(/\d m\b/);
  expect(await labelFaults(page)).toEqual([]);
});

itInChromium('a step of the what-if is quicker by far than the water it does not run', async (page) => {
  const url = fileOf(await demoPage(surveyOf(briefDemo('clay-hollow'))));
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.goto(`${url}#try=1&depth=1`);
  await page.getByRole('slider', { name: 'Depth dug' }).waitFor();
  const took = await page.evaluate(async () => {
    const frame = () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
    const set = (key: string, value: number) => {
      const input = document.querySelector<HTMLInputElement>(`#what-if [data-key=${key}]`)!;
      input.value = String(value);
      input.dispatchEvent(new Event('input'));
    };
    const start = performance.getEntriesByName('what-if step').length;
    for (let i = 0; i < 40; i++) {
      set(['depth', 'full', 'drawdown'][i % 3]!, [0.5 + i / 40, i / 160, i / 200][i % 3]!);
      await frame();
    }
    const steps = performance
      .getEntriesByName('what-if step')
      .slice(start)
      .map(({ duration }) => duration)
      .sort((a, b) => a - b);
    for (const length of [5, 5.5, 6]) {
      const before = performance.getEntriesByName('what-if water').length;
      set('length', length);
      while (performance.getEntriesByName('what-if water').length === before) await frame();
    }
    const water = performance
      .getEntriesByName('what-if water')
      .map(({ duration }) => duration)
      .sort((a, b) => a - b);
    return { count: steps.length, median: steps[20]!, worst: steps.at(-1)!, water: water[1]! };
  });
  process.stdout.write(
    `what-if: median ${took.median.toFixed(0)} ms, worst ${took.worst.toFixed(0)} ms of ${took.count}; water ${took.water.toFixed(0)} ms\n`,
  );
  expect(took.count).toBeGreaterThanOrEqual(39);
  expect(took.median).toBeLessThan(took.water / 2);
});
