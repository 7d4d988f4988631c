import fc from 'fast-check';
import { expect, test } from 'vitest';
import { planFigure } from '../../lib/figures/index.js';
import { invented } from './report.js';

test('the pond on the plan lies along its rim wherever the survey has its origin', () => {
  const corners = [
    [0, 0],
    [6, 0],
    [6, 2],
    [0, 2],
  ];
  const spanAt = (dx: number, dy: number) => {
    const report = invented();
    report.points = corners.map(([x, y], i) => ({
      name: `r${i}`,
      role: 'rim' as const,
      x_m: x! + dx,
      y_m: y! + dy,
      distance_m: null,
      level_m: 0,
    }));
    const pond = planFigure(report, 'metric').data.find(
      (t) => (t as { name?: string }).name === 'pond',
    ) as unknown as {
      x: number[];
      y: number[];
    };
    const span = (of: number[]) => Math.max(...of) - Math.min(...of);
    return [span(pond.x), span(pond.y)];
  };
  const [long, wide] = spanAt(0, 0);
  expect(long!).toBeGreaterThan(wide!);
  const far = fc.integer({ min: -500, max: 500 });
  fc.assert(
    fc.property(far, far, (dx, dy) => {
      const [a, b] = spanAt(dx, dy);
      expect(a).toBeCloseTo(long!, 2);
      expect(b).toBeCloseTo(wide!, 2);
    }),
    { numRuns: 30 },
  );
});
