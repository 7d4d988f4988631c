/** What a raised rim and an outlet ask for goes by the water that can come. */
import { describe, expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { drawingSheets } from '../../lib/figures/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { briefDemo, edited, surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';

const told = (files: Record<string, string>) =>
  reportOf(judge(siteModel(surveyOf(files), { seed: 1, samples: 48 })));
const rule = ({ result }: ReturnType<typeof told>, code: string) =>
  result.recommendation.rules.find((each) => each.code === code)?.text ?? '';

test.each([
  ['8.6', true],
  ['8.9', false],
])('a flap is for the flood that was levelled at %s, or for a higher one', (level, below) => {
  const files = edited(briefDemo('clay-slope'), 'levels.csv', (t) => t.replace(',8.72,', `,${level},`));
  const text = rule(told(files), 'flap');
  expect(text).toMatch(below ? /stays below the drain/ : /back up the pipe/);
});

describe('a raised pond', () => {
  const raised = (files: Record<string, string>) =>
    ['depth,1.6,m', 'length,8,m', 'width,5,m', 'highest_raise,0.5,m', 'water_above_rim_ground,0,m'].reduce(
      (all, row) => {
        const [item, value, unit] = row.split(',') as [string, string, string];
        return withItem(all, 'pond.csv', item, value, unit);
      },
      files,
    );
  const base = raised(baseSurvey({ depth: 0.7, spread: 0.05, level: 0 }));
  base['levels.csv'] =
    'point,role,x_m,y_m,level_m\nA,rim,0,-2.5,10\nB,rim,0,2.5,10.05\nC,rim,-4,0,10.02\nD,rim,4,0,10.02\n';

  test('runs over at a place that is told and drawn, unless it is led away', () => {
    const here = told(base);
    expect(here.result.recommendation.raise_m).toBeGreaterThan(0);
    expect(rule(here, 'keep-old-ground-open')).toMatch(/leave a dip in the raised rim/);
    expect(drawingSheets(here, 'metric')[0]!.svg).toContain('runs over here');
    const away = told(withItem(base, 'pond.csv', 'overflow', 'away', ''));
    expect(rule(away, 'keep-old-ground-open')).not.toMatch(/dip in/);
    expect(drawingSheets(away, 'metric')[0]!.svg).not.toContain('runs over here');
  });
});

test('of water no higher than any edging holds nothing gives way', () => {
  const held = (metres: number) => told(baseSurvey({ depth: 1.5, level: metres })).next_door.held;
  expect(held(0.1)).toBeNull();
  expect(held(0.15)).toMatchObject({ above_m: 0.15 });
});
