import { endpointIntegral } from './endpointIntegral.js';

/** A point of a plane, m, or a complex number. */
export interface PlanePoint {
  x: number;
  y: number;
}

/** A hollow with a level floor and straight sides, m. */
interface Pit {
  /** of the floor */
  width: number;
  /** of the floor below the ground, or below the water where that stands lower; 0 and more */
  depth: number;
  /** of the sides, horizontal to 1 vertical, 0 (upright) and more */
  slope: number;
}

/**
 * The ground below a pit as the image of a half plane: its surface are the reals beyond ±1, the sides run to ±k, the floor
 * lies between −k and k. By Schwarz and Christoffel dz/dw = C ((w² − k²)/(w² − 1))^p, where the sides dip by πp.
 */
export interface PitMap {
  /** dz/dw at a point of the half plane; z in m, y downwards */
  slopeAt(w: PlanePoint): PlanePoint;
  /** place on the reals of a point of the floor, m from its middle */
  onFloor(x: number): number;
  /** place in the half plane of a point below the floor, m from its middle and below it */
  below(at: PlanePoint): PlanePoint;
}

/** Maps a pit. */
export function pitMap({ width, depth, slope }: Pit): PitMap {
  const power = depth > 0 ? Math.atan2(1, slope) / Math.PI : 0;
  const k2 = depth > 0 ? floorShare(power, (2 * depth * Math.hypot(1, slope)) / width) : 1;
  const k = Math.sqrt(k2);
  const scale = width / 2 / floorIntegral(power, k2, k);
  const slopeAt = ({ x, y }: PlanePoint): PlanePoint => {
    if (power === 0) return { x: scale, y: 0 };
    const [re, im] = [x * x - y * y, 2 * x * y];
    const size = scale * (Math.hypot(re - k2, im) / Math.hypot(re - 1, im)) ** power;
    const angle = power * (Math.atan2(im, re - k2) - Math.atan2(im, re - 1));
    return { x: size * Math.cos(angle), y: size * Math.sin(angle) };
  };
  /** w moves by dz/(dz/dw): Runge and Kutta's step of fourth order along a straight path. */
  const walk = (from: PlanePoint, dz: PlanePoint, steps: number): PlanePoint => {
    const step = { x: dz.x / steps, y: dz.y / steps };
    let w = from;
    const moved = (by: PlanePoint, share: number) => ({ x: w.x + share * by.x, y: w.y + share * by.y });
    for (let i = 0; i < steps; i++) {
      const a = quotient(step, slopeAt(w));
      const b = quotient(step, slopeAt(moved(a, 0.5)));
      const c = quotient(step, slopeAt(moved(b, 0.5)));
      const d = quotient(step, slopeAt(moved(c, 1)));
      w = { x: w.x + (a.x + 2 * b.x + 2 * c.x + d.x) / 6, y: w.y + (a.y + 2 * b.y + 2 * c.y + d.y) / 6 };
    }
    return w;
  };
  return {
    slopeAt,
    onFloor: (x) => {
      const wanted = Math.min(Math.abs(x), width / 2);
      let u = 0;
      // The floor's length is concave in u: Newton's steps come up from below and never pass it.
      for (let i = 0; i < 60; i++) {
        const lacks = wanted - scale * floorIntegral(power, k2, u);
        const next = Math.min(u + lacks / slopeAt({ x: u, y: 0 }).x, k);
        if (!(next - u > 1e-12)) break;
        u = next;
      }
      return Math.sign(x) * u;
    },
    // Straight down from the middle of the floor, where nothing is singular, then across.
    below: ({ x, y }) => {
      const down = walk({ x: 0, y: 0 }, { x: 0, y }, STEPS);
      return walk(down, { x, y: 0 }, Math.ceil(STEPS * Math.max(Math.abs(x) / y, 1)));
    },
  };
}

/** Steps to a pipe, or to its depth across. */
const STEPS = 4;

/** ∫ ((k² − t²)/(1 − t²))^p dt from 0 to u. */
function floorIntegral(power: number, k2: number, u: number): number {
  if (power === 0) return u;
  const [u2, rest] = [u * u, Math.max(k2 - u * u, 0)];
  return endpointIntegral((t, toOne) => {
    // 1 − t² without losing the digits next to the end.
    const left = u2 * toOne * (1 + t);
    return u * ((rest + left) / (1 - k2 + rest + left)) ** power;
  });
}

/** ∫ ((t² − k²)/(1 − t²))^p dt from k to 1: the length of a side. */
function sideIntegral(power: number, k2: number): number {
  const gap = 1 - k2;
  return endpointIntegral((s, toOne) => (0.5 * gap * (s / toOne) ** power) / Math.sqrt(k2 + gap * s));
}

/**
 * The k² at which the side is so many times the half floor, by secants: with e = ln(1/k² − 1) the logarithm of that ratio
 * is nearly straight, for shallow pits and deep ones.
 */
function floorShare(power: number, sideOverHalf: number): number {
  const share = (e: number) => 1 / (1 + Math.exp(e));
  const miss = (e: number) => {
    const k2 = share(e);
    return Math.log(sideIntegral(power, k2) / floorIntegral(power, k2, Math.sqrt(k2)) / sideOverHalf);
  };
  let [before, e] = [-1, 0];
  let [missedBefore, missed] = [miss(before), miss(e)];
  for (let i = 0; i < 30 && Math.abs(missed) > 1e-12 && missed !== missedBefore; i++) {
    const next = e - (missed * (e - before)) / (missed - missedBefore);
    [before, missedBefore] = [e, missed];
    e = next;
    missed = miss(e);
  }
  return share(e);
}

function quotient(a: PlanePoint, b: PlanePoint): PlanePoint {
  const size = b.x * b.x + b.y * b.y;
  return { x: (a.x * b.x + a.y * b.y) / size, y: (a.y * b.x - a.x * b.y) / size };
}
