import { expect, test } from 'vitest';
import { explorer, type WhatIf } from '../../lib/page/index.js';
import { resultOf } from '../../lib/report/index.js';
import { uniforms } from '../../lib/sampling/index.js';
import { briefDemo, edited, surveyOf, withItem } from '../folder.js';

const OPTIONS = { seed: 1, samples: 24 };
const STEPS = 7;

/** A change of one or two of the controls, the others as they were left. */
function stepFrom(before: WhatIf, next: () => number): WhatIf {
  const pick = <T>(...choices: T[]) => choices[Math.floor(next() * choices.length)];
  const controls: (() => WhatIf)[] = [
    () => ({ depth: pick(0.3, 0.55, 0.9, 0.917, 1.25, 1.8, undefined) }),
    () => ({ full: pick(-0.2, 0, 0.1, undefined) }),
    () => ({ drawdown: pick(0, 0.12, 0.3, undefined) }),
    () => ({ outlet: pick(-1.8, -1.2, undefined), run: pick(4, 20, undefined) }),
    () => ({ years: pick('wet', 'ordinary', undefined) }),
    () => ({ runoff: pick('kept-out', undefined) }),
    () => ({ option: pick('no-drain', undefined) }),
    () => ({ length: pick(4, 5.2, undefined) }),
    () => ({ slope: pick(0.3, 1.1, undefined) }),
    () => ({ raise: pick(0, 0.1, 0.2, undefined) }),
  ];
  return { ...before, ...pick(...controls)(), ...pick(...controls.slice(0, 4))() };
}

const hollow = briefDemo('clay-hollow');
test.each([
  ['clay-slope', briefDemo('clay-slope'), 1],
  ['clay-hollow', hollow, 2],
  ['loam-terrace', briefDemo('loam-terrace'), 3],
  ['a rim that may go up', withItem(hollow, 'pond.csv', 'highest_raise', '0.4', 'm'), 5],
  ['no month named', edited(hollow, 'pond.csv', (text) => text.replace(/^emptied_in,.*\n/m, '')), 4],
])(
  'whatever was tried before, a what-if is judged as if it were the first: %s',
  (_, files, seed) => {
    const survey = surveyOf(files);
    const judge = explorer(survey, OPTIONS);
    const next = uniforms(seed);
    let tried: WhatIf = {};
    for (let i = 0; i < STEPS; i++) {
      const told = JSON.stringify(tried);
      expect([told, resultOf(judge(tried))]).toEqual([told, resultOf(explorer(survey, OPTIONS)(tried))]);
      tried = stepFrom(tried, next);
    }
  },
  60000,
);
