/** A slab that is cast on the liner is told, measured and drawn. */
import { describe, expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { drawingSheets, sectionFigure, whichWaterFigure } from '../../lib/figures/index.js';
import { stepsSection } from '../../lib/page/steps.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { wishWords } from '../../lib/text/asked.js';
import { weightOnLiner } from '../../lib/uplift/index.js';
import { briefDemo, edited, surveyOf } from '../folder.js';

const site = (files: Record<string, string>) =>
  edited(files, 'site.csv', (t) =>
    t
      .replace('discharge_allowed,yes', 'discharge_allowed,no')
      .replace('pump_acceptable,yes', 'pump_acceptable,no'),
  );
const slabbed = reportOf(
  judge(
    siteModel(
      surveyOf(
        edited(site(briefDemo('clay-slope')), 'pond.csv', (t) =>
          t
            .replace('water_above_rim_ground,0.3,m', 'water_above_rim_ground,0,m')
            .replace(/side_slope,[\d.]+/, 'side_slope,1'),
        ),
      ),
      { seed: 1, samples: 64 },
    ),
  ),
);

describe('a slab on the liner', () => {
  const { slab, result, pond } = slabbed;
  const { depth_m } = result.recommendation;

  test('takes of the pond what its concrete fills', () => {
    expect(result.recommendation.option).toBe('ballast');
    // Concrete of floor and sides apart, counted once more at every edge: a little more than what is lost.
    const concrete = result.build!.quantities.find(({ item }) => item.startsWith('concrete'))!.amount;
    const lost = slab!.volume_m3 - slab!.left_m3;
    expect(lost).toBeGreaterThan(0.75 * concrete);
    expect(lost).toBeLessThan(concrete);
    // The hole itself, by the prismoidal rule.
    const [L, W, s] = [pond.length_m, pond.width_m, pond.side_slope];
    const plan = (z: number) => (L - 2 * s * z) * (W - 2 * s * z);
    expect(slab!.volume_m3).toBeCloseTo((depth_m / 6) * (plan(0) + 4 * plan(depth_m / 2) + plan(depth_m)), 6);
  });

  test('presses on a side as much as on the floor', () => {
    const { thickness_m, facing_m } = slab!;
    // A square metre of the side, 1 : m, has of its weight the part m ÷ √(1 + m²) square to it.
    const m = pond.side_slope;
    expect((facing_m! * m) / Math.sqrt(1 + m * m)).toBeCloseTo(thickness_m, 9);
  });

  test('holds with all its weight where the pond is emptied, and with what it weighs under water where it is not', () => {
    const slabHolds = (pond: number) =>
      weightOnLiner([{ kind: 'slab', thickness: slab!.thickness_m }], -depth_m, pond) / 9810;
    const own = result.situations.filter(({ of }) => of === 'recommended');
    const emptied = own.filter(({ situation }) => situation === 'emptied');
    expect(emptied).toHaveLength(12);
    for (const { level_m } of emptied) expect(level_m! + depth_m).toBeCloseTo(slabHolds(-depth_m), 6);
    const full = own.find(({ situation }) => situation === 'full')!;
    expect(full.margin_m).toBeCloseTo(slabHolds(full.level_m!) - depth_m - full.water!.level_m, 6);
  });

  test('is drawn as thick as it is, where the pond is cut', () => {
    const trace = sectionFigure(slabbed, 'metric').data.find(
      (each) => (each as { name?: string }).name === 'concrete slab',
    ) as unknown as { y: number[] };
    const levels = [...new Set(trace.y)].sort((a, b) => a - b);
    expect(levels[1]! - levels[0]!).toBeCloseTo(slab!.thickness_m, 3);
    expect(whichWaterFigure(slabbed, 'metric').wide).toContain('fig-concrete');
    const [, sheet] = drawingSheets(slabbed, 'metric');
    expect(sheet!.svg).toContain('top of slab');
    expect(sheet!.alt).toContain(`concrete slab, ${slab!.thickness_m.toFixed(2)} m`);
  });

  test('is told with what it leaves', () => {
    for (const units of ['metric', 'us'] as const)
      expect(wishWords(slabbed, units)).toMatch(
        /takes .+ of the water's depth and about \d+ % of what the pond would hold\./,
      );
  });

  test('is cast in dry months, and where there are none only with the water kept pumped low', () => {
    expect(stepsSection(slabbed, 'metric').html).toMatch(/Cast the slab on it (in|from) [A-Z]/);
    const wet = { ...slabbed, slab: { ...slab!, cast_in: [] } };
    const steps = stepsSection(wet, 'metric').html;
    expect(steps).toContain('kept pumped below it');
    expect(steps).not.toContain('Cast the slab on it');
  });
});
