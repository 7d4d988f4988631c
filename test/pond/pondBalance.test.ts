import { describe, expect, test } from 'vitest';
import { type PondForcing, pondSeries, pondStage, runPond } from '../../lib/pond/index.js';
import { type PondShape, pondVolume } from '../../lib/uplift/index.js';

const SHAPES: [string, PondShape, number, number][] = [
  ['upright', { shape: 'box', length: 4, width: 3, sideSlope: 0 }, 0, 1],
  ['a scrape', { shape: 'oval', length: 9, width: 5.5, sideSlope: 4 }, 0, 0.3],
  ['a bowl to a point', { shape: 'round', length: 3, width: 3, sideSlope: 1 }, -0.1, 5],
  [
    'shelf, raised brim',
    { shape: 'box', length: 5, width: 4, sideSlope: 0.5, shelf: { depth: 0.3, width: 0.4 } },
    0.2,
    1,
  ],
];
const days = 400;
/** Showers and sun by a fixed rule. */
const weather = (wet: number) => ({
  rain: Float64Array.from({ length: days }, (_, d) =>
    Math.sin(d * 12.9898) > 0.6 ? wet * Math.abs(Math.sin(d * 7.1)) : 0,
  ),
  demand: Float64Array.from({ length: days }, (_, d) => 0.003 + 0.0025 * Math.sin((2 * Math.PI * d) / 365)),
});
const run = (shape: PondShape, brim: number, depth: number, forcing: Omit<PondForcing, 'coefficient'>) => {
  const stage = pondStage(shape, brim, depth);
  const out = pondSeries(forcing.rain.length);
  const { closure } = runPond(stage, { coefficient: 1.05, ...forcing }, out);
  return { stage, ...out, closure };
};

describe.each(SHAPES)('%s', (_, shape, brim, depth) => {
  test('falls as its volume tells', () => {
    const { stage } = run(shape, brim, depth, { rain: [0], demand: [0] });
    const held = (fall: number) => {
      const z = fall - brim;
      const from = brim > 0 ? 0 : pondVolume(shape, -brim);
      return z <= 0
        ? stage.catchment * fall
        : stage.catchment * Math.max(brim, 0) + pondVolume(shape, z) - from;
    };
    stage.fall.forEach((fall, i) => {
      expect(held(fall)).toBeCloseTo((stage.volume * i) / (stage.fall.length - 1), 6);
    });
    expect(stage.fall.every((f, i) => i === 0 || f > stage.fall[i - 1])).toBe(true);
  });

  test('closes, never stands above its brim nor below its floor, and more water never lowers it', () => {
    const dry = run(shape, brim, depth, weather(0.004));
    const wet = run(shape, brim, depth, weather(0.012));
    const within = run(shape, brim, depth, { ...weather(0.004), within: 0.1 });
    const leaking = run(shape, brim, depth, { ...weather(0.004), leak: 0.002 });
    const most = dry.stage.fall[dry.stage.fall.length - 1];
    for (const pond of [dry, wet, within, leaking]) {
      expect(pond.closure).toBeLessThan(1e-9);
      expect(Math.min(...pond.drawdown)).toBeGreaterThanOrEqual(0);
      expect(Math.max(...pond.drawdown)).toBeLessThanOrEqual(most + 1e-9);
    }
    const worst = (of: (d: number) => number) => Math.max(...dry.drawdown.map((_, d) => of(d)));
    expect(worst((d) => wet.drawdown[d] - dry.drawdown[d])).toBeLessThan(1e-9);
    expect(worst((d) => dry.drawdown[d] - leaking.drawdown[d])).toBeLessThan(1e-9);
    expect(Math.max(...within.drawdown)).toBeLessThanOrEqual(0.1);
  });
});

test('an upright pond falls by what evaporates and leaks, and is filled up when it has fallen by more than is let', () => {
  const upright: PondShape = { shape: 'box', length: 2, width: 5, sideSlope: 0 };
  const out = run(upright, 0, 1, {
    rain: [0, 0, 0, 0.001],
    demand: [0.04, 0.04, 0.04, 0],
    leak: 0.003,
    within: 0.1,
  });
  expect(out.drawdown[0]).toBeCloseTo(0.045, 9);
  expect(out.drawdown[1]).toBeCloseTo(0.09, 9);
  expect(out.drawdown[2]).toBe(0);
  expect(out.topUp[2]).toBeCloseTo(10 * 0.135, 9);
  expect(out.drawdown[3]).toBeCloseTo(0.002, 9);
});

test('rain on the sides fills a pond faster than its surface alone would', () => {
  const cone: PondShape = { shape: 'round', length: 4, width: 4, sideSlope: 4 };
  const out = run(cone, 0, 0.5, { rain: [0, 0.01], demand: [0.2, 0] });
  expect(out.drawdown[0] - out.drawdown[1]).toBeGreaterThan(0.01);
});

test('what a full pond gets runs over, and all that it holds can dry up but no more', () => {
  const upright: PondShape = { shape: 'box', length: 2, width: 5, sideSlope: 0 };
  const out = run(upright, 0, 0.3, { rain: [0.02, 0], demand: [0.005, 1], inflow: [1, 0] });
  expect(out.overflow[0]).toBeCloseTo(10 * (0.02 - 0.00525) + 1, 9);
  expect(out.drawdown[0]).toBe(0);
  expect(out.drawdown[1]).toBeCloseTo(0.3, 9);
});

test('a brim below the floor is refused', () => {
  expect(() => pondStage({ shape: 'box', length: 2, width: 2, sideSlope: 0 }, -0.6, 0.5)).toThrow(
    /outside: a brim/,
  );
});
