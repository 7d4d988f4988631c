/** Words of the trade: each marked where it first appears, each told once, and none of the survey's own words touched. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it, vi } from 'vitest';
import { assess } from '../../lib/decision/index.js';
import { wordMarker } from '../../lib/page/glossary.js';
import { bodyHtml } from '../../lib/page/pageHtml.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { GLOSSARY } from '../../lib/text/glossary.js';
import { itInChromium } from '../chromium.js';
import { briefDemo, surveyOf } from '../folder.js';
import { baseSurvey } from '../risk/base.js';
import { sweep, WHOLE } from '../sweep.js';
import { demoPage, fileOf } from './demoPage.js';

vi.setConfig({ testTimeout: 60_000 });

const reportFor = (files: Record<string, string>) =>
  reportOf(assess(siteModel(surveyOf(files), { seed: 1, samples: 32 })));

const answerOf = (report: ReturnType<typeof reportFor>, units: 'metric' | 'us' = 'metric') => {
  const body = bodyHtml({ report, worked: [], photos: {} }, { version: '0', leftOut: [] }, units);
  return body.slice(0, body.indexOf('<details id="evidence">'));
};

/** Running text alone, marks kept: no drawing, heading, control or list of contents. */
const running = (html: string) =>
  html
    .replace(/<(svg|nav|h[1-6]|summary|label|select|output|caption|th|dt)\b[\s\S]*?<\/\1>/g, ' ')
    .replace(/<a class="word" href="#([\w-]+)">/g, '‹$1›')
    .replace(/<[^>]*>/g, ' ')
    .replaceAll('\u00a0', ' ');

const usedAt = (words: string, text: string) =>
  text.search(new RegExp(`(?<![\\w&-])(?:${words})(?![\\w-])`, 'i'));

const corpus = fileURLToPath(new URL('../surveys/', import.meta.url));
const filesIn = (folder: string): Record<string, string> =>
  Object.fromEntries(
    readdirSync(folder)
      .filter((name) => name.endsWith('.csv'))
      .map((name) => [name, readFileSync(`${folder}/${name}`, 'utf8')]),
  );

const DEMOS = ['clay-slope', 'clay-hollow', 'loam-terrace'];
const pages = sweep(DEMOS, 1).flatMap((name) => {
  const report = reportFor(briefDemo(name));
  return (['metric', 'us'] as const).map((units) => ({ name, units, html: answerOf(report, units) }));
});

describe('the list', () => {
  it('has at most 25 words, each once, each in one sentence', () => {
    expect(GLOSSARY.length).toBeLessThanOrEqual(25);
    expect(new Set(GLOSSARY.map(({ word }) => word)).size).toBe(GLOSSARY.length);
    for (const { meaning } of GLOSSARY) expect(meaning).toMatch(/^[A-Z][^.]*\.$/);
  });

  if (WHOLE)
    it('has no word that no page uses', () => {
      const unused = new Set(GLOSSARY.map(({ word }) => `word-${word.replaceAll(' ', '-')}`));
      const seen = (html: string) => {
        for (const [, id] of html.matchAll(/<div id="(word-[\w-]+)">/g)) unused.delete(id!);
      };
      for (const { html } of pages) seen(html);
      for (const files of [
        ...DEMOS.map(briefDemo),
        ...readdirSync(corpus).map((name) => filesIn(corpus + name)),
      ])
        if (unused.size > 0) seen(answerOf(reportFor(files)));
      expect([...unused]).toEqual([]);
    });
});

describe.each(pages)('$name in $units', ({ html }) => {
  // The words stand before the neighbour's sheet, which marks them too.
  const [before = '', list = '', after = ''] = html.split(/<details id="words">|(?<=<\/dl>)\n<\/details>/);
  const answer = before + after;
  const listed = [...list.matchAll(/<div id="word-([\w-]+)"><dt>([^<]*)<\/dt>/g)];

  it('lists each word that is marked, and no other', () => {
    const marked = [...answer.matchAll(/href="#word-([\w-]+)"/g)].map(([, id]) => id);
    expect(new Set(marked).size).toBe(marked.length);
    expect([...marked].sort()).toEqual(listed.map(([, id]) => id).sort());
    expect(listed.length).toBeGreaterThan(8);
  });

  it('uses no word before its mark', () => {
    const text = running(answer);
    for (const { word, plural } of GLOSSARY) {
      const mark = `‹word-${word.replaceAll(' ', '-')}›`;
      const at = usedAt(
        [word, ...(plural ? [plural] : [])].join('|'),
        text.replace(/‹[\w-]+›/g, (each) => ' '.repeat(each.length)),
      );
      const marked = text.indexOf(mark);
      expect([word, marked < 0 ? -1 : marked + mark.length]).toEqual([word, at]);
    }
  });

  it('marks nothing in drawings, headings and controls, nor twice over', () => {
    for (const [whole] of answer.matchAll(/<(svg|nav|h[1-6]|summary|select|output)\b[\s\S]*?<\/\1>/g))
      expect(whole).not.toContain('class="word"');
    expect(answer).not.toMatch(/class="word"[^>]*>[^<]*<a/);
  });
});

describe('what somebody wrote', () => {
  const NAME = 'flap "><img src=x onerror=alert(1)> sump & ring';
  const files = baseSurvey({ depth: 0.1, level: 0.1 });
  files['site.csv'] = files['site.csv']!.replace('Test Ground', `"${NAME.replaceAll('"', '""')}"`);
  const report = reportFor(files);
  const escaped = 'flap &quot;&gt;&lt;img src=x onerror=alert(1)&gt; sump &amp; ring';

  it('is left as it stands, markup or not', () => {
    const { mark } = wordMarker(report);
    const own = `<p>At ${escaped} fit a flap.</p>`;
    expect(mark(own)).toBe(`<p>At ${escaped} fit a <a class="word" href="#word-flap">flap</a>.</p>`);
    expect(answerOf(report)).not.toContain('<img');
  });

  it('changes neither tag nor entity, whatever is in them', () => {
    const { mark } = wordMarker(report);
    const own = '<p data-x="liner" title="rim">&lt;liner&gt; &amp;bed; <code>brim</code></p>';
    const marked = mark(own);
    expect(marked.replace(/<a class="word" href="#word-[\w-]+">([^<]*)<\/a>/g, '$1')).toBe(own);
    expect(marked).toContain('data-x="liner" title="rim"');
    expect(marked).toContain('<code>brim</code>');
  });
});

if (WHOLE)
  itInChromium('a word leads to its meaning, by key too', async (page) => {
    await page.setViewportSize({ width: 360, height: 740 });
    await page.goto(fileOf(await demoPage(surveyOf(briefDemo('clay-slope')))));
    const word = page.locator('a.word').first();
    const id = (await word.getAttribute('href'))!;
    expect(await page.locator(id).isVisible()).toBe(false);
    await word.focus();
    await page.keyboard.press('Enter');
    await page.locator(id).waitFor({ state: 'visible' });
    await page.waitForFunction((to) => {
      const { top, bottom } = document.querySelector(to)!.getBoundingClientRect();
      return top >= -1 && bottom <= innerHeight + 1;
    }, id);
  });
