import { describe, expect, test } from 'vitest';
import { assess, driversOf, LOSS, lossesOf, NOTHING, recommend } from '../../lib/risk/index.js';
import { siteModel } from '../../lib/site/index.js';
import { demoFiles, surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';

/** Water whose level is the same every year and badly known, and a ditch low enough for a drain. */
function doubtful(depth = 0.4, spread = 0.35): Record<string, string> {
  const files = baseSurvey({ depth, spread, level: -0.1, source: 'reading error of one look' });
  files['levels.csv'] =
    'point,role,distance_m,level_m\nA,rim,0,10\nB,rim,0,10\nOut,outlet,12,8.2\nBed,ditch,12,7.9\nMark,flood,12,8.1\n';
  return withItem(files, 'site.csv', 'discharge_allowed', 'yes');
}
const site = (files: Record<string, string>) => siteModel(surveyOf(files), { samples: 512 });

describe('measure first', () => {
  test('when knowing the water is worth more than the season it costs', () => {
    const a = assess(site(doubtful()));
    const season = a.measureNext.find((m) => m.waits)!;
    expect(season.worth_drains).toBeGreaterThan(LOSS.waiting);
    expect(a.decision.option).toBe('measure-first');
    expect(recommend(a).governs).toBe('evidence');
  });

  test('and only then: not where the season costs more', () => {
    const a = assess(site(doubtful()), { loss: { ...LOSS, waiting: 2 } });
    expect(a.decision.option).not.toBe('measure-first');
    expect(a.measureNext.find((m) => m.waits)!.worth_drains).toBeLessThan(2);
  });

  test('not where the water is known', () => {
    for (const depth of [0.3, 0.9]) {
      const a = assess(site(doubtful(depth, 0.02)));
      expect(a.decision.option).not.toBe('measure-first');
    }
  });

  test('the worth is never more than knowing for certain saves', () => {
    // With no error in the reading and the two choices drain and no drain: E(min) against min(E).
    const a = assess(site(doubtful()));
    const losses = a.options
      .filter((o) => o.measures)
      .map((o) => lossesOf(a.basis, o.measures!, a.site.pond.depth, LOSS));
    const mean = (values: ArrayLike<number>) => Array.from(values).reduce((x, y) => x + y, 0) / values.length;
    const now = Math.min(...losses.map(mean));
    const certain = mean(losses[0].map((_, s) => Math.min(...losses.map((l) => l[s]))));
    for (const { worth_drains } of a.measureNext)
      expect(worth_drains).toBeLessThanOrEqual(now - certain + 0.02);
  });
});

describe('what drives the answer', () => {
  test('where only the water is in doubt, the water does', () => {
    const { basis } = assess(site(doubtful()));
    const [first, ...rest] = driversOf(basis, NOTHING, 1);
    expect(['ground and water together', 'level of the water in the clay']).toContain(first.input);
    const blocks = [first, ...rest].filter((d) => d.total !== null);
    const of = (input: string) => blocks.find((d) => d.input.startsWith(input))!;
    // Jackknifed over 8 replicates of 64 samples, yes or no: right to 0.1.
    expect(Math.abs(of('ground and water').first_order - 1)).toBeLessThan(0.2);
    expect(Math.abs(of('ground and water').total! - 1)).toBeLessThan(0.2);
    expect(of('how well the drain').total).toBe(0);
  });

  test('where only the drain is in doubt, the drain does', () => {
    const a = assess(siteModel(surveyOf(demoFiles('clay-slope'))));
    expect(a.decision.option).toBe('drain-to-outlet');
    expect(a.drivers[0].input).toBe('how well the drain is built and minded');
    expect(a.drivers[0].total).toBeCloseTo(1, 1);
  });
});
