/** A drain uphill is credited with what its upkeep earns, as one under the floor is. */
import { expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { NOTHING } from '../../lib/heads/index.js';
import { chanceOf } from '../../lib/reliability/index.js';
import { resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { briefDemo, surveyOf, withItem } from '../folder.js';

/** Never emptied, so that what stands uphill may lift it and nothing else; on ground that rises by 0.12 m. */
const kept = withItem(
  withItem(briefDemo('clay-slope'), 'pond.csv', 'emptied_in', 'never'),
  'pond.csv',
  'water_above_rim_ground',
  '0.1',
  'm',
);

function judged(years?: number) {
  const files = years === undefined ? kept : withItem(kept, 'site.csv', 'drain_blocked_once_in', `${years}`);
  const found = judge(siteModel(surveyOf(files), { samples: 64 }));
  const uphill = found.options.find(({ name }) => name === 'cutoff-drain')!.measures!;
  const chance = (m: typeof uphill) => chanceOf(found.basis, m, 0.5);
  return { found, with: chance(uphill), without: chance(NOTHING) };
}

test('the oftener it blocks the nearer it comes to no drain at all', () => {
  const seen = [1000, 100, 10, 2].map((years) => judged(years));
  for (const { with: drained, without } of seen) {
    expect(drained.perYear).toBeLessThan(without.perYear);
    expect(drained.upkeep).toBeGreaterThan(0);
  }
  for (let i = 1; i < seen.length; i++) {
    expect(seen[i]!.with.perYear).toBeGreaterThan(seen[i - 1]!.with.perYear);
    expect(seen[i]!.with.upkeep).toBeGreaterThan(seen[i - 1]!.with.upkeep);
  }
});

test('beside it stands the pond with it blocked', () => {
  const { found } = judged();
  const { situations } = resultOf(found);
  const of = (name: string) =>
    situations.filter((row) => row.of === 'cutoff-drain' && row.situation === name);
  const blocked = of('drain-blocked').find(({ month }) => month === null)!;
  const nothing = situations.find(
    (row) => row.of === 'no-drain' && row.situation === 'drawn-down' && row.month === null,
  )!;
  expect(blocked.water!.level_m).toBeCloseTo(nothing.water!.level_m, 6);
  expect(blocked.margin_m).toBeLessThan(of('full')[0]!.margin_m!);
  expect(of('drain-blocked')).toHaveLength(13);
});
