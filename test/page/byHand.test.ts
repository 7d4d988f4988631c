/** A page recomputed from its print alone: every number below is read from the page's text, none from the code. */
import { describe, expect, it, vi } from 'vitest';
import { assess } from '../../lib/decision/index.js';
import { pageHtml } from '../../lib/page/index.js';
import { reportOf } from '../../lib/report/index.js';
import { workedSheet } from '../../lib/report/workedSheet.js';
import { siteModel } from '../../lib/site/index.js';
import { upliftLine } from '../../lib/text/upliftLine.js';
import { parseQuantity } from '../../lib/units/index.js';
import { briefDemo, edited, surveyOf, withItem } from '../folder.js';
import { sweep } from '../sweep.js';

vi.setConfig({ testTimeout: 120_000 });

const kept = edited(briefDemo('clay-slope'), 'pond.csv', (text) =>
  text.replace(/^usual_drawdown,.*$/m, 'kept_within,0.1,m,'),
);
const flush = withItem(kept, 'pond.csv', 'water_above_rim_ground', '0', 'm');
const inFeet = withItem(briefDemo('clay-hollow'), 'site.csv', 'show_units', 'us', '');

/** The text of a page, a cell's end as `|`. */
function textOf(html: string): string {
  return html
    .replace(/<(script|style)[\s\S]*?<\/\1>/g, '')
    .replace(/<\/?t[dh][^>]*>/g, ' | ')
    .replace(/<br>/g, ' ')
    .replace(/<(p|h\d|li|tr|div|text|summary)\b[^>]*>/g, '\n')
    .replace(/<[^>]+>/g, '')
    .replaceAll('&#39;', "'")
    .replace(/[\u00a0\u2009 ]+/g, ' ');
}

const metres = (text: string) => parseQuantity(text.trim().replace(/^\+/, ''), 'length');
/** Water of a printed volume, m³. */
function water(text: string): number {
  const [, amount, unit] = /([\d.]+) (L|m³|gal)(?![a-z])/.exec(text)!;
  return Number(amount) * { L: 1e-3, 'm³': 1, gal: 231 * 0.0254 ** 3 }[unit as 'L' | 'm³' | 'gal'];
}

const PAGES: [string, Record<string, string>][] = [
  ['clay slope', briefDemo('clay-slope')],
  ['clay hollow in feet', inFeet],
  ['clay hollow', briefDemo('clay-hollow')],
  ['flush pond that is topped up', flush],
];

describe.each(sweep(PAGES, 1))('the page of the %s, by hand', (_, files) => {
  const survey = surveyOf(files);
  const assessment = assess(siteModel(survey, { samples: 128 }));
  const report = reportOf(assessment);
  const worked = workedSheet(assessment);
  const page = textOf(
    pageHtml(report, {
      worked,
      version: '0',
      photos: {},
      live: { script: '', survey, seed: 1, samples: 128 },
    }),
  );
  const us = report.units === 'us';
  const tape = us ? 0.0254 / 4 : 0.005;

  it('the full pond is as short in the figure as in the words', () => {
    const short = /1 year in 10: ([^\n]*?) short/.exec(page)?.[1];
    const rises = /one year of ten the water outside rises (.*?) or more/.exec(page)?.[1];
    expect(short).toBe(rises);
    const keeps = /in nine years of ten [^\n]*? keeps (.*?) or more/.exec(page)?.[1];
    if (keeps) expect(/full: ([^\n]*?) to spare/.exec(page)![1]).toBe(keeps);
  });

  it('the bed holds the water where the check by hand finds it', () => {
    const holds = /holds the water under the liner (.*?) below the lowest ground(?= at the rim: )/.exec(
      page,
    )?.[1];
    if (!holds) return expect(report.result.recommendation.option).not.toBe('drain-to-outlet');
    const checked = /Drain to an outlet\. Highest water (\S+) (m|ft)/.exec(page)!;
    expect(Math.abs(-metres(holds) - metres(`${checked[1]} ${checked[2]}`))).toBeLessThanOrEqual(tape);
  });

  it('what lifts over what holds is the ratio printed', () => {
    let seen = 0;
    for (const check of report.result.uplift_check)
      for (let at = 0; at < 50; at++) {
        const line = upliftLine({ ...check, high_m: 0.02 + 0.0131 * at, lifting_pa: 1 }, report.units);
        const [, lifts, holds, ratio] = /([\d.]+) \S+ over ([\d.]+) \S+ = ([\d.]+),/.exec(line)!;
        expect((Number(lifts) / Number(holds)).toFixed(2)).toBe(ratio);
        seen++;
      }
    expect(seen).toBeGreaterThan(0);
  });

  it('over the brim runs the rain on the area at the rim; the drain brings its likely water up to its high end', () => {
    const area = Number(/; A = ([\d.]+) m²/.exec(page)![1]);
    const [, rain, minutes, , over, out] =
      /storm of (.*?) in (\d+) min[^|]*\| \|([^|]*)\| \|([^|]*)\| \|([^|]*)\|/.exec(page)!;
    expect(water(over!) / (area * metres(rain!))).toBeCloseTo(1, 2);
    const [likely, most] = out!.split('; high end').map(water);
    const high = /[Ww]ater in the design storm is [^\n]*? to ([\d.]+ (?:L|gal|m³)) a minute\)/.exec(
      page,
    )?.[1];
    if (high) expect(most! / (water(high) * Number(minutes))).toBeCloseTo(1, 1);
    expect(most).toBeGreaterThanOrEqual(likely!);
    const daily = /ordinary winter day \| \|[^|]*\| \|[^|]*\| \|([^|]*)\|/.exec(page)![1]!;
    const [day, dayMost] = daily.split('; high end').map(water);
    expect(dayMost).toBeGreaterThan(day!);
  });

  it('what is carried is carried: no barrow, bag or bucket too few', () => {
    const rows = [
      ...page.matchAll(
        /\|([^|\n]*)\| \| ([\d.]+) (m³|yd³) \| \| (\d+) barrows?, or (\d+) (bag|bucket)s? \|/g,
      ),
    ];
    expect(rows.length).toBeGreaterThan(1);
    for (const [, item, amount, unit, barrows, others, other] of rows) {
      // What is tamped is carried loose.
      const earth = (/tamped/.test(item!) ? 1.3 : 1) * Number(amount) * (unit === 'm³' ? 1 : 0.9144 ** 3);
      const foot = 0.3048 ** 3;
      const holds = us
        ? { barrow: 3 * foot, bag: foot / 2, bucket: 4 * 231 * 0.0254 ** 3 }
        : { barrow: 0.08, bag: 0.016, bucket: 0.01 };
      // The amount itself is printed with three digits.
      expect(Number(barrows) * holds.barrow).toBeGreaterThanOrEqual(0.995 * earth);
      expect(Number(others) * holds[other as 'bag' | 'bucket']).toBeGreaterThanOrEqual(0.995 * earth);
    }
  });

  it('what was assumed stands in the units of the reader', () => {
    const [, table] =
      /Assumptions and defaults, and what the reading noticed\s+(?:.|\n)*?Assumed, not measured([\s\S]*?)(?:\nWarnings|\nMethods)/.exec(
        page,
      )!;
    const values = [...table!.matchAll(/\n\s*\|[^|]*\| \|([^|]*)\| \|/g)].map(([, value]) => value!.trim());
    expect(values.length).toBeGreaterThan(6);
    for (const value of values) {
      expect(value).not.toMatch(/^\d+ s$|\d;\d|^0\.\d+ a year$| Pa$/);
      if (us) expect(value).not.toMatch(/\d m$|\d mm$|kPa/);
    }
    expect(values).toContain('20 years');
    expect(page).toContain('its life is counted as 20 years');
  });

  it('every water that the drain must take is worked through', () => {
    const paths = worked.flatMap(({ equals }) => equals.map(({ path }) => path));
    const { inflow_m3_s } = report.result.drain!;
    for (const source of ['clay', 'roof', 'uphill', 'leak'] as const)
      expect(paths.includes(`drain.inflow_m3_s.${source}`)).toBe(inflow_m3_s[source] > 0);
    expect(page).toContain('What the drain must take');
  });

  it('a level to keep is rounded up, room to spare down', () => {
    const undrained = report.result.options.find(({ option }) => option === 'no-drain')!;
    const body = page.slice(page.indexOf('keep the pond above: no drain'));
    const rows = [...body.matchAll(/\n\s*\| (January|April|October) \|([^\n]*)/g)].slice(0, 3);
    expect(rows).toHaveLength(3);
    for (const [, month, cells] of rows) {
      const level = undrained.lowest_safe_level_m![{ January: 0, April: 3, October: 9 }[month!]!]!;
      const shown = cells!
        .split('|')
        .map((cell) => cell.trim())
        .filter(Boolean)
        .at(-2)!;
      if (level === null) expect(shown).toBe('may be emptied');
      else expect(metres(shown)).toBeGreaterThanOrEqual(level - 1e-6);
    }
  });
});
