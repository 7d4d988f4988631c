import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  checkedProfile,
  type LinerProfile,
  liftedBands,
  linerProfile,
  netForce,
  type PondShape,
  pressureAlong,
  profileFloor,
  profileRim,
  waterOfStates,
} from '../../lib/uplift/index.js';
import { between, profiles, RUNS } from './geometry.js';

const W = 9810;
const level = (profile: LinerProfile, share: number) => {
  const [floor, rim] = [profileFloor(profile), profileRim(profile)];
  return share === 0 ? floor : share === 1 ? rim : floor + share * (rim - floor);
};

test('a full pond at or above the outside level never lifts anywhere, at any depth', () => {
  fc.assert(
    fc.property(profiles, between(0, 1), between(0, 1), (profile, share, part) => {
      const pond = level(profile, share);
      const outside = profileFloor(profile) - 0.5 + part * (pond - profileFloor(profile) + 0.5);
      const water = { pond, outside };
      for (const { net } of pressureAlong(profile, water)) expect(net).toBeGreaterThanOrEqual(-1e-9);
      expect(netForce(profile, water)).toBeGreaterThanOrEqual(-1e-6);
      expect(liftedBands(profile, water)).toEqual([]);
    }),
    RUNS,
  );
});

test('raising the pond never raises the lift, anywhere, for a head outside', () => {
  fc.assert(
    fc.property(profiles, between(0, 1), between(0, 1), between(-0.5, 2), (profile, a, b, out) => {
      const [low, high] = [a, b].sort((x, y) => x - y).map((share) => level(profile, share!));
      const outside = level(profile, out);
      expect(netForce(profile, { pond: high!, outside })).toBeGreaterThanOrEqual(
        netForce(profile, { pond: low!, outside }) - 1e-6,
      );
      const net = (pond: number) => pressureAlong(profile, { pond, outside });
      const floor = (pond: number) => net(pond).at(-1)!.net;
      expect(floor(high!)).toBeGreaterThanOrEqual(floor(low!));
    }),
    RUNS,
  );
});

test('nothing jumps where one state turns into another', () => {
  fc.assert(
    fc.property(profiles, between(-0.2, 1.3), (profile, out) => {
      const outside = level(profile, out);
      const [floor, rim] = [profileFloor(profile), profileRim(profile)];
      // Emptied to nearly emptied, pond level to head outside, full to a little less.
      const area = profile.length * profile.width;
      for (const limit of [floor, Math.min(Math.max(outside, floor), rim - 2e-6), rim - 2e-6]) {
        const jump =
          netForce(profile, { pond: limit + 1e-6, outside }) - netForce(profile, { pond: limit, outside });
        expect(Math.abs(jump)).toBeLessThanOrEqual(1.01 * W * 1e-6 * area + 1e-6);
      }
    }),
    RUNS,
  );
});

describe('a pond of known numbers', () => {
  const pond: PondShape = {
    shape: 'box',
    length: 4,
    width: 3,
    sideSlope: 0,
    shelf: { depth: 0.3, width: 0.4 },
  };
  const profile = linerProfile(pond, 1);

  test('emptied: the head outside acts from its own level down', () => {
    const water = waterOfStates(profile, 0, 0.1, { outside: -0.2 }).emptied;
    expect(liftedBands(profile, water)).toEqual([{ top: -0.2, bottom: -1 }]);
    expect(pressureAlong(profile, water).at(-1)).toMatchObject({ level: -1, inside: 0 });
    expect(pressureAlong(profile, water).at(-1)!.net).toBeCloseTo(-0.8 * W, 9);
    // Shelf 0.1 m under the head, floor 0.8 m.
    expect(netForce(profile, water)).toBeCloseTo(-W * (0.1 * (12 - 3.2 * 2.2) + 0.8 * 3.2 * 2.2), 6);
  });

  test('each water presses with its depth, and with nothing above its level', () => {
    const points = pressureAlong(profile, { pond: -0.5, outside: -0.2 });
    const levels = points.map(({ level }) => level);
    expect(levels).toEqual([...levels].sort((a, b) => b - a));
    for (const level of [-0.2, -0.5]) expect(levels).toContain(level);
    for (const { level, inside, outside, net } of points) {
      expect(inside).toBeCloseTo(W * Math.max(-0.5 - level, 0), 9);
      expect(outside).toBeCloseTo(W * Math.max(-0.2 - level, 0), 9);
      expect(net).toBeCloseTo(inside - outside, 9);
    }
  });

  test('a drained layer that ends below the ground leaves the wall above it to the undrained head', () => {
    const water = { pond: -0.5, outside: -0.9, above: { level: -0.4, head: -0.1 } };
    expect(liftedBands(profile, water)).toEqual([{ top: -0.1, bottom: -0.4 }]);
    const at = pressureAlong(profile, water).filter(({ level }) => level === -0.4);
    expect(at.map(({ net }) => net / W)).toEqual([expect.closeTo(-0.3, 12), 0]);
  });

  test('the states are the pond levels', () => {
    const { full, 'drawn-down': drawn, emptied } = waterOfStates(profile, -0.05, 2, { outside: -0.2 });
    expect([full.pond, drawn.pond, emptied.pond]).toEqual([-0.05, -1, -1]);
  });
});

describe('bad geometry is refused in words', () => {
  const pond: PondShape = { shape: 'box', length: 4, width: 3, sideSlope: 0.5 };
  const good = linerProfile(pond, 1);
  test.each<[string, () => unknown, RegExp]>([
    [
      'shelf below the floor',
      () => linerProfile({ ...pond, shelf: { depth: 1.1, width: 0.3 } }, 1),
      /shelf at 1.1 m is not between the rim and the floor at 1 m\. Make the shelf shallower/,
    ],
    [
      'shelf of less than nothing',
      () => linerProfile({ ...pond, shelf: { depth: 0.3, width: -0.2 } }, 1),
      /invalid shelf width -0.2 m/,
    ],
    ['overhanging side', () => linerProfile({ ...pond, sideSlope: -0.2 }, 1), /such sides would overhang/],
    ['no depth', () => linerProfile(pond, 0), /invalid depth 0 m/],
    [
      'sides that meet',
      () => linerProfile({ ...pond, sideSlope: 2 }, 1),
      /meet before the floor of a pond 3 m across/,
    ],
    ['no size', () => linerProfile({ ...pond, width: 0 }, 1), /invalid size 4 m by 0 m/],
    [
      'a side that comes back out',
      () =>
        checkedProfile({
          ...good,
          points: [
            { inset: 0, level: 0 },
            { inset: 0.3, level: -0.5 },
            { inset: 0.1, level: -1 },
          ],
        }),
      /steeper than upright/,
    ],
    [
      'a side that climbs',
      () =>
        checkedProfile({
          ...good,
          points: [
            { inset: 0, level: 0 },
            { inset: 0.3, level: -0.5 },
            { inset: 0.5, level: -0.4 },
          ],
        }),
      /it climbs from -0.5 m to -0.4 m/,
    ],
    ['one point', () => checkedProfile({ ...good, points: [{ inset: 0, level: 0 }] }), /missing points/],
    [
      'a point that is none',
      () =>
        checkedProfile({
          ...good,
          points: [
            { inset: 0, level: 0 },
            { inset: Number.NaN, level: -1 },
          ],
        }),
      /both must be numbers/,
    ],
    [
      'less water than none',
      () => netForce(good, { pond: -1.2, outside: 0 }),
      /less than nothing\. An empty pond has its level at the floor/,
    ],
    [
      'more water than it holds',
      () => pressureAlong(good, { pond: 0.1, outside: 0 }),
      /the water would run over/,
    ],
    ['no head', () => netForce(good, { pond: 0, outside: Number.NaN }), /head outside of NaN/],
  ])('%s', (_, make, words) => {
    expect(make).toThrow(words);
  });
});
