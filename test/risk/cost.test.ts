import { describe, expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { costOf, resultOf, unusedPrices, type Work, workOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { outline, pondVolume } from '../../lib/uplift/index.js';
import { briefDemo, surveyOf, withItem } from '../folder.js';
import { gridCut } from '../report/earth.js';

const ORIGIN = { file: 'prices.csv' };
const price = (item: string, unit: string, amount: number) => ({ item, unit, price: amount, origin: ORIGIN });
const WORK: Work = {
  quantities: [
    { item: 'concrete sand for the bed, 10 % waste', amount: 2, unit: 'm³' },
    { item: 'filter fabric under the liner, 15 % laps', amount: 10, unit: 'm²' },
    { item: 'flap valve', amount: 1, unit: 'piece' },
  ],
  seconds: 7200,
};

describe('what an option costs', () => {
  test('price by the unit it is given in, by hand: 2 m³ at 45 a m³, 10 m² at 1.5 a m², a flap at 30, 2 h at 20', () => {
    const prices = [
      price('sand', 'm3', 45),
      price('filter fabric', 'm2', 1.5),
      price('flap valve', 'each', 30),
      price('digging', 'h', 20),
    ];
    expect(costOf(WORK, prices)).toEqual({ sum: 90 + 15 + 30 + 40, unpriced: [] });
    expect(unusedPrices([WORK], prices)).toEqual([]);
  });

  test('in cubic yards: 0.9144³ m³ each', () => {
    expect(costOf(WORK, [price('sand', 'yd3', 40)])!.sum).toBeCloseTo((2 / 0.9144 ** 3) * 40, 9);
  });

  test('a sheet is paid as it is sold, in half metres or half feet up', () => {
    const liner = { item: 'liner', amount: 6.2 * 4.9, unit: 'm²', sides_m: [6.2, 4.9] as [number, number] };
    const cost = (unit: string) =>
      costOf({ quantities: [liner], seconds: 0 }, [price('liner', unit, 2)])!.sum;
    expect(cost('m2')).toBeCloseTo(2 * 6.5 * 5, 9);
    // 20.34 by 16.08 ft.
    expect(cost('ft2')).toBeCloseTo(2 * 20.5 * 16.5, 9);
    expect(cost('yd2')).toBeCloseTo((2 * 20.5 * 16.5) / 9, 9);
  });

  test('the row with most words of the name wins', () => {
    expect(costOf(WORK, [price('sand', 'm3', 1), price('concrete sand', 'm3', 45)])!.sum).toBe(90);
  });

  test('a price is of the thing itself, not of what lies under, around or beside it', () => {
    const prices = [price('liner', 'm2', 7), price('wall', 'm', 50), price('sump', 'each', 90)];
    const named = (item: string, unit: string) =>
      costOf({ quantities: [{ item, amount: 1, unit }], seconds: 0 }, prices)!;
    const fabric = 'filter fabric under the liner, 15 % laps';
    expect(named(fabric, 'm²')).toEqual({ sum: 0, unpriced: [fabric] });
    expect(named('liner, one sheet with 0.3 m (1 ft) over the rim', 'm²').sum).toBe(7);
    expect(named('block wall around the pond with its footing', 'm').sum).toBe(50);
    const chamber = 'sump chamber with lid, 0.6 m (2 ft) square';
    expect(named(chamber, 'piece').unpriced).toEqual([chamber]);
    expect(
      unusedPrices([{ quantities: [{ item: fabric, amount: 1, unit: 'm²' }], seconds: 0 }], prices),
    ).toEqual(prices);
  });

  test('what has no price is named; what no option asks for is told', () => {
    const prices = [price('sand', 'm3', 45), price('gnomes', 'each', 12), price('sand', 'm2', 3)];
    expect(costOf(WORK, prices)!.unpriced).toEqual([
      'filter fabric under the liner, 15 % laps',
      'flap valve',
    ]);
    expect(unusedPrices([WORK], prices).map((p) => p.item)).toEqual(['gnomes', 'sand']);
    expect(costOf(WORK, [])).toBeUndefined();
  });
});

describe('the work of a demo', () => {
  const files = briefDemo('clay-slope');
  const a = judge(siteModel(surveyOf(files), { samples: 64 }));

  test('the hole of a box with sides of one slope, by the prismoidal rule, and the ground cut back where it rises behind it, on a grid', () => {
    const { pond } = a.site;
    const dug = pond.depth + pond.bedding.thickness;
    const { length, width, sideSlope, shelf } = pond.shape;
    expect([pond.shape.shape, shelf]).toEqual(['box', undefined]);
    const area = (d: number) => (length - 2 * sideSlope * d) * (width - 2 * sideSlope * d);
    const { highRim } = a.site.places;
    expect(highRim).toBeCloseTo(0.12, 9);
    const cut = gridCut(length, width, 0.12, 0, sideSlope);
    const hole = cut + (dug / 6) * (area(0) + 4 * area(dug / 2) + area(dug));
    const rim = 2 * (length + width) * pond.ring.width * pond.depth;
    const { quantities, seconds } = workOf(a.basis, { way: 'asIs', raise: 0, ballast: 0 }, pond.depth);
    const amount = (words: RegExp) => quantities.find(({ item }) => words.test(item))!.amount;
    expect(amount(/^clay to dig for the pond, before it is loosened$/)).toBeCloseTo(hole + rim, 3);
    expect(amount(/^spoil of all/)).toBeCloseTo(1.3 * (hole + rim), 3);
    expect(seconds / 3600).toBeCloseTo((hole + rim) / 0.4 + amount(/^bank/) / 0.7, 3);
  });

  test('a drain is dug at the pace of digging and laid at that of filling, its pipes and sheets not at all', () => {
    const { measures, depth } = a.decision;
    expect(measures.drain?.kind).toBe('outlet');
    const { quantities, seconds } = workOf(a.basis, measures, depth);
    const of = (words: RegExp) =>
      quantities.filter((q) => q.unit === 'm³' && words.test(q.item)).reduce((sum, q) => sum + q.amount, 0);
    const dug = of(/before it is loosened/);
    expect(dug).toBeGreaterThan(of(/for the pond/));
    expect(of(/^spoil of all/)).toBeCloseTo(1.3 * dug, 9);
    expect(seconds / 3600).toBeCloseTo(dug / 0.4 + of(/sand|gravel|tamped/) / 0.7, 9);
  });

  test('a ring is not dug deeper than a pond that is raised, and raising it never digs more', () => {
    const ringed = withItem(
      withItem(files, 'pond.csv', 'ring_width', '0.3', 'm'),
      'pond.csv',
      'bedding',
      'none',
      '',
    );
    const { basis, site } = judge(siteModel(surveyOf(ringed), { samples: 64 }));
    const clay = (raise: number, depth: number) =>
      workOf(basis, { way: 'asIs', raise, ballast: 0 }, depth).quantities.find(({ item }) =>
        item.startsWith('clay'),
      )?.amount ?? 0;
    const { shape, ring } = site.pond;
    const cut = (raise: number) =>
      gridCut(shape.length, shape.width, site.places.highRim, raise, shape.sideSlope);
    for (const raise of [0, 0.05, 0.2, 0.5]) {
      // Along the middle of the ring.
      const middle = { ...shape, length: shape.length + ring.width, width: shape.width + ring.width };
      const around = outline(middle) * ring.width * (1 - raise);
      expect(clay(raise, 1)).toBeCloseTo(cut(raise) + pondVolume(shape, 1 - raise) + around, 3);
      expect(clay(raise + 0.1, 1)).toBeLessThan(clay(raise, 1));
      expect(clay(raise, 1.1)).toBeGreaterThan(clay(raise, 1));
    }
    expect(clay(1, 1)).toBe(0);
  });

  test('a drain adds what its own list says, and more of every option has its cost where there are prices', () => {
    const priced = {
      ...files,
      'prices.csv': 'item,unit,price\nconcrete sand,m3,45\nperforated pipe,m,4\ndigging,h,20\n',
    };
    const result = resultOf(judge(siteModel(surveyOf(priced), { samples: 64 })));
    const of = (name: string) => result.options.find((o) => o.option === name)!;
    const drain = of('drain-to-outlet').work!;
    for (const { item, amount } of result.drain!.quantities)
      expect(drain.quantities).toContainEqual(expect.objectContaining({ item, amount }));
    expect(drain.cost!).toBeGreaterThan(of('no-drain').work!.cost!);
    expect(of('ballast').work === null).toBe(!of('ballast').possible);
    expect(result.warnings.filter((w) => w.code === 'price-not-used')).toEqual([]);
  });
});
