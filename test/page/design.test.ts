/** The sheet to sign as it is printed: its numbers make one another, its sources are named, its files have their digest. */
import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { designTable } from '../../lib/page/designSection.js';
import { pageHtml } from '../../lib/page/index.js';
import { reportOf, shownRows } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { parseSurvey } from '../../lib/survey/index.js';
import { unmetWords } from '../../lib/text/designVerdict.js';
import { briefDemo, withItem } from '../folder.js';
import { sweep } from '../sweep.js';

const plain = (html: string) =>
  html
    .replace(/<[^>]+>/g, ' ')
    .replaceAll('\u00a0', ' ')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replace(/\s+/g, ' ');
const part = (html: string, id: string) =>
  plain(new RegExp(`<section id="${id}"[\\s\\S]*?</section>`).exec(html)![0]);
const number = (words: string) => Number(words.replace('−', '-'));

/** Length, unit weight and digits of pressures, as a reader has them. */
const SYSTEMS = { metric: { weight: 9.81, digits: 2 }, us: { weight: 62.45, digits: 1 } };

const PLACES: [string, string | null][] = [
  ['clay-slope', 'GB'],
  ['clay-hollow', 'US'],
  ['loam-terrace', null],
  ['clay-slope', 'IE'],
  ['clay-hollow', null],
  ['loam-terrace', 'FR'],
];

describe.each(sweep(PLACES, 3))('%s in %s', (name, country) => {
  const demo = briefDemo(name);
  const files = country ? withItem(demo, 'site.csv', 'country', country) : demo;
  const report = reportOf(judge(siteModel(parseSurvey(files, { name }), { seed: 7, samples: 16 })));
  const sheet = report.result.design_sheet!;
  const html = pageHtml(report, { worked: [], version: '1.2.3', issued: '2026-01-02' });

  test.each(['metric', 'us'] as const)(
    'a calculator makes each ratio of the printed levels, in %s',
    (units) => {
      const { weight, digits } = SYSTEMS[units];
      const metre = units === 'us' ? 1 / 0.3048 : 1;
      const floor = Number((sheet.floor_m * metre).toFixed(3));
      const { rows } = designTable(sheet, units);
      const shown = shownRows(sheet);
      expect(rows).toHaveLength(shown.length);
      rows.forEach((cells, i) => {
        const [, , level, water, lifts, holds, ratio, , verdict] = cells as string[];
        const { uplift, sides, situation } = shown[i]!;
        if (sides) {
          const [high, stands] = [lifts, holds].map((words) => number(/[−\d.]+/.exec(words!)![0]));
          const [, said, least] = /^([\d.]+), at least ([\d.]+)$/.exec(ratio!)!;
          expect(Math.abs(stands! / high! - Number(said))).toBeLessThan(0.0051);
          expect(Number(least)).toBe(1.5);
          expect(verdict!.startsWith(Number(said) >= 1.5 ? 'met' : 'not met')).toBe(true);
          return;
        }
        if (!uplift) {
          expect([lifts, holds, ratio]).toEqual([null, null, null]);
          return;
        }
        const pressed = (words: string) => {
          const found = /^(?:([\d.]+) × )?([\d.]+) (?:kPa|lb\/ft²)/.exec(words);
          return found ? { factor: Number(found[1] ?? 1), size: Number(found[2]) } : { factor: 1, size: 0 };
        };
        const [up, down] = [pressed(lifts!), pressed(holds!)];
        const near = 0.6 * 10 ** -digits;
        if (!situation.startsWith('seam')) {
          const outside = number(/^[−\d.]+/.exec(water!)![0]);
          const by = Math.max(outside - floor, 0) * weight;
          expect(Math.abs(up.size - (up.size === 0 && by < weight * 0.002 ? up.size : by))).toBeLessThan(
            near,
          );
          if (holds!.endsWith('water over the liner'))
            expect(Math.abs(down.size - (number(/^[−\d.]+/.exec(level!)![0]) - floor) * weight)).toBeLessThan(
              near + weight * 0.0011,
            );
        }
        const us = sheet.rules === 'us';
        if (up.size === 0) expect(ratio).toBe('nothing lifts');
        else if (down.size === 0)
          expect(ratio).toBe(us ? `0.00, at least ${uplift.wanted}` : 'nothing holds');
        else {
          const value = us ? down.size / up.size : (up.factor * up.size) / (down.factor * down.size);
          const [, said, bound, wanted] = /^([\d.]+), at (most|least) ([\d.]+)$/.exec(ratio!)!;
          expect(Math.abs(Number(said) - value)).toBeLessThan(0.0051);
          expect(bound).toBe(us ? 'least' : 'most');
          // What is printed never stands on the other side of its limit than its verdict.
          expect(us ? Number(said) >= Number(wanted) : Number(said) <= Number(wanted)).toBe(uplift.met);
        }
        expect(verdict!.startsWith(uplift.met ? 'met' : 'not met')).toBe(true);
      });
    },
  );

  test('standard, edition and where each factor was read stand on the page, what was not seen is to be checked', () => {
    const words = part(html, 'design');
    if (sheet.rules === 'us') {
      expect(words).toMatch(/EM 1110-2-2100 \(2005\).*equation 3-2.*1\.3.*1\.2.*1\.1.*ASCE 7/);
      expect(words).toMatch(/three factors.*not seen: check tables 3-4 and 3-1/);
    } else {
      expect(words).toMatch(/EN 1997-1:2004\+A1:2013.*2\.4\.7\.4/);
      expect(words).toMatch(/EN 1997-1:2024 follows this edition\. It is not used here\./);
      expect(words).toMatch(/[Cc]heck (?:its )?table/);
      expect(words).toMatch(/national annex/);
    }
    for (const id of ['design', 'sign', 'limits'])
      expect(part(html, id)).not.toMatch(/from memory|undefined|NaN|null/);
  });

  test('rules for digging stand once, where the cautions are', () => {
    const title = {
      gb: 'Rules for digging in the United Kingdom',
      us: 'Rules for digging in the United States',
      ie: 'Rules for digging in Ireland',
      en: 'Rules for digging in your country',
    }[sheet.rules];
    expect(plain(html).split('Rules for digging')).toHaveLength(2);
    expect(part(html, 'limits')).toContain(title);
    expect(part(html, 'limits').includes('811')).toBe(sheet.rules === 'us');
    expect(part(html, 'limits').includes('1926.652')).toBe(sheet.rules === 'us');
  });

  test('how far sides are laid back is told by the law of the country', () => {
    const words = part(html, 'do');
    expect(words).toMatch(/Working slope\. .*(laid back|lay the sides back) [\d.]+ to 1 or flatter/);
    expect(/United States|1926/.test(words)).toBe(sheet.rules === 'us');
    if (sheet.rules !== 'us') expect(words).toMatch(/decides?( at work\.|: look it up before you dig\.)/);
  });

  test('what is not met is named, and what the answer allows of it', () => {
    const unmet = shownRows(sheet).filter(({ uplift }) => uplift?.met === false);
    const words = unmetWords(
      shownRows(sheet),
      sheet.rows.some(({ drained }) => drained),
    );
    expect(words.startsWith(unmet.length === 0 ? 'Every row that is weighed is met' : 'Not met: ')).toBe(
      true,
    );
    expect(words.includes('The answer of this page allows')).toBe(unmet.some(({ allowed }) => allowed));
    expect(part(html, 'design')).toContain(`deep. ${words.replaceAll('\u00a0', ' ')}`);
  });

  test('who made it of what, who answers for what, and whose leave it needs', () => {
    const words = part(html, 'sign');
    expect(words).toContain('Date of issue: 2026-01-02. Revision:');
    expect(words).toContain('underpond 1.2.3, seed 7, 16 samples');
    for (const who of ['Owner', 'Designer', 'Builder', 'Recorded by', 'Reviewed by'])
      expect(words).toContain(`${who}`);
    expect(words.includes('water led to it')).toBe(report.result.drain !== null);
    expect(words.includes('Flood level at')).toBe(report.outlet !== null);
    expect(words).toContain(country ? `(${country})` : 'no country is said');
  });

  test('each file has the digest that sha256sum gives, and no other file has one', () => {
    const printed = [...html.matchAll(/data-file="([a-z.]+)">([0-9a-f]{64})</g)].map(([, file, digest]) => [
      file,
      digest,
    ]);
    const made = Object.keys(files)
      .sort()
      .map((file) => [file, createHash('sha256').update(files[file]!, 'utf8').digest('hex')]);
    expect(printed).toEqual(made);
  });
});

test('a side that carries less than what stands at its edge has a ratio below nought, in either units', () => {
  const files = {
    'pond.csv':
      'item,value,unit,note\ndepth,0.8,m,\nlength,4,m,\nwidth,3,m,\nside_slope,1,,\nedging_load,90,kPa,\nhighest_raise,0,m,\nbedding,none,,\nbuilt_in,8,,\n',
    'pits.csv': 'pit,top_m,bottom_m,texture,strength_kpa\nP1,0,3,clay,20\n',
    'heads.csv': 'place,month,depth_m,spread_m\nsite,high,1.6,0.05\n',
    'site.csv': 'item,value,unit,note\nlatitude,52,deg,\n',
  };
  const sheet = reportOf(judge(siteModel(parseSurvey(files, { name: 'edge' }), { seed: 7, samples: 16 })))
    .result.design_sheet!;
  const at = shownRows(sheet).findIndex(({ situation }) => situation === 'dig');
  expect(sheet.rows.find(({ sides }) => sides)!.sides!.stands_m).toBeLessThan(0);
  for (const units of ['metric', 'us'] as const)
    expect(designTable(sheet, units).rows[at]![6]).toMatch(/^-\d+\.\d\d, at least 1\.5$/);
});
