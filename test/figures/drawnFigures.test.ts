/** What the three figures drawn by hand show is what the report says, on every garden, in both unit systems. */
import { describe, expect, test, vi } from 'vitest';
import { BEFORE_DIGGING, type Report, type Situation } from '../../lib/contract/index.js';
import {
  type Drawing,
  FIGURE_STYLE,
  howDeepFigure,
  whichWaterFigure,
  yearFigure,
} from '../../lib/figures/index.js';
import { yearWords } from '../../lib/text/yearWords.js';
import { parseQuantity } from '../../lib/units/index.js';
import { itInChromium } from '../chromium.js';
import { labelFaults } from '../page/labels.js';
import { WHOLE } from '../sweep.js';
import { drawnGardens } from './drawnGardens.js';

vi.setConfig({ testTimeout: 120_000 });

const FIGURES = { whichWaterFigure, howDeepFigure, yearFigure };
const FORMS = ['wide', 'narrow'] as const;
const gardens = drawnGardens();

/** Rows of text of a drawing. */
const texts = (svg: string) => [...svg.matchAll(/<tspan[^>]*>([^<]*)<\/tspan>/g)].map(([, text]) => text!);
const metres = (text: string) => parseQuantity(text, 'length');
const rows = ({ result }: Report, of: Situation['of'], situation: Situation['situation']) =>
  result.situations.filter((each) => each.of === of && each.situation === situation);

describe.each(gardens)('%s', (_, report) => {
  const { result, pond } = report;

  test.each(FORMS)('which water wins: margins and verdicts are those of its situations (%s)', (form) => {
    for (const units of ['metric', 'us'] as const) {
      const told = texts(whichWaterFigure(report, units)[form]);
      const margins = told.flatMap((text) => {
        const [, size, sense] = /^(.+) (to spare|too high)$/.exec(text) ?? [];
        return size ? [(sense === 'to spare' ? 1 : -1) * metres(size)] : [];
      });
      expect(margins.length).toBeGreaterThanOrEqual(2);
      const known = result.situations
        .filter(
          ({ of, situation }) =>
            ['no-drain', 'recommended'].includes(of) && /full|drawn|emptied/.test(situation),
        )
        .map(({ margin_m }) => margin_m!);
      // Never safer than it is, and by no more than a step of the tape less.
      for (const margin of margins)
        expect(
          known.some((each) => margin <= each + 1e-6 && margin > each - 0.0135),
          `${margin}`,
        ).toBe(true);
      const words = told.filter((text) =>
        /^(Holds|The liner lifts|The sides slip|The floor gives way|Only .*)$/.test(text),
      );
      expect(words).toHaveLength(margins.length);
      const [first] = words;
      const full = rows(report, 'no-drain', 'full')[0]!;
      const low = rows(report, 'no-drain', 'drawn-down').find(({ month }) => month === null)!;
      expect(first === 'Holds').toBe(full.allowed && low.allowed);
    }
  });

  test('which water wins: the sides have the slope wished, to the scale of the axis', () => {
    const svg = whichWaterFigure(report, 'metric').wide;
    const [, d] = /<path d="([^"]+)" class="fig-edge"[^>]*stroke-width="2.5" stroke-linejoin/.exec(svg)!;
    const [, rim, foot, across] = d!
      .slice(1)
      .split('L')
      .map((point) => point.split(' ').map(Number));
    const fall = foot![1]! - rim![1]!;
    const per_m = fall / pond.depth_m;
    const long = Math.max(pond.length_m, pond.width_m);
    const meets = 2 * pond.side_slope * pond.depth_m > 0.94 * long;
    if (!meets) expect((foot![0]! - rim![0]!) / fall).toBeCloseTo(pond.side_slope, 1);
    expect(across![1]).toBe(foot![1]);
    // Levels on the axis, half a metre or more apart.
    const levels = [...svg.matchAll(/<tspan x="[^"]+" y="([^"]+)">(ground|[+−][\d.]+ m)<\/tspan>/g)].map(
      ([, y, text]) =>
        [text === 'ground' ? 0 : Number(text!.replace('−', '-').replace(/[+ m]/g, '')), Number(y)] as const,
    );
    const ground = levels.find(([level]) => level === 0)![1];
    for (const [level, y] of levels) expect(y - ground).toBeCloseTo(-level * per_m, 0);
  });

  test('how deep with what: bars end where it is safe, on the axis that the wish stands on', () => {
    const svg = howDeepFigure(report, 'metric').wide;
    const before = BEFORE_DIGGING.includes(result.recommendation.option);
    const bars = [
      ...svg.matchAll(/<rect x="[^"]+" y="[^"]+" width="([^"]+)" height="24" class="fig-(water|edge)"/g),
    ];
    expect(bars.filter(([, , tone]) => tone === (before ? 'edge' : 'water'))).toHaveLength(bars.length);
    const possible = result.options.filter((option) => option.possible);
    expect(bars).toHaveLength(possible.length);
    expect(
      texts(svg).includes('recommended') || texts(svg).some((text) => text.startsWith('recommended,')),
    ).toBe(!before);
    const [, x] = /<path d="M([\d.]+) [\d.]+L\1 [\d.]+" class="fig-edge"[^>]*stroke-width="2.5"/.exec(svg)!;
    const per_m = (Number(x) - 240) / pond.depth_m;
    const ends = bars.map(([, width]) => Number(width) / per_m).sort((a, b) => a - b);
    for (const { safe_depth_m } of possible)
      if (safe_depth_m !== null)
        expect(
          ends.some((end) => Math.abs(end - safe_depth_m) < 0.005) ||
            result.recommendation.depth_m > safe_depth_m,
        ).toBe(true);
    for (const text of texts(svg).filter((each) => /^[\d.]+ m$/.test(each) && !each.startsWith('0 ')))
      expect(metres(text)).toBeGreaterThan(0);
  });

  test('the year: a group a month, and what is told of it is allowed', () => {
    for (const units of ['metric', 'us'] as const) {
      const figure = yearFigure(report, units);
      const said = yearWords(report, units);
      expect(said).toHaveLength(12);
      for (const form of FORMS)
        expect([...figure[form].matchAll(/data-month="(\d+)"/g)].map(([, month]) => Number(month))).toEqual(
          said.map((_, at) => at + 1),
        );
      const own = rows(report, 'no-drain', 'emptied');
      said.forEach((text, at) => {
        const [, nothing] = /With nothing done: (do not empty it|it may be emptied)/.exec(text) ?? [];
        expect(nothing).toBe(own[at]!.allowed ? 'it may be emptied' : 'do not empty it');
        const others = text.match(/: it may be emptied/g)?.length ?? 0;
        const mine = rows(report, 'recommended', 'emptied')[at];
        expect(others).toBeLessThanOrEqual(Number(own[at]!.allowed) + Number(mine?.allowed ?? false));
        if (units === 'us') expect(text).not.toMatch(/\d m?m\b/);
        if (BEFORE_DIGGING.includes(result.recommendation.option))
          expect(text).not.toMatch(/it may be dug|stays dry/);
      });
    }
  });

  test('a month that is not allowed has its cross, and no other has', () => {
    const { wide } = yearFigure(report, 'metric');
    const groups = wide.split('<g class="fig-month"').slice(1);
    const own = rows(report, 'no-drain', 'emptied');
    groups.forEach((group, at) => {
      const words = texts(group);
      const crosses = group.match(/class="fig-red"/g)?.length ?? 0;
      expect(crosses).toBe(words.filter((word) => word === 'no' || word === 'not yet').length);
      if (!own[at]!.allowed) expect(crosses).toBeGreaterThan(0);
    });
  });

  test('alternative text has the numbers, and no drawing an attribute that the page forbids', () => {
    for (const figure of Object.values(FIGURES))
      for (const units of ['metric', 'us'] as const) {
        const drawing: Drawing = figure(report, units);
        expect(drawing.alt).toMatch(units === 'us' ? /\d (ft|in)\b/ : /\d m\b/);
        expect(drawing.alt).not.toMatch(/NaN|undefined|null|—/);
        for (const form of FORMS) {
          expect(drawing[form]).not.toMatch(/\sstyle=|\son\w+=|NaN|undefined|Infinity/);
          expect(drawing[form]).toContain('role="img"');
        }
      }
  });
});

test('names from the survey stay letters', () => {
  const [, report] = gardens[0]!;
  const named = structuredClone(report);
  const evil = '<img src=x onerror=alert(1)>"\'&';
  for (const option of named.result.options) if (!option.possible) option.why_not = evil;
  named.result.survey.name = evil;
  for (const dip of named.dips) dip.pit = evil;
  for (const figure of Object.values(FIGURES)) {
    const { wide, narrow } = figure(named, 'metric');
    for (const svg of [wide, narrow]) expect(svg).not.toMatch(/<img|onerror=[^&]*"[^>]*>(?!<)/);
  }
  expect(howDeepFigure(named, 'metric').wide).not.toContain('<img');
});

if (WHOLE)
  itInChromium(
    'labels keep apart, in their drawing and at 12 px or more, for a desk and a phone',
    async (page) => {
      for (const [form, width, least] of [
        ['wide', 1068, 860],
        ['narrow', 328, 328],
      ] as const) {
        const drawings = gardens.flatMap(([, report]) =>
          (['metric', 'us'] as const).flatMap((units) =>
            Object.values(FIGURES).map((figure) => figure(report, units)[form]),
          ),
        );
        await page.setViewportSize({ width: width + 40, height: 800 });
        await page.setContent(
          `<style>svg{display:block;width:${width}px;height:auto}${FIGURE_STYLE}</style>${drawings.join('')}`,
        );
        expect(await labelFaults(page), form).toEqual([]);
        const smallest = await page.evaluate(() =>
          Math.min(
            ...Array.from(document.querySelectorAll('text')).map((text) =>
              Number(text.getAttribute('font-size')),
            ),
          ),
        );
        expect((smallest * least) / width).toBeGreaterThanOrEqual(12);
      }
    },
  );

itInChromium('nothing vanishes in forced colours, and the dark has light letters', async (page) => {
  const [, report] = gardens[0]!;
  await page.setContent(
    `<style>:root{color-scheme:light dark;color:CanvasText;background:Canvas}${FIGURE_STYLE}</style>${Object.values(
      FIGURES,
    )
      .map((figure) => figure(report, 'metric').wide)
      .join('')}`,
  );
  const seen = () =>
    page.evaluate(
      () =>
        Array.from(document.querySelectorAll('.fig-pond, .fig-band, .fig-soil, .fig-not, .fig-good')).filter(
          (part) => {
            const { fill, stroke } = getComputedStyle(part);
            const paper = getComputedStyle(document.documentElement).backgroundColor;
            return fill === paper && (stroke === 'none' || stroke === paper);
          },
        ).length,
    );
  await page.emulateMedia({ forcedColors: 'active' });
  expect(await seen()).toBe(0);
  await page.emulateMedia({ forcedColors: 'none', colorScheme: 'dark' });
  expect(await seen()).toBe(0);
  const letters = await page.evaluate(() => getComputedStyle(document.querySelector('.fig-fail')!).fill);
  expect(letters).toBe('rgb(255, 157, 133)');
});
