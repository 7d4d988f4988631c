import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calendarOf } from '../../lib/climate/index.js';
import { columnSeries, runColumn } from '../../lib/groundwater/index.js';
import { realWeather, STATIONS } from '../weather.js';
import { CLAY, days, run } from './column.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const sum = (a: ArrayLike<number>) => Array.from(a).reduce((x, y) => x + y, 0);

describe('whatever the weather and the ground', () => {
  const weather = fc.record({ rain: between(0, 0.1), demand: between(0, 0.012), tmean: between(-25, 30) });
  const ground = fc.record({
    porosity: between(0.005, 0.35),
    recession: between(0, 0.5),
    baseDepth: between(0.8, 6),
    spillDepth: between(0, 0.4),
    extinctionDepth: between(0.3, 3),
    delay: between(0.05, 60),
    drainDepth: between(0, 7),
    drainRate: between(0, 9),
    rootCapacity: between(0.02, 0.3),
    demandFactor: between(0.5, 1.5),
    crackShare: between(0, 1),
    meltFactor: between(0.001, 0.006),
  });

  test('a column closes and every store stays within its bounds', () => {
    fc.assert(
      fc.property(
        fc.array(weather, { minLength: 1, maxLength: 300 }),
        ground,
        between(0, 1),
        (sky, p, dry) => {
          const r = run(sky, p, { deficit: dry * p.rootCapacity, held: 0.3 * p.porosity });
          expect(r.closure).toBeLessThan(1e-10);
          expect(r.end.snow).toBeGreaterThanOrEqual(0);
          expect(r.end.deficit).toBeGreaterThanOrEqual(0);
          expect(r.end.deficit).toBeLessThanOrEqual(p.rootCapacity * (1 + 1e-12));
          for (let d = 0; d < sky.length; d++) {
            expect(r.liquid[d]).toBeGreaterThanOrEqual(0);
            expect(r.recharge[d]).toBeGreaterThanOrEqual(0);
            expect(r.spill[d]).toBeGreaterThanOrEqual(0);
            expect(r.depth[d]).toBeGreaterThanOrEqual(p.spillDepth - 1e-12);
            expect(r.depth[d]).toBeLessThanOrEqual(p.baseDepth + 1e-12);
          }
        },
      ),
      { seed: 1, numRuns: 100 },
    );
  });

  test('what fell is what reached the ground and what still lies there', () => {
    fc.assert(
      fc.property(fc.array(weather, { minLength: 1, maxLength: 400 }), (sky) => {
        const { liquid, end } = run(sky);
        expect(Math.abs(sum(sky.map((d) => d.rain)) - sum(liquid) - end.snow)).toBeLessThan(1e-12);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  test('without demand all that reached the ground passes the roots or fills them', () => {
    fc.assert(
      fc.property(
        fc.array(weather, { minLength: 1, maxLength: 300 }),
        ground,
        between(0, 1),
        (sky, p, dry) => {
          const still = sky.map((d) => ({ ...d, demand: 0 }));
          const { liquid, recharge, end, from } = run(still, p, { deficit: dry * p.rootCapacity });
          expect(Math.abs(sum(liquid) - sum(recharge) - (from.deficit - end.deficit))).toBeLessThan(1e-11);
        },
      ),
      { seed: 1, numRuns: 100 },
    );
  });
});

describe('the roots', () => {
  test('without rain the deficit nears capacity as an exponential once stressed', () => {
    // Explicit day: dD = ET (C − D)/(C(1 − p)), so C − D shrinks by the factor 1 − ET/(C(1 − p)) a day; p = 0.37.
    const [capacity, p, demand, n] = [0.1, 0.37, 0.004, 50];
    const { end, recharge } = run(days(n, { demand }), {}, { deficit: p * capacity });
    expect(capacity - end.deficit).toBeCloseTo(
      (capacity - p * capacity) * (1 - demand / (capacity * (1 - p))) ** n,
      12,
    );
    expect(recharge.every((v) => v === 0)).toBe(true);
  });

  test('when full pass the rain on, and meet demand in full', () => {
    const { end, recharge } = run([{ rain: 0.02, demand: 0.003 }]);
    expect(end.deficit).toBeCloseTo(0.003, 15);
    expect(recharge[0]).toBeCloseTo(0.02, 15);
  });

  test('are bypassed down cracks in proportion to the deficit: not when the clay is wet', () => {
    const through = (deficit: number) => run([{ rain: 0.02 }], { crackShare: 0.3 }, { deficit }).recharge[0];
    expect(through(0.1)).toBeCloseTo(0.3 * 0.02, 15);
    expect(through(0.05)).toBeCloseTo(0.15 * 0.02, 15);
    expect(through(0)).toBeCloseTo(0.02, 15);
  });
});

test('10 mm of snow melt in two days of 2 °C, 3 mm a degree', () => {
  const { liquid, end } = run([
    { rain: 0.01, tmean: -3 },
    { rain: 0.001, tmean: 2 },
    { tmean: 2 },
    { rain: 0.002, tmean: 5 },
  ]);
  expect([...liquid].map((v) => Number((1000 * v).toFixed(9)))).toEqual([0, 7, 4, 2]);
  expect(end.snow).toBeCloseTo(0, 15);
});

test.each(['rain', 'demand', 'tmean'] as const)('a %s that is no number is not balanced away', (what) => {
  const weather = {
    rain: Float64Array.of(0.01, 0),
    demand: Float64Array.of(0, 0),
    tmean: Float64Array.of(5, 5),
  };
  weather[what][1] = Number.NaN;
  expect(() => runColumn(weather, CLAY, columnSeries(2))).toThrow(
    /column balance does not close: NaN m over 2 days/,
  );
});

describe.each(STATIONS)('a clay lawn in the weather of %s', (station) => {
  const record = realWeather(station);
  const series = columnSeries(record.rain.length);
  const { closure } = runColumn(record, CLAY, series);
  const monthly = Array.from({ length: 12 }, (_, m) => {
    const inside = [...series.depth.keys()].filter((d) => calendarOf(record.firstDay + d).month === m + 1);
    return inside.reduce((sum, d) => sum + series.depth[d], 0) / inside.length;
  });

  test('closes', () => {
    expect(closure).toBeLessThan(1e-9);
  });

  test('the table comes to the top of the turf in every winter', () => {
    for (let y = 0; y < record.years; y++) {
      const year = [...series.depth.keys()].filter((d) => record.year[d] === y);
      expect(Math.min(...year.map((d) => series.depth[d]))).toBeLessThan(0.1);
    }
  });

  test('and falls by half a metre and more in summer, by roots and sun: without them it would not', () => {
    expect(Math.max(...monthly.slice(6, 10))).toBeGreaterThan(Math.min(...monthly.slice(0, 3)) + 0.5);
    const rootless = columnSeries(record.rain.length);
    runColumn({ ...record, demand: new Float64Array(record.demand.length) }, CLAY, rootless);
    const mean = (s: Float64Array) => s.reduce((a, b) => a + b, 0) / s.length;
    expect(mean(rootless.depth)).toBeLessThan(mean(series.depth) - 0.3);
  });

  test('the start is forgotten: the first year run twice begins as it ends', () => {
    const once = columnSeries(365);
    const year = {
      rain: record.rain.subarray(0, 365),
      tmean: record.tmean.subarray(0, 365),
      demand: record.demand.subarray(0, 365),
    };
    runColumn(year, CLAY, once);
    expect(Math.abs(once.depth[0] - once.depth[364])).toBeLessThan(0.3);
  });
});

test('a factor on the demand is a demand so much larger, for roots and table alike', () => {
  const dry = { held: 0.04, deficit: 0.07 };
  const [thirsty, plain] = [
    run(days(30, { demand: 0.002 }), { demandFactor: 1.5 }, dry),
    run(days(30, { demand: 0.003 }), {}, dry),
  ];
  expect([...thirsty.depth]).toEqual([...plain.depth].map((depth) => expect.closeTo(depth, 12)));
  expect(thirsty.end.deficit).toBeCloseTo(plain.end.deficit, 12);
});
