/** Of the listed slips and absurdities nearly all are told, and a right survey is not troubled. */
import { expect, test } from 'vitest';
import { parseSurvey } from '../../lib/survey/index.js';
import { briefDemo } from '../folder.js';
import { sweep } from '../sweep.js';
import { correctSurvey, filesOf } from './generated.js';
import type { Files } from './slips.js';
import { slipsAreTold, TODAY } from './slipsTold.js';

for (const name of sweep(['clay-slope', 'clay-hollow'], 0)) slipsAreTold(name);

test('no demo and no right survey has a doubtful fact', () => {
  const doubtful = (files: Files) => {
    const doubts = parseSurvey(files, { today: TODAY }).warnings.filter(
      ({ code }) => code === 'doubtful-value',
    );
    return doubts.map(({ file, message }) => `${file}: ${message}`);
  };
  for (const name of ['clay-slope', 'clay-hollow', 'loam-terrace'])
    expect(doubtful(briefDemo(name))).toEqual([]);
  const right = Array.from({ length: 200 }, (_, seed) => doubtful(filesOf(correctSurvey(seed + 1))));
  expect(right.flat()).toEqual([]);
});
