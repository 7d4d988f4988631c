/**
 * The default section, a pond in clay with ring, blanket and pipe, about 20,000 cells: steady and full of water against
 * scipy's sparse direct solve of the same matrix, with its free surface against the same without, and how the time
 * grows from 5,000 to 200,000 cells; medians of one run. Needs Debian's python3-scipy; `npm run build` first.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import {
  conductancesOf,
  pondSection,
  saturatedStencil,
  solveFreeSurface,
  solveSaturated,
} from '../../../dist/seepage/section/index.js';
import { claim } from '../claim.mjs';
import { median, timed } from '../timing.mjs';
import { ground } from './ground.mjs';

/** Middle time of a piece of work, its first quarter left to warm up, ms. */
const middle = (work, repeats) =>
  median(Array.from({ length: repeats }, () => timed(work).time).slice(Math.floor(repeats / 4)));
/** Matrix and right side as scipy reads them: cells, entries, then rows, columns, values, right side. */
function written(section, path) {
  const conductances = conductancesOf(section);
  const { nx, nz, centre, east, north } = saturatedStencil(section, conductances);
  const offset = nx + 1;
  const [rows, columns, values] = [[], [], []];
  const entry = (i, j, v) => {
    rows.push(i);
    columns.push(j);
    values.push(v);
  };
  for (let k = 0; k < nx * nz; k++) {
    entry(k, k, centre[k + offset]);
    for (const [l, g] of [
      [k + 1, east[k + offset]],
      [k + nx, north[k + offset]],
    ])
      if (g > 0) {
        entry(k, l, -g);
        entry(l, k, -g);
      }
  }
  const right = Float64Array.from(section.supply);
  section.contacts.forEach((c, i) => {
    right[c.cell] += conductances.contact[i] * c.head;
  });
  writeFileSync(path, Float64Array.from([nx * nz, rows.length, ...rows, ...columns, ...values, ...right]));
}

const folder = mkdtempSync(join(tmpdir(), 'bench-'));
try {
  const { section } = pondSection(ground);
  const full = middle(() => solveSaturated(section), 25);
  const surface = middle(() => solveFreeSurface(section), 9);
  const matrix = join(folder, 'matrix.bin');
  written(section, matrix);
  const script = fileURLToPath(new URL('direct.py', import.meta.url));
  const [direct, ...heads] = execFileSync('/usr/bin/python3', [script, matrix], {
    encoding: 'utf8',
    maxBuffer: 1e8,
  })
    .trim()
    .split(/\s+/)
    .map(Number);
  const { head } = solveSaturated(section);
  const apart = heads.reduce(
    (m, h, k) => (Number.isNaN(head[k]) ? m : Math.max(m, Math.abs(h - head[k]))),
    0,
  );
  if (apart > 1e-6) throw new Error(`scipy's heads are ${apart} m from ours`);
  console.log(`${section.soilOf.length} cells, full of water: ${full.toFixed(1)} ms`);
  console.log(`scipy, sparse direct: ${direct.toFixed(1)} ms; ratio ${(full / direct).toFixed(2)}`);
  console.log(
    `with the free surface: ${surface.toFixed(0)} ms, ${(surface / full).toFixed(1)} times as long`,
  );
  claim({ what: 'section full of water', ours: full, other: direct, than: 'scipy sparse direct', most: 0.6 });
  claim({
    what: 'section with its free surface',
    ours: surface,
    other: full,
    than: 'full of water',
    most: 12,
  });
  const sizes = [
    [100, 50],
    [200, 100],
    [400, 200],
    [632, 316],
  ].map(([across, up]) => {
    const finer = pondSection(ground, { across, up, hole: 2 }).section;
    return [finer.soilOf.length, middle(() => solveSaturated(finer), 9)];
  });
  for (const [cells, ms] of sizes) console.log(`${cells} cells: ${ms.toFixed(1)} ms`);
  const [[n0, t0], [n1, t1]] = [sizes[0], sizes[sizes.length - 1]];
  console.log(`growth: N^${(Math.log(t1 / t0) / Math.log(n1 / n0)).toFixed(2)}`);
  const fair = t0 * (n1 / n0) ** 1.2;
  claim({ what: `section of ${n1} cells`, ours: t1, other: fair, than: `${n0} cells × (N/n)^1.2`, most: 1 });
} finally {
  rmSync(folder, { recursive: true });
}
