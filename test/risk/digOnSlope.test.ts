/** A dig on a slope is judged by the side uphill as well: it is higher there, and the water stands higher. */
import { describe, expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { bestDig, dugDepth, footingLimit, sideUphill } from '../../lib/digging/index.js';
import { NOTHING } from '../../lib/heads/index.js';
import { monthlyLimits, verdictAt } from '../../lib/reliability/index.js';
import { siteModel } from '../../lib/site/index.js';
import { surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';

/** Clay that rises by so much along the rim, with water 0.9 m down at the low side and so far down uphill. */
function sloped(rise: number, uphill: number, slope = '0.3') {
  let files: Record<string, string> = baseSurvey({ depth: 0.9 });
  files['levels.csv'] = `point,role,distance_m,level_m\nA,rim,0,10\nB,rim,0,${10 + rise}\n`;
  const months = Array.from({ length: 12 }, (_, at) => `uphill,${at + 1},${uphill},0.1,a pipe behind it`);
  files['heads.csv'] += `${months.join('\n')}\n`;
  files = withItem(files, 'pond.csv', 'side_slope', slope);
  // As drawn: what a survey lays back by itself would hide it.
  return withItem(files, 'pond.csv', 'depth', '1.2', 'm');
}

function dig(files: Record<string, string>, depth = 1.2) {
  const { basis } = judge(siteModel(surveyOf(files), { samples: 64 }));
  const best = bestDig(basis.site, basis.dig, NOTHING, depth);
  return { basis, chances: best.chances, plan: best.plan };
}

describe('a dig on a slope', () => {
  test('has a side uphill that is higher by the rise of the ground', () => {
    const { basis } = dig(sloped(0.4, 0.9));
    const dug = dugDepth(basis.site, NOTHING, 1.2);
    expect(sideUphill(basis.site, dug)).toBeCloseTo(1.6, 9);
  });

  test('never slumps less, nor is drier, the steeper the ground or the higher the water uphill', () => {
    const rises = [0, 0.2, 0.5, 0.9].map((rise) => dig(sloped(rise, 0.9)).chances);
    for (let i = 1; i < rises.length; i++)
      for (const what of ['slump', 'wet_floor'] as const)
        expect(rises[i]![what]).toBeGreaterThanOrEqual(rises[i - 1]![what]);
    const waters = [1.2, 0.8, 0.4, 0.1].map((uphill) => dig(sloped(0.5, uphill)));
    for (let i = 1; i < waters.length; i++) {
      expect(waters[i]!.plan.wetWater).toBeGreaterThan(waters[i - 1]!.plan.wetWater);
      for (const what of ['slump', 'wet_floor'] as const)
        expect(waters[i]!.chances[what]).toBeGreaterThanOrEqual(waters[i - 1]!.chances[what]);
    }
  });

  test('of sand slips where the water stands in the side uphill, though the low side is dry', () => {
    const sandy = (uphill: number) => {
      const files = sloped(0.5, uphill, '1.5');
      files['pits.csv'] = `pit,top_m,bottom_m,texture,structure,mottles,consistency,ksat_m_s,strength_kpa
P1,0,0.25,loam,rooted,none,firm,,
P1,0.25,2.6,sandy loam,blocky,none,firm,1e-6,
`;
      files['heads.csv'] = files['heads.csv']!.replace(/^site,(\d+),0\.9/gm, 'site,$1,2');
      return dig(files).chances.slump;
    };
    expect(sandy(2)).toBeLessThan(0.05);
    expect(sandy(0.1)).toBeGreaterThan(0.9);
  });
});

describe('a pond on a slope, emptied', () => {
  /** Stiff massive clay, upright; the water stands level uphill and low. */
  const emptied = (rise: number, depth: number, strength = 14) => {
    let files = withItem(sloped(rise, 0.9 + rise, '0'), 'pond.csv', 'emptied_in', '9');
    files = withItem(withItem(files, 'pond.csv', 'days_empty', '2', 'd'), 'pond.csv', 'state', 'existing');
    files['pits.csv'] = `pit,top_m,bottom_m,texture,structure,mottles,consistency,ksat_m_s,strength_kpa
P1,0,0.25,clay,massive,none,stiff,,
P1,0.25,4,clay,massive,none,stiff,1e-9,${strength}
`;
    const { basis } = judge(siteModel(surveyOf(files), { samples: 64 }));
    const { lowestSafeLevel, empty } = monthlyLimits(basis, NOTHING, depth);
    return {
      slumps: verdictAt(basis, NOTHING, depth).chance.modes['side-slump'] ?? 0,
      level: lowestSafeLevel[8]!,
      hours: empty[8].seconds / 3600,
    };
  };

  test('slumps as level ground does whose side is as high as the one uphill', () => {
    for (const [rise, depth] of [
      [0.2, 0.9],
      [0.4, 0.7],
    ] as const)
      expect(emptied(rise, depth).slumps).toBeCloseTo(emptied(0, depth + rise).slumps, 1);
    const shares = [0, 0.1, 0.2, 0.4, 0.6, 0.9].map((rise) => emptied(rise, 0.8).slumps);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares[0]).toBeLessThan(0.5);
    expect(shares.at(-1)).toBeGreaterThan(0.8);
  });

  test('has a level to keep once the side uphill slips as soon as it is bared', () => {
    expect(emptied(0, 0.8, 24).hours).toBeGreaterThan(0);
    const steep = emptied(0.9, 0.8, 24);
    expect(steep.hours).toBe(0);
    expect(steep.level).not.toBeNull();
  });
});

describe('a footing beside a dig on a slope', () => {
  /** Deepest that may be dug beside a footing so far from the rim, its underside so far above the lowest ground. */
  const limit = (slope: string, rise: number, away: number, level: number, wall = 'none') => {
    let files = sloped(rise, 0.9, slope);
    files['levels.csv'] += `F,footing,${away},${10 + level}\n`;
    files = withItem(files, 'pond.csv', 'wall', wall);
    return footingLimit(siteModel(surveyOf(files), { samples: 16 })).depth;
  };

  test('is not undermined by the cut above the rim, however flat', () => {
    // The wall stands at the edge, its underside 0.4 m above the rim: the cut comes out under it.
    for (const slope of ['0.9', '1', '1.5', '2']) expect(limit(slope, 0.5, 0, 0.4)).toBe(0);
    // At 2 to 1 the cut comes out 1 m away, at 0.5 m: the line from 0.45 m up, 1.2 m away, lies at 0.25 m there.
    expect(limit('2', 0.5, 1.2, 0.45)).toBe(Number.POSITIVE_INFINITY);
    // From 0.8 m away the cut would be at 0.4 m under it, below its underside.
    expect(limit('2', 0.5, 0.8, 0.45)).toBe(0);
    // Nor may earth be dug away beside a wall, though not below its underside: 0.4 m away the cut is at 0.27 m.
    for (const slope of ['0.9', '1.5']) expect(limit(slope, 0.5, 0.4, 0.2), slope).toBe(0);
    // A house at the low side has no higher ground before it.
    expect(limit('1.5', 0.5, 0.4, -0.4)).toBe(Number.POSITIVE_INFINITY);
    expect(limit('1.5', 0, 0.4, -0.4)).toBe(Number.POSITIVE_INFINITY);
  });

  test('nor by the cut behind a wall, which is laid back from its foot', () => {
    // Toe 1.05 m below the footing at 1.5 to 1 is 1.3 m away: 1.3 ÷ 1.5 + 0.2.
    const deep = limit('0', 0, 1.3, -0.2, 'block');
    expect(deep).toBeLessThanOrEqual(1.5);
    expect([1, 1.5].map((back) => 1.3 / back + 0.2)).toContainEqual(expect.closeTo(deep, 9));
    expect(limit('0', 0, 0, -0.4, 'block')).toBeCloseTo(0.4, 9);
  });
});

describe('a bank on the edge', () => {
  const slump = (raised: string, strength = 12) => {
    let files = withItem(sloped(0, 2, '0.5'), 'pond.csv', 'highest_raise', '1.2', 'm');
    files = withItem(withItem(files, 'pond.csv', 'emptied_in', '9'), 'pond.csv', 'state', 'existing');
    files = withItem(files, 'pond.csv', 'water_above_rim_ground', raised, 'm');
    files['pits.csv'] = `pit,top_m,bottom_m,texture,structure,mottles,consistency,ksat_m_s,strength_kpa
P1,0,4,clay,massive,none,firm,1e-9,${strength}
`;
    const { basis } = judge(siteModel(surveyOf(files), { samples: 64 }));
    return (depth: number, raise: number) =>
      verdictAt(basis, { ...NOTHING, raise }, depth).chance.modes['side-slump'] ?? 0;
  };

  test('weighs on a side as so much more of it would', () => {
    // 0.65 m dug with 0.75 m of bank is a side of 1.4 m.
    const level = slump('0');
    expect(level(1.4, 0.75)).toBeCloseTo(level(1.4, 0), 1);
    expect(level(1.4, 0.75)).toBeGreaterThan(level(0.65, 0));
    // Water kept above the ground is kept by a bank as well.
    expect(slump('0.5')(0.8, 0)).toBeCloseTo(level(1.3, 0), 1);
  });
});
