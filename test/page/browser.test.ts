import { expect, vi } from 'vitest';
import { itInChromium } from '../chromium.js';
import { briefDemo, surveyOf } from '../folder.js';
import { demoPage, fileOf } from './demoPage.js';
import { itIsDrawn } from './drawnPage.js';

vi.setConfig({ testTimeout: 120_000 });

// All demos, with all of their weather, are in `browser.long.ts`.
itIsDrawn('clay-hollow', briefDemo('clay-hollow'));

itInChromium(
  'the what-if goes by keyboard, says what governs, keeps its state in the link and comes back',
  async (page) => {
    const url = fileOf(await demoPage(surveyOf(briefDemo('clay-hollow'))));
    await page.setViewportSize({ width: 1280, height: 800 });
    await page.goto(url);
    await page.locator('#try').scrollIntoViewIfNeeded();
    const depth = page.getByRole('slider', { name: 'Depth dug' });
    await depth.focus();
    await page.keyboard.press('ArrowRight');
    const answer = page.locator('#what-if .answer');
    await answer.getByText('Drain to a pumped sump, 0.95 m deep: safe').waitFor();
    expect(await depth.getAttribute('aria-valuetext')).toBe('0.95 m');
    await page.getByLabel('Drain or other measure').selectOption('no-drain');
    await answer.getByText('No drain, 0.95 m deep: not safe').waitFor();
    expect(await answer.textContent()).toMatch(/Governs now: liner lifts/);
    expect(new URL(page.url()).hash).toBe('#try=1&depth=0.95&option=no-drain');
    expect(await page.getByLabel('The same in a notebook').inputValue()).toContain(
      "whatIf(survey, { depth: 0.95, option: 'no-drain' })",
    );

    const wide = page.getByRole('slider', { name: 'Length at the rim' });
    await wide.focus();
    await page.keyboard.press('ArrowRight');
    await page.locator('#what-if.stale').waitFor();
    expect(await page.locator('#what-if .told').textContent()).toContain('the answer shown is the old one');
    await page.locator('#what-if:not(.stale)').waitFor();

    await page.goto('about:blank');
    await page.goto(`${url}#try=1&depth=0.5&option=nonsense`);
    await page.locator('#what-if .answer').getByText('0.50 m deep').waitFor();
    expect(await page.locator('#what-if .told').textContent()).toContain('option=nonsense');
    await page.getByRole('button', { name: 'Back to the survey' }).click();
    await page.locator('#what-if .answer').getByText('0.90 m deep').waitFor();
    expect(new URL(page.url()).hash).toBe('');
  },
);
