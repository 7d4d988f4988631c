import { describe, expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { boilingHead, digInflow, takenOut } from '../../lib/digging/index.js';
import { NOTHING } from '../../lib/heads/index.js';
import { verdictAt } from '../../lib/reliability/index.js';
import { recommend } from '../../lib/report/index.js';
import { type Site, siteModel } from '../../lib/site/index.js';
import { surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';

/** A pond whose water stands 0.7 m down, in ground of one permeability. */
function site(ksat: string, texture: string, change: Record<string, string> = {}): Site {
  let files: Record<string, string> = { ...baseSurvey({ depth: 0.7, spread: 0.05, level: 0 }) };
  files['pits.csv'] =
    `pit,top_m,bottom_m,texture,structure,mottles,consistency,ksat_m_s,strength_kpa\nP1,0,3,${texture},,none,,${ksat},\n`;
  files = withItem(files, 'site.csv', 'discharge_allowed', change.discharge_allowed ?? 'yes');
  files = withItem(files, 'pond.csv', 'side_slope', '1.5');
  files = withItem(files, 'pond.csv', 'length', '6', 'm');
  return siteModel(surveyOf(withItem(files, 'pond.csv', 'width', '5', 'm')), { samples: 32 });
}

describe('water in the hole', () => {
  test('is a pump and not a veto where a hired one takes it out, and bailed where none may lead it away', () => {
    const sand = site('3e-5', 'sand');
    const judged = judge(sand);
    expect(verdictAt(judged.basis, NOTHING, 1).dig.wet_floor).toBeLessThan(0.1);
    expect(recommend(judged).rules.map(({ code }) => code)).toContain('pump-while-digging');
    const kept = judge(site('3e-5', 'sand', { discharge_allowed: 'no' }));
    expect(verdictAt(kept.basis, NOTHING, 1).dig.wet_floor).toBeGreaterThan(0.9);
    expect(takenOut(sand)).toBeCloseTo(28 / 86400, 12);
  });

  test('is no matter in clay, and too much in gravel', () => {
    const clay = judge(site('1e-8', 'clay'));
    expect(verdictAt(clay.basis, NOTHING, 1).dig.wet_floor).toBe(0);
    expect(recommend(clay).rules.map(({ code }) => code)).not.toContain('pump-while-digging');
    expect(verdictAt(judge(site('5e-3', 'gravel')).basis, NOTHING, 1).dig.wet_floor).toBeGreaterThan(0.9);
  });

  test('boils a floor of sand under a head that its gradient tells, and none of clay', () => {
    const sand = site('3e-5', 'sand');
    const straight = { ...sand, pond: { ...sand.pond, shape: { ...sand.pond.shape, sideSlope: 0 } } };
    // 4 h/(π r) = 0.99 ÷ 1.5 on a disc of 30 m².
    const radius = Math.sqrt(30 / Math.PI);
    expect(boilingHead(straight, 5, 5)).toBeCloseTo(((0.99 / 1.5) * Math.PI * radius) / 4, 6);
    expect(boilingHead(site('1e-8', 'clay'), 2, 2)).toBe(Number.POSITIVE_INFINITY);
    // Twice the head, twice the inflow.
    expect(digInflow(sand, -0.5, 1, 1) / digInflow(sand, -0.75, 1, 1)).toBeCloseTo(2, 9);
  });
});
