/** Drawings to dig by: true to scale, and every word of them legible. */
import { describe, expect, test } from 'vitest';
import type { Report } from '../../lib/contract/index.js';
import { judge } from '../../lib/decision/index.js';
import { drawingSheets } from '../../lib/figures/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { briefDemo, edited, surveyOf } from '../folder.js';
import { drawnGardens } from './drawnGardens.js';

const PAPER = { metric: [280, 190], us: [264, 194] } as const;
const demo = (name: string, change: (files: Record<string, string>) => Record<string, string> = (f) => f) =>
  reportOf(judge(siteModel(surveyOf(change(briefDemo(name))), { seed: 1, samples: 64 })));
const long = (files: Record<string, string>) =>
  edited(files, 'levels.csv', (t) => t.replace('pipe-end,outlet,0,-18,8.36', 'pipe-end,outlet,0,-48,7.9'));
const hostile = (files: Record<string, string>) =>
  edited(
    edited(files, 'levels.csv', (t) => t.replaceAll('gully', '<b>&"x"</b> a very long name indeed')),
    'site.csv',
    (t) => t.replace('Tormentil Bank', '<script>alert(1)</script>'),
  );
const slabbed = (files: Record<string, string>) =>
  edited(
    edited(files, 'pond.csv', (t) => t.replace('rim_ground,0.3,m', 'rim_ground,0,m')),
    'site.csv',
    (t) => t.replace('allowed,yes', 'allowed,no').replace('acceptable,yes', 'acceptable,no'),
  );
const cases: [string, Report][] = [
  ...drawnGardens(),
  ['meadow-scrape', demo('meadow-scrape')],
  ['a far outlet', demo('clay-slope', long)],
  ['a slab', demo('clay-slope', slabbed)],
  ['names that act', demo('clay-slope', hostile)],
];
const built = cases.filter(([, { setting_out }]) => setting_out !== null);

interface Label {
  text: string;
  x0: number;
  x1: number;
  y0: number;
  y1: number;
}

/** Every label with the room it takes: half an em a character is what a usual face needs, capitals 0.72 em. */
function labelsOf(svg: string): Label[] {
  const found: Label[] = [];
  const pattern =
    /(?:<g transform="translate\(([\d.-]+) ([\d.-]+)\) rotate\(-90\)">)?<text [^>]*font-size="([\d.]+)"( font-weight="700")?(?: text-anchor="(\w+)")?><tspan x="([\d.-]+)" y="([\d.-]+)">([^<]*)<\/tspan><\/text>/g;
  for (const [, gx, gy, size, bold, anchor, x, y, raw] of svg.matchAll(pattern)) {
    expect(Number(size)).toBeGreaterThanOrEqual(2.5 / 0.72);
    const text = raw!.replace(/&(?:amp|lt|gt|quot|#39);/g, '_');
    const wide = text.length * Number(size) * (bold ? 0.56 : 0.52);
    const [rise, drop] = [Number(size) * 0.72, Number(size) * 0.2];
    if (gx !== undefined)
      found.push({
        text,
        x0: Number(gx) - rise,
        x1: Number(gx) + drop,
        y0: Number(gy) - wide,
        y1: Number(gy),
      });
    else {
      const x0 = Number(x) - (anchor === 'middle' ? wide / 2 : anchor === 'end' ? wide : 0);
      found.push({ text, x0, x1: x0 + wide, y0: Number(y) - rise, y1: Number(y) + drop });
    }
  }
  expect(found.length).toBe((svg.match(/<tspan/g) ?? []).length);
  return found;
}

const scaleIn = (title: string) => Number(/1:(\d+)/.exec(title)![1]);
const titled = (labels: Label[], begins: string) => labels.find(({ text }) => text.startsWith(begins))!;

test('nothing is drawn where nothing is dug', () => {
  const waiting = cases.filter(([, { setting_out }]) => setting_out === null);
  expect(waiting.length).toBeGreaterThan(0);
  for (const [, report] of waiting) expect(drawingSheets(report)).toEqual([]);
  expect(built.length).toBeGreaterThanOrEqual(cases.length / 2);
});

describe.each(built)('%s', (_, report) => {
  describe.each(['metric', 'us'] as const)('%s', (units) => {
    const sheets = drawingSheets(report, units, '2026-11-30');
    const [width, height] = PAPER[units];

    test('no label lies over another or off the paper', () => {
      for (const { svg } of sheets) {
        const labels = labelsOf(svg);
        for (const [i, a] of labels.entries()) {
          expect([a.text, a.x0 >= 0, a.x1 <= width, a.y0 >= 0, a.y1 <= height]).toEqual([
            a.text,
            true,
            true,
            true,
            true,
          ]);
          for (const b of labels.slice(i + 1))
            if (a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1)
              expect.fail(`${a.text} over ${b.text}`);
        }
      }
    });

    test('the pond on paper times the scale is the pond on the ground, peg by peg', () => {
      const [plan] = sheets;
      const scale = scaleIn(titled(labelsOf(plan!.svg), 'Plan of the pond').text);
      const dots = [...plan!.svg.matchAll(/<circle cx="([\d.-]+)" cy="([\d.-]+)" r="0.7"/g)].map(
        ([, x, y]) => [Number(x), Number(y)],
      );
      const rim = report.setting_out!.pegs.filter(({ of }) => of === 'rim');
      expect(dots.length).toBeGreaterThanOrEqual(rim.length);
      // The pegs of the rim come first.
      for (const [i, peg] of rim.entries()) {
        expect(((dots[i]![0]! - dots[0]![0]!) * scale) / 1000).toBeCloseTo(peg.x_m - rim[0]!.x_m, 1);
        expect(((dots[0]![1]! - dots[i]![1]!) * scale) / 1000).toBeCloseTo(peg.y_m - rim[0]!.y_m, 1);
        expect(
          Math.abs(((dots[i]![0]! - dots[0]![0]!) * scale) / 1000 - (peg.x_m - rim[0]!.x_m)),
        ).toBeLessThan((0.02 * scale) / 1000);
      }
    });

    test('scales are of the usual series, and every peg at the pond has its number', () => {
      const usual =
        units === 'us'
          ? [12, 24, 48, 60, 120, 240, 600, 1200, 2400]
          : [10, 20, 25, 50, 100, 200, 500, 1000, 2000];
      const labels = sheets.flatMap(({ svg }) => labelsOf(svg));
      const scales = labels.flatMap(({ text }) =>
        [...text.matchAll(/1:(\d+)/g)].map(([, scale]) => Number(scale)),
      );
      expect(scales.length).toBeGreaterThanOrEqual(4);
      for (const scale of scales) expect(usual).toContain(scale);
      const numbers = labelsOf(sheets[0]!.svg).map(({ text }) => text);
      for (const { number, of } of report.setting_out!.pegs)
        if (!['chainage', 'mouth', 'trench', 'sump'].includes(of)) expect(numbers).toContain(String(number));
    });

    test('the title block says what it is, and what it is not for', () => {
      for (const { svg, paper } of sheets) {
        expect(paper).toBe(units === 'us' ? 'letter' : 'a4');
        const said = labelsOf(svg)
          .map(({ text }) => text)
          .join(' ');
        expect(said).toContain('Not for construction without the checks named on the page');
        expect(said).toContain('2026-11-30');
        expect(svg).not.toContain('<script');
        expect(svg).not.toMatch(/NaN|undefined|Infinity/);
      }
    });
  });
});
