/** Tests in a real browser, if there is one on this computer. */
import { existsSync } from 'node:fs';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, expect, it } from 'vitest';

const executablePath = process.env.CHROMIUM ?? '/usr/bin/chromium';

/** Started by the first test of a file that needs it, gone with the last. */
let browser: Promise<Browser> | undefined;

async function close(): Promise<void> {
  const open = browser;
  browser = undefined;
  await (await open)?.close();
}

/**
 * A test that passes without Chromium, saying so in its name, except where `CI` is `true`. Its page shares
 * nothing with that of another test and has no network; a script of it that throws, or a request it makes, fails the test.
 */
export function itInChromium(name: string, test: (page: Page) => Promise<void>): void {
  if (!existsSync(executablePath)) {
    it(`${name} (not run: needs chromium)`, () => expect(process.env.CI).not.toBe('true'));
    return;
  }
  afterAll(close);
  it(name, async () => {
    browser ??= chromium.launch({ executablePath, args: ['--no-sandbox'] });
    const context = await (await browser).newContext();
    try {
      const page = await context.newPage();
      const faults: string[] = [];
      page.on('pageerror', (error) => faults.push(error.message));
      await page.route(/^(?!file:|data:|blob:)/, (route) => {
        faults.push(`request ${route.request().url()}`);
        return route.abort();
      });
      await test(page);
      expect(faults).toEqual([]);
    } finally {
      await context.close();
    }
  });
}
