import { type Multigrid, vCycle } from './multigrid.js';
import { framed } from './stencil.js';
import type { UnsaturatedSystem } from './unsaturated.js';

/** y = J x, framed. */
function slopeTimes(s: UnsaturatedSystem, x: Float64Array, y: Float64Array): void {
  const { nx, nz } = s.stencil;
  const { centre, fromRight, fromLeft, fromAbove, fromBelow } = s;
  const end = nx + 1 + nx * nz;
  for (let k = nx + 1; k < end; k++)
    y[k] =
      centre[k] * x[k] -
      fromRight[k] * x[k + 1] -
      fromLeft[k] * x[k - 1] -
      fromAbove[k] * x[k + nx] -
      fromBelow[k] * x[k - nx];
}

const MOST_ITERATIONS = 60;

/**
 * Solves J δ = −excess by stabilised biconjugate gradients (van der Vorst 1992), the multigrid of the symmetric part as
 * preconditioner, until the preconditioned residual, an estimate of the error in head, has fallen to a part of the
 * first; δ starts at nought.
 * @param reduction - that part
 * @returns number of V-cycles; δ is as far as it came
 */
export function newtonStep(
  system: UnsaturatedSystem,
  multigrid: Multigrid,
  delta: Float64Array,
  reduction: number,
): number {
  const { nx, nz } = system.stencil;
  const [first, end] = [nx + 1, nx + 1 + nx * nz];
  const plane = () => framed(nx, nz);
  const [r, p, v, t, z, y, shadow] = [plane(), plane(), plane(), plane(), plane(), plane(), plane()];
  const dot = (a: Float64Array, b: Float64Array) => {
    let sum = 0;
    for (let k = first; k < end; k++) sum += a[k] * b[k];
    return sum;
  };
  const largest = (a: Float64Array) => {
    let most = 0;
    for (let k = first; k < end; k++) if (Math.abs(a[k]) > most) most = Math.abs(a[k]);
    return most;
  };
  delta.fill(0);
  for (let k = first; k < end; k++) r[k] = -system.excess[k];
  // The preconditioned residual as shadow: cells of slow ground weigh as much as those of fast ground.
  vCycle(multigrid, r, shadow);
  const start = largest(shadow);
  if (start === 0) return 1;
  let cycles = 1;
  let [rho, alpha, omega] = [1, 1, 1];
  for (let iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
    const next = dot(shadow, r);
    const beta = iteration === 0 ? 0 : (next / rho) * (alpha / omega);
    rho = next;
    for (let k = first; k < end; k++) p[k] = r[k] + beta * (p[k] - omega * v[k]);
    vCycle(multigrid, p, y);
    slopeTimes(system, y, v);
    alpha = rho / dot(shadow, v);
    if (!Number.isFinite(alpha)) return cycles;
    for (let k = first; k < end; k++) r[k] -= alpha * v[k];
    vCycle(multigrid, r, z);
    cycles += 2;
    if (largest(z) <= reduction * start) {
      for (let k = first; k < end; k++) delta[k] += alpha * y[k] + z[k];
      return cycles;
    }
    slopeTimes(system, z, t);
    omega = dot(t, r) / dot(t, t);
    for (let k = first; k < end; k++) {
      delta[k] += alpha * y[k] + omega * z[k];
      r[k] -= omega * t[k];
    }
  }
  return cycles;
}
