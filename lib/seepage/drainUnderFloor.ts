import { formula, method } from '../formula/index.js';

export const drainUnderFloorMethod = method({
  title: 'Pipes in uniform ground under a tight floor',
  what:
    'Head taken off the underside of a liner by pipes below it, the water standing at the surface on both sides: the ' +
    'half plane is mapped on a half strip by z = (b/2) cosh ζ and each pipe is mirrored.',
  assumptions: ['deep uniform ground, plane flow across the floor', 'liner flat; pipes of small radius'],
  source: 'derived; agrees with finite differences within 2 % of the drawdown at the pipe',
});

const share = { meaning: 'flow a metre of pipe over the conductivity', unit: 'm', min: 0, max: 50 };
const depth = {
  meaning: 'twice the depth of the pipe over the width of the floor',
  unit: '-',
  min: 0.02,
  max: 20,
};

/** Head taken off the liner beside one pipe under its middle. */
export const lonePipeRelief = formula({
  title: 'Head that one pipe in plain clay takes off the liner above it',
  symbol: 's',
  unit: 'm',
  expression: 'g/(2*pi)*log((sqrt(1 + e^2) + sqrt(1 - x^2))/(sqrt(1 + e^2) - sqrt(1 - x^2)))',
  parameters: {
    g: share,
    e: depth,
    x: { meaning: 'distance from the middle over half the width', unit: '-', min: 0, max: 1 },
  },
  compute: (g: number, e: number, x: number) => {
    const c = Math.sqrt(1 + e ** 2);
    const s = Math.sqrt(1 - x ** 2);
    return (g / (2 * Math.PI)) * Math.log((c + s) / (c - s));
  },
  validity: drainUnderFloorMethod.assumptions.join('; '),
  source: drainUnderFloorMethod.source,
});

/** Head taken off at the pipe itself. */
export const lonePipeDrawdown = formula({
  title: 'Head taken off at a pipe under a tight floor',
  symbol: 's_w',
  unit: 'm',
  expression: 'g/(2*pi)*log(2*w*(1 + e^2)/e)',
  parameters: {
    g: share,
    e: depth,
    w: { meaning: 'width of the floor over twice the radius of the pipe', unit: '-', min: 2, max: 2000 },
  },
  compute: (g: number, e: number, w: number) => (g / (2 * Math.PI)) * Math.log((2 * w * (1 + e ** 2)) / e),
  validity: drainUnderFloorMethod.assumptions.join('; '),
  source: drainUnderFloorMethod.source,
});

/** A pipe under a floor, m: across from the middle, below the liner, radius. */
export interface BuriedPipe {
  x: number;
  depth: number;
  radius: number;
}

/** A point of the half strip on to which the ground is mapped. */
interface StripPoint {
  xi: number;
  theta: number;
}

/** ζ = arccosh of the point over half the width. */
function stripPoint(x: number, depth: number, width: number): StripPoint {
  const a = Math.hypot((2 * x) / width + 1, (2 * depth) / width);
  const b = Math.hypot((2 * x) / width - 1, (2 * depth) / width);
  return {
    xi: Math.acosh(Math.max((a + b) / 2, 1)),
    theta: Math.acos(Math.max(-1, Math.min(1, (a - b) / 2))),
  };
}

/** Drawdown at a point from a pipe of unit flow over conductivity; `near` stands for the point itself. */
function unitDrawdown(at: StripPoint, pipe: StripPoint, near: number): number {
  return [at.xi - pipe.xi, at.xi + pipe.xi].reduce((sum, across) => {
    const c = Math.cosh(across);
    const self = Math.max(c - Math.cos(at.theta - pipe.theta), near);
    return sum + Math.log((c - Math.cos(at.theta + pipe.theta)) / self) / (4 * Math.PI);
  }, 0);
}

/**
 * Head left under a tight floor with pipes in the ground below it, each holding the water at its own level.
 * @param width - of the floor, m
 * @param pipes - at least one
 * @param head - of the water at the surface on both sides above the pipes, m
 * @returns head left as a function of the distance from the middle of the floor, m
 */
export function headLeftUnderFloor(width: number, pipes: BuriedPipe[], head: number): (x: number) => number {
  const points = pipes.map((p) => stripPoint(p.x, p.depth, width));
  const near = pipes.map(({ radius }, k) => {
    const { xi, theta } = points[k];
    const stretch =
      (width / 2) * Math.hypot(Math.sinh(xi) * Math.cos(theta), Math.cosh(xi) * Math.sin(theta));
    return (radius / stretch) ** 2 / 2;
  });
  const rows = points.map((at, i) => points.map((pipe, k) => unitDrawdown(at, pipe, i === k ? near[k] : 0)));
  const flows = solved(
    rows,
    pipes.map(() => head),
  );
  return (x) => {
    const at = stripPoint(x, 0, width);
    return head - points.reduce((sum, pipe, k) => sum + flows[k] * unitDrawdown(at, pipe, 0), 0);
  };
}

/** Solution of a small system of equations by elimination with the largest pivot. */
function solved(rows: number[][], right: number[]): number[] {
  const n = right.length;
  const m = rows.map((row, i) => [...row, right[i]]);
  for (let c = 0; c < n; c++) {
    const pivot = m
      .slice(c)
      .reduce((best, row, i) => (Math.abs(row[c]) > Math.abs(m[best][c]) ? c + i : best), c);
    [m[c], m[pivot]] = [m[pivot], m[c]];
    for (let r = 0; r < n; r++) {
      if (r === c) continue;
      const factor = m[r][c] / m[c][c];
      for (let k = c; k <= n; k++) m[r][k] -= factor * m[c][k];
    }
  }
  return m.map((row, i) => row[n] / row[i]);
}
