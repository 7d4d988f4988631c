/** How to look and measure: every part has its number in the drawing, in the form and on the sheet. */
import { describe, expect, test } from 'vitest';
import { escapeHtml } from '../../lib/figures/escape.js';
import { howToDrawing } from '../../lib/figures/howToDrawings.js';
import { fieldSheetHtml } from '../../lib/notebook/fieldSheet.js';
import { SURVEY_FILES } from '../../lib/survey/index.js';
import { HOW_TO, howToWords } from '../../lib/text/howToLook.js';
import { itInChromium } from '../chromium.js';

const UNITS = ['metric', 'us'] as const;

describe.each(HOW_TO)('%s', (what) => {
  test.each(UNITS)('as many numbers as parts, all of them inside, in %s', (units) => {
    const svg = howToDrawing(what, units);
    const { parts, steps, source } = howToWords(what, units);
    const numbers = [...svg.matchAll(/<tspan[^>]*>(\d)<\/tspan>/g)].map(([, digit]) => Number(digit));
    expect(numbers).toEqual(parts.map((_, at) => at + 1));
    for (const [, x, y] of svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)"/g)) {
      expect(Number(x)).toBeGreaterThan(10);
      expect(Number(x)).toBeLessThan(318);
      expect(Number(y)).toBeGreaterThan(10);
      expect(Number(y)).toBeLessThan(180);
    }
    for (const part of parts) expect(svg).toContain(escapeHtml(part).slice(0, 20));
    expect(steps.length).toBeGreaterThan(2);
    expect(source).toMatch(/practice|19\d\d/);
    const other = /\d (?:ft|in)\b/;
    const said = [...parts, ...steps].join(' ');
    if (units === 'metric') expect(said).not.toMatch(other);
    else expect(said).not.toMatch(/\d\s(?:m|cm|mm)\b/);
  });
});

test.each(UNITS)('the field sheet has them all, and names the files it is typed into, in %s', (units) => {
  const sheet = fieldSheetHtml(units);
  for (const what of HOW_TO) {
    expect(sheet).toContain(howToWords(what, units).title);
    expect(sheet).toContain(howToDrawing(what, units));
  }
  const named = new Set([...sheet.matchAll(/<code>(\w+\.csv)<\/code>/g)].map(([, file]) => file));
  expect([...named].sort()).toEqual([
    'levels.csv',
    'pits.csv',
    'pond.csv',
    'site.csv',
    'soakage.csv',
    'water.csv',
  ]);
  for (const file of named) expect(SURVEY_FILES).toContain(file);
});

itInChromium('it prints on A4, and in feet on Letter, without a section cut by a page', async (page) => {
  for (const [units, mediaBox, height] of [
    ['metric', '594.9', 273],
    ['us', '612', 255],
  ] as const) {
    await page.setContent(fieldSheetHtml(units));
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(pdf).toMatch(new RegExp(`MediaBox ?\\[0 0 ${mediaBox}`));
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(7);
    await page.setViewportSize({ width: units === 'us' ? 725 : 703, height: 900 });
    await page.emulateMedia({ media: 'print' });
    const heights = await page.evaluate(() => {
      const all: number[] = [];
      for (const one of Array.from(document.querySelectorAll('section:not(.how)'))) {
        const mm = (one.getBoundingClientRect().height * 25.4) / 96;
        if (one.classList.contains('page') || all.length === 0) all.push(mm);
        else all.push((all.pop() ?? 0) + 5 + mm);
      }
      return all;
    });
    expect(heights.length).toBe(5);
    // The title and its line stand over the first.
    expect(Math.max(...heights)).toBeLessThan(height - 4);
    expect(heights[0]).toBeLessThan(height - 40);
    await page.emulateMedia({ media: null });
  }
});
