import { describe, expect, test } from 'vitest';
import { assess, type Change, LOSS, lossesOf } from '../../lib/decision/index.js';
import { NOTHING } from '../../lib/heads/index.js';
import { driversOf } from '../../lib/reliability/index.js';
import { recommend } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { briefDemo, surveyOf, withItem } from '../folder.js';
import { sweep, WHOLE } from '../sweep.js';
import { baseSurvey } from './base.js';

/** Water whose level is the same every year and badly known, and a ditch low enough for a drain. */
function doubtful(depth = 0.4, spread = 0.35): Record<string, string> {
  const files = baseSurvey({ depth, spread, level: -0.1, source: 'reading error of one look' });
  files['levels.csv'] =
    'point,role,distance_m,level_m\nA,rim,0,10\nB,rim,0,10\nOut,outlet,12,8.2\nBed,ditch,12,7.9\nMark,flood,12,8.1\n';
  return withItem(files, 'site.csv', 'discharge_allowed', 'yes');
}
const site = (files: Record<string, string>) => siteModel(surveyOf(files), { samples: 256 });
const made = new Map<string, ReturnType<typeof assess>>();
/** What it is assessed to be, once however often it is asked for. */
function assessed(files: Record<string, string>, change: Change = {}): ReturnType<typeof assess> {
  const key = JSON.stringify([files, change]);
  const found = made.get(key) ?? assess(site(files), change);
  made.set(key, found);
  return found;
}

describe('measure first', () => {
  test('when knowing the water is worth more than the season it costs', () => {
    const a = assessed(doubtful());
    const season = a.measureNext.find((m) => m.waits)!;
    expect(season.worth_drains).toBeGreaterThan(LOSS.waiting);
    expect(a.decision.option).toBe('measure-first');
    expect(recommend(a).governs).toBe('evidence');
  });

  test('and an input tips what would be chosen without waiting, not the waiting', () => {
    const { tippingPoints } = assessed(doubtful());
    const chosen = assessed(doubtful(), { loss: { ...LOSS, waiting: 2 } });
    expect(tippingPoints).toEqual(chosen.tippingPoints);
    for (const { from } of tippingPoints) expect(from).toBe(chosen.decision.option);
  });

  test('and only then: not where the season costs more', () => {
    const a = assessed(doubtful(), { loss: { ...LOSS, waiting: 2 } });
    expect(a.decision.option).not.toBe('measure-first');
    expect(a.measureNext.find((m) => m.waits)!.worth_drains).toBeLessThan(2);
  });

  test('not where the water is known', () => {
    for (const depth of sweep([0.3, 0.9], 1)) {
      const a = assessed(doubtful(depth, 0.02));
      expect(a.decision.option).not.toBe('measure-first');
    }
  });

  test('the worth is never more than knowing for certain saves', () => {
    // With no error in the reading and the two choices drain and no drain: E(min) against min(E).
    const a = assessed(doubtful());
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
    const { basis } = assessed(doubtful());
    const [first, ...rest] = driversOf(basis, NOTHING, 1);
    expect(['ground-and-water', 'clay-water']).toContain(first.input);
    const blocks = [first, ...rest].filter((d) => d.total !== null);
    const of = (input: string) => blocks.find((d) => d.input === input)!;
    // Jackknifed over 8 replicates of 64 samples, yes or no: right to 0.1.
    expect(Math.abs(of('ground-and-water').first_order - 1)).toBeLessThan(0.2);
    expect(Math.abs(of('ground-and-water').total! - 1)).toBeLessThan(0.2);
    expect(of('building').total).toBe(0);
  });

  test('where only the drain is in doubt, the drain does', () => {
    const a = assessed(briefDemo('clay-slope'));
    expect(a.decision.option).toBe('drain-to-outlet');
    expect(a.drivers[0].input).toBe('building');
    expect(a.drivers[0].total).toBeCloseTo(1, 1);
    const block = a.drivers.find(({ input }) => input === 'ground-and-water')!;
    for (const { input, total, first_order } of a.drivers)
      if (total === null) expect(first_order, input).toBeLessThanOrEqual(block.total!);
  });
});

describe('what nobody has looked up', () => {
  /** A ditch low enough on most days, whose flood decides whether it serves; a sump would too. */
  const unmarked = (flood?: number) => {
    let files = baseSurvey({ depth: 0.2, spread: 0.05, level: -0.1, drawdown: 0.5 });
    for (const item of ['discharge_allowed', 'mains_power', 'pump_acceptable'])
      files = withItem(files, 'site.csv', item, 'yes');
    files['levels.csv'] =
      `point,role,distance_m,level_m\nA,rim,0,10\nB,rim,0,10\nOut,outlet,12,9\nBed,ditch,12,8.9\n${
        flood === undefined ? '' : `Mark,flood,12,${flood}\n`
      }`;
    return assessed(files);
  };
  const ditch = (a: ReturnType<typeof unmarked>) =>
    a.measureNext.find(({ what }) => what === 'ditch-in-flood');

  if (WHOLE)
    test('a flood mark is asked for where the answer hangs on it, and is worth what it saves', () => {
      const open = ditch(unmarked())!;
      const options = [0.2, 0.4, 0.8].map((above) => unmarked(8.9 + above).decision.option);
      const now = unmarked().decision.option;
      const chances = [0.3, 0.4, 0.3];
      const changing = chances.filter((_, i) => options[i] !== now).reduce((sum, c) => sum + c, 0);
      expect(changing).toBeGreaterThan(0);
      expect(open.chance_to_change).toBeCloseTo(changing, 12);
      expect(open.worth_drains).toBeGreaterThan(0);
      expect(open.waits).toBe(false);
    });

  test('the low way out of a ring is asked about where it would do as an outlet, and an outlet where nobody saw a flood', () => {
    const swale = (levels: string, depth = 0.2) => {
      let files = baseSurvey({ depth, spread: 0.05, level: -0.1, drawdown: 0.5 });
      files = withItem(files, 'site.csv', 'discharge_allowed', 'yes');
      files = withItem(files, 'pond.csv', 'highest_raise', '0', 'm');
      files['levels.csv'] = `point,role,distance_m,level_m\nA,rim,0,10\nB,rim,0,10\n${levels}`;
      return assessed(files);
    };
    const asked = (a: ReturnType<typeof swale>) => a.measureNext.map(({ what, where }) => `${what} ${where}`);
    const low = swale('Swale,spill,4,9\n');
    expect(low.decision.option).not.toBe('drain-to-outlet');
    expect(asked(low)).toContain('outlet-at-spill Swale');
    const dry = swale('Swale,spill,4,9\nEnd,outlet,4,9\nMark,flood,4,9\n');
    expect(dry.decision.option).toBe('drain-to-outlet');
    expect(asked(dry).filter((what) => /flood|spill/.test(what))).toEqual([]);
    expect(asked(swale('Swale,spill,4,9\nEnd,outlet,4,9\n')).join()).not.toContain('outlet-at-spill');
    // One no lower than the ground serves no drain, whatever is found out.
    expect(asked(swale('Swale,spill,4,10\n')).join()).not.toContain('outlet-at-spill');
  });

  test('a mark that was levelled is not asked for again', () => {
    expect(ditch(unmarked(9.3))).toBeUndefined();
  });

  test('a deeper hole is asked for where the log ends with the dig, not where it goes on', () => {
    const hole = (bottom: number) => {
      const files = doubtful(1, 0.02);
      files['pits.csv'] = `pit,top_m,bottom_m,texture,consistency\nP1,0,${bottom},clay,stiff\n`;
      return assessed(files).measureNext.find(({ what }) => what === 'deeper-hole');
    };
    expect(hole(1.3)!.chance_to_change).toBeCloseTo(0.1, 12);
    expect(hole(3)).toBeUndefined();
  });
});
