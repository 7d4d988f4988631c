/**
 * Steps of the page's what-if (everything judged and put in words) against the whole analysis of the changed survey anew,
 * with 2,048 samples or as many as given: time of the processor, middle and worst of a hundred steps of each control, and the memory that is
 * held at most up to 500 steps beside that up to 250, when every memory is full. `npm run build` first.
 */
import { fileURLToPath } from 'node:url';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { parseSurvey } from '../../../dist/index.js';
import { readFolder } from '../../../dist/notebook/files.js';
import { holder } from '../../../dist/page/heldMeasures.js';
import { trialColumn } from '../../../dist/page/trialColumn.js';
import { viewOf } from '../../../dist/page/whatIfView.js';
import { claim } from '../claim.mjs';
import { median, timed } from '../timing.mjs';

const STEPS = 100;
const [samples = '2048'] = process.argv.slice(2);
const OPTIONS = { seed: 1, samples: Number(samples) };
/** MB that an answer may leave behind, however many were given. */
const GROWTH = 10;

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc');
const held = () => {
  collect();
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return (heapUsed + arrayBuffers) / 1e6;
};
const from = (least, step, i) => Number((least + step * i).toFixed(3));

for (const name of ['clay-slope', 'clay-hollow']) {
  const survey = parseSurvey(
    readFolder(fileURLToPath(new URL(`../../../datasets/${name}`, import.meta.url))),
  );
  const { time: anew, made: holding } = timed(() => {
    const holding = holder(survey, OPTIONS);
    holding.asked({});
    return holding;
  });
  const { pond, places } = holding.own.site;
  const column = trialColumn(holding.asked({}), 'metric');
  const view = (change) => viewOf(holding, holding.asked(change), column, 'metric');
  const [outlet] = places.outlets;
  const kinds = {
    depth: (i) => ({ depth: from(0.4, 0.02, i) }),
    'full level': (i) => ({ full: from(pond.fullLevel, 0.002, i) }),
    drawdown: (i) => ({ drawdown: from(0.02, 0.005, i) }),
    'months of emptying': (i) => ({ emptied: ['never', 'any', undefined][i % 3] }),
    ...(outlet && { outlet: (i) => ({ outlet: from(outlet.level, 0.004, i) }) }),
  };
  for (const [kind, change] of Object.entries(kinds)) {
    const steps = Array.from({ length: STEPS }, (_, i) => timed(() => view(change(i))).time);
    const worst = Math.max(...steps);
    console.log(`${name}, ${kind}: middle ${median(steps).toFixed(1)} ms, worst ${worst.toFixed(1)} ms`);
    claim({
      what: `what-if step (${kind}), ${name}`,
      ours: median(steps),
      other: anew,
      than: 'the analysis anew',
      most: kind === 'months of emptying' ? 0.1 : 0.05,
    });
  }
  const dug = {
    length: (i) => ({ length: from(3, 0.3, i) }),
    slope: (i) => ({ slope: from(0.5, 0.1, i) }),
  };
  for (const [kind, change] of Object.entries(dug)) {
    const steps = Array.from({ length: 5 }, (_, i) => timed(() => view(change(i))).time);
    console.log(
      `${name}, ${kind}: middle ${median(steps).toFixed(0)} ms, worst ${Math.max(...steps).toFixed(0)} ms`,
    );
    claim({
      what: `what-if step (${kind}), ${name}`,
      ours: median(steps),
      other: anew,
      than: 'the analysis anew',
      most: 0.5,
    });
  }
  const all = Object.values(kinds);
  /** The most that is held on the way from one step to another. */
  const most = (first, end) => {
    let mb = 0;
    for (let i = first; i < end; i++) {
      view(all[i % all.length](i % STEPS));
      if (i % 10 === 9 || i + 1 === end) mb = Math.max(mb, held());
    }
    return mb;
  };
  const few = most(0, 5);
  const warm = most(5, 250);
  const many = most(250, 500);
  console.log(
    `${name}: ${[few, warm, many].map((mb) => mb.toFixed(0)).join(', ')} MB held at most up to 5, 250 and 500 steps`,
  );
  if (many - warm > GROWTH)
    throw new Error(`${name}: ${(many - warm).toFixed(1)} MB more up to 500 steps than up to 250`);
}
