/**
 * 30 years × 2,000 parameter sets of the daily water table, in one thread: ours, the same loops in C at -O3, and
 * vectorised over the sets in numpy, in one run. Needs cc and python3-numpy; `npm run build` first.
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

const SETS = 2000;
const REPEATS = 5;
const DAYS = 10957;
const here = (name) => fileURLToPath(new URL(name, import.meta.url));
const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

const { climate, seed } = SURVEYS['clay-slope'];
const weather = generateWeather(climate, seed);
const days = Array.from({ length: DAYS }, (_, d) => {
  const { rain, tmin, tmax } = weather[d % weather.length];
  return { day: d, rain: rain / 1000, tmin, tmax };
});
const record = climateRecord(days, 52);
const series = columnSeries(DAYS);
const prior = (value) => ({ median: value, spread: 0.1, evidence: [] });
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
};
const sets = Array.from({ length: SETS }, (_, i) => parametersAt(priors, [i / SETS, ...Array(11).fill(0)]));
const ours = [];
for (let r = 0; r <= REPEATS; r++) {
  const t = performance.now();
  for (const p of sets) runColumn(record, p, series);
  if (r > 0) ours.push(performance.now() - t);
}

const input = `${DAYS}\n${Array.from(record.rain, (v, d) => `${v} ${record.tmean[d]} ${record.demand[d]}`).join('\n')}\n`;
const folder = mkdtempSync(join(tmpdir(), 'bench-'));
const lines = (text) => text.trim().split('\n').map(Number);
try {
  const program = join(folder, 'store');
  execFileSync('cc', ['-O3', '-o', program, here('store.c'), '-lm']);
  const c = lines(
    execFileSync(program, [SETS, REPEATS], { input, encoding: 'utf8', stdio: ['pipe', 'pipe', 'ignore'] }),
  );
  const numpy = lines(execFileSync('python3', [here('store.py'), SETS, 3], { input, encoding: 'utf8' }));
  const [a, b, p] = [median(ours), median(c), median(numpy)];
  console.log(`ours ${a.toFixed(0)} ms, C ${b.toFixed(0)} ms, numpy ${p.toFixed(0)} ms`);
  console.log(`ours / C ${(a / b).toFixed(2)}, numpy / ours ${(p / a).toFixed(2)}`);
  const what = `daily water table, 30 years × ${SETS} sets`;
  claim({ what, ours: a, other: b, than: 'C -O3', most: 1 });
  claim({ what, ours: a, other: p, than: 'numpy', most: 0.67 });
} finally {
  rmSync(folder, { recursive: true, force: true });
}
