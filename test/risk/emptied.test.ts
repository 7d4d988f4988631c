import { describe, expect, test } from 'vitest';
import { assess, firstTaller, reportOf } from '../../lib/risk/index.js';
import { siteModel } from '../../lib/site/index.js';
import { edited, surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';

const wet = () => withItem(baseSurvey({ depth: 0.2 }), 'pond.csv', 'emptied_in', '3');
const report = (files: Record<string, string>) =>
  reportOf(assess(siteModel(surveyOf(files), { samples: 100 })));
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
    expect(firstTaller(Float64Array.of(0, 0, 0.1, 0.4), -0.2)).toBe(2);
    expect(firstTaller(Float64Array.of(0, 0, 0.1, 0.4), 0.2)).toBe(3);
  });

  test('nothing ends it where the water outside stays below the floor', () => {
    const dry = edited(wet(), 'heads.csv', (t) => t.replaceAll(',0.2,', ',2.4,'));
    for (const { hours, ends } of report(dry).emptying) expect([hours, ends]).toEqual([null, 'none']);
  });
});

describe('rules of the sides, the rim and the vent', () => {
  test('a working slope goes with every dig in clay, and none with a pond that is there', () => {
    expect(rule(wet(), 'working-slope')?.text).toContain('29 CFR 1926 Subpart P');
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
    const filled = withItem(wet(), 'pond.csv', 'filled_in', '3');
    const march = report(filled).emptying[2];
    const text = rule(filled, 'fill-at-once')?.text;
    expect(text).toContain('March');
    expect(text).toContain(march.hours! < 72 ? `${Math.floor(march.hours!)} hours` : 'days');
  });

  test('water above the ground pushes the rim out: 1/2 γ h²', () => {
    const raised = withItem(wet(), 'pond.csv', 'water_above_rim_ground', '0.4', 'm');
    expect(rule(raised, 'rim-load')?.text).toContain(`${Math.round((9810 * 0.4 ** 2) / 2)} N`);
    expect(rule(wet(), 'rim-load')).toBeUndefined();
  });

  test('peat wants a vent, sized, at the high point', () => {
    const peat = edited(
      edited(wet(), 'heads.csv', (t) => t.replaceAll(',0.2,', ',2.4,')),
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
