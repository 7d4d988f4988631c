import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  backwater,
  bedUnderFloor,
  coverOf,
  type DrainInput,
  designDrain,
  dutyPoint,
  entryCapacity,
  erosionOf,
  fallLinks,
  judgeSoakaway,
  layoutOf,
  lineLoss,
  manningFull,
  ORDINARY_PUMP,
  pipeFlow,
  pipesAgainst,
  pipesInClay,
  powerCutHours,
  readInspectionPipe,
  shoppingLines,
  stormCutHours,
  sumpVolume,
} from '../../lib/drain/index.js';
import { shoppingCsv } from '../../lib/page/index.js';
import { soakawayWords } from '../../lib/text/index.js';
import { headLeftUnderFloor } from '../seepage/lonePipe.js';
import { WHOLE } from '../sweep.js';

const BASE: DrainInput = {
  floor: -1,
  floorArea: 6,
  floorLength: 3,
  floorWidth: 2,
  sideArea: 12,
  inflow: { clay: 1e-6, ring_storm: 0, roof: 0, uphill: 0, leak: 2e-5 },
  end: { kind: 'outlet', name: 'ditch', level: -1.35, distance: 15, ditch: -1.6, flood: -1.15 },
};
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const check = (property: fc.IRawProperty<unknown>) =>
  fc.assert(property as fc.IProperty<unknown>, { seed: 1, numRuns: WHOLE ? 200 : 60 });

describe('the weakest link', () => {
  test('is the envelope for stone straight on clay, and the fall once sand or fabric is chosen', () => {
    for (const bed of ['pea gravel', '20 mm stone'] as const) {
      const d = designDrain({ ...BASE, bed });
      expect(d.weakestLink).toBe('envelope');
      expect(d.reserve.envelope).toBeLessThan(1);
    }
    for (const bed of ['pea gravel on concrete sand', 'pea gravel in fabric'] as const) {
      const d = designDrain({ ...BASE, bed });
      expect(d.weakestLink, bed).toBe('fall');
      expect(d.reserve.fall).toBeCloseTo(0.2 / 0.15, 9);
    }
    // Sand alone brings 17.5 cm³/s over 6 m² to one pipe: K (0.12² − 0.05²)/(q L²). More of it asks for more pipe.
    const sandUnder = (leak: number) =>
      designDrain({ ...BASE, bed: 'concrete sand', inflow: { ...BASE.inflow, leak } });
    const sand = sandUnder(1.65e-5);
    expect(sand.weakestLink).toBe('bed');
    expect(sand.reserve.bed).toBeCloseTo((3e-4 * (0.12 ** 2 - 0.05 ** 2)) / (1.75e-5 / 6), 6);
    expect(sandUnder(2e-5).layout.length).toBeGreaterThan(sand.layout.length);
    expect(sandUnder(2e-5).reserve.bed).toBeGreaterThan(1.2);
  });

  test('is always the least of the reserves', () => {
    check(
      fc.property(number(-2, 0), number(5, 60), number(0, 2e-3), (level, distance, uphill) => {
        const d = designDrain({
          ...BASE,
          inflow: { ...BASE.inflow, uphill },
          end: { kind: 'outlet', name: 'ditch', level, distance },
        });
        expect(d.reserve[d.weakestLink]).toBe(Math.min(...Object.values(d.reserve)));
      }),
    );
  });

  test('reserves change without a jump with depth and fall', () => {
    // A millimetre of depth moves a reserve by at most what a millimetre of fall or flood is worth.
    const at = (floor: number, level: number) =>
      designDrain({ ...BASE, floor, end: { ...BASE.end, level } as DrainInput['end'] }).reserve;
    for (let z = -1.3; z < -0.8; z += 0.01) {
      const [a, b] = [at(z, -1.5), at(z + 0.001, -1.5)];
      const [c, e] = [at(-1, z - 0.5), at(-1, z - 0.499)];
      for (const [x, y] of [
        [a, b],
        [c, e],
      ])
        for (const link of Object.keys(x))
          expect(Math.abs(y[link] - x[link]), link).toBeLessThan(0.04 + 0.02 * Math.abs(x[link]));
    }
  });
});

describe('pipe', () => {
  test('more fall never lowers capacity, and a larger pipe never fails where a smaller served', () => {
    check(
      fc.property(number(0.0005, 0.2), number(0.0005, 0.2), number(1e-6, 0.02), (a, b, q) => {
        const [flat, steep] = [Math.min(a, b), Math.max(a, b)];
        for (const series of ['metric', 'us'] as const) {
          const [low, high] = [pipesAgainst(q, flat, series), pipesAgainst(q, steep, series)];
          low.forEach((p, i) => {
            expect(high[i].capacity).toBeGreaterThanOrEqual(p.capacity);
            expect(p.most).toBeGreaterThan(p.capacity);
            for (const other of low)
              if (other.diameter > p.diameter && other.pipe.kind === p.pipe.kind && p.times >= 1)
                expect(other.times).toBeGreaterThanOrEqual(1);
          });
        }
      }),
    );
  });

  test('a 2 in pipe cannot take a roof plane in a cloudburst, a 4 in pipe can a few times over', () => {
    const roof = (17 * 3.785411784e-3) / 60;
    const times = (name: string) => pipesAgainst(roof, 0.01, 'us').find((p) => p.pipe.name === name)!.times;
    expect(times('2 in corrugated pipe')).toBeLessThan(1);
    expect(times('4 in corrugated pipe')).toBeGreaterThan(2.5);
  });

  test('depth of flow gives its flow back', () => {
    check(
      fc.property(number(0.002, 1.0), number(0.001, 0.1), (share, fall) => {
        const full = manningFull.compute(0.1, fall, 0.015);
        const { depth, velocity } = pipeFlow(share * full, 0.1, fall, 0.015);
        const theta = 2 * Math.acos(1 - 2 * depth);
        expect((velocity * 0.01 * (theta - Math.sin(theta))) / 8).toBeCloseTo(share * full, 9);
      }),
    );
    expect(pipeFlow(1, 0.1, 0.01, 0.015).depth).toBe(1);
    expect(pipeFlow(0, 0.1, 0.01, 0.015).velocity).toBe(0);
  });

  test('10 ft of half-blocked perforated pipe under 1.2 in of head: half of 47 gpm', () => {
    expect((entryCapacity(10 * 0.3048, 0.1 * 0.3048) / 3.785411784e-3) * 60).toBeCloseTo(47.44 / 2, 1);
  });
});

test('bed and entry by hand: 0.25 l/s over 6 m² of gravel on sand, half width 1 m, 3 m of pipe', () => {
  const d = designDrain({ ...BASE, inflow: { ...BASE.inflow, clay: 0, leak: 0, uphill: 2.5e-4 } });
  // From the sides all of it goes the metre to the pipe, half on each: Q L/(2 × 3 m). Sand below: 0.05 m at 0.0003 m/s,
  // full; the pipe half full; in the gravel, 0.02 m/s, water y above the sand: T_s (y + ...) from y at the pipe to y.
  const flow = (2.5e-4 / (2 * 3)) * 1;
  const above = (y: number) => 0.05 * 3e-4 * y + (2e-2 * y ** 2) / 2;
  const y = d.headLeft.bed.between - 0.05;
  const atPipe = d.pipeDiameter / 2 - 0.05;
  expect(atPipe).toBeGreaterThanOrEqual(0);
  expect(above(y) - above(atPipe)).toBeCloseTo(flow, 12);
  // 0.03 m of the bed stay dry.
  expect(d.reserve.bed).toBeCloseTo((above(0.07) - above(atPipe)) / flow, 6);
  const entry = 0.6 * 0.5 * (0.0254 ** 2 / 0.3048) * 3 * Math.sqrt(2 * 9.80665 * 0.03);
  expect(d.reserve['pipe entry']).toBeCloseTo(entry / 2.5e-4, 8);
  // Pea gravel: 15 % lies 10/15 of the way from 2.36 to 4.75 mm; sand: 85 % lies 17.5/22.5 from 1.18 to 2.36 mm.
  expect(d.reserve.envelope).toBeCloseTo(
    (4 * 1.18 * 2 ** (17.5 / 22.5)) / (2.36 * (4.75 / 2.36) ** (10 / 15)),
    10,
  );
});

describe('relief under the floor', () => {
  test('a lone pipe in clay leaves most at the edge and all behind the walls; a bed leaves millimetres everywhere', () => {
    const lone = pipesInClay(2, 1);
    expect(lone.middle).toBeLessThan(lone.between);
    expect(lone.between).toBeLessThan(lone.edge);
    expect(lone.edge).toBeGreaterThan(0.7);
    expect(lone.walls).toBe(1);
    const bed = bedUnderFloor('pea gravel on concrete sand', 2, 1, 1e-7, true, 0.1);
    // The pipe half full, and no more.
    expect(Math.max(...Object.values(bed))).toBeLessThan(0.052);
    expect(bedUnderFloor('pea gravel on concrete sand', 2, 1, 1e-7, false, 0.1).walls).toBe(1);
  });

  test('more pipes leave less head, and none adds any', () => {
    const [one, three, six] = [1, 3, 6].map((n) => pipesInClay(3, 1, n));
    expect(three.edge).toBeLessThan(one.edge);
    expect(six.edge).toBeLessThan(three.edge);
    const left = headLeftUnderFloor(3, [{ x: 0.4, depth: 0.2, radius: 0.05 }], 1);
    for (let x = -1.49; x < 1.5; x += 0.01) {
      expect(left(x)).toBeGreaterThan(0);
      expect(left(x)).toBeLessThanOrEqual(1);
    }
    // The water at the surface on both sides is not lowered.
    expect(left(1.4999999)).toBeGreaterThan(0.99);
  });

  test('branches come when the bed alone does not bring the water in, at the spacing it allows', () => {
    const spine = layoutOf(4, 2, 'concrete sand', { fromBelow: 1e-6, fromSides: 0 }, 0.1);
    expect(spine).toMatchObject({ kind: 'spine', length: 4, branches: 0 });
    const herringbone = layoutOf(4, 3, 'concrete sand', { fromBelow: 2e-5, fromSides: 0 }, 0.1);
    expect(herringbone.kind).toBe('herringbone');
    expect(herringbone.spacing).toBeLessThanOrEqual(herringbone.allowed);
    expect(herringbone.length).toBeCloseTo(4 + 3 * herringbone.branches, 12);
  });
});

describe('outlet', () => {
  test('the budget goes down link by link without a gap', () => {
    const links = fallLinks({
      floor: -1,
      inBed: 3,
      outlet: { level: -1.5, distance: 20, ditch: -1.65, flood: -1.2 },
    });
    for (let i = 1; i < 4; i++) expect(links[i].from).toBeCloseTo(links[i - 1].to, 12);
    expect(links.map((l) => l.has >= l.needs - 1e-12)).toEqual([true, true, true, true, true]);
    const low = fallLinks({ floor: -1, inBed: 3, outlet: { level: -1.2, distance: 20, flood: -0.9 } });
    expect(low.filter((l) => l.has < l.needs).map((l) => l.link)).toEqual(['run', 'flood']);
  });

  test('in flood a flap keeps the ditch out, but not what is in the ground', () => {
    expect(backwater(-0.2, -1.1, -0.6)).toEqual({ flap: -0.57, open: -0.57 });
    expect(backwater(-0.8, -1.1, -0.6)).toEqual({ flap: -0.8, open: -0.6 });
    expect(backwater(-0.2, -1.1, -1.4)).toEqual({ flap: -1.07, open: -1.07 });
  });

  test('cover and erosion', () => {
    expect(coverOf(0, -1.2, 0.1).lies).toBe('deep');
    expect(coverOf(0, -0.4, 0.1).lies).toBe('shallow');
    expect(coverOf(0, 0, 0.1).lies).toBe('bare');
    expect([0.5, 1.5, 3].map((v) => erosionOf(v, 'clay'))).toEqual(['flat-stone', 'paved', 'apron']);
  });

  test('a soakaway is a second tub in clay and serves in sand', () => {
    const of = (k: number, clearance = 2, volume = 1) =>
      judgeSoakaway({ volume, depth: 0.6, permeability: k, clearance });
    const clay = of(1e-8);
    expect(clay.works).toBe(false);
    expect(soakawayWords(clay, 'metric')).toContain('second tub');
    expect(clay.half / 86400).toBeGreaterThan(30);
    // By hand: 1 m³ in stone 0.6 m deep is 4.76 m², 8.73 m round; half of it through 2.62 m² of wall at 1e-6: 53 h.
    expect(of(1e-6).half / 3600).toBeCloseTo(53.03, 1);
    expect(of(1e-6, 2, 5).half / 3600).toBeCloseTo(118.6, 1);
    expect(of(1e-4)).toMatchObject({ works: true, fault: null });
    expect(of(1e-4, 0.9)).toMatchObject({ works: false, fault: 'near' });
    expect(of(1e-4, -0.1)).toMatchObject({ works: false, fault: 'drowned' });
  });

  test('a soakaway in tighter ground, or nearer to the water, never serves better', () => {
    check(
      fc.property(
        number(-9, -3),
        number(-1, 3),
        number(0.05, 20),
        number(0, 1),
        (logK, clearance, volume, less) => {
          const of = (k: number, c: number) =>
            judgeSoakaway({ volume, depth: 0.6, permeability: k, clearance: c });
          const here = of(10 ** logK, clearance);
          const worse = of(10 ** (logK - less), clearance - less);
          expect(worse.half).toBeGreaterThanOrEqual(here.half);
          if (worse.works) expect(here.works).toBe(true);
        },
      ),
    );
  });
});

describe('sump and pump', () => {
  test('at the duty point the head of the pump is lift and losses', () => {
    const line = { diameter: 0.04, length: 12 };
    const { flow, head } = dutyPoint(ORDINARY_PUMP, 1.5, line);
    expect(head).toBeCloseTo(6 * (1 - (flow / 2e-3) ** 2), 6);
    expect(head).toBeCloseTo(1.5 + lineLoss(flow, 0.04, 12, 5), 9);
    expect(dutyPoint(ORDINARY_PUMP, 7, line).flow).toBe(0);
  });

  test('the least time between starts is at half the flow of the pump', () => {
    const [pump, cycle] = [1.2e-3, 360];
    const volume = sumpVolume.compute(cycle, pump);
    const time = (inflow: number) => volume / inflow + volume / (pump - inflow);
    for (let share = 0.05; share < 1; share += 0.05)
      expect(time(share * pump)).toBeGreaterThanOrEqual(cycle - 1e-9);
    expect(time(pump / 2)).toBeCloseTo(cycle, 9);
  });

  test('hours without power: storage over inflow, without end where nothing flows', () => {
    expect(powerCutHours(0.36, 1e-4)).toBeCloseTo(1, 12);
    expect(powerCutHours(0.36, 0)).toBe(Number.POSITIVE_INFINITY);
  });

  test('a storm ends: what is not full by then fills at the pace of an ordinary day', () => {
    const storm = { inflow: 1e-4, seconds: 3600 };
    // 0.36 m³ come in the hour; of 0.72 m³ the other half takes ten hours at 1e-5.
    expect(stormCutHours(0.18, storm, 1e-5)).toBeCloseTo(0.5, 12);
    expect(stormCutHours(0.36, storm, 1e-5)).toBeCloseTo(1, 12);
    expect(stormCutHours(0.72, storm, 1e-5)).toBeCloseTo(1 + 10, 9);
    expect(stormCutHours(0.72, storm, 0)).toBe(Number.POSITIVE_INFINITY);
    // Continuous in how long it lasts, and a longer storm never leaves more time.
    for (let seconds = 600; seconds < 20000; seconds += 100) {
      const at = (s: number) => stormCutHours(0.72, { inflow: 1e-4, seconds: s }, 1e-5);
      expect(at(seconds + 100)).toBeLessThanOrEqual(at(seconds) + 1e-12);
      expect(at(seconds) - at(seconds + 100)).toBeLessThan(0.3);
    }
  });
});

test('the inspection pipe says what is wrong', () => {
  expect(readInspectionPipe(-1.14, -1.15, -1, true)).toMatchObject({ trouble: false });
  expect(readInspectionPipe(-1.05, -1.15, -1, true)).toMatchObject({ trouble: false });
  expect(readInspectionPipe(-1.05, -1.15, -1, false)).toEqual({ trouble: true, says: 'blocked' });
  expect(readInspectionPipe(-0.8, -1.15, -1, true)).toMatchObject({ trouble: true });
});

describe('quantities', () => {
  test('twice the areas and lengths are twice the materials', () => {
    check(
      fc.property(number(0.5, 10), (times) => {
        const scaled = designDrain({
          ...BASE,
          floorArea: BASE.floorArea * times,
          floorLength: BASE.floorLength * times,
          sideArea: BASE.sideArea * times,
          inflow: { clay: 1e-9, ring_storm: 0, roof: 0, uphill: 0, leak: 0 },
        }).quantities;
        const base = designDrain({
          ...BASE,
          inflow: { clay: 1e-9, ring_storm: 0, roof: 0, uphill: 0, leak: 0 },
        }).quantities;
        for (const item of ['concrete sand', 'pea gravel', 'filter fabric', 'perforated pipe']) {
          const of = (list: typeof base) => list.find((q) => q.item.startsWith(item))!.amount;
          expect(of(scaled) / of(base), item).toBeCloseTo(times, 9);
        }
      }),
    );
  });

  test('a longer way never takes less pipe or is less to dig; a higher end takes a longer hose', () => {
    const of = (input: DrainInput) => {
      const { quantities, dug } = designDrain(input);
      const list = [...quantities, { item: 'dug', amount: dug }];
      return (words: RegExp) => list.filter((q) => words.test(q.item)).reduce((sum, q) => sum + q.amount, 0);
    };
    check(
      fc.property(number(0, 40), number(0, 20), number(0, 1), (distance, more, underSide) => {
        for (const kind of ['outlet', 'sump'] as const) {
          const at = (d: number, discharge = 0) =>
            of({
              ...BASE,
              underSide,
              end: {
                kind,
                name: '',
                level: -2,
                distance: d,
                ...(kind === 'sump' ? { discharge } : {}),
              } as DrainInput['end'],
            });
          const [near, far] = [at(distance), at(distance + more)];
          for (const words of [/pipe, /, /^dug/, /couplings/])
            expect(far(words), `${words}`).toBeGreaterThanOrEqual(near(words) - 1e-9);
          if (kind === 'outlet') expect(far(/pipe, /) - near(/pipe, /)).toBeCloseTo(1.05 * more, 9);
          // A pump that lifts higher gives less, so that its sump is shallower by some centimetres.
          if (kind === 'sump') expect(at(distance, 1)(/pressure/)).toBeGreaterThan(near(/pressure/) + 0.9);
        }
      }),
    );
  });

  test('the list in both systems agrees, rounded up to what is sold', () => {
    const lines = shoppingLines([
      { item: 'pipe', amount: 3.15, unit: 'm' },
      { item: 'sand', amount: 1.98, unit: 'm³' },
      { item: 'flap', amount: 1, unit: 'piece' },
    ]);
    expect(lines.map((l) => [l.metric, l.metricUnit, l.us, l.usUnit])).toEqual([
      [3.5, 'm', 10.5, 'ft'],
      [2, 'm³', 2.6, 'yd³'],
      [1, 'piece', 1, 'piece'],
    ]);
    expect(shoppingCsv([{ item: 'pipe, "old"', amount: 1, unit: 'm' }])).toBe(
      'item,metric,metric_unit,us,us_unit\r\n"pipe, ""old""",1,m,3.5,ft\r\n',
    );
  });

  test('a box of 10 × 8 × 3 ft holds just under 1,800 US gallons (common practice)', () => {
    const gallons = (10 * 8 * 3 * 0.3048 ** 3) / (231 * 0.0254 ** 3);
    expect(gallons).toBeCloseTo((10 * 8 * 3 * 1728) / 231, 6);
    expect(gallons).toBeLessThan(1800);
    expect(gallons).toBeGreaterThan(1790);
  });
});

test.each([
  ['spine', 3, 2, 0, 3],
  ['ring', 4, 3, 1e-4, 7],
] as const)(
  'the pipe of a %s falls by 1 %% over the way its water goes',
  (kind, length, width, storm, way) => {
    const { layout, links } = designDrain({
      ...BASE,
      floorArea: length * width,
      floorLength: length,
      floorWidth: width,
      bed: kind === 'ring' ? 'concrete sand' : 'pea gravel on concrete sand',
      inflow: { ...BASE.inflow, leak: 0, uphill: storm },
    });
    expect(layout.kind).toBe(kind);
    const pipe = links.find(({ link }) => link === 'pipe')!;
    expect(pipe.needs).toBeCloseTo(0.01 * way, 12);
    expect(pipe.has).toBeCloseTo(0.01 * way, 12);
  },
);
