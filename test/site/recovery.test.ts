import { describe, expect, test } from 'vitest';
import { latinNormals } from '../../lib/sampling/index.js';
import { basicTimeLag, intakeShapeFactor } from '../../lib/seepage/index.js';
import {
  dryBound,
  type FillingHole,
  type FillingLook,
  fillingDepth,
  recoveredLevel,
} from '../../lib/site/index.js';

const DAY = 86400;
/** Sealed standpipe: 32 mm pipe in a 100 mm sand pack, open from 1.0 to 1.7 m. */
const PIPE: FillingHole = {
  sealed: true,
  floor: 1.7,
  start: 1.7,
  poolRadius: 0.016,
  holeRadius: 0.05,
  intakeLength: 0.7,
};
/** Open auger hole of 100 mm, 1.5 m deep. */
const HOLE: FillingHole = {
  sealed: false,
  floor: 1.5,
  start: 1.5,
  poolRadius: 0.05,
  holeRadius: 0.05,
  intakeLength: 0.75,
};
const lag = (k: number) => basicTimeLag.compute(PIPE.poolRadius, intakeShapeFactor.compute(0.7, 0.05), k);

/** A pipe's recovery, exact; apart from the library. */
const pipeLooks = (outside: number, k: number, lags: number[], error: number[] = []): FillingLook[] =>
  lags.map((n, i) => ({
    time: n * lag(k),
    depth: outside + (1.7 - outside) * Math.exp(-n) + (error[i] ?? 0),
  }));

/** Ernst's equation integrated by fourth-order Runge–Kutta: dy/dt = −K (D + 20 r)(2 − y/D) y/(4.63 r²). */
function holeLooks(
  outside: number,
  k: number,
  times: number[],
  floor = 1.5,
  r = 0.05,
  start = floor,
): FillingLook[] {
  const below = floor - outside;
  const rate = (y: number) => (-k * (below + 20 * r) * (2 - y / below) * y) / ((4000 / 864) * r * r);
  let y = start - outside;
  let t = 0;
  return times.map((time) => {
    const steps = 400;
    const h = (time - t) / steps;
    for (let i = 0; i < steps; i++) {
      const a = rate(y);
      const b = rate(y + (h * a) / 2);
      const c = rate(y + (h * b) / 2);
      const d = rate(y + h * c);
      y += (h * (a + 2 * b + 2 * c + d)) / 6;
    }
    t = time;
    return { time, depth: outside + y };
  });
}

describe('forward model', () => {
  test('of an open hole is the integral of its equation, empty or bailed', () => {
    const times = [0.2, 0.7, 2, 5].map((d) => d * DAY);
    for (const start of [1.5, 1.1])
      for (const look of holeLooks(0.3, 2e-8, times, 1.5, 0.05, start))
        expect(fillingDepth({ ...HOLE, start }, 0.3, 2e-8, look.time)).toBeCloseTo(look.depth, 9);
  });

  test('after a day a 100 mm hole has recovered 90 % at 1e-7 m/s, a sixth at 1e-8, almost nothing at 1e-9', () => {
    const hole = { ...HOLE, floor: 1, start: 1 };
    const recovered = (k: number) => 1 - fillingDepth(hole, 0, k, DAY);
    expect(recovered(1e-7)).toBeCloseTo(0.9, 1);
    expect(recovered(1e-8)).toBeGreaterThan(0.12);
    expect(recovered(1e-8)).toBeLessThan(0.25);
    expect(recovered(1e-9)).toBeLessThan(0.03);
  });

  test('a narrow pipe in the same hole fills faster by the ratio of the areas', () => {
    const slim = { ...HOLE, poolRadius: 0.025 };
    expect(fillingDepth(slim, 0.3, 1e-8, DAY)).toBeCloseTo(fillingDepth(HOLE, 0.3, 4e-8, DAY), 12);
  });
});

describe('level a sealed pipe is heading for', () => {
  test('three equal looks past half way give it with the permeability quite unknown', () => {
    const looks = pipeLooks(0.4, 3e-9, [1, 2, 3]);
    const found = recoveredLevel(looks, PIPE, { median: 1e-7, spread: Number.POSITIVE_INFINITY });
    if (found.says !== 'level') throw new Error('no level');
    const [a, b, c] = looks.map((l) => -l.depth);
    const formula = -(c + (c - b) ** 2 / (b - a - (c - b)));
    expect(formula).toBeCloseTo(0.4, 12);
    expect(Math.abs(found.depth - formula)).toBeLessThan(0.003);
    expect(found.shallowest).toBeLessThan(0.4);
    expect(found.deepest).toBeGreaterThan(0.4);
    expect(found.deepest - found.shallowest).toBeLessThan(0.06);
    expect(Math.abs(Math.log(found.permeability / 3e-9))).toBeLessThan(0.05);
  });

  test('two looks do when the lag is known, and not when it is not', () => {
    const looks = pipeLooks(0.4, 1e-8, [0.5, 0.8]);
    expect(recoveredLevel(looks, PIPE, { median: 1e-8, spread: 0.05 }).says).toBe('level');
    expect(recoveredLevel(looks, PIPE, { median: 1e-8, spread: Number.POSITIVE_INFINITY }).says).toBe(
      'above',
    );
  });

  test('the band holds the truth in nine of ten repeats with a tape that errs by 5 mm', () => {
    const repeats = 200;
    const z = latinNormals(repeats, 4, 3);
    let held = 0;
    let levels = 0;
    for (let i = 0; i < repeats; i++) {
      const k = 1e-8 * Math.exp(0.7 * z[i * 4 + 3]);
      const looks = pipeLooks(
        0.4,
        k,
        [1, 2, 2.8],
        [0, 1, 2].map((j) => 0.005 * z[i * 4 + j]),
      );
      const found = recoveredLevel(looks, PIPE, { median: 1e-8, spread: 0.7 });
      if (found.says !== 'level') continue;
      levels++;
      if (found.shallowest <= 0.4 && found.deepest >= 0.4) held++;
    }
    expect(levels).toBeGreaterThan(0.9 * repeats);
    expect(held / levels).toBeGreaterThan(0.84);
    expect(held / levels).toBeLessThan(0.96);
  });

  test('does not pass the ground, nor the spill level, and lies above what was seen', () => {
    const looks = pipeLooks(0.05, 1e-8, [0.8, 1.6, 2.4]);
    for (const highest of [0, 0.03]) {
      const found = recoveredLevel(looks, PIPE, { median: 1e-8, spread: 1 }, highest);
      if (found.says !== 'level') throw new Error('no level');
      expect(found.shallowest).toBeGreaterThanOrEqual(highest);
      expect(found.deepest).toBeLessThanOrEqual(looks[2].depth + 0.01);
    }
  });
});

describe('level an open hole is heading for', () => {
  test('early looks rise in a straight line and settle nothing', () => {
    const looks = holeLooks(
      0.3,
      1e-8,
      [0.1, 0.2, 0.3, 0.4].map((d) => d * DAY),
    );
    const rises = looks.slice(1).map((l, i) => looks[i].depth - l.depth);
    expect(Math.max(...rises) / Math.min(...rises)).toBeLessThan(1.01);
    expect(recoveredLevel(looks, HOLE, { median: 1e-8, spread: 1.6 })).toEqual({
      says: 'above',
      depth: looks[3].depth,
    });
  });

  test('looks past half way settle it by the equation of the hole', () => {
    const looks = holeLooks(
      0.3,
      3e-8,
      [0.5, 1, 2, 3].map((d) => d * DAY),
    );
    const found = recoveredLevel(looks, HOLE, { median: 1e-8, spread: 1.6 });
    if (found.says !== 'level') throw new Error('no level');
    expect(Math.abs(found.depth - 0.3)).toBeLessThan(0.01);
    expect(found.shallowest).toBeLessThan(0.3);
    expect(found.deepest).toBeGreaterThan(0.3);
    expect(Math.abs(Math.log(found.permeability / 3e-8))).toBeLessThan(0.1);
  });

  test('of a bailed hole, from the level that was left', () => {
    const looks = holeLooks(
      0.3,
      3e-8,
      [0.5, 1, 2].map((d) => d * DAY),
      1.5,
      0.05,
      1.2,
    );
    const found = recoveredLevel(looks, { ...HOLE, start: 1.2 }, { median: 3e-8, spread: 1 });
    if (found.says !== 'level') throw new Error('no level');
    expect(Math.abs(found.depth - 0.3)).toBeLessThan(0.015);
  });
});

describe('a lower limit only', () => {
  const known = { median: 1e-8, spread: 0.5 };
  test('is left by one look, by looks over months, by no rise, and by looks no recovery fits', () => {
    const looks = pipeLooks(0.4, 1e-8, [1, 2, 3]);
    expect(recoveredLevel([looks[2]], PIPE, known)).toEqual({ says: 'above', depth: looks[2].depth });
    expect(recoveredLevel([looks[0], { ...looks[1], time: 40 * DAY }], PIPE, known).says).toBe('above');
    expect(
      recoveredLevel(
        [
          { time: DAY, depth: 1.7 },
          { time: 2 * DAY, depth: 1.7 },
        ],
        PIPE,
        known,
      ).says,
    ).toBe('above');
    const odd = [looks[0], { ...looks[1], depth: looks[1].depth + 0.3 }, looks[2]];
    expect(recoveredLevel(odd, PIPE, known).says).toBe('above');
  });
});

describe("'dry' as far as the lag allows", () => {
  test('bounds by the inflow a tape would have seen, in ground as tight as one in twenty', () => {
    const known = { median: 1e-8, spread: 0.7 };
    const time = 3 * DAY;
    for (const hole of [HOLE, PIPE]) {
      const bound = dryBound(time, hole, known)!;
      const tight = 1e-8 * Math.exp(-1.6448536 * 0.7);
      expect(hole.floor - fillingDepth(hole, bound, tight, time)).toBeCloseTo(0.02, 9);
      expect(bound).toBeLessThan(hole.floor);
    }
  });

  test('says nothing after an hour in clay, nor where the permeability is not known', () => {
    expect(dryBound(3600, HOLE, { median: 1e-8, spread: 1 })).toBeUndefined();
    expect(dryBound(30 * DAY, HOLE, { median: 1e-8, spread: Number.POSITIVE_INFINITY })).toBeUndefined();
  });

  test('comes down to the floor with time', () => {
    const known = { median: 1e-8, spread: 0.7 };
    const bounds = [2, 4, 8, 20].map((d) => dryBound(d * DAY, HOLE, known)!);
    for (let i = 1; i < 4; i++) expect(bounds[i]).toBeGreaterThan(bounds[i - 1]);
    expect(HOLE.floor - bounds[3]).toBeLessThan(0.1);
  });
});
