import { describe, expect, test } from 'vitest';
import { assess, possibleDrain } from '../../lib/decision/index.js';
import { withWorks, worksOf } from '../../lib/drain/index.js';
import { linerUplift, type PondGround, pondSection, solveFreeSurface } from '../../lib/seepage/index.js';
import { pondGroundOf, siteModel } from '../../lib/site/index.js';
import { sorptiveNumber } from '../../lib/soil/index.js';
import { briefDemo, surveyOf } from '../folder.js';

const COARSE = { across: 100, up: 60, hole: 2 } as const;
const solved = (ground: PondGround) => {
  const pond = pondSection(ground, COARSE);
  const state = solveFreeSurface(pond.section);
  return { state, liner: linerUplift(pond, state) };
};

describe.each(['clay-hollow', 'clay-slope', 'loam-terrace'])('the section through %s', (demo) => {
  const site = siteModel(surveyOf(briefDemo(demo)), { samples: 64 });
  const ground = pondGroundOf(site);
  const floor = -site.pond.depth;

  test('has the layers of the deepest log, the liner as planned and the water of the wettest month', () => {
    const deepest = Math.max(...site.ground.layers.map(({ row }) => row.bottom));
    expect(ground.layers.reduce((sum, l) => sum + l.thickness, 0)).toBeCloseTo(deepest, 9);
    const { width, sideSlope } = site.pond.shape;
    const toes = ground.outline.filter((p) => p.z === floor).map((p) => p.x);
    expect(toes[1] - toes[0]).toBeCloseTo(width - 2 * sideSlope * site.pond.depth, 9);
    expect(ground.outline[0].z).toBe(site.places.highRim);
    expect(ground.ring?.width ?? 0).toBe(site.pond.ring.width);
    // Their mean is that of both rims; only the slope between them is carried on.
    const mean = ({ far }: PondGround) => (far.left + far.right) / 2;
    for (let month = 1; month <= 12; month++)
      expect(mean(pondGroundOf(site, { month }))).toBeLessThanOrEqual(mean(ground));
  });

  test('a tight liner changes nothing: the water under it stands as it stands outside', () => {
    const { state, liner } = solved(ground);
    expect(Math.abs(state.flows.imbalance)).toBeLessThan(1e-8);
    const { left, right } = ground.far;
    // Water that stands at the ground seeps out of it, at a face that the coarse grid meets to 3 mm, one half as coarse to 2.
    for (const { head } of liner) {
      expect(head).toBeLessThanOrEqual(Math.max(left, right) + 1e-9);
      expect(head).toBeGreaterThanOrEqual(Math.min(left, right) - 0.004);
    }
    // Under the middle of the floor, between what stands at both rims; topsoil that lets more through bends it a little.
    const middle = liner.reduce((a, b) => (Math.abs(b.x) < Math.abs(a.x) ? b : a));
    expect(Math.abs(middle.head - (left + right) / 2)).toBeLessThan(0.07);
  });

  test('its drain holds the emptied liner down, floor and sides', () => {
    const drain = possibleDrain(assess(site))!;
    const { cut, ...works } = worksOf(drain);
    const bare = pondGroundOf(site, { cut });
    const before = Math.max(...solved(bare).liner.map((p) => p.uplift));
    const { state, liner } = solved(withWorks(bare, works));
    expect(Math.abs(state.flows.imbalance)).toBeLessThan(1e-8);
    expect(Math.max(...liner.map((p) => p.uplift))).toBeLessThan(0);
    if (before > 0) expect(state.flows.out['pipe 1']).toBeGreaterThan(0);
  });
});

test('ground that falls across the pond is cut so, along it it is level', () => {
  const site = siteModel(surveyOf(briefDemo('clay-slope')), { samples: 64 });
  const across = pondGroundOf(site);
  // 0.12 m over 3.4 m, carried on for three widths.
  expect(across.surface.map((p) => p.z)).toEqual(
    [0.12 + 0.36, 0.12, 0, -0.36].map((z) => expect.closeTo(z, 9)),
  );
  expect(across.far.left).toBeGreaterThan(across.far.right);
  const along = pondGroundOf(site, { cut: 'along' });
  expect(along.surface.map((p) => Math.abs(p.z))).toEqual([0, 0, 0, 0]);
  expect(along.outline[along.outline.length - 1].x).toBeCloseTo(2.3, 9);
});

test('what is not measured is as the pit log says: alike both ways, sorptive by texture; or as asked for', () => {
  const site = siteModel(surveyOf(briefDemo('clay-hollow')), { samples: 64 });
  for (const { soil } of pondGroundOf(site).layers) expect(soil.down).toBe(soil.across);
  for (const { soil } of pondGroundOf(site, { anisotropy: 10 }).layers)
    expect(soil.across / soil.down).toBeCloseTo(10, 9);
  // The same number as the test of a hole in that layer is read with.
  const read = site.ground.layers.map((l) => sorptiveNumber(l.texture, l.row.structure));
  for (const { soil } of pondGroundOf(site).layers) expect(read).toContain(soil.sorptive);
  expect(() => pondGroundOf(site, { month: 13 })).toThrow('month 13 is outside 1 (January) to 12 (December)');
});

test('rain on loose fill round a tight liner makes the tub', () => {
  const site = siteModel(surveyOf(briefDemo('clay-hollow')), { samples: 64 });
  const summer = { month: 8 } as const;
  const dry = solved(pondGroundOf(site, summer));
  const wet = solved(pondGroundOf(site, { ...summer, rain: 0.002 / 86400 }));
  expect(Math.max(...wet.liner.map((p) => p.head))).toBeGreaterThan(
    Math.max(...dry.liner.map((p) => p.head)) + 0.1,
  );
});
