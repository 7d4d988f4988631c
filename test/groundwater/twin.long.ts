import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { climateRecord } from '../../lib/climate/index.js';
import {
  columnSeries,
  type Dip,
  ERROR_LASTS,
  fitTable,
  MODEL_ERROR,
  openParameters,
  parametersAt,
  runColumn,
  tablePriors,
} from '../../lib/groundwater/index.js';
import { latinNormals, normalQuantile, quantileSorted, uniforms } from '../../lib/sampling/index.js';
import { logValue } from '../../lib/soil/index.js';

/**
 * Twin experiment: truths drawn from the stated priors; dips that miss the truth by the model error as it is
 * taken to be, 45 days long, and by the reading error, the first two in a hole still filling, some 'dry'; the fit blind to the truth. The
 * weather is the invented record of a demo survey.
 */
const days = readFileSync(new URL('../../datasets/clay-slope/weather.csv', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .slice(1)
  .map((row) => {
    const [date, rain, tmin, tmax] = row.split(',');
    return {
      day: Date.parse(date) / 864e5,
      rain: Number(rain) / 1000,
      tmin: Number(tmin),
      tmax: Number(tmax),
    };
  });
const record = climateRecord(days, 52);
const ground = {
  porosity: { median: 0.03, spread: 0.4, evidence: [] },
  rootCapacity: { median: 0.09, spread: 0.25, evidence: [] },
  permeable: false,
  clayey: true,
  snows: false,
};
// A level somewhere opens the drain; the truths have one, from next to nothing to a quick one.
const priors = tablePriors(ground, [{ day: 0, depth: 0.6, says: 'level', error: 0.01 }]);
const HOLE = 1.6;
const REPEATS = 80;
// Two standard errors of a share of eighty.
const LIMITS = [0.83, 0.97];
/** As many as a site is judged by. */
const SETS = 512;
const DIMENSIONS = openParameters(priors).length;
const TRUTHS = latinNormals(REPEATS, DIMENSIONS + 1, 77);
const READING = 0.01;

const firstOfApril = Array.from(record.month, (m, d) =>
  m === 4 && record.month[d - 1] === 3 ? d : -1,
).filter((d) => d >= 0 && record.year[d] >= 0);

function repeat(dipCount: number, seed: number): { highs: number; april: number } {
  const scores = TRUTHS.subarray(seed * (DIMENSIONS + 1), (seed + 1) * (DIMENSIONS + 1));
  const truth = parametersAt(priors, scores);
  const modelError = logValue(MODEL_ERROR, scores[DIMENSIONS]);
  const series = columnSeries(record.rain.length);
  runColumn(record, truth, series);
  const real = series.depth.slice();
  const next = uniforms(1000 + seed);
  // Dips every week from a November twelve years in, or more rarely where they are few.
  const first = record.year.indexOf(12) + 31;
  const every = dipCount <= 4 ? 42 : dipCount <= 12 ? 14 : 7;
  const keeps = Math.exp(-every / ERROR_LASTS);
  let miss = modelError * normalQuantile(next());
  const dips = Array.from({ length: dipCount }, (_, i): Dip => {
    const d = first + i * every;
    const seen = real[d] + miss + READING * normalQuantile(next());
    miss = keeps * miss + modelError * Math.sqrt(1 - keeps ** 2) * normalQuantile(next());
    const dip = { day: record.firstDay + d, error: READING };
    if (seen > HOLE) return { ...dip, depth: HOLE, says: 'below' };
    // A lag after it was opened the hole has filled to within 1/e of the level it is heading for, then to 1/e².
    if (i < 2) return { ...dip, depth: seen + (HOLE - seen) * Math.exp(-1 - i), says: 'above' };
    return { ...dip, depth: seen, says: 'level' };
  });
  const fit = fitTable(record, dips, priors, SETS, seed);
  const highs = Array.from({ length: record.years }, () => new Float64Array(SETS));
  const april = firstOfApril.map(() => new Float64Array(SETS));
  fit.sets.forEach((p, s) => {
    runColumn(record, p, series);
    const high = new Float64Array(record.years).fill(Number.POSITIVE_INFINITY);
    for (let d = 0; d < series.depth.length; d++)
      if (record.year[d] >= 0) high[record.year[d]] = Math.min(high[record.year[d]], series.depth[d]);
    high.forEach((h, y) => {
      highs[y][s] = h;
    });
    firstOfApril.forEach((d, k) => {
      april[k][s] = series.depth[d];
    });
  });
  const inside = (values: Float64Array, truth: number) => {
    const sorted = values.sort();
    return truth >= quantileSorted(sorted, 0.05) && truth <= quantileSorted(sorted, 0.95) ? 1 : 0;
  };
  const realHigh = new Float64Array(record.years).fill(Number.POSITIVE_INFINITY);
  for (let d = 0; d < real.length; d++)
    if (record.year[d] >= 0) realHigh[record.year[d]] = Math.min(realHigh[record.year[d]], real[d]);
  const mean = (v: number[]) => v.reduce((a, b) => a + b, 0) / v.length;
  return {
    highs: mean(Array.from(realHigh, (h, y): number => inside(highs[y], h))),
    april: mean(firstOfApril.map((d, k): number => inside(april[k], real[d]))),
  };
}

describe.each([4, 12, 50])('%i dips', (count) => {
  test(`the 90 % band holds the truth in about 90 % of ${REPEATS} repeats`, { timeout: 3_600_000 }, () => {
    const all = Array.from({ length: REPEATS }, (_, k) => repeat(count, k));
    const highs = all.reduce((a, r) => a + r.highs, 0) / REPEATS;
    const april = all.reduce((a, r) => a + r.april, 0) / REPEATS;
    console.info(
      `${count} dips: yearly highs ${(100 * highs).toFixed(1)} %, 1 April ${(100 * april).toFixed(1)} %`,
    );
    expect(highs).toBeGreaterThanOrEqual(LIMITS[0]);
    expect(highs).toBeLessThanOrEqual(LIMITS[1]);
    expect(april).toBeGreaterThanOrEqual(LIMITS[0]);
    expect(april).toBeLessThanOrEqual(LIMITS[1]);
  });
});
