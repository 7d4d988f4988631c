/**
 * 30 years × 2,000 parameter sets of the daily model (snow, root zone, table) in one thread: ours, the same loop in C at
 * -O3, the same vectorised over the sets in numpy, and ours with several sets side by side; time of the processor, medians
 * of five rounds of one run, the same depths from all. Needs cc and python3-numpy; `npm run build` first.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { SURVEYS } from '../../../datasets/surveys.mjs';
import { generateWeather } from '../../../datasets/weather-generator.mjs';
import { climateRecord } from '../../../dist/climate/index.js';
import { columnSeries, parametersAt, runColumn } from '../../../dist/groundwater/index.js';
import { claim } from '../claim.mjs';
import { median, timed } from '../timing.mjs';
import { sideBySide } from './interleaved.mjs';

const SETS = 2000;
const REPEATS = 5;
const DAYS = 10957;
const here = (name) => fileURLToPath(new URL(name, import.meta.url));

const { climate, seed } = SURVEYS['clay-slope'];
const weather = generateWeather(climate, seed);
const days = Array.from({ length: DAYS }, (_, d) => {
  const { rain, tmin, tmax } = weather[d % weather.length];
  return { day: d, rain: rain / 1000, tmin, tmax };
});
const record = climateRecord(days, 52);
const series = columnSeries(DAYS);
const prior = (value) => ({ median: value, spread: 0, evidence: [] });
const priors = {
  porosity: prior(0.03),
  recession: prior(0.012),
  baseDepth: prior(2),
  spillDepth: prior(0.06),
  extinctionDepth: prior(1.4),
  delay: prior(0.5),
  rootCapacity: prior(0.1),
  demandFactor: prior(1),
  crackShare: prior(0.1),
  drainDepth: prior(0.5),
  drainRate: prior(0.1),
  meltFactor: prior(0.003),
  standing: 0,
};
const sets = Array.from({ length: SETS }, (_, i) => ({
  ...parametersAt(priors, []),
  porosity: 0.02 + 0.00001 * i,
}));

const startOf = (p) =>
  Float64Array.of(0, 0.3 * p.rootCapacity, 0, 0.5 * (p.baseDepth - p.spillDepth) * p.porosity);
const input = `${DAYS}\n${Array.from(record.rain, (v, d) => `${v} ${record.tmean[d]} ${record.demand[d]}`).join('\n')}\n`;
const folder = mkdtempSync(join(tmpdir(), 'bench-'));
const program = join(folder, 'store');
const outside = (command, ...args) => {
  const [time, sum] = execFileSync(command, [...args, SETS], { input, encoding: 'utf8' }).split('\n');
  return { time: Number(time), made: Number(sum) };
};
const ways = {
  ours: () =>
    timed(() => {
      let sum = 0;
      for (const p of sets) {
        runColumn(record, p, series);
        sum += series.depth[DAYS - 1];
      }
      return sum;
    }),
  C: () => outside(program),
  numpy: () => outside('python3', here('store.py')),
};
for (const count of [1, 2, 4, 8]) {
  const run = sideBySide(count, record, sets, startOf);
  ways[`ours, ${count} side by side`] = () => timed(run);
}

try {
  execFileSync('cc', ['-O3', '-o', program, here('store.c'), '-lm']);
  const times = Object.fromEntries(Object.keys(ways).map((way) => [way, []]));
  // Every way in turn, so that other work on the machine troubles all alike; the first round warms up.
  for (let r = 0; r <= REPEATS; r++)
    for (const [way, run] of Object.entries(ways)) {
      const { time, made } = run();
      if (r > 0) times[way].push(time);
      times[way].sum = made;
    }
  const ours = median(times.ours);
  for (const [way, list] of Object.entries(times)) {
    if (!(Math.abs(list.sum / times.ours.sum - 1) < 1e-6))
      throw new Error(`${way}: depths sum to ${list.sum} m, ours to ${times.ours.sum} m`);
    const time = median(list);
    console.log(`${way}: ${time.toFixed(0)} ms, ${(time / ours).toFixed(2)} of ours`);
  }
  const what = `daily water table, 30 years × ${SETS} sets`;
  claim({ what, ours, other: median(times.C), than: 'C -O3', most: 1 });
  claim({ what, ours, other: median(times.numpy), than: 'numpy', most: 0.67 });
} finally {
  rmSync(folder, { recursive: true, force: true });
}
