import { describe, expect, test } from 'vitest';
import { calendarOf } from '../../lib/climate/index.js';
import { columnSeries, runColumn, type TableParameters } from '../../lib/groundwater/index.js';
import { realWeather, STATIONS } from '../weather.js';

const CLAY: TableParameters = {
  porosity: 0.03,
  recession: 0.012,
  baseDepth: 2,
  spillDepth: 0.06,
  extinctionDepth: 1.4,
  delay: 0.5,
  rootCapacity: 0.1,
  demandFactor: 1,
  crackShare: 0.1,
  drainDepth: 1,
  drainRate: 0,
  meltFactor: 0.003,
};

describe.each(STATIONS)('a clay lawn in the weather of %s', (station) => {
  const record = realWeather(station);
  const series = columnSeries(record.liquid.length);
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
    const rootless = columnSeries(record.liquid.length);
    runColumn({ ...record, demand: new Float64Array(record.demand.length) }, CLAY, rootless);
    const mean = (s: Float64Array) => s.reduce((a, b) => a + b, 0) / s.length;
    expect(mean(rootless.depth)).toBeLessThan(mean(series.depth) - 0.3);
  });

  test('the start is forgotten: the first year run twice begins as it ends', () => {
    const once = columnSeries(365);
    const year = {
      ...record,
      liquid: record.liquid.subarray(0, 365),
      demand: record.demand.subarray(0, 365),
    };
    runColumn(year, CLAY, once);
    expect(Math.abs(once.depth[0] - once.depth[364])).toBeLessThan(0.3);
  });
});
