/**
 * Bands against measured wells: `node test/bench/wells/run.mjs FOLDER [draws=5] [seeds=2] [samples=512] [filter]`, after
 * `npm run build`. Dips are drawn as an owner would from before a day, the bands judged on what was measured after it.
 */
import { join, resolve } from 'node:path';
import { judge } from './judge.mjs';
import { median } from './scores.mjs';
import { DENSITIES, drawDips, wellsIn } from './wells.mjs';

const [folder, draws = '5', seeds = '2', samples = '512', filter = ''] = process.argv.slice(2);
const library = await import(
  resolve(process.env.LIBRARY ?? join(import.meta.dirname, '../../../dist/index.js'))
);
const densities = (process.env.DENSITIES ?? Object.keys(DENSITIES).join(',')).split(',');
const percent = (v) => `${Math.round(100 * v)}`.padStart(4);
const fixed = (v) => v.toFixed(2).padStart(6);

const table = [];
for (const density of densities) {
  const runs = [];
  for (const well of wellsIn(folder).filter(({ name }) => name.includes(filter)))
    for (let draw = 0; draw < (density === 'all' ? 1 : Number(draws)); draw++) {
      const dips = drawDips(well, density, draw);
      const pair = [];
      for (let seed = 1; seed <= Number(seeds); seed++) {
        const run = judge(library, well, dips, { seed, samples: Number(samples) });
        pair.push(run);
        runs.push({ well: well.name, draw, seed, ...run });
      }
      console.log(
        `${density.padEnd(4)}${well.name.padEnd(14)}${draw}`,
        pair
          .map(
            (r) =>
              `cov${percent(r.coverage)} high${percent(r.highs.coverage)}/${percent(r.highs.above)} IS${fixed(r.interval)} (${fixed(r.climatology.interval)}${fixed(r.reservoir.interval)}) nse${fixed(r.nse)} (${fixed(r.reservoir.nse)}) mid${fixed(r.middleHigh)} ${(r.time / 1000).toFixed(1)} s`,
          )
          .join(' | '),
        pair
          .map((r) => `R${fixed(r.fit?.splitRhat ?? NaN)} e${fixed(median(r.fit?.modelError ?? [NaN]))}`)
          .join(' | '),
      );
    }
  const middle = (key) => median(runs.map(key));
  const mean = (key) => runs.reduce((a, r) => a + key(r), 0) / runs.length;
  const pairs = runs
    .filter((r) => r.seed === 1)
    .map((r) => [r, runs.find((o) => o.well === r.well && o.draw === r.draw && o.seed === 2) ?? r]);
  const worst = Math.min(
    ...[...new Set(runs.map((r) => r.well))].map((w) =>
      median(runs.filter((r) => r.well === w).map((r) => r.coverage)),
    ),
  );
  table.push(
    [
      density,
      `coverage median${percent(middle((r) => r.coverage))} mean${percent(mean((r) => r.coverage))} worst well${percent(worst)}; highs mean${percent(mean((r) => r.highs.coverage))} above${percent(mean((r) => r.highs.above))}`,
      `IS${fixed(middle((r) => r.interval))} clim${fixed(middle((r) => r.climatology.interval))} res${fixed(middle((r) => r.reservoir.interval))} nse${fixed(middle((r) => r.nse))} res${fixed(middle((r) => r.reservoir.nse))}`,
      `seeds: nse ${Math.max(...pairs.map(([a, b]) => Math.abs(a.nse - b.nse))).toFixed(3)} (median ${median(pairs.map(([a, b]) => Math.abs(a.nse - b.nse))).toFixed(3)}) high ${Math.max(...pairs.map(([a, b]) => Math.abs(a.middleHigh - b.middleHigh))).toFixed(3)} m; ${(middle((r) => r.time) / 1000).toFixed(2)} s most ${(Math.max(...runs.map((r) => r.time)) / 1000).toFixed(2)} s`,
    ].join(' | '),
  );
}
console.log(table.join('\n'));
