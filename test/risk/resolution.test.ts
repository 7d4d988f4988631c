/** Nothing is decided by the last digit: of a level, of an input, of a width. */
import { describe, expect, test } from 'vitest';
import { basisOf } from '../../lib/basis/index.js';
import type { Result } from '../../lib/contract/index.js';
import { judge } from '../../lib/decision/index.js';
import { NOTHING } from '../../lib/heads/index.js';
import { chanceOf } from '../../lib/reliability/index.js';
import { resultOf } from '../../lib/report/index.js';
import { uniforms } from '../../lib/sampling/index.js';
import { siteModel } from '../../lib/site/index.js';
import type { Survey } from '../../lib/survey/index.js';
import { briefDemo, surveyOf, withItem } from '../folder.js';
import { sweep } from '../sweep.js';
import { baseSurvey } from './base.js';

const OPTIONS = { seed: 1, samples: 32 };
const FLUSH = withItem(briefDemo('clay-hollow'), 'pond.csv', 'usual_drawdown', '0', 'm');

/** The chance that the ring, of a width, lifts a pond kept full to the level at which it spills. */
function flushWith(width: number): number {
  const files = withItem(
    withItem(FLUSH, 'pond.csv', 'ring_width', `${width}`, 'm'),
    'pond.csv',
    'ring_fill',
    'gravel',
  );
  const level = surveyOf(files);
  const site = siteModel(level, OPTIONS);
  const pond = { ...site.pond, fullLevel: site.tub!.spill, emptiedIn: [] };
  const { clayLow, clayHigh } = site.water;
  for (const { month } of [clayLow, clayHigh]) month.fill(-9);
  return chanceOf(basisOf({ ...site, pond }), NOTHING, 1).perYear;
}

test('a ring that fills to its spill level does not lift a pond kept at that level, however wide it is', () => {
  for (const width of [0.08, 0.1, 0.15, 0.25]) expect([width, flushWith(width)]).toEqual([width, 0]);
});

/** Every measured number of a survey off by a billionth, up or down. */
function perturbed(survey: Survey, seed: number): Survey {
  const next = uniforms(seed);
  const off = (value: unknown, key = ''): unknown => {
    if (Array.isArray(value)) return key === 'emptied_in' ? value : value.map((v) => off(v));
    if (value && typeof value === 'object')
      return Object.fromEntries(
        Object.entries(value).map(([k, v]) => [k, COUNTED.has(k) || k.endsWith('_in') ? v : off(v, k)]),
      );
    return typeof value === 'number' ? value * (1 + (next() < 0.5 ? -1e-9 : 1e-9)) : value;
  };
  return off(survey) as Survey;
}
/** Dates, months and whole numbers are counted; weather and looks go through a fit that draws by chance. */
const COUNTED = new Set([
  'weather',
  'looks',

  'day',
  'month',
  'line',
  'life',
  'origin',
  'origins',
  'warnings',
  'latitude',
  'days_empty',
]);

const decided = ({ recommendation, options }: Result) => ({
  option: recommendation.option,
  also: recommendation.also,
  governs: recommendation.governs,
  depth: recommendation.depth_m.toFixed(4),
  raise: recommendation.raise_m.toFixed(4),
  rules: recommendation.rules.map(({ code, months }) => [code, months]),
  safe: options.map(({ option, safe_depth_m }) => [option, safe_depth_m?.toFixed(4)]),
  chances: options.map(({ option, risk_at_wish }) => [option, risk_at_wish?.per_year?.toFixed(3)]),
});

describe.each([
  ['clay-slope', briefDemo('clay-slope')],
  ['a pond flush with its ring', FLUSH],
  [
    'levels known',
    withItem(baseSurvey({ depth: 0.2, level: 0, drawdown: 0.1 }), 'pond.csv', 'emptied_in', '3'),
  ],
])('every input off by a billionth: %s', (_, files) => {
  const survey = surveyOf(files);
  const answer = decided(resultOf(judge(siteModel(survey, OPTIONS))));
  test.each(sweep([1, 2, 3], 1))('the answer stays (%d)', (seed) => {
    expect(decided(resultOf(judge(siteModel(perturbed(survey, seed), OPTIONS))))).toEqual(answer);
  });
});
