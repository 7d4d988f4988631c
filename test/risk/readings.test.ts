import { describe, expect, test } from 'vitest';
import { assess, resultOf } from '../../lib/index.js';
import { siteModel } from '../../lib/site/index.js';
import { surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';

/** A bulging pond with marks at its surface and at the pipe, 10.00 m both, and looks. */
function bulging(looks: string): ReturnType<typeof resultOf>['recommendation'] {
  let files = baseSurvey();
  for (const [item, value] of [
    ['state', 'existing'],
    ['bulge', 'yes'],
  ])
    files = withItem(files, 'pond.csv', item, value);
  files['levels.csv'] += 'pipe,dip-pipe,1,10\nsurface,pond,0,10\n';
  files['water.csv'] = `pit,date,reading,depth_m,hole_depth_m\n${looks}\n`;
  return resultOf(assess(siteModel(surveyOf(files), { samples: 64 }))).recommendation;
}

describe('what lifts a bulge is told from looks of one day', () => {
  test('a dry pipe is gas, whatever stood in it before', () => {
    const r = bulging(
      'pond,2024-01-10,level,0.1,\ndip-pipe,2024-01-10,level,0.02,1.2\ndip-pipe,2024-03-01,dry,,1.2',
    );
    expect(r.governs).toBe('gas');
    expect(r.reason).toMatch(/No water stands under the liner/);
  });

  // Winter: 0.30 m below the mark in the pipe, 0.10 m in the pond of that day; the pond fell to 0.50 m in June.
  const pair = 'pond,2024-02-10,level,0.1,\ndip-pipe,2024-02-10,level,0.3,1.2';
  test('a look at the pond in another month changes nothing', () => {
    expect(bulging(pair).governs).toBe('gas');
    const later = bulging(`${pair}\npond,2024-06-10,level,0.5,`);
    expect(later).toEqual(bulging(pair));
  });

  test('looks of different days alone tell no cause', () => {
    const r = bulging('dip-pipe,2024-02-10,level,0.3,1.2\npond,2024-06-10,level,0.5,');
    expect(r.reason).toMatch(/read it and the pond on the same day/);
    expect(r.governs).not.toBe('gas');
  });

  test('the latest pair counts, and the pond nearest to it in time', () => {
    const r = bulging(
      `${pair}\ndip-pipe,2024-04-02,level,0.1,1.2\npond,2024-04-01,level,0.3,\npond,2024-04-02,level,0.2,`,
    );
    expect(r.reason).toMatch(/stands 0\.10 m above|stands 100 mm above|it is groundwater/);
  });
});
