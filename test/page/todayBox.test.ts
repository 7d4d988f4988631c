/** The box for today's reading: never lower than the level that holds for it, and no more than a step above. */
import { describe, expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { lowerBy } from '../../lib/page/todayBox.js';
import { lowestLevel } from '../../lib/reliability/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { parseSurvey } from '../../lib/survey/index.js';
import { briefDemo, surveyOf } from '../folder.js';
import { generatedGarden } from '../guard/generate.js';
import { sweep } from '../sweep.js';

const STEP = 0.05;
const surveys = {
  'clay slope': surveyOf(briefDemo('clay-slope')),
  ...Object.fromEntries(
    [3, 17, 62, 311].map((seed) => [`garden ${seed}`, parseSurvey(generatedGarden(seed).files)]),
  ),
};

const NEAR = 1e-3;

describe.each(sweep(Object.entries(surveys), 2))('%s', (_, survey) => {
  const judged = judge(siteModel(survey, { seed: 1, samples: 64 }));
  const report = reportOf(judged, { quick: true });
  const { measures, changed = judged.basis, depth } = judged.decision;
  const deep = depth || judged.site.pond.depth;
  const full = report.pond.full_level_m + measures.raise;
  const today = { ...report.lower_by_reading, full_m: full, floor_m: full - deep, units: 'metric' as const };

  const { clayLow, clayHigh } = judged.site.water;
  /** What nine in ten of all years do not exceed, by counting. */
  const rise = (month: number) => {
    const all = Array.from(
      { length: clayLow.month.length / 12 },
      (_, i) => clayHigh.month[12 * i + month]! - clayLow.month[12 * i + month]!,
    ).sort((a, b) => a - b);
    return Math.max(all[Math.floor(0.9 * (all.length - 1))]!, 0);
  };
  const blocked = report.result.situations.filter(
    ({ of, situation, month }) => of === 'recommended' && situation === 'drain-blocked' && month !== null,
  );
  const levelAt = (water: number, month: number) =>
    lowestLevel(changed, measures, deep, month + 1, { high: water, emptied: water }).level;
  /** With no drain under the floor the water uphill counts as well; with one that has stopped, the month without it. */
  const exactly = (water: number, month: number): number | null => {
    const stopped = report.lower_by_reading.stopped_above_m;
    if (stopped !== null && water <= stopped) return levelAt(water, month);
    const uphill = Math.max(water, Math.min(water + rise(month), judged.site.places.highRim));
    const cut = measures.cutoff === undefined ? uphill : Math.min(uphill, Math.max(measures.cutoff, water));
    const level = levelAt(cut, month);
    const without = blocked[month]?.lowest_level_m ?? null;
    return level === null ? without : Math.max(level, without ?? level);
  };

  test('to the safe side of every reading, in every month', () => {
    const { water_m } = report.lower_by_reading;
    for (let month = 0; month < 12; month++)
      for (let water = water_m[0]! - 0.1; water < water_m.at(-1)! + 0.2; water += 0.013) {
        const told = lowerBy(today, full - water, month);
        const exact = exactly(water, month);
        if (told === null) expect(exact).toBeNull();
        // By counting the rise is one year's less exact.
        else if (exact !== null) expect(full - told).toBeGreaterThanOrEqual(Math.min(exact, full) - NEAR);
        // Where more is asked than by the reading itself, a reading a step higher asks for it.
        if (told !== null && told > 0 && water > water_m[0]!) {
          const level = exactly(water + STEP, month);
          expect(full - told).toBeLessThanOrEqual((level ?? Number.NEGATIVE_INFINITY) + NEAR);
        }
      }
  });

  test('above all that was reckoned it is kept full', () => {
    expect(lowerBy(today, -5, 0)).toBe(0);
  });
});
