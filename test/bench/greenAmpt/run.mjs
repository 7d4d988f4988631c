/**
 * Green–Ampt steps a second in one thread, and the same loops in C at -O3, in one run. Half the steps pond; a dry
 * step costs next to nothing, so the wet ones are told apart. Needs cc; `npm run build` first.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runGreenAmpt } from '../../../dist/soil/index.js';
import { claim } from '../claim.mjs';
import { median } from '../timing.mjs';

const STEPS = 10_000;
const STORMS = 200;
const REPEATS = 9;
const STEP = 300;
const CLAY = { conductivity: 8.3e-8, suctionDeficit: 0.012 };
const source = fileURLToPath(new URL('storm.c', import.meta.url));

const RAIN = {
  'every step ponded': Float64Array.from({ length: STEPS }, (_, i) => 0.002 + 0.001 * Math.sin(i / 7)),
  'bursts and gaps': Float64Array.from({ length: STEPS }, (_, i) => Math.max(0, 0.0015 * Math.sin(i / 9))),
};

const folder = mkdtempSync(join(tmpdir(), 'bench-'));
try {
  const program = join(folder, 'storm');
  execFileSync('cc', ['-O3', '-o', program, source, '-lm']);
  for (const [name, rain] of Object.entries(RAIN)) {
    const runoff = new Float64Array(STEPS);
    const ours = [];
    let sum = 0;
    for (let r = 0; r <= REPEATS; r++) {
      const t = performance.now();
      let soaked = 0;
      for (let s = 0; s < STORMS; s++) {
        const soil = {
          conductivity: CLAY.conductivity * (1 + s * 1e-3),
          suctionDeficit: CLAY.suctionDeficit,
        };
        soaked += runGreenAmpt(rain, STEP, soil, runoff).infiltration;
      }
      if (r > 0) ours.push(performance.now() - t);
      sum = soaked;
    }
    const input = `${STEPS} ${STORMS} ${REPEATS} ${STEP} ${CLAY.conductivity} ${CLAY.suctionDeficit} ${rain.join(' ')}\n`;
    const lines = execFileSync(program, { input, encoding: 'utf8' }).trim().split('\n').map(Number);
    const total = lines.pop() / REPEATS;
    if (Math.abs(total / sum - 1) > 1e-9) throw new Error(`C soaks in ${total} m, TypeScript ${sum} m`);
    const rate = (ms) => `${((STEPS * STORMS) / ms / 1000).toFixed(2)} million steps/s`;
    const [mine, theirs] = [median(ours), median(lines)];
    console.log(
      `${name}: TypeScript ${rate(mine)}, C -O3 ${rate(theirs)}, ratio ${(theirs / mine).toFixed(2)}`,
    );
    claim({ what: `Green–Ampt storms, ${name}`, ours: mine, other: theirs, than: 'C -O3', most: 2 });
  }
} finally {
  rmSync(folder, { recursive: true });
}
