import { describe, expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { briefDemo, surveyOf } from '../folder.js';

const files = briefDemo('clay-slope');
const optional = ['site.csv', 'water.csv', 'levels.csv', 'weather.csv'];
const answer = (missing: string[]) => {
  const kept = Object.fromEntries(Object.entries(files).filter(([name]) => !missing.includes(name)));
  return resultOf(judge(siteModel(surveyOf(kept), { samples: 48 })));
};
const full = answer([]);

describe('files that may be absent', () => {
  test.each(optional)('without %s there is an answer', (name) => {
    const r = answer([name]);
    expect(r.recommendation.option).toMatch(/\w/);
    expect(r.options).toHaveLength(7);
  });

  test('without site.csv more is assumed, each with its reason', () => {
    const r = answer(['site.csv']);
    expect(r.assumptions.map((a) => a.item)).toContain('latitude');
    expect(full.assumptions.map((a) => a.item)).not.toContain('latitude');
    for (const a of r.assumptions) expect(a.reason).toMatch(/\w{3}/);
  });

  test('without any of them: measure first, with the winter water assumed and said', () => {
    const r = answer(optional);
    expect(r.recommendation).toMatchObject({ option: 'measure-first', governs: 'evidence' });
    expect(r.assumptions.map((a) => a.item)).toContain('winter water');
    expect(r.water.model).toBe('spill level');
  });

  test('without weather no hydrograph is invented', () => {
    expect(answer(['weather.csv']).water.model).toBe('dips');
    expect(answer(['weather.csv', 'water.csv']).recommendation.option).toBe('measure-first');
  });
});
