import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, onTestFinished, vi } from 'vitest';
import { pageHtml } from '../../lib/page/index.js';
import { itInChromium } from '../chromium.js';
import { invented } from '../figures/report.js';

vi.setConfig({ testTimeout: 60_000 });

itInChromium('the page opens from a file, asks for nothing, draws, slides and fits a phone', async (page) => {
  const plotly = readFileSync(
    createRequire(import.meta.url).resolve('plotly.js-dist-min/plotly.min.js'),
    'utf8',
  );
  const html = pageHtml(invented(), { plotly });
  expect(Buffer.byteLength(html)).toBeLessThan(6e6);
  const file = join(tmpdir(), `underpond-page-${process.pid}.html`);
  onTestFinished(() => rmSync(file));
  writeFileSync(file, html);
  const told: string[] = [];
  page.on('console', (message) => told.push(message.text()));

  await page.setViewportSize({ width: 1280, height: 900 });
  await page.goto(pathToFileURL(file).href);
  for (const id of ['section-figure', 'risk-figure', 'year-figure'])
    expect(await page.locator(`#${id} .trace`).count(), id).toBeGreaterThan(3);
  expect(await page.evaluate('document.documentElement.scrollWidth - innerWidth')).toBeLessThanOrEqual(0);

  const verdict = page.locator('#at-depth tbody tr').filter({ hasText: 'No drain' }).locator('td').first();
  expect(await verdict.textContent()).toBe('not safe');
  await page.locator('#depth').fill('0');
  expect(await page.locator('#depth-now').textContent()).toBe('0.30 m');
  expect(await verdict.textContent()).toBe('safe');

  await page.setViewportSize({ width: 360, height: 780 });
  expect(await page.evaluate('document.documentElement.scrollWidth - innerWidth')).toBeLessThanOrEqual(0);
  const width = await page
    .locator('#risk-figure svg.main-svg')
    .first()
    .evaluate((svg) => svg.getBoundingClientRect().width);
  expect(width).toBeLessThanOrEqual(360);
  expect(told).toEqual([]);
});
