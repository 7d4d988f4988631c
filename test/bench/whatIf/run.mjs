/**
 * A step of the page's what-if (everything judged and put in words) against the whole analysis of the changed survey
 * anew, in one run. `npm run build` first.
 */

import { fileURLToPath } from 'node:url';
import { parseSurvey } from '../../../dist/index.js';
import { readFolder } from '../../../dist/notebook/files.js';
import { toldTried } from '../../../dist/page/comparedTried.js';
import { holder } from '../../../dist/page/heldMeasures.js';
import { viewOf } from '../../../dist/page/whatIfView.js';
import { claim } from '../claim.mjs';

const STEPS = 20;
const ANEW = 3;
const OPTIONS = { seed: 1, samples: 2048 };
const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
const timed = (work) => {
  const start = performance.now();
  work();
  return performance.now() - start;
};

for (const name of ['clay-slope', 'clay-hollow']) {
  const folder = fileURLToPath(new URL(`../../../datasets/${name}`, import.meta.url));
  const survey = parseSurvey(readFolder(folder));
  const held = holder(survey, OPTIONS);
  const { pond } = held.own.site;
  const column = toldTried(held.asked({}), 'metric');
  const view = (of, change) => viewOf(of, of.asked(change), column, 'metric');
  const kinds = {
    depth: (i) => ({ depth: Number((0.4 + 0.05 * i).toFixed(2)) }),
    'full level': (i) => ({ full: pond.fullLevel + 0.01 * (i + 1) }),
  };
  for (const [kind, change] of Object.entries(kinds)) {
    const ours = median(Array.from({ length: STEPS }, (_, i) => timed(() => view(held, change(i)))));
    const other = median(
      Array.from({ length: ANEW }, (_, i) => timed(() => view(holder(survey, OPTIONS), change(i)))),
    );
    claim({ what: `what-if step (${kind}), ${name}`, ours, other, than: 'the analysis anew', most: 0.02 });
  }
}
