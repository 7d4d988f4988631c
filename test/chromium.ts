/** Tests in a real browser, if there is one on this computer. */
import { existsSync } from 'node:fs';
import { chromium, type Page } from 'playwright-core';
import { expect, it } from 'vitest';

const executablePath = process.env.CHROMIUM ?? '/usr/bin/chromium';

/**
 * A test that passes without Chromium, saying so in its name, except where `CI` is `true`. The page has no network;
 * a script of it that throws, or a request it makes, fails the test.
 */
export function itInChromium(name: string, test: (page: Page) => Promise<void>): void {
  if (!existsSync(executablePath)) {
    it(`${name} (not run: needs chromium)`, () => expect(process.env.CI).not.toBe('true'));
    return;
  }
  it(name, async () => {
    const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] });
    try {
      const page = await browser.newPage();
      const faults: string[] = [];
      page.on('pageerror', (error) => faults.push(error.message));
      await page.route(/^(?!file:|data:|blob:)/, (route) => {
        faults.push(`request ${route.request().url()}`);
        return route.abort();
      });
      await test(page);
      expect(faults).toEqual([]);
    } finally {
      await browser.close();
    }
  });
}
