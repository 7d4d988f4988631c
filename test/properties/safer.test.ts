/** What makes a site safer never raises a chance nor lessens a safe depth; the wish moves none. */
import { describe, expect, test } from 'vitest';
import { briefDemo, withItem } from '../folder.js';
import { baseSurvey } from '../risk/base.js';
import { sweep } from '../sweep.js';
import { movedByWish, pipeLengths, STEPS, worsenings } from './safer.js';
import { dippedGarden, plannedGarden } from './sites.js';

const emptied = withItem(baseSurvey({ level: -0.1 }), 'pond.csv', 'emptied_in', '3');

const SITES: [string, Record<string, string>, RegExp][] = [
  ['one clay, emptied in March', emptied, /deeper|days|months|drawdown|stiffer|accepted/],
  ['a garden with a plan', plannedGarden(), /flood|sheds|edging/],
  ['loam-terrace', briefDemo('loam-terrace'), /less rain/],
];

describe.each(sweep(SITES, 2))('%s', (_, files, chosen) => {
  test.each(STEPS.filter(({ name }) => chosen.test(name)).map((steps) => [steps.name, steps] as const))(
    '%s',
    (_name, steps) => {
      expect(worsenings(files, steps)).toEqual([]);
    },
  );
});

const CLAYS = 'pit,top_m,bottom_m,texture,structure,mottles,consistency,ksat_m_s,strength_kpa';
test.each(
  sweep(
    [
      ['one clay', emptied],
      [
        'soft clay under firm, over a loam that lets more through',
        {
          ...emptied,
          'pits.csv': `${CLAYS}\nP1,0,0.25,clay loam,rooted,,firm,,\nP1,0.25,0.9,clay,blocky,,firm,1e-8,40\nP1,0.9,1.4,silty clay,massive,,soft,3e-9,14\nP1,1.4,3,clay loam,blocky,,firm,1e-7,50\n`,
        },
      ],
    ],
    1,
  ),
)('another wish moves no chance at a depth, in %s without a ring', (_, files) => {
  expect(movedByWish(files, ['0.8', '1.2', '1.5'])).toEqual([]);
});

test('the farther the outlet, the more pipe', () => {
  const pumped = ['discharge_allowed', 'mains_power', 'pump_acceptable'].reduce(
    (files, item) => withItem(files, 'site.csv', item, 'yes'),
    dippedGarden(),
  );
  const low = pumped['levels.csv']!.replace('out,outlet,24,8.5', 'out,outlet,24,7.5');
  const files = { ...pumped, 'levels.csv': `${low}gully,discharge,9,10.2\n` };
  const farther = pipeLengths(files, [0, 7, 30]);
  for (const option of ['drain-to-outlet', 'drain-to-sump']) {
    const [near, middle, far] = farther.get(option)!;
    // All of the way is pipe, with 5 % to spare; aslope it is a little longer, and near the pond more so.
    expect(Math.abs(middle! - near! - 7 * 1.05)).toBeLessThan(0.1);
    expect(Math.abs(far! - near! - 30 * 1.05)).toBeLessThan(0.1);
  }
});
