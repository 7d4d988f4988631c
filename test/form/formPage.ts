/** The form in a browser, and what a new user types into it. */
import { rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Locator, Page } from 'playwright-core';
import { expect, onTestFinished } from 'vitest';
import { GRID } from '../../lib/form/sketchWindow.js';
import { formText } from '../../lib/notebook/formFile.js';

let count = 0;

/** Opens the form on a phone, and gathers what it should never do. */
export async function openForm(page: Page, width = 360): Promise<{ faults: string[]; url: string }> {
  const file = join(tmpdir(), `underpond-form-${process.pid}-${count++}.html`);
  onTestFinished(() => rmSync(file, { force: true }));
  writeFileSync(file, await formText());
  const faults: string[] = [];
  page.on('console', (message) => faults.push(message.text()));
  await page.addInitScript(() => {
    const tasks: number[] = [];
    Object.assign(window, { tasks });
    new PerformanceObserver((list) =>
      tasks.push(...list.getEntries().map(({ duration }) => duration)),
    ).observe({
      type: 'longtask',
    });
    document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) =>
      console.log(`policy: ${violatedDirective} ${blockedURI}`),
    );
  });
  await page.setViewportSize({ width, height: 720 });
  const url = pathToFileURL(file).href;
  await page.goto(url);
  await asked(page, 'How deep do you wish it?').waitFor();
  return { faults, url };
}

/** The control of a question; of several alike the last. */
export const asked = (page: Page, question: string): Locator =>
  page.getByLabel(question, { exact: true }).last();

/** Presses a button by its words, the last of that name. */
export const press = (page: Page, name: string | RegExp): Promise<void> =>
  page.getByRole('button', { name }).last().click();

/** Goes to a step by its name, and is there when it is shown: the screen is drawn after the press. */
export async function walkTo(page: Page, step: string): Promise<void> {
  const button = page
    .getByRole('navigation', { name: 'Steps' })
    .getByRole('button', { name: new RegExp(`^${step}`) });
  await button.click();
  await button.and(page.locator('[aria-current=step]')).waitFor();
}

/** One Saturday's facts: a pond wished, one hole of two layers. */
export async function typeSaturday(page: Page): Promise<void> {
  await asked(page, 'How deep do you wish it?').fill('1');
  await asked(page, 'How long?').fill('4.2');
  await asked(page, 'How wide?').fill('310');
  await page.getByLabel('Unit: How wide?').selectOption('cm');
  await press(page, /^Next/);
  await asked(page, 'How far north is it (latitude)?').fill('52');
  await press(page, /^Next/);
  await press(page, 'Begin the first hole');
  await asked(page, 'Down to').waitFor();
  await asked(page, 'Down to').fill('0.3');
  await asked(page, 'How does it feel between thumb and fingers?').selectOption('clay loam');
  await press(page, 'Add the layer below');
  // Drawn after the press, its fields after its name: until then the last are those of the layer above.
  await expect.poll(() => asked(page, 'From').inputValue(), { timeout: 20_000 }).toBe('0.3');
  await asked(page, 'Down to').fill('1.8');
  await asked(page, 'How does it feel between thumb and fingers?').selectOption('clay');
  await asked(page, 'Are there rusty and grey spots?').selectOption('many');
}

/** Taps the sketch of the levels, so many of its squares to the right of its middle and up. */
export async function tapSketch(page: Page, across: number, up: number): Promise<void> {
  const sketch = page.locator('.sketch svg');
  await sketch.scrollIntoViewIfNeeded();
  const { width, height } = (await sketch.boundingBox())!;
  const side = width / GRID.across;
  await sketch.click({ position: { x: width / 2 + across * side, y: height / 2 - up * side } });
}

/** Waits for the answer that is kept. */
export const answered = (page: Page): Promise<void> =>
  page
    .getByText('Worked out in full.', { exact: true })
    .or(page.locator('.bar.full'))
    .first()
    .waitFor({ timeout: 120_000 });
