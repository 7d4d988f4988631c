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
    await page.locator('#what-if .pictures svg').first().waitFor();
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
  await page.locator('.order').waitFor();
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
  expect(await plain(page, 'header')).toContain('Yes, 0.90 m deep');
  await page.getByRole('button', { name: 'Read in feet and inches' }).click();
  await page.getByRole('button', { name: 'Read in metres' }).waitFor();
  expect(await plain(page, 'header')).toContain('Yes, 2 ft 11 1/2 in deep');
  expect(await plain(page, '#depth')).not.toMatch(/\d m\b/);
  expect(await labelFaults(page)).toEqual([]);
});

itInChromium('a step of the what-if is quicker by far than the water it does not run', async (page) => {
  const url = fileOf(await demoPage(surveyOf(briefDemo('clay-hollow'))));
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.goto(`${url}#try=1&depth=1`);
  await page.locator('#what-if .pictures svg').first().waitFor();
  const took = await page.evaluate(async () => {
    const set = async (key: string, value: number, kind: string) => {
      const before = performance.getEntriesByName(kind).length;
      const input = document.querySelector<HTMLInputElement>(`#what-if [data-key=${key}]`)!;
      input.value = String(value);
      input.dispatchEvent(new Event('input'));
      while (performance.getEntriesByName(kind).length === before)
        await new Promise((done) => setTimeout(done, 5));
    };
    for (let i = 0; i < 24; i++)
      await set(['depth', 'full'][i % 2]!, [0.5 + i / 20, i / 50][i % 2]!, 'what-if step');
    for (const length of [5, 5.5, 6]) await set('length', length, 'what-if water');
    const of = (kind: string) =>
      performance
        .getEntriesByName(kind)
        .map(({ duration }) => duration)
        .sort((a, b) => a - b);
    return { steps: of('what-if step'), water: of('what-if water') };
  });
  const [median, water] = [took.steps[took.steps.length >> 1]!, took.water[1]!];
  process.stdout.write(
    `what-if: median ${median.toFixed(0)} ms, worst ${took.steps.at(-1)!.toFixed(0)} ms of ${took.steps.length}; water ${water.toFixed(0)} ms\n`,
  );
  expect(took.steps.length).toBeGreaterThanOrEqual(24);
  expect(median).toBeLessThan(water / 2);
});
