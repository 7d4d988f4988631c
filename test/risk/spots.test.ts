import { expect, test } from 'vitest';
import { assess } from '../../lib/decision/index.js';
import { resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';

/** Three holes on ground that rises to B while the water stays nearly level; water 0.1 m down at A all winter. */
function survey(): Record<string, string> {
  const files = withItem(
    baseSurvey({ depth: 0.05, spread: 0.03, level: 0, drawdown: 0.15 }),
    'site.csv',
    'latitude',
    '52',
    'deg',
  );
  files['levels.csv'] = `point,role,x_m,y_m,distance_m,level_m
A,spot,0,0,,10
B,spot,20,10,,10.6
R,rim,,,0,10
P1,pit,0,2,,10.02
P2,pit,18,0,,10.4
P3,pit,6,14,,10.3
`;
  files['water.csv'] = `pit,date,reading,depth_m,hole_depth_m,hole_diameter_mm,pipe_bore_mm,open_from_m
${[
  ['P1', 0.12],
  ['P2', 0.48],
  ['P3', 0.39],
]
  .map(([pit, depth]) => `${pit},2023-02-10,level,${depth},1.5,100,40,1.2`)
  .join('\n')}
`;
  return withItem(withItem(files, 'site.csv', 'mains_power', 'yes'), 'site.csv', 'discharge_allowed', 'yes');
}

test('every levelled spot is judged with the water it has, the best first', () => {
  const a = assess(siteModel(surveyOf(survey()), { samples: 128 }));
  const [best, other] = a.spots;
  expect(best).toMatchObject({ spot: 'B', planned: false, option: 'no-drain' });
  expect(other).toMatchObject({ spot: 'A', planned: true, option: 'ballast' });
  expect(a.decision).toMatchObject({ option: 'move', spot: { name: 'B' } });
  // Water level at B: 9.9 + its small rise; 0.6 m of ground more than at A.
  expect(best.water_depth_m - other.water_depth_m).toBeGreaterThan(0.45);
  expect(resultOf(a).spots[0].reason).toMatch(/^water 0\.\d+ m deeper than at A, by the plane/);
});

test('one spot is no choice', () => {
  expect(assess(siteModel(surveyOf(baseSurvey()), { samples: 64 })).spots).toEqual([]);
});
