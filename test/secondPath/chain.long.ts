/**
 * The main chain a second time, from the daily weather to failing years and inflow: plain code written from the equations
 * only (`weather.ts`, `calibration.ts`, `pond.ts`), against the library, for a pond in plain clay and one in a ring.
 */
import { describe, expect, test } from 'vitest';
import { basisOf } from '../../lib/basis/index.js';
import { judge } from '../../lib/decision/index.js';
import { columnSeries, runColumn, runTub } from '../../lib/groundwater/index.js';
import { NOTHING } from '../../lib/heads/index.js';
import { chanceOf } from '../../lib/reliability/index.js';
import { reportOf } from '../../lib/report/index.js';
import { permeabilityAround, siteModel, tubInflow } from '../../lib/site/index.js';
import { demoFiles, surveyOf } from '../folder.js';
import { calibrated, type Draw, type Reading, Scores } from './calibration.js';
import { liftsEmptied, outlineOf, type Plan, type Ring, ringLevels, seepage } from './pond.js';
import { columnOf, daysOf, forcingOf } from './weather.js';

const quantile = (values: ArrayLike<number>, p: number): number => {
  const sorted = Float64Array.from(values).sort();
  const at = p * (sorted.length - 1);
  const low = Math.floor(at);
  return sorted[low]! + (at - low) * ((sorted[low + 1] ?? sorted[low]!) - sorted[low]!);
};
const mean = (values: ArrayLike<number>) => Array.from(values).reduce((a, b) => a + b, 0) / values.length;

function demo(name: string, latitude: number) {
  const files = demoFiles(name);
  const site = siteModel(surveyOf(files), { samples: 256, seed: 1 });
  const days = daysOf(files['weather.csv']!);
  return { site, record: site.record!, days, forcing: forcingOf(days, latitude) };
}

const slope = demo('clay-slope', 52.5);
const hollow = demo('clay-hollow', 52);

describe.each([
  ['clay-slope', slope],
  ['clay-hollow', hollow],
] as const)('%s, day by day', (_, { site, record, days, forcing }) => {
  test('evaporation is that of FAO-56 to a millionth of a millimetre', () => {
    for (let d = 0; d < days.length; d++)
      expect(Math.abs(1000 * record.demand[d]! - forcing.et0[d]!)).toBeLessThan(1e-6);
  });

  test('root zone, recharge and store: the same water, from another start, after two years', () => {
    const series = columnSeries(days.length);
    for (const ground of site.fit!.sets.slice(0, 4)) {
      runColumn(record, ground, series);
      const own = columnOf(forcing, ground);
      // Store and root zone were begun full here and half full there: by the third year nothing is left of it.
      for (let d = 730; d < days.length; d++) {
        expect(Math.abs(1000 * series.recharge[d]! - own.recharge[d]!)).toBeLessThan(1e-3);
        expect(Math.abs(series.depth[d]! - own.depth[d]!)).toBeLessThan(1e-4);
      }
    }
  });
});

/** Whole years from October to September. */
const hydrologicalYears = (days: readonly { year: number; month: number }[]) => {
  const of = days.map(({ year, month }) => (month >= 10 ? year : year - 1));
  const counts = new Map<number, number>();
  for (const year of of) counts.set(year, (counts.get(year) ?? 0) + 1);
  return { of, whole: [...counts].filter(([, count]) => count >= 365).map(([year]) => year) };
};

describe('clay-slope, from its looks to the answer, with a calibration of its own', () => {
  const { site, days, forcing } = slope;
  const readings = site.dips.map((dip): Reading => ({ ...dip, at: Math.floor(dip.day) - days[0]!.day }));
  const draws: Draw[] = calibrated(forcing, readings, site.fit!.priors, site.ground.colour!, {
    steps: 1500,
    keep: 16,
    walks: 4,
    seed: 11,
  });
  const { of, whole } = hydrologicalYears(days);
  const dice = new Scores(5);
  const plan: Plan = { shape: 'box', length: 4.6, width: 3.4, sideSlope: 0.8 };
  const highRim = 0.12;

  /** Low side, day by day, and the score of the permeability, of each draw; the level that place and day miss the model by is in it. */
  const ponds = draws.map(({ ground, missing }) => {
    const { depth } = columnOf(forcing, ground);
    const place = 0.05 * dice.next();
    let miss = missing * dice.next();
    const low = Float64Array.from(depth, (z) => {
      // Day after day a 45th of it is forgotten, and as much comes anew.
      miss = Math.exp(-1 / 45) * miss + Math.sqrt(1 - Math.exp(-2 / 45)) * missing * dice.next();
      const level = place + miss - z;
      // Above the ground the same water stands by as much lower as it has more room.
      return level < 0 ? level : Math.min(level * ground.porosity, 0.05);
    });
    const rise = highRim * Math.min(Math.max(0.85 + 0.15 * dice.next(), 0), 1);
    return { low, rise, score: dice.next() };
  });
  const highs = ponds.flatMap(({ low, rise }) =>
    whole.map((wanted) => {
      let high = Number.NEGATIVE_INFINITY;
      for (let d = 0; d < low.length; d++) if (of[d] === wanted && low[d]! > high) high = low[d]!;
      return { low: high, uphill: high + rise };
    }),
  );
  const report = reportOf(judge(site));

  test('the seasonal high', () => {
    // Both are random walks to the same end, of 64 and 256 draws; the far quantile is the least certain.
    const { p10, p50, p90 } = report.result.water.seasonal_high_depth_m;
    const depths = highs.map(({ low }) => -low);
    expect(Math.abs(quantile(depths, 0.1) - p10)).toBeLessThan(0.02);
    expect(Math.abs(quantile(depths, 0.5) - p50)).toBeLessThan(0.02);
    expect(Math.abs(quantile(depths, 0.9) - p90)).toBeLessThan(0.05);
  });

  test('the yearly high behind the uphill wall, and what is left to a pond 50 mm low', () => {
    const spare = highs.map(({ uphill }) => 0.25 - uphill);
    const { net_head_m } = report.result.options[0]!.full!;
    for (const [p, name] of [
      [0.1, 'p10'],
      [0.5, 'p50'],
      [0.9, 'p90'],
    ] as const)
      expect(Math.abs(quantile(spare, p) - net_head_m[name])).toBeLessThan(0.04);
  });

  test('the share of years in which it lifts, emptied in March for ten days', () => {
    const basis = basisOf(site);
    for (const depth of [0.2, 0.3, 0.5, 0.7, 1]) {
      const around = permeabilityAround(site.ground, depth);
      const failing = (starts: number[], held: boolean) =>
        mean(
          ponds.flatMap(({ low, rise, score }) =>
            whole.map((year) => {
              const first = days.findIndex((d) => d.year === year + 1 && d.month === 3 && d.date === 1);
              return Number(
                starts.some((start) => {
                  const heads = low.subarray(first + start, first + start + 10).map((z) => z + rise);
                  return liftsEmptied(
                    plan,
                    depth,
                    held ? heads.fill(Math.max(...heads)) : heads,
                    around.median * Math.exp(around.spread * score),
                  );
                }),
              );
            }),
          ),
        );
      const told = chanceOf(basis, NOTHING, depth).perYear;
      // Held at its highest for all days, as is told, it is the same but for the draws (64 grounds by 24 years, the
      // grounds alike from year to year: one standard deviation at most 0.06); day by day it is never more.
      expect(Math.abs(failing([0], true) - told)).toBeLessThan(0.1);
      expect(failing([0], false)).toBeLessThan(told + 0.1);
      expect(told - failing([0], false)).toBeLessThan(0.25);
    }
  });

  test('seepage to the drain in the wettest year of ten, likely ground', () => {
    // The bed under the floor is 0.15 m thick, and the outlet lies lower.
    const head = quantile(
      highs.map(({ uphill }) => uphill),
      0.9,
    );
    const own = seepage(plan, 1, permeabilityAround(site.ground, 1).median, head + 1.15);
    // 0.03 m of head in 1.2 m.
    expect(Math.abs(report.result.drain!.inflow_m3_s.clay / own - 1)).toBeLessThan(0.025);
  });
});

describe('clay-hollow, the ring', () => {
  const { site, record, days, forcing } = hollow;
  const plan: Plan = { shape: 'oval', length: 4.2, width: 3.1, sideSlope: 0.5 };
  const around = outlineOf(plan);
  const ring: Ring = {
    floor: -0.9,
    spill: 0,
    area: around * 0.2,
    porosity: 0.12,
    hold: 0.02,
    outline: around,
    bed: { area: (Math.PI / 4) * 3.3 * 2.2, thickness: 0.05, porosity: 0.25 },
  };

  test('its size', () => {
    // Outline by integration against Ramanujan's first formula.
    expect(site.tub!.ringArea).toBeCloseTo(ring.area, 3);
    expect(site.tub!.bedArea).toBeCloseTo(ring.bed.area, 9);
  });

  test.each([0, 1, 2])('its level in ground %i, stepped on 48 times a day', (s) => {
    const ground = site.fit!.sets[s]!;
    const conductivity = site.water.permeability[s]!;
    const own = columnOf(forcing, ground);
    const clay = own.depth.map((z) => -z);
    const level = ringLevels(ring, own, forcing.et0, clay, conductivity, 120);
    const series = columnSeries(days.length);
    runColumn(record, ground, series);
    const inflow = new Float64Array(days.length);
    tubInflow(record, series, site.tub!, site.catchment, conductivity, inflow);
    const told = new Float64Array(days.length);
    runTub(site.tub!, { inflow, clay: series.depth.map((z) => -z), permeability: conductivity }, told);
    const off = told.map((z, d) => z - level[d]!).subarray(730);
    const size = off.map(Math.abs);
    // One implicit step a day against 48 explicit ones: a day's rain arrives at once here and over the day there.
    expect(Math.abs(mean(off))).toBeLessThan(0.01);
    expect(quantile(size, 0.95)).toBeLessThan(0.04);
    // The highest of a year is the same to two centimetres.
    const { of, whole } = hydrologicalYears(days);
    for (const year of whole.slice(2)) {
      const highest = (levels: Float64Array) => Math.max(...levels.filter((_, d) => of[d] === year));
      expect(Math.abs(highest(told) - highest(level))).toBeLessThan(0.02);
    }
  });
});
