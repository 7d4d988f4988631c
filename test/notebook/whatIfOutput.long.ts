import { expect, vi } from 'vitest';
import { whatIfOutput } from '../../lib/notebook/whatIfOutput.js';
import { itInChromium } from '../chromium.js';
import { briefDemo, surveyOf } from '../folder.js';

vi.setConfig({ testTimeout: 60_000 });

itInChromium(
  'the what-if under a cell runs in an exported page and in a front end that trusts it',
  async (page) => {
    const { html, alt } = await whatIfOutput(surveyOf(briefDemo('loam-terrace')), { samples: 48 });
    expect(alt).toMatch(/^Safe at 3 ft 3 in with no drain: /);
    expect(html).toMatch(
      /^<div class="tex2jax_ignore mathjax_ignore"><style>[^<]*<\/style><div id="what-if-[0-9a-f]{12}"><p>Safe at/,
    );
    const told: string[] = [];
    page.on('console', (message) => told.push(message.text()));

    await page.setContent(`<!doctype html><main>${html}</main>`);
    const slider = page.getByRole('slider', { name: 'Depth dug' });
    await slider.focus();
    await page.keyboard.press('ArrowRight');
    await page.locator('.answer').getByText('at 3 ft 4 in with').waitFor();
    await page.getByRole('img').first().waitFor();
    expect(page.url()).toBe('about:blank');
    await page.getByRole('button', { name: 'Copy the line' }).click();

    // A front end puts the HTML in first and then makes the scripts anew.
    await page.setContent('<!doctype html><div id="output"></div>');
    await page.evaluate((text) => {
      const output = document.getElementById('output')!;
      output.innerHTML = text;
      for (const old of Array.from(output.querySelectorAll('script'))) {
        const script = document.createElement('script');
        script.textContent = old.textContent;
        old.replaceWith(script);
      }
    }, html);
    await slider.waitFor();

    // One that doesn't leaves the words.
    await page.setContent(`<!doctype html>${html.replace(/<script[\s\S]*?<\/script>/g, '')}`);
    expect(await page.getByText('Safe at 3 ft 3 in with no drain').count()).toBe(1);
    expect(told).toEqual([]);
  },
);
