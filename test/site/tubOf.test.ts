import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { columnSeries, runColumn, runTub, type TubGeometry } from '../../lib/groundwater/index.js';
import {
  Assumptions,
  type Catchment,
  fullRing,
  type Pond,
  stormRing,
  tubInflow,
  tubOf,
} from '../../lib/site/index.js';
import { CLAY } from '../groundwater/column.js';
import { realWeather, STATIONS, type Station } from '../weather.js';

/** A pond 4 by 3 m and 0.9 m deep in a ring 0.2 m wide, 20 m² of lawn uphill; clay water 0.6 m below its floor. */
const pond = (fill: Pond['ring']['fill'], change: Partial<Pond['ring']> = {}): Pond => ({
  shape: { shape: 'box', length: 4, width: 3, sideSlope: 0 },
  depth: 0.9,
  fullLevel: 0,
  kept: { held: 0.1 },
  overflow: 'away',
  highestRaise: 0,
  ring: { width: 0.2, fill, capped: false, ...change },
  bedding: { kind: 'none', thickness: 0 },
  floorBallast: 0,
  edgingLoad: 0,
  emptiedIn: 'any',
  daysEmpty: 3,
  margin: 0.1,
  acceptedRisk: 0.02,
  existing: false,
  bulge: false,
  wall: 'none',
});
const NO_PLACES = {
  datum: 0,
  highRim: 0,
  outlets: [],
  discharges: [],
  unplaced: [],
  footings: [],
  houses: [],
  pits: new Map<string, number>(),
};
const CLAY_WATER = -1.5;
type Way = 'run-off' | 'rain only' | 'kept out' | 'drained';

/** How full the ring stands each day, 0–1, and the day's month and year of the record. */
function ring(station: Station, fill: Pond['ring']['fill'], permeability: number, way: Way) {
  const record = realWeather(station);
  const column = columnSeries(record.rain.length);
  runColumn(record, CLAY, column);
  const tub = tubOf(pond(fill), NO_PLACES, new Assumptions())!;
  const catchment: Catchment = {
    uphillArea: way === 'run-off' || way === 'drained' ? 20 : 0,
    cover: 'lawn',
    roofArea: 0,
    pondRoof: 0,
    overflow: 'away',
    capped: way === 'kept out',
  };
  const inflow = new Float64Array(record.rain.length);
  tubInflow(record, column, tub, catchment, permeability, inflow);
  const level = new Float64Array(inflow.length);
  const clay = new Float64Array(inflow.length).fill(CLAY_WATER);
  // A clear drain: a litre a second for each 10 cm of head.
  const drain = way === 'drained' ? { level: tub.floor, conductance: 0.01 } : undefined;
  runTub(tub, { inflow, clay, permeability }, level, drain);
  const full = Float64Array.from(level, (z) => (z - tub.floor) / (tub.spill - tub.floor));
  /** For each whole year of the record, the share of November to April above a height of the ring. */
  const winters = (above: number) =>
    Array.from({ length: record.years }, (_, y) => {
      const days = [...full.keys()].filter(
        (d) => record.year[d] === y && (record.month[d] >= 11 || record.month[d] <= 4),
      );
      return days.filter((d) => full[d] > above).length / days.length;
    });
  /** Most days on end above a height. */
  const longest = (above: number) => {
    let run = 0;
    let most = 0;
    for (const f of full) {
      run = f > above ? run + 1 : 0;
      most = Math.max(most, run);
    }
    return most;
  };
  return { full, winters, longest, height: tub.spill - tub.floor };
}

describe.each(['topsoil', 'sand'] as const)('an open ring of %s in the weather of Seattle', (fill) => {
  test('in clay of 1e-9 m/s it is full by spring, with run-off or without', () => {
    for (const way of ['run-off', 'rain only'] as const)
      for (const share of ring('Seattle', fill, 1e-9, way).winters(0.8)) expect(share).toBeGreaterThan(0.9);
  });

  test('at 1e-8 m/s run-off keeps it over 80 % full for half of November to April and more; rain alone does not', () => {
    const [fed, rained] = (['run-off', 'rain only'] as const).map((way) =>
      ring('Seattle', fill, 1e-8, way).winters(0.8),
    );
    for (const share of fed) expect(share).toBeGreaterThan(0.5);
    for (const share of rained) expect(share).toBeLessThan(1 / 3);
  });

  test('at 1e-7 m/s it never stays full: ten days after the wettest storms at most', () => {
    const fed = ring('Seattle', fill, 1e-7, 'run-off');
    expect(fed.longest(0.8)).toBeLessThan(10);
    for (const share of fed.winters(0.8)) expect(share).toBeLessThan(0.2);
    expect(ring('Seattle', fill, 1e-7, 'rain only').longest(0.8)).toBe(0);
  });
});

describe.each(STATIONS)('in the weather of %s', (station) => {
  test.each([
    ['topsoil', 1e-9],
    ['topsoil', 1e-8],
    ['topsoil', 1e-7],
    ['sand', 1e-9],
    ['sand', 1e-8],
    ['sand', 1e-7],
  ] as const)(
    '%s in clay of %d m/s: capped and without run-off it stays empty; a clear drain holds it within 5 cm',
    (fill, K) => {
      // A twentieth gets through a cap: at most the lowest fifth of the ring is wet.
      expect(Math.max(...ring(station, fill, K, 'kept out').full)).toBeLessThan(0.2);
      const drained = ring(station, fill, K, 'drained');
      expect(Math.max(...drained.full) * drained.height).toBeLessThan(0.05);
      expect(Math.max(...ring(station, fill, K, 'run-off').full)).toBeGreaterThan(0.99);
    },
  );
});

test('New York: a ring of sand in clay of 1e-8 m/s stands full about half the winter with run-off, and never without', () => {
  for (const share of ring('New York', 'sand', 1e-8, 'run-off').winters(0.8))
    expect(share).toBeGreaterThan(0.4);
  for (const share of ring('New York', 'sand', 1e-8, 'rain only').winters(0.8))
    expect(share).toBeLessThan(0.05);
});

/** Clay that takes nothing. */
const TIGHT = { level: -3, permeability: 1e-30 };

describe('the tub of a pond', () => {
  test('goes to the liner, or to where the ring ends if that is higher', () => {
    expect(tubOf(pond('sand'), NO_PLACES, new Assumptions())).toMatchObject({
      floor: -0.9,
      spill: 0,
      perimeter: 14,
      bedArea: 0,
    });
    expect(tubOf(pond('sand', { depth: 0.4 }), NO_PLACES, new Assumptions())).toMatchObject({ floor: -0.4 });
    expect(tubOf(pond('sand', { depth: 2 }), NO_PLACES, new Assumptions())).toMatchObject({ floor: -0.9 });
  });

  test('spills at the lowest way out, never above the lowest ground at the rim', () => {});

  test('is none where nothing permeable touches the liner; bedding alone makes one', () => {
    expect(tubOf(pond('sand', { width: 0 }), NO_PLACES, new Assumptions())).toBeUndefined();
    const bedded = { ...pond('sand', { width: 0 }), bedding: { kind: 'gravel', thickness: 0.1 } as const };
    expect(tubOf(bedded, NO_PLACES, new Assumptions())).toMatchObject({ bedArea: 12, bedThickness: 0.1 });
  });
});

describe('what reaches the tub', () => {
  const days = 4;
  const record = { demand: Float64Array.of(0.002, 0.004, 0.001, 0.001) };
  const column = {
    ...columnSeries(days),
    liquid: Float64Array.of(0.03, 0, 0.01, 0.02),
    recharge: Float64Array.of(0.02, 0, 0, 0.015),
    spill: Float64Array.of(0, 0, 0, 0.017),
  };
  const inflow = (fill: Pond['ring']['fill'], change: Partial<Catchment>, K = 1e-8) => {
    const out = new Float64Array(days);
    const none: Catchment = {
      uphillArea: 0,
      cover: 'lawn',
      roofArea: 0,
      pondRoof: 0,
      overflow: 'away',
      capped: false,
    };
    tubInflow(
      record,
      column,
      tubOf(pond(fill), NO_PLACES, new Assumptions())!,
      { ...none, ...change },
      K,
      out,
    );
    return [...out];
  };
  const near = (ours: number[], expected: number[]) => {
    for (const [d, v] of expected.entries()) expect(ours[d]).toBeCloseTo(v, 12);
  };

  test('on gravel all the rain of its own 2.8 m²; on soil what wets the dried top is held back', () => {
    near(
      inflow('gravel', {}),
      [0.03, 0, 0.01, 0.02].map((r) => 2.8 * r),
    );
    // Dried by 2 + 4 mm before the 10 mm of the third day, by 1 mm before the fourth.
    near(
      inflow('topsoil', {}),
      [0.03, 0, 0.004, 0.019].map((r) => 2.8 * r),
    );
  });

  test('from the lawn the larger of what the full ground sheds and what the clay cannot take in a day', () => {
    const intake = 1e-8 * 86400;
    near(inflow('gravel', { uphillArea: 20 }), [0.084 + 20 * (0.02 - intake), 0, 0.028, 0.056 + 20 * 0.017]);
    near(inflow('gravel', { uphillArea: 20, cover: 'woodland' }), [
      0.084 + 10 * (0.02 - intake),
      0,
      0.028,
      0.056 + 10 * 0.017,
    ]);
    near(inflow('gravel', { uphillArea: 20 }, 1e-6), [0.084, 0, 0.028, 0.056 + 20 * 0.017]);
  });

  test('from paving and roofs nearly all rain after a first millimetre that dries again; through a cap a twentieth', () => {
    // The film is full after the first day, dry before the third (4 mm of demand) and again before the fourth.
    const hard = [0.029, 0, 0.009, 0.019];
    near(
      inflow('gravel', { uphillArea: 10, cover: 'paved', roofArea: 30 }),
      [0.03, 0, 0.01, 0.02].map((r, d) => r * 2.8 + hard[d] * (9 + 28.5)),
    );
    const open = inflow('sand', { uphillArea: 20, roofArea: 30 });
    near(
      inflow('sand', { uphillArea: 20, roofArea: 30, capped: true }),
      open.map((v) => 0.05 * v),
    );
  });
});

describe('a way out of the ring', () => {
  const assume = new Assumptions();
  const tub = (spill: number, fill: Pond['ring']['fill'] = 'gravel') =>
    tubOf(pond(fill), { ...NO_PLACES, spill }, assume)!;

  test('is the spill point below the ground, through the fill', () => {
    expect(tub(-0.3).exit!.level).toBe(-0.3);
    expect(tub(0.4).exit).toBeUndefined();
    expect(assume.list.map(({ item }) => item)).toContain('ring_ksat');
  });

  test('in flood lets the water in as high as the mark beside it, and no higher than the ground', () => {
    const flooded = (spillFlood: number, spill = -0.5) =>
      tubOf(pond('gravel'), { ...NO_PLACES, spill, spillFlood }, assume)!;
    expect([-0.8, -0.2, 0.3].map((mark) => flooded(mark).flooded)).toEqual([undefined, -0.2, 0]);
    expect(flooded(-0.2, -1).flooded).toBeUndefined();
    const dry: Catchment = {
      uphillArea: 0,
      cover: 'lawn',
      roofArea: 0,
      pondRoof: 0,
      overflow: 'away',
      capped: true,
    };
    expect(fullRing(flooded(-0.8), dry, TIGHT)).toBeLessThan(-0.49);
    expect(fullRing(flooded(-0.2), dry, TIGHT)).toBe(-0.2);
  });

  test('without weather a heavy day fills it: 30 mm on ring, roof and half the lawn uphill, by the room in its fill', () => {
    const g = tubOf(pond('gravel'), NO_PLACES, assume)!;
    const at = (c: Partial<Catchment>, from = -3) =>
      stormRing(
        g,
        { uphillArea: 0, cover: 'lawn', roofArea: 0, pondRoof: 0, overflow: 'away', capped: false, ...c },
        { ...TIGHT, level: from },
      );
    // From dry: its own rain alone stands 30 mm ÷ 0.35 over the floor.
    expect(at({})).toBeCloseTo(g.floor + 0.03 / 0.35, 9);
    expect(at({ roofArea: 5, uphillArea: 4 })).toBeCloseTo(
      g.floor + (0.03 * (g.ringArea + 5 + 2)) / (0.35 * g.ringArea),
      9,
    );
    // No higher than the ground, and no lower than the clay.
    expect(at({ uphillArea: 600 })).toBe(g.spill);
    expect(at({}, -0.2)).toBeCloseTo(Math.min(-0.2 + 0.03 / 0.35, g.spill), 9);
    const areas = [0, 1, 3, 10, 100].map((uphillArea) => at({ uphillArea }));
    expect([...areas].sort((a, b) => a - b)).toEqual(areas);
    expect(at({ capped: true })).toBeLessThan(at({}));
  });

  test('that lies at the floor of the ring or below it is none', () => {
    for (const spill of [-0.9, -1, -5]) {
      expect(tub(spill)).toMatchObject({ floor: -0.9, spill: 0 });
      expect(tub(spill).exit).toBeUndefined();
    }
  });

  /** Where the ring settles with a steady inflow, m³ a day. */
  const settled = (g: TubGeometry, inflow: number, ground = TIGHT) => {
    const n = 4000;
    const level = new Float64Array(n);
    const forcing = {
      inflow: new Float64Array(n).fill(inflow),
      clay: new Float64Array(n).fill(ground.level),
      permeability: ground.permeability,
    };
    runTub(g, forcing, level);
    return level[n - 1];
  };

  test('and the ground take as much at the level of wet months as a heavy day brings every day, or it is full', () => {
    const among = { empty: 0, between: 0, full: 0 };
    fc.assert(
      fc.property(
        fc.double({ min: -9, max: -3, noNaN: true }),
        fc.double({ min: -3, max: -0.1, noNaN: true }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        fc.constantFrom(-0.4, 1),
        (log, level, uphillArea, spill) => {
          const ground = { level, permeability: 10 ** log };
          const g = tub(spill, 'sand');
          const c: Catchment = {
            uphillArea,
            cover: 'lawn',
            roofArea: 0,
            pondRoof: 0,
            overflow: 'away',
            capped: false,
          };
          const full = fullRing(g, c, ground);
          expect(full).toBeCloseTo(settled(g, 0.03 * (g.ringArea + uphillArea), ground), 3);
          among[full <= g.floor ? 'empty' : full < g.spill ? 'between' : 'full']++;
        },
      ),
      { seed: 7, numRuns: 100 },
    );
    for (const count of Object.values(among)) expect(count).toBeGreaterThan(5);
  });

  test('holds gravel at its level and topsoil hardly below the ground, as the profile along the ring says', () => {
    // 14 m all round, 0.2 m wide, 2.8 m² of ring: an inch of rain a week is 0.01 m³ a day.
    const width = pond('gravel').ring.width;
    const round = tub(-0.5).perimeter;
    for (const [fill, K] of [
      ['gravel', 3e-3],
      ['sand', 1e-4],
      ['topsoil', 5e-6],
    ] as const) {
      const over = 0.4 ** 2 + ((0.01 / 86400) * round) / (4 * K * width);
      const expected = Math.min(Math.sqrt(over) - 0.9, 0);
      expect(settled(tub(-0.5, fill), 0.01), fill).toBeCloseTo(expected, 6);
    }
    expect(settled(tub(-0.5), 0.01)).toBeLessThan(-0.499);
    expect(settled(tub(-0.5, 'topsoil'), 0.01)).toBeGreaterThan(-0.2);
  });

  test('lower, or through more open fill, never holds more; nor does less rain', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.89, max: -0.01, noNaN: true }),
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        (level, drop, inflow) => {
          const lower = Math.max(level - drop, -0.89);
          const [gravel, sand, topsoil] = (['gravel', 'sand', 'topsoil'] as const).map((fill) =>
            settled(tub(level, fill), inflow),
          );
          expect(gravel).toBeLessThanOrEqual(sand + 1e-9);
          expect(sand).toBeLessThanOrEqual(topsoil + 1e-9);
          expect(settled(tub(lower, 'sand'), inflow)).toBeLessThanOrEqual(sand + 1e-9);
          expect(settled(tub(level, 'sand'), inflow / 2)).toBeLessThanOrEqual(sand + 1e-9);
          const known: Catchment = {
            uphillArea: 5,
            cover: 'lawn',
            roofArea: 0,
            pondRoof: 0,
            overflow: 'away',
            capped: false,
          };
          expect(fullRing(tub(lower, 'sand'), known, TIGHT)).toBeLessThanOrEqual(
            fullRing(tub(level, 'sand'), known, TIGHT),
          );
        },
      ),
      { seed: 5, numRuns: 60 },
    );
  });
});
