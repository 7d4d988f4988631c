import { describe, expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { firstTaller } from '../../lib/digging/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { edited, surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';

const wet = () => withItem(baseSurvey({ depth: 0.2 }), 'pond.csv', 'emptied_in', '3');
const report = (files: Record<string, string>) =>
  reportOf(judge(siteModel(surveyOf(files), { samples: 48 })));
const rule = (files: Record<string, string>, code: string) =>
  report(files).result.recommendation.rules.find((r) => r.code === code);

describe('how long an emptied pond may stand', () => {
  test('water that comes through clay needs its time: 10, 20 and 50 mm in proportion', () => {
    for (const { lift_hours, hours, ends } of report(wet()).emptying) {
      const [ten, twenty, fifty] = lift_hours.map((t) => t.hours!);
      expect(ten / twenty).toBeCloseTo(0.5, 12);
      expect(fifty / twenty).toBeCloseTo(2.5, 12);
      expect(ends).toBe('lift');
      expect(hours).toBe(twenty);
    }
  });

  test('soft sides end it at once, whatever the water takes', () => {
    const soft = edited(wet(), 'pits.csv', (t) => t.replace('stiff,1e-7,60', 'soft,1e-9,8'));
    const upright = withItem(soft, 'pond.csv', 'side_slope', '0');
    const nothing = report(upright).result.options.find((o) => o.option === 'no-drain')!;
    expect(new Set(nothing.hours_empty_safe)).toEqual(new Set([0]));
  });

  test('a pond that stands on the ground bares no side that could slump, however soft it is', () => {
    expect(firstTaller(Float64Array.of(0, 0, 0.1, 0.4), () => -0.2)).toBe(2);
    expect(firstTaller(Float64Array.of(0, 0, 0.1, 0.4), () => 0.2)).toBe(3);
    // In soft clay from the third on, the third fails although the fourth meets stronger clay.
    expect(firstTaller(Float64Array.of(0.1, 0.2, 0.3, 0.4), (j) => [1, 1, 0.2, 1][j]!)).toBe(2);
  });

  test('nothing ends it where the water outside stays below the floor', () => {
    const dry = edited(wet(), 'heads.csv', (t) => t.replaceAll(',0.2,', ',2.4,'));
    for (const { hours, ends } of report(dry).emptying) expect([hours, ends]).toEqual([null, 'none']);
  });
});

describe('rules of the sides, the rim and the vent', () => {
  test('a working slope goes with every dig in clay, and none with a pond that is there', () => {
    expect(rule(wet(), 'working-slope')?.text).toContain('The law of your country decides');
    expect(rule(withItem(wet(), 'site.csv', 'country', 'US'), 'working-slope')?.text).toContain(
      '29 CFR 1926 Subpart P',
    );
    expect(rule(withItem(wet(), 'pond.csv', 'state', 'existing'), 'working-slope')).toBeUndefined();
  });

  test('sides too steep for their clay are laid back, with the slope that stands', () => {
    const soft = edited(wet(), 'pits.csv', (t) => t.replace('stiff,1e-7,60', 'soft,1e-9,18'));
    expect(rule(withItem(soft, 'pond.csv', 'side_slope', '0'), 'batter-sides')?.text).toMatch(
      /at least 0\.\d+ to 1/,
    );
    expect(rule(wet(), 'batter-sides')).toBeUndefined();
  });

  test('a liner filled in a wet month has so many hours', () => {
    const high = withItem(wet(), 'pond.csv', 'water_above_rim_ground', '0.1', 'm');
    const filled = withItem(high, 'pond.csv', 'filled_in', '3');
    const known = edited(filled, 'heads.csv', (t) => t.replaceAll(',0.1,', ',0.0001,'));
    const { result } = report(known);
    const { option, rules, depth_m: d } = result.recommendation;
    expect(option).toBe('no-drain');
    // Water 0.2 m down, where the plan is 3.6 × 2.6 m; sides at 1 to 1. Clay as permeable as one in ten of those drawn
    // brings 4·K·r·s to a disc as large as the mean of that plan and the floor; 20 mm over the floor lift the liner.
    const floor = (4 - 2 * d) * (3 - 2 * d);
    const radius = Math.sqrt((3.6 * 2.6 + floor) / (2 * Math.PI));
    const inflow = 4 * result.ground.layers[1].ksat_m_s.p90 * radius * (d - 0.2);
    const hours = (0.02 * floor) / inflow / 3600;
    const text = rules.find(({ code }) => code === 'fill-at-once')!.text;
    const told = Number(/in March .* about (\d+) hours/.exec(text)![1]);
    // Whole hours, rounded down; the quantile of a hundred draws.
    expect(told - 1.06 * hours).toBeLessThanOrEqual(0);
    expect(told - 0.94 * hours).toBeGreaterThan(-1);
  });

  test('water above the ground pushes the rim out: 1/2 γ h²', () => {
    const raised = withItem(wet(), 'pond.csv', 'water_above_rim_ground', '0.4', 'm');
    // 9810 × 0.4² ÷ 2 = 785 N, told no smaller than it is.
    expect(rule(raised, 'rim-load')?.text).toContain('790 N');
    expect(rule(wet(), 'rim-load')).toBeUndefined();
  });

  test('peat wants a vent, sized, at the high point', () => {
    const peat = edited(
      edited(wet(), 'heads.csv', (t) => `${t.replaceAll(',0.2,', ',2.4,')}below:P1,high,2.5,0.1,pipe\n`),
      'pits.csv',
      (t) => `${t}P1,2.6,3,peat,,none,,,\n`,
    );
    const smelling = withItem(peat, 'site.csv', 'organic_smell', 'yes');
    expect(rule(smelling, 'vent-high-point')?.text).toMatch(/vents? of 25 mm from the high point/);
  });

  test('a shelf narrows the floor, so that the liner has less time', () => {
    const shelf = withItem(
      withItem(wet(), 'pond.csv', 'shelf_depth', '0.3', 'm'),
      'pond.csv',
      'shelf_width',
      '0.3',
      'm',
    );
    expect(report(shelf).emptying[2].hours!).toBeLessThan(report(wet()).emptying[2].hours!);
  });
});
