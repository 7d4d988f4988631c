/**
 * Chance against depth of every option of a demo site, 2,048 samples × 40 depths × 25 weather years in one thread, and
 * the same counted by numpy vectorised over samples and years, in one run; then steps of a what-if, which change
 * geometry or operation only, with every curve, the decision, its drain and the next measurement, and how the time grows.
 * Needs python3-numpy; `npm run build` first.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { isWetHalf } from '../../../dist/climate/index.js';
import { tubVolume } from '../../../dist/groundwater/index.js';
import { parseSurvey, planArea, siteModel } from '../../../dist/index.js';
import {
  basisOf,
  chancesOf,
  emptiedHold,
  floorLevel,
  judge,
  lowestUsualLevel,
  optionsOf,
  reliefBounds,
} from '../../../dist/risk/index.js';
import { claim } from '../claim.mjs';

const REPEATS = 5;
const STEPS = 20;
const DEPTHS = Array.from({ length: 40 }, (_, i) => Number((0.2 + i * 0.03).toFixed(2)));
const root = fileURLToPath(new URL('../../../datasets/', import.meta.url));
const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
const time = (f, repeats = REPEATS) => {
  f();
  const times = Array.from({ length: repeats }, () => {
    const start = performance.now();
    f();
    return performance.now() - start;
  });
  return median(times);
};

function site(name, samples) {
  const folder = join(root, name);
  const files = readdirSync(folder).filter((f) => f.endsWith('.csv'));
  const survey = parseSurvey(Object.fromEntries(files.map((f) => [f, readFileSync(join(folder, f))])));
  return siteModel(survey, { samples });
}

const MINUS = -1e9;
const finite = (v) => Math.max(Math.min(v, 1e9), MINUS);

/** What numpy needs of a basis: arrays as raw numbers, the rest as JSON. */
function exported(basis, options, folder) {
  const { site, draws, emptyings, sides } = basis;
  const { shape } = site.pond;
  const arrays = {};
  const put = (name, values) => {
    arrays[name] = values.length;
    writeFileSync(join(folder, `${name}.bin`), Buffer.from(Float64Array.from(values, finite).buffer));
  };
  put('low', draws.clayLow);
  put('high', draws.clayHigh);
  put('lowEmptied', emptyings.low);
  put('highEmptied', emptyings.high);
  for (const way of ['asIs', 'keptOut']) {
    put(`tub${way}`, draws.tub ? draws.tub[way] : []);
    put(`tubEmptied${way}`, emptyings.tub ? emptyings.tub[way] : []);
  }
  put('k', site.water.conductivity);
  put('blocked', draws.blocked);
  put('pumpOut', draws.pumpOut);
  put('wet', sides ? sides.softWet : site.water.conductivity.map(() => 1e9));
  put('dry', sides ? sides.softDry : site.water.conductivity.map(() => 1e9));
  // Plan area and volume in the ring on a fine grid of levels: numpy interpolates where the library computes.
  const grid = Array.from({ length: 4001 }, (_, i) => -3 + i * 0.001);
  put('grid', grid);
  put(
    'area',
    grid.map((level) => planArea(shape, Math.max(-level, 0))),
  );
  put(
    'volume',
    grid.map((level) => (site.tub ? tubVolume(site.tub, level) : 0)),
  );
  const cases = options
    .filter((o) => o.measures)
    .map(({ name, measures: m }) => ({
      name,
      way: m.way,
      cutoff: m.cutoff ?? null,
      raise: m.raise,
      ballast: m.ballast + site.pond.floorBallast,
      drawn: lowestUsualLevel(site, m) + m.ballast,
      drain: m.drain?.kind ?? null,
      depths: DEPTHS.map((depth) => {
        const floor = floorLevel(depth, m);
        const bound = (state, receiver) => {
          const { least, most } = reliefBounds(m, floor, state, receiver);
          return [finite(least), finite(most)];
        };
        const ditch = m.drain?.kind === 'outlet' ? (m.drain.outlet.ditch ?? MINUS) : MINUS;
        const flood = m.drain?.kind === 'outlet' ? m.drain.flood : MINUS;
        return {
          hold: emptiedHold(site, m, depth),
          side: Math.max(depth - m.raise, 0),
          floorArea: Math.max(planArea(shape, depth), 0.05),
          works: { calm: bound('works', ditch), flood: bound('works', flood) },
          stuck: { calm: bound('flap-stuck', ditch), flood: bound('flap-stuck', flood) },
        };
      }),
    }));
  const plan = {
    arrays,
    samples: draws.samples,
    years: draws.years,
    months: emptyings.months,
    wetMonths: Array.from({ length: 12 }, (_, i) => i).filter((i) => isWetHalf(i + 1, site.latitude)),
    seconds: site.pond.daysEmpty * 86400,
    ring: site.tub !== undefined,
    flapStuck: 0.05,
    repeats: REPEATS,
    cases,
  };
  writeFileSync(join(folder, 'plan.json'), JSON.stringify(plan));
}

for (const name of ['clay-hollow', 'clay-slope']) {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  try {
    const at = site(name, 2048);
    const basis = basisOf(at);
    const options = optionsOf(basis);
    const possible = options.filter((o) => o.measures);
    // Water of its own each time: nothing is remembered from the time before.
    const fresh = Array.from({ length: REPEATS + 1 }, () => basisOf({ ...at, water: { ...at.water } }));
    const ours = time(() => {
      const anew = fresh.pop();
      for (const o of possible) chancesOf(anew, o.measures, DEPTHS);
    });
    exported(basis, options, folder);
    const script = fileURLToPath(new URL('assess.py', import.meta.url));
    const theirs = JSON.parse(
      execFileSync('python3', [script, folder], { encoding: 'utf8', maxBuffer: 1e8 }),
    );
    possible.forEach((o, i) => {
      chancesOf(basis, o.measures, DEPTHS).forEach(({ perYear }, d) => {
        if (Math.abs(perYear - theirs.chances[i][d]) > 2e-4)
          throw new Error(`${o.name} at ${DEPTHS[d]} m: ${perYear}, numpy ${theirs.chances[i][d]}`);
      });
    });
    console.log(
      `${name}: chances of ${possible.length} options x ${DEPTHS.length} depths x 2048 samples: TypeScript ${ours.toFixed(0)} ms, ` +
        `numpy ${theirs.ms.toFixed(0)} ms, ratio ${(theirs.ms / ours).toFixed(1)}`,
    );
    claim({ what: `chances against depth, ${name}`, ours, other: theirs.ms, than: 'numpy', most: 0.2 });
    for (const [kind, ms] of steps(at))
      claim({
        what: `what-if step (${kind}), ${name}`,
        ours: ms,
        other: theirs.ms,
        than: 'numpy',
        most: 0.1,
      });
  } finally {
    rmSync(folder, { recursive: true });
  }
  for (const samples of [512, 2048, 8192])
    for (const [kind, ms] of steps(site(name, samples)))
      console.log(`${name}: what-if step, ${kind}, ${samples} samples: ${ms.toFixed(1)} ms`);
}

/** Time of one step after another of each kind, each a value not tried before. */
function steps(at) {
  const { pond } = at;
  const kinds = {
    depth: (i) => ({ depth: Number((0.4 + 0.05 * i).toFixed(2)) }),
    'depth between': (i) => ({ depth: 0.413 + 0.05 * i }),
    'full level': (i) => ({ fullLevel: pond.fullLevel + 0.01 * i }),
    drawdown: (i) => ({ usualDrawdown: pond.usualDrawdown + 0.01 * i }),
  };
  return Object.entries(kinds).map(([kind, change]) => {
    let before = judge(at);
    let i = 0;
    return [
      kind,
      time(() => {
        before = judge(at, change(++i), before);
      }, STEPS),
    ];
  });
}
