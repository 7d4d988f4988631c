/**
 * A step of the page's what-if (another depth, everything judged and put in words) against the whole analysis of the
 * changed survey anew, in one run. `npm run build` first.
 */

import { fileURLToPath } from 'node:url';
import { parseSurvey } from '../../../dist/index.js';
import { readFolder } from '../../../dist/notebook/files.js';
import { explorer } from '../../../dist/page/whatIf.js';
import { viewOf } from '../../../dist/page/whatIfView.js';
import { claim } from '../claim.mjs';

const STEPS = 20;
const ANEW = 5;
const OPTIONS = { seed: 1, samples: 512 };
const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
const timed = (work) => {
  const start = performance.now();
  work();
  return performance.now() - start;
};

for (const name of ['clay-slope', 'clay-hollow']) {
  const folder = fileURLToPath(new URL(`../../../datasets/${name}`, import.meta.url));
  const survey = parseSurvey(readFolder(folder));
  const depth = (i) => 0.6 + 0.02 * i;
  const judge = explorer(survey, OPTIONS);
  judge({});
  const ours = median(
    Array.from({ length: STEPS }, (_, i) => timed(() => viewOf(judge({ depth: depth(i) }), 'metric'))),
  );
  const other = median(
    Array.from({ length: ANEW }, (_, i) =>
      timed(() => viewOf(explorer(survey, OPTIONS)({ depth: depth(i) }), 'metric')),
    ),
  );
  claim({ what: `what-if step, ${name}`, ours, other, than: 'the analysis anew', most: 0.1 });
}
