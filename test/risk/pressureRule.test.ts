import { describe, expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { recommend } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';

const LOGS = [
  'pit,top_m,bottom_m,texture,structure,mottles,consistency,ksat_m_s,strength_kpa',
  'P1,0,0.3,clay loam,rooted,,firm,,',
  'P1,0.3,2.4,clay,massive,,stiff,,',
  'P1,2.4,2.9,sand,,,,,',
];
const LOOKS = 'pit,date,time,reading,depth_m,hole_depth_m,hole_diameter_cm,pipe_bore_cm,open_from_m';

/** A pipe sealed into sand below clay, read in some months of one year, m below the ground. */
function told(months: Record<string, number>, depth = 0.9, lifted = 0) {
  const rows = Object.entries(months).map(([m, z]) => `P1,2024-${m}-12,10:00,level,${z},2.9,10,3.2,2.4`);
  const files = {
    ...baseSurvey(),
    'levels.csv': `point,role,distance_m,level_m\nA,rim,0,10\nP1,pit,1,${10 + lifted}\n`,
    'heads.csv': 'place,month,depth_m,spread_m\nsite,high,1.9,0.05\n',
    'pits.csv': `${LOGS.join('\n')}\n`,
    'water.csv': `${[LOOKS, 'P1,2023-12-20,10:00,opened,2.9,2.9,10,3.2,2.4', ...rows].join('\n')}\n`,
  };
  const judged = judge(
    siteModel(surveyOf(withItem(files, 'pond.csv', 'depth', `${depth}`, 'm')), { samples: 256 }),
  );
  return { decision: judged.decision, rules: recommend(judged).rules };
}
const WINTER = { '01': 1.1, '02': 1.05, '03': 1.2, '08': 1.6 };

/** Where the water must stand, m below the ground at the hole; undefined: not asked. */
const lookAt = (rules: ReturnType<typeof told>['rules']) =>
  (rules.find(({ code }) => code === 'read-before-digging')?.values as { depth_m: number } | undefined)
    ?.depth_m;

describe('the look on the day of the dig', () => {
  test.each([0, 0.2])(
    'names the depth at which clay of 18.5 kN/m³ weighs 1.25 times the water below it; ground at the hole %s m higher',
    (lifted) => {
      const { decision, rules } = told(WINTER, 0.9, lifted);
      const left = 2.4 - lifted - decision.depth;
      expect(lookAt(rules)).toBeCloseTo(2.4 - (18.5 * left) / 1.25 / 9.81, 2);
    },
  );

  test('is deeper for a deeper hole, and left out where water at the ground would not break it up', () => {
    expect(lookAt(told(WINTER, 0.4).rules)).toBeUndefined();
    const [less, more] = [told(WINTER, 0.9), told(WINTER, 1.1)];
    expect([less.decision.depth, more.decision.depth]).toEqual([0.9, 1.1]);
    expect(lookAt(more.rules)! - lookAt(less.rules)!).toBeCloseTo((0.2 * 18.5) / 1.25 / 9.81, 2);
  });

  test('an engineer is asked wherever water as high as it may come would break the wished floor up', () => {
    const asks = (months: Record<string, number>, depth: number) =>
      told(months, depth).rules.some(
        ({ code, subject }) => code === 'ask-engineer' && subject === 'pressure',
      );
    expect(asks({ '08': 1.6 }, 0.9)).toBe(true);
    expect(asks({ '08': 1.6 }, 0.4)).toBe(false);
    expect(asks(WINTER, 0.9)).toBe(false);
  });
});
