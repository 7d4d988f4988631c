import { describe, expect, test } from 'vitest';
import type { SiteDrain } from '../../lib/contract/index.js';
import { type Judged, judge } from '../../lib/decision/index.js';
import { inflowBySource, shoppingLines } from '../../lib/drain/index.js';
import { shoppingCsv } from '../../lib/page/index.js';
import { resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { dischargeWords } from '../../lib/text/index.js';
import { drainFor } from '../../lib/works/index.js';
import { briefDemo, edited, surveyOf, withItem } from '../folder.js';

type Files = Record<string, string>;
const known = new Map<string, Judged>();
const judged = (files: Files): Judged => {
  const key = JSON.stringify(files);
  const found = known.get(key) ?? judge(siteModel(surveyOf(files), { samples: 40 }));
  known.set(key, found);
  return found;
};
const drainOf = (files: Files): SiteDrain => judged(files).drain!;
const option = (files: Files, name: string) =>
  resultOf(judged(files)).options.find((o) => o.option === name)!;

const slope = briefDemo('clay-slope');
const hollow = briefDemo('clay-hollow');

// Every amount of it is reckoned by hand in test/report/build.test.ts.
test('the drain of the clay slope as it is bought: a line an item, up to whole halves', () => {
  const { quantities } = drainOf(slope);
  expect(shoppingCsv(quantities).trimEnd().split('\r\n')).toHaveLength(quantities.length + 1);
  expect(shoppingLines(quantities).find((l) => l.item.startsWith('solid'))).toMatchObject({
    metric: 18,
    us: 59,
  });
});

test('a spine that leaves by the long side has a branch to it and a head at either end; one that leaves by its end has not', () => {
  const list = (files: Files) => {
    const { quantities } = drainOf(files);
    const amount = (words: RegExp) => quantities.find(({ item }) => words.test(item))!.amount;
    return { pipe: amount(/^perforated/) / 1.05, heads: amount(/^inspection/), bends: amount(/^couplings/) };
  };
  // The ditch lies beside the long side: floor of 3.0 by 1.8 m.
  expect(list(slope)).toEqual({ pipe: expect.closeTo(3.9, 9), heads: 2, bends: 5 });
  const beside = { ...slope };
  beside['levels.csv'] = slope['levels.csv']!.replace('pipe-end,outlet,0,-18,', 'pipe-end,outlet,18.6,0,');
  expect(list(beside)).toEqual({ pipe: expect.closeTo(3, 9), heads: 1, bends: 4 });
});

test('a centimetre of depth more or less moves no reserve of the slope by a jump', () => {
  const site = siteModel(surveyOf(slope), { samples: 100 });
  const [a, b, c] = [0.99, 1, 1.01].map((depth) => judge(site, { depth }).drain!);
  for (const [x, y] of [
    [a, b],
    [b, c],
  ])
    for (const link of Object.keys(x.reserve)) {
      // A centimetre of fall is worth 0.01/0.163, one above the flood 0.01/0.03.
      const step = Math.abs(y.reserve[link] - x.reserve[link]);
      expect(step, link).toBeLessThan(0.34 + 0.05 * Math.abs(x.reserve[link]));
    }
});

describe('what a sump adds to the list, in the hollow', () => {
  const drain = drainOf(hollow);
  const amount = (item: string) => drain.quantities.find((q) => q.item === item)?.amount;
  const { underSide, floor } = drain.input;
  const under = underSide!;

  test('pipe to the sump under the side and half a metre beside it, pressure pipe to the lane drain', () => {
    expect(amount('solid pipe, 100 mm, to the sump, 5 % waste')).toBeCloseTo(1.05 * (0.5 * 0.9 + 0.5), 9);
    // The lane drain was taped at 14 m; from the bottom of the sump the pipe rises to it, or to its trench of 0.3 m.
    const sumpDepth = 0.15 - floor + drain.sump!.stroke;
    const { end } = drain.input;
    const rise = sumpDepth + Math.max((end.kind === 'sump' && end.discharge) || 0, -0.3);
    expect(rise).toBeGreaterThan(0.5);
    expect(amount('pressure pipe, 40 mm (1 1/2 in), 5 % waste')).toBeCloseTo(1.05 * (14 + rise), 9);
  });

  test('dug: bed and groove, the sump down to its stop, both trenches', () => {
    const depth = 0.15 - floor + drain.sump!.stroke;
    // Under the side from the bed's depth to that of the sump.
    const cut = (under * (0.15 + depth)) / 2 + 0.5 * depth;
    const bed = drain.input.floorArea * 0.15 + drain.layout.length * 0.3 * 0.05;
    const dug = bed + 0.6 ** 2 * depth + 0.3 * (cut + 14 * 0.3);
    expect(under).toBeCloseTo(0.5 * 0.9, 9);
    expect(drain.dug).toBeCloseTo(dug, 9);
  });
});

describe('where the water comes from', () => {
  test('run-off governs in the hollow; a swale takes nearly all of it away', () => {
    const { governing, sources, totalInflow } = drainOf(hollow);
    expect(governing.source.source).toBe('uphill');
    expect(governing.source.measure).toBe('swale');
    expect(governing.left).toBeLessThan(0.6 * totalInflow);
    for (const s of sources) {
      expect(s.low).toBeLessThanOrEqual(s.likely);
      expect(s.likely).toBeLessThanOrEqual(s.high);
      expect(s.left).toBeLessThanOrEqual(s.likely);
    }
  });

  test.each([
    [0.2, 3],
    [1, 30],
    [20, 300],
  ])('low, likely and high are in order for every source, ring of %d m² and %d m² of roof', (area, roof) => {
    for (const capped of [false, true])
      for (const s of inflowBySource({
        permeability: { low: 1e-9, likely: 1e-8, high: 1e-7 },
        radius: 1.5,
        head: 1,
        rain: 0.05,
        seconds: 3600,
        ring: { area, capped },
        roofArea: roof,
        uphillArea: 50,
        cover: 'lawn',
        shed: 0.9,
        pondArea: 12,
        pondRoof: roof,
        drawdown: 0.02,
        leakHead: 1,
      })) {
        expect(s.low, `${capped} ${s.source}`).toBeLessThanOrEqual(s.likely);
        expect(s.likely, `${capped} ${s.source}`).toBeLessThanOrEqual(s.high);
      }
  });

  test('all run-off of the storm goes down to the drain, as it goes into the ring: half of 30 mm on 120 m² in an hour', () => {
    // Of the largest the pump would not take the storm: the drain is designed for it all the same.
    const m2 = (area: string) => {
      const { basis, options } = judged(withItem(hollow, 'site.csv', 'uphill_area', area, 'm2'));
      const { measures } = options.find(({ name }) => name === 'drain-to-sump')!;
      return drainFor(basis, measures!, basis.site.pond.depth)!.inflow.uphill;
    };
    expect(m2('120') * 60000).toBeCloseTo((0.5 * 120 * 30) / 60, 9);
    for (const [less, more] of [
      ['0', '20'],
      ['20', '120'],
      ['120', '2000'],
    ])
      expect(m2(more)).toBeGreaterThan(m2(less));
  });

  test('a liner straight on clay has no ring for storm water to come down', () => {
    expect(drainOf(slope).inflow).toMatchObject({ ring_storm: 0, roof: 0, uphill: 0 });
  });
});

describe('what stops or changes the drain', () => {
  const levels = (edit: (row: string) => string | undefined): Files =>
    edited(slope, 'levels.csv', (t) =>
      t
        .split('\n')
        .map(edit)
        .filter((r) => r !== undefined)
        .join('\n'),
    );

  /** Whether a sump is what drains it: no outlet serves. Whether it must be drained at all is another question. */
  const pumped = (files: Files) => {
    const { decision, drain } = judged(files);
    return (
      drain?.kind !== 'outlet' && option(files, 'drain-to-sump').possible && decision.change !== undefined
    );
  };

  test('an outlet above the bed: fall is wanting, and the water is pumped', () => {
    const high = levels((r) =>
      r.startsWith('pipe-end') ? r.replace('8.36', '9.95') : /,(ditch|flood),/.test(r) ? undefined : r,
    );
    expect(option(high, 'drain-to-outlet')).toMatchObject({ possible: false, governs: 'fall' });
    expect(pumped(high)).toBe(true);
  });

  test('a higher outlet of a flat run: drained as long as there is any fall, the fall named; then pumped', () => {
    const at = (level: string) => levels((r) => (r.startsWith('pipe-end') ? r.replace('8.36', level) : r));
    expect(drainOf(at('8.80'))).toMatchObject({ kind: 'outlet', weakestLink: 'fall' });
    // 16.3 m from the edge and 0.8 m under the side, at 1 %.
    expect(drainOf(at('8.80')).reserve.fall).toBeCloseTo(0.05 / 0.171, 6);
    expect(pumped(at('8.90'))).toBe(true);
  });

  test('no outlet at all: the reason is said, the design turns to a sump', () => {
    const none = levels((r) => (/,(outlet|ditch|flood),/.test(r) ? undefined : r));
    expect(option(none, 'drain-to-outlet').why_not).toContain('no point where a drain may end');
    expect(pumped(none)).toBe(true);
  });

  const fence = (y: number) =>
    levels((r) =>
      r.startsWith('gully') ? `${r}\nfence-a,boundary,-40,${y},10,\nfence-b,boundary,40,${y},10,` : r,
    );

  test("the neighbour's boundary between pond and outlet: pumped to the gully instead", () => {
    expect(option(fence(-8), 'drain-to-outlet')).toMatchObject({
      possible: false,
      governs: 'discharge',
      why_not: 'the boundary lies between the pond and every outlet',
    });
    expect(pumped(fence(-8))).toBe(true);
    // Nearer to the pond than the outlet, but on the other side.
    expect(option(fence(8), 'drain-to-outlet').possible).toBe(true);
    expect(drainOf(fence(8)).kind).toBe('outlet');
  });

  test('an outlet nearer to the boundary than it may be is not lawful; the reason has both distances', () => {
    const at = (setback: string) => withItem(fence(-20), 'site.csv', 'outlet_setback', setback, 'm');
    expect(drainOf(at('1.9')).kind).toBe('outlet');
    expect(option(at('3'), 'drain-to-outlet')).toMatchObject({
      possible: false,
      governs: 'discharge',
      why_not: 'the outlet pipe-end is 2.00 m from the boundary and must keep 3.00 m',
    });
    expect(pumped(at('3'))).toBe(true);
  });

  test('of two outlets the one that keeps its distance is taken, though the other lies lower', () => {
    const files = withItem(fence(-20), 'site.csv', 'outlet_setback', '3', 'm');
    const two = edited(files, 'levels.csv', (t) => `${t.trimEnd()}\nnear-end,outlet,0,-16,8.45,\n`);
    expect(drainOf(two).outlet).toBe('near-end');
  });

  test('no lawful place for the water: no drain is designed', () => {
    const forbidden = withItem(slope, 'site.csv', 'discharge_allowed', 'no');
    for (const name of ['drain-to-outlet', 'drain-to-sump'])
      expect(option(forbidden, name)).toMatchObject({ possible: false, governs: 'discharge' });
    expect(judged(forbidden).drain).toBeNull();
  });
});

describe('what it does to others', () => {
  test('tight clay is lowered nowhere that can be told; clay with the permeability of silt is', () => {
    const house = (level: string) =>
      edited(slope, 'levels.csv', (t) => `${t.trimEnd()}\nkitchen,house,8,0,${level},\n`);
    const [low] = drainOf(house('10.3')).lowering;
    expect(low.name).toBe('kitchen');
    expect(low.lowered.low).toBeLessThanOrEqual(low.lowered.high);
    const quick = edited(house('10.3'), 'pits.csv', (t) => t.replace(/\de-\d/g, '9e-6'));
    expect(drainOf(quick).lowering[0].lowered.likely).toBeGreaterThan(low.lowered.likely);
  });

  test('the storm a neighbour sees is less than what ran off before', () => {
    const { discharge } = drainOf(hollow);
    expect(discharge.storm).toBeLessThan(discharge.before);
    expect(dischargeWords(discharge, 'metric')).toMatch(/L a minute at one point, no more than/);
    expect(dischargeWords({ ...discharge, before: 0 }, 'us')).toMatch(
      /gal a minute at one point, more than .*hold it back/,
    );
  });

  test('a sump says for each month how long the power may fail', () => {
    const { powerCut, soakaway } = drainOf(hollow);
    expect(powerCut).toHaveLength(12);
    expect(powerCut!.some((h) => h !== null && h > 0)).toBe(true);
    expect(soakaway.works).toBe(false);
  });
});
