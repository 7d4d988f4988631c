import { describe, expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { recommend, resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';

/** Clay whose own water is deep, a ring 0.2 m wide with a lawn above it, and a swale half a metre below the rim. */
function ringed(fill: string, facts: Record<string, [string, string]> = {}): Record<string, string> {
  let files: Record<string, string> = baseSurvey({ depth: 1.5, level: -0.05, drawdown: 0.15 });
  for (const [item, [value, unit]] of Object.entries({
    ring_width: ['0.2', 'm'] as [string, string],
    ring_fill: [fill, ''] as [string, string],
    ring_cap: ['no', ''] as [string, string],
    ...facts,
  }))
    files = withItem(files, 'pond.csv', item, value, unit);
  files = withItem(files, 'site.csv', 'uphill_area', '30', 'm2');
  files['levels.csv'] += 'S,spill,3,9.5\n';
  return files;
}

const judged = (files: Record<string, string>) => judge(siteModel(surveyOf(files), { samples: 32 }));
const chance = (files: Record<string, string>) =>
  resultOf(judged(files)).options.find(({ option }) => option === 'no-drain')!.risk_at_wish!.per_year;

describe('a swale beside the ring', () => {
  test('draws a ring of gravel down, and a ring of topsoil not: on its far side the water lifts the liner', () => {
    expect(chance(ringed('gravel'))).toBe(0);
    expect(chance(ringed('topsoil'))).toBeGreaterThan(0.9);
    expect(chance(ringed('topsoil', { ring_ksat: ['3e-3', 'm/s'] }))).toBe(0);
  });

  test('is told with what the fill lets through', () => {
    const rule = (fill: string) =>
      recommend(judged(ringed(fill))).rules.find(({ code }) => code === 'ring-outlet')?.text;
    expect(rule('gravel')).toBe('Keep the way out of the ring open at the swale.');
    const { rules } = recommend(judged(ringed('topsoil', { highest_raise: ['0.3', 'm'] })));
    expect(rules.find(({ code }) => code === 'ring-outlet')!.text).toMatch(/through topsoil only slowly/);
  });

  test('in flood above the pond lifts the liner through it, and is told to be closed', () => {
    const marked = (level: string) => {
      const files = ringed('gravel');
      files['levels.csv'] += `F,flood,3,${level}\n`;
      return withItem(files, 'pond.csv', 'water_above_rim_ground', '-0.2', 'm');
    };
    expect(chance(marked('9.55'))).toBe(0);
    expect(chance(marked('9.9'))).toBeGreaterThan(0.9);
    const rule = (level: string) =>
      recommend(judged(marked(level))).rules.find(({ code }) => code === 'ring-outlet')?.text;
    expect(rule('9.55')).toMatch(/^Keep the way out/);
    expect(rule('9.9')).toMatch(/close that way with clay tamped firm/);
  });
});
