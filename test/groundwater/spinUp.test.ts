/** What a column holds on a day, against runs over ten years of days before it. */
import { describe, expect, test } from 'vitest';
import {
  type ColumnWeather,
  columnConstants,
  columnSeries,
  parametersAt,
  runColumn,
  runDays,
  spinUp,
  type TableParameters,
  tablePriors,
  usualState,
} from '../../lib/groundwater/index.js';
import { latinNormals, quantileSorted } from '../../lib/sampling/index.js';
import { realWeather, STATIONS } from '../weather.js';
import { CLAY } from './column.js';

const DIMENSIONS = 12;
const COUNT = 60;
/** Sets of a clay, with a drain or without. */
const priors = tablePriors(
  {
    porosity: { median: 0.03, spread: 0.4, evidence: [] },
    rootCapacity: { median: 0.09, spread: 0.25, evidence: [] },
    permeable: false,
    clayey: true,
    snows: true,
  },
  [{ day: 0, depth: 0.6, says: 'level', error: 0.01 }],
);
const scores = latinNormals(COUNT, DIMENSIONS, 3);
const sets = Array.from({ length: COUNT }, (_, i) =>
  parametersAt(priors, scores.subarray(i * DIMENSIONS, (i + 1) * DIMENSIONS)),
);

/** Depth to the water a day after the start of a day in a record, m, and what was held. */
function nextDepth(record: ColumnWeather, day: number, p: TableParameters, state: Float64Array): number {
  const series = columnSeries(day + 1);
  runDays(record, day, day + 1, columnConstants(p), state.slice(), series);
  return series.depth[day];
}

describe.each(STATIONS)('in the weather of %s', (station) => {
  const record = realWeather(station);
  const day = record.rain.length - 200;
  const from = spinUp(record, day);
  const before = {
    rain: record.rain.subarray(0, day),
    tmean: record.tmean.subarray(0, day),
    demand: record.demand.subarray(0, day),
  };
  /** By days alone, over the record before three times. */
  const byDays = (p: TableParameters) => {
    const series = columnSeries(day);
    let state: Float64Array | undefined;
    for (let k = 0; k < 3; k++) state = runColumn(before, p, series, state).end;
    return nextDepth(record, day, p, state!);
  };

  test('sets that recede in months have forgotten their start to a millimetre, half of all to one and nine in ten to 3 cm', () => {
    const off = sets.map((p) => Math.abs(nextDepth(record, day, p, from(p)) - byDays(p)));
    sets.forEach((p, i) => {
      if (p.recession > 7 / 365) expect(off[i]).toBeLessThan(1e-3);
    });
    const sorted = Float64Array.from(off).sort();
    expect(quantileSorted(sorted, 0.5)).toBeLessThan(1e-3);
    expect(quantileSorted(sorted, 0.9)).toBeLessThan(0.03);
  });
});

test('whatever stood in the store before: full or empty, a millimetre of difference is left', () => {
  const record = realWeather('Seattle');
  const ends = [0, 1].map((share) => {
    const p = { ...CLAY, recession: 0.02 };
    const state = usualState(p);
    state[3] = share * (p.baseDepth - p.spillDepth) * p.porosity;
    runDays(record, 0, 365, columnConstants(p), state, columnSeries(365));
    return state[3] / p.porosity;
  });
  expect(Math.abs(ends[0] - ends[1])).toBeLessThan(1e-3);
});

test('a day before the record is that of whole years later: a start at its first day is its own', () => {
  const record = realWeather('Seattle');
  const years = 2;
  const days = Math.round(years * 365.25);
  const short = {
    rain: record.rain.subarray(0, days),
    tmean: record.tmean.subarray(0, days),
    demand: record.demand.subarray(0, days),
  };
  const p = { ...CLAY, recession: 0.03 };
  const again = {
    rain: Float64Array.of(...short.rain, ...short.rain),
    tmean: Float64Array.of(...short.tmean, ...short.tmean),
    demand: Float64Array.of(...short.demand, ...short.demand),
  };
  expect([...spinUp(short, 0)(p)]).toEqual([...spinUp(again, days)(p)].map((v) => expect.closeTo(v, 9)));
});
