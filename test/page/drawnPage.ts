/** What must hold of the page of a demo in a browser: every figure is drawn, no label cut off, and it fits a phone. */
import { expect } from 'vitest';
import { itInChromium } from '../chromium.js';
import { surveyOf } from '../folder.js';
import { demoPage, fileOf } from './demoPage.js';
import { labelFaults } from './labels.js';

const FIGURES = ['section-figure', 'risk-figure', 'year-figure', 'dig-figure'];

/** The test of the page of one demo. */
export function itIsDrawn(name: string, files: Record<string, string>): void {
  itInChromium(`the page of ${name} draws every figure, cuts off no label and fits a phone`, async (page) => {
    const html = await demoPage(surveyOf(files));
    expect(Buffer.byteLength(html)).toBeLessThan(6e6);
    const told: string[] = [];
    page.on('console', (message) => told.push(message.text()));
    const url = fileOf(html);
    for (const width of [1280, 360]) {
      await page.setViewportSize({ width, height: 800 });
      await page.goto(url);
      expect(await page.evaluate('document.documentElement.scrollWidth - innerWidth')).toBeLessThanOrEqual(0);
      const scrolled = page
        .locator('.table')
        .evaluateAll((all) =>
          all
            .filter((one) => one.scrollWidth > one.clientWidth + 1)
            .map((one) => one.getAttribute('aria-label')),
        );
      expect(await scrolled, `tables wider than ${width}`).toEqual([]);
      for (const id of FIGURES) {
        // A level line has no height.
        const drawn = await page
          .locator(`#${id} .trace`)
          .evaluateAll((all) => all.filter((one) => one.getBoundingClientRect().width > 0).length);
        expect(drawn, `${id} at ${width}`).toBeGreaterThan(0);
      }
      expect(await labelFaults(page), `at ${width}`).toEqual([]);
    }
    await page.emulateMedia({ media: 'print' });
    expect(await labelFaults(page), 'in print').toEqual([]);
    await page.emulateMedia({ media: null });
    const pdf = await page.pdf({ format: 'A4', preferCSSPageSize: true });
    const pages = pdf.toString('latin1').match(/\/Type \/Page\b/g)!.length;
    expect(pages).toBeGreaterThan(3);
    expect(pages).toBeLessThan(40);
    expect(told).toEqual([]);
  });
}
