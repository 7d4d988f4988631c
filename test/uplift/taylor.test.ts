/** Taylor's stability numbers against the slip circles they stand for. */
import { expect, test } from 'vitest';
import { taylorNumber } from '../../lib/uplift/index.js';

/**
 * c/(γH) at which a circle through the toe of a slope of height 1 just slides: moment of the ground above it about its
 * centre over radius times arc; 0 where the circle leaves the ground.
 */
function ofCircle(angle: number, x0: number, y0: number): number {
  const run = angle >= 90 ? 0 : 1 / Math.tan((angle * Math.PI) / 180);
  const radius = Math.hypot(x0, y0);
  const exit = x0 + Math.sqrt(Math.max(radius ** 2 - (1 - y0) ** 2, 0));
  if (exit <= Math.max(run, x0)) return 0;
  const slices = 400;
  let moment = 0;
  for (let i = 0; i < slices; i++) {
    const x = ((i + 0.5) / slices) * exit;
    const height =
      Math.min(x < run ? x / run : 1, 1) - (y0 - Math.sqrt(Math.max(radius ** 2 - (x - x0) ** 2, 0)));
    if (height < -1e-9) return 0;
    moment += ((x - x0) * height * exit) / slices;
  }
  const arc = Math.atan2(1 - y0, exit - x0) - Math.atan2(-y0, -x0);
  return moment / (radius ** 2 * (arc < 0 ? arc + 2 * Math.PI : arc));
}

/** The most dangerous of all circles through the toe. */
function mostDangerous(angle: number): number {
  let [x, y, most] = [0, 1, 0];
  const better = (x0: number, y0: number) => {
    const number = ofCircle(angle, x0, y0);
    if (number > most) [x, y, most] = [x0, y0, number];
  };
  for (let x0 = -3; x0 <= 2; x0 += 0.2) for (let y0 = 1; y0 <= 4; y0 += 0.2) better(x0, y0);
  for (let step = 0.1; step > 1e-4; step /= 2)
    for (let again = true; again; ) {
      const before = most;
      for (const [dx, dy] of [
        [1, 0],
        [-1, 0],
        [0, 1],
        [0, -1],
      ] as const)
        better(x + step * dx, y + step * dy);
      again = most > before;
    }
  return most;
}

test.each([90, 75, 60])('%i°: the most dangerous circle through the toe', (angle) => {
  expect(Math.abs(taylorNumber(angle) / mostDangerous(angle) - 1)).toBeLessThan(0.004);
});

test('flatter than 53° in deep clay: a circle of any depth about a point above the middle of the slope', () => {
  // Surplus on one side γH (R sin α)²/2 against c·2αR²: sin²α/(4α), the most where tan α = 2α (Taylor 1937, worked anew).
  let [low, high] = [0.5, 1.5];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (Math.tan(middle) < 2 * middle) low = middle;
    else high = middle;
  }
  const most = Math.sin(low) ** 2 / (4 * low);
  expect(most).toBeCloseTo(1 / 5.52, 4);
  for (const angle of [50, 45, 30]) expect(Math.abs(taylorNumber(angle) / most - 1)).toBeLessThan(0.004);
});
