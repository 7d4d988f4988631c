import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BallastLayer,
  ballastHead,
  FLOTATION_WANTED,
  GRAVEL,
  liftBalance,
  liftBalances,
  linerProfile,
  type PondShape,
  submergedUnitWeight,
  waterOfStates,
  weightOnLiner,
} from '../../lib/uplift/index.js';
import { between, RUNS } from './geometry.js';

const W = 9810;
const POND: PondShape = {
  shape: 'oval',
  length: 4,
  width: 3,
  sideSlope: 0.5,
  shelf: { depth: 0.2, width: 0.3 },
};
const layers = fc.array(
  fc.record({
    kind: fc.constantFrom<BallastLayer['kind']>('gravel', 'slab', 'soil'),
    thickness: between(0, 0.4),
  }),
  { maxLength: 3 },
);

test('more ballast never lowers the factor; deeper never raises that of the empty pond', () => {
  fc.assert(
    fc.property(
      layers,
      between(0, 0.3),
      between(0.3, 1.2),
      between(0, 0.3),
      between(-1, 0.2),
      (on, more, depth, deeper, head) => {
        const factor = (d: number, ballast: BallastLayer[]) => {
          const profile = linerProfile(POND, d);
          return (
            liftBalance(profile, 'emptied', { pond: -d, outside: head }, ballast).factor ??
            Number.POSITIVE_INFINITY
          );
        };
        expect(factor(depth, [...on, { kind: 'gravel', thickness: more }])).toBeGreaterThanOrEqual(
          factor(depth, on) - 1e-12,
        );
        expect(factor(depth + deeper, on)).toBeLessThanOrEqual(factor(depth, on) + 1e-12);
      },
    ),
    RUNS,
  );
});

test('raising the pond never lowers what holds, and its weight does not jump at the top of a layer', () => {
  fc.assert(
    fc.property(layers, between(0, 1.5), between(0, 0.5), (on, water, more) => {
      expect(weightOnLiner(on, -1, -1 + water + more)).toBeGreaterThanOrEqual(
        weightOnLiner(on, -1, -1 + water) - 1e-9,
      );
      expect(
        Math.abs(weightOnLiner(on, -1, -1 + water + 1e-9) - weightOnLiner(on, -1, -1 + water)),
      ).toBeLessThan(2e-5);
    }),
    RUNS,
  );
});

test('the thickness found brings the factor asked for, in water or out of it', () => {
  fc.assert(
    fc.property(
      between(0.3, 1.2),
      between(0, 1),
      between(0.05, 1.4),
      between(1, 1.5),
      (depth, water, rise, wanted) => {
        const profile = linerProfile(POND, depth);
        const at = { pond: -depth + water * depth, outside: -depth + rise };
        const { needed, factor } = liftBalance(profile, 'drawn-down', at, [], wanted);
        if (factor! >= wanted) expect(needed).toEqual({ gravel: 0, slab: 0 });
        else
          for (const kind of ['gravel', 'slab'] as const) {
            const held = liftBalance(profile, 'drawn-down', at, [{ kind, thickness: needed[kind] }], wanted);
            expect(held.factor).toBeCloseTo(wanted, 9);
          }
      },
    ),
    RUNS,
  );
});

test('a pond under water of 0.7 m outside, full, drawn down and emptied', () => {
  const profile = linerProfile({ ...POND, shelf: undefined }, 1);
  const waters = waterOfStates(profile, 0, 0.1, { outside: -0.3 });
  const [full, drawn, emptied] = liftBalances(profile, waters);
  expect([full!.lacking, drawn!.lacking]).toEqual([0, 0]);
  expect(full!.factor).toBeCloseTo(1 / 0.7, 12);
  expect(drawn!.factor).toBeCloseTo(0.9 / 0.7, 12);
  expect(emptied).toMatchObject({ factor: 0, holds: 0, lifted: [{ top: -0.3, bottom: -1 }] });
  expect(emptied!.lacking).toBeCloseTo(0.7, 12);
  expect(emptied!.needed.gravel).toBeCloseTo((FLOTATION_WANTED * 0.7 * W) / 16000, 12);
});

test('water that stays below the floor lifts nothing', () => {
  const profile = linerProfile(POND, 0.8);
  const [, , emptied] = liftBalances(profile, waterOfStates(profile, 0, 0.1, { outside: -1 }));
  expect(emptied).toMatchObject({
    lifts: 0,
    factor: null,
    lacking: 0,
    lifted: [],
    needed: { gravel: 0, slab: 0 },
  });
});

describe('ballast', () => {
  test('gravel under water holds its submerged weight more than the water did', () => {
    const more = weightOnLiner([{ kind: 'gravel', thickness: 0.2 }], -1, 0) - weightOnLiner([], -1, 0);
    const submerged = submergedUnitWeight.compute(GRAVEL.unitWeight, GRAVEL.grains);
    expect(more / W).toBeCloseTo(ballastHead.compute(submerged, 0.2), 12);
  });
});
