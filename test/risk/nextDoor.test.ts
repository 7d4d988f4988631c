import { describe, expect, it } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { NOTHING } from '../../lib/heads/index.js';
import { upliftCheck } from '../../lib/reliability/index.js';
import { nextDoor, reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import {
  nextDoorExit,
  nextDoorFlow,
  nextDoorGround,
  nextDoorTroubles,
} from '../../lib/text/nextDoorWords.js';
import { briefDemo, edited, surveyOf, withItem } from '../folder.js';
import { baseSurvey } from './base.js';

const assessed = (files: Record<string, string>) => judge(siteModel(surveyOf(files), { samples: 48 }));
const door = (files: Record<string, string>) => {
  const { site, decision, drain } = assessed(files);
  return nextDoor(site, decision, drain);
};

const withHouse = (files: Record<string, string>) =>
  edited(files, 'levels.csv', (text) => `${text}mill,neighbour-house,-60,-3,9.9,\n`);

describe('next door', () => {
  it('with no drain: the same ground sheds the storm, the pond all of it, and nothing is drawn down', () => {
    const { exit, boundary_m, winter_day, storm, felt_m, lowered } = door(
      withItem(
        withItem(baseSurvey({ depth: 1.5 }), 'site.csv', 'storm_rain', '40', 'mm'),
        'site.csv',
        'storm_hours',
        '2',
        'h',
      ),
    );
    expect(exit.kind).toBe('brim');
    expect([boundary_m, winter_day, felt_m]).toEqual([null, null, 0]);
    expect(lowered).toEqual([]);
    // 4 m by 3 m, 40 mm: 480 L over two hours, half of it from a lawn.
    expect(storm.brim * storm.seconds).toBeCloseTo(0.48, 9);
    expect(storm.before * storm.seconds).toBeCloseTo(0.24, 9);
    expect(storm).toMatchObject({ named: true, drain: 0, seconds: 7200 });
  });

  it('names every house that is lower than where water comes out, the lowest first', () => {
    const files = baseSurvey({ depth: 1.5 });
    files['levels.csv'] += 'mill,neighbour-house,20,8.6\nours,house,6,9.7\nabove,neighbour-house,9,10.4\n';
    const below = door(files);
    expect(below.downhill.map(({ name, neighbour }) => [name, neighbour])).toEqual([
      ['mill', true],
      ['ours', false],
    ]);
    expect(below.downhill.map(({ below_m }) => below_m)).toEqual([
      expect.closeTo(1.4, 9),
      expect.closeTo(0.3, 9),
    ]);
    expect(nextDoorExit(below, 'metric')).toContain(
      "the house next door (mill), 20.00 m from the pond, by 1.40 m and the house of the pond's owner (ours)",
    );
    expect(door(baseSurvey({ depth: 1.5 })).downhill).toEqual([]);
  });

  it('of a raised pond: counts from its water down, and says where that goes if the bank gives way', () => {
    // Too narrow for flatter sides: of 1.6 m only 1.45 m may be dug.
    const files = (full: string) => {
      const base = baseSurvey({ depth: 0.7, spread: 0.05, level: 0 });
      const items = { depth: '1.6', length: '8', width: '5', highest_raise: '0.5' };
      const set = Object.entries({ ...items, water_above_rim_ground: full }).reduce(
        (all, [item, value]) => withItem(all, 'pond.csv', item, value, 'm'),
        base,
      );
      set['levels.csv'] += 'cot,neighbour-house,9,10.1\nhigh,neighbour-house,9,10.4\n';
      return set;
    };
    const judged = assessed(files('0'));
    expect(judged.decision).toMatchObject({ option: 'raise-pond' });
    const report = reportOf(judged);
    const { held, downhill, exit } = report.next_door;
    expect(held!.above_m).toBeCloseTo(0.15, 9);
    expect(held!.volume_m3).toBeCloseTo(0.15 * 8 * 5, 9);
    expect(exit).toMatchObject({ kind: 'brim', level_m: held!.above_m });
    // At 10.1 m it stands above the ground of the rim and 5 cm below the water.
    expect(downhill).toMatchObject([{ name: 'cot', below_m: expect.closeTo(0.05, 9) }]);
    const told = nextDoorExit(report.next_door, 'metric');
    expect(told).toMatch(
      /stands 0\.15 m above the lowest ground .* gave way, .*6 m³ .* towards the house next door \(cot\)/,
    );
    expect(told).not.toMatch(/as before|does now/);
    expect(nextDoorTroubles(report, 'metric')[0]).toMatch(/gives way/);
    const rules = report.result.recommendation.rules.filter(({ code }) => code === 'notify-neighbour');
    expect(rules.map(({ subject }) => subject)).toContain('bank');
    // The water of a pond in the ground is held by nothing.
    const flat = door(baseSurvey({ depth: 1.5, level: -0.2 }));
    expect([flat.held, flat.exit.level_m]).toEqual([null, 0]);
    expect(nextDoorExit(flat, 'metric')).not.toMatch(/gave way/);
  });

  it('an ordinary winter day is rain less evaporation of the wet months', () => {
    const files = briefDemo('loam-terrace');
    const { site, decision, drain } = assessed(files);
    const { winter_day } = nextDoor(site, decision, drain);
    let [sum, days] = [0, 0];
    for (const { day, rain } of site.survey.weather) {
      const month = new Date(day * 86_400_000).getUTCMonth() + 1;
      if (!site.wetMonths.includes(month)) continue;
      sum += rain! - site.record!.demand[day - site.record!.firstDay];
      days++;
    }
    const area = site.pond.shape.length * site.pond.shape.width;
    // Snow held over the turn of the half-year is a small part.
    expect((winter_day!.brim * 86_400) / area).toBeCloseTo(Math.max(sum / days, 0), 4);
    expect(winter_day!.before).toBeGreaterThan(winter_day!.brim);
  });

  it('measures from the outlet to the boundary line, and says how far a lowering is felt', () => {
    const files = edited(
      briefDemo('clay-slope'),
      'levels.csv',
      (text) => `${text}fence-a,boundary,-10,-20,8.2,\nfence-b,boundary,10,-20,8.2,\n`,
    );
    const { exit, boundary_m, felt_m, lowered } = door(files);
    expect(exit).toMatchObject({ kind: 'outlet', name: 'pipe-end' });
    // The outlet lies at y = -18, between the ends of the fence.
    expect(exit.to_boundary_m).toBeCloseTo(2, 9);
    expect(boundary_m).toBeGreaterThan(15);
    expect(felt_m).toBeGreaterThan(0);
    const [boundary] = lowered;
    expect(boundary!.words === 'not noticeable').toBe(boundary!.distance_m >= felt_m!);
    // What is nothing is told as that, not in millimetres.
    const far = withHouse(files);
    const told = nextDoorGround(reportOf(assessed(far)), 'metric');
    expect(told).toContain('the house next door (mill)');
    expect(told).not.toMatch(/by about 0|\b0 m/);
  });
});

describe('next door to a drain uphill', () => {
  const item = (files: Record<string, string>, name: string, value: string, unit = '') =>
    withItem(files, 'pond.csv', name, value, unit);
  const files = item(
    item(briefDemo('clay-slope'), 'emptied_in', 'never'),
    'water_above_rim_ground',
    '0.1',
    'm',
  );
  const found = assessed(files);
  const report = reportOf(found);
  const { next_door } = report;

  it('the pipe comes out somewhere, and what is worked out nowhere is not known, never nothing', () => {
    expect(found.decision.option).toBe('cutoff-drain');
    const { name, distance } = found.decision.measures.cutoffTo!;
    expect(next_door.exit).toMatchObject({ kind: 'cutoff', name, distance_m: distance });
    expect(next_door.felt_m).toBeNull();
    expect(next_door.winter_day).toMatchObject({ drain: null, drain_high: null });
    expect(next_door.storm).toMatchObject({ drain: null, drain_high: null });
  });

  it.each(['metric', 'us'] as const)('is said, %s', (units) => {
    const { name } = found.decision.measures.cutoffTo!;
    const exit = nextDoorExit(next_door, units);
    expect(exit).toMatch(new RegExp(`comes out at ${name}, [\\d.]+ (m|ft)[^.]* from the pond`));
    expect(exit).not.toContain('No pipe');
    expect(nextDoorFlow(next_door, units)).toContain('is not known yet');
    const ground = nextDoorGround(report, units);
    expect(ground).toContain('draws down the water in the ground beside it');
    expect(ground).toContain('is not known yet');
    expect(ground).not.toContain('nothing draws');
    expect(nextDoorTroubles(report, 'metric').join(' ')).toContain('The pipe blocks');
    expect(nextDoorTroubles(report, 'metric').join(' ')).not.toContain('bed under the liner');
  });
});

describe('the deterministic check', () => {
  it('is the pressure of two heads by the factors of the standard', () => {
    const { basis } = assessed(baseSurvey({ depth: 0.3, level: -0.2, drawdown: 0.1 }));
    const check = upliftCheck({ basis }, 'no-drain', NOTHING, 1);
    expect(check.pond_m).toBeCloseTo(-0.3, 9);
    expect(check.floor_m).toBe(-1);
    expect(check.lifting_pa).toBeCloseTo(9810 * (check.high_m + 1), 6);
    expect(check.holding_pa).toBeCloseTo(0.9 * 9810 * 0.7, 6);
    expect(check.utilisation).toBeCloseTo(check.lifting_pa / check.holding_pa, 9);
    expect(check.met).toBe(check.utilisation <= 1);
    const share =
      basis.draws.clayHigh.filter((high) => high <= check.high_m).length / basis.draws.clayHigh.length;
    expect(share).toBeCloseTo(0.95, 2);
  });
});
