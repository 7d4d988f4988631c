import { method } from '../../formula/index.js';
import { type Multigrid, vCycle } from './multigrid.js';
import { framed, multiply, residual } from './stencil.js';

export const conjugateGradientsMethod = method({
  title: 'Conjugate gradients with a multigrid as preconditioner',
  what:
    'Solves the flow balance of all cells at once. The preconditioner is one V-cycle of a black-box multigrid: weights ' +
    'that follow the operator, coarse operators Pᵀ A P, rows and columns relaxed as whole lines.',
  assumptions: [
    'five-point operator, symmetric, with at least one given head in every connected part',
    'stops when the largest preconditioned residual, an estimate of the error in head, and the sum of the residuals, ' +
      'an error in flow, are both small',
  ],
  source:
    'Hestenes & Stiefel 1952; Dendy 1982, J. Comput. Phys. 48 (from memory); checked against a direct solver',
});

/** When an iteration may stop. */
interface Tolerance {
  /** largest error in head, m */
  head: number;
  /** sum over cells of what their balance lacks, m²/s; asked at each iteration, as it goes by the flow found so far */
  flow: () => number;
}

/**
 * Solves A x = b from the x given, framed vectors.
 * @param most - iterations allowed
 * @returns number of iterations, or undefined where they were not enough; x is then as far as it came
 */
export function conjugateGradients(
  multigrid: Multigrid,
  b: Float64Array,
  x: Float64Array,
  tolerance: Tolerance,
  most: number,
): number | undefined {
  // The multigrid works in place on its finest level: residual in, correction out.
  const { stencil, b: r, x: z } = multigrid.levels[0];
  const { nx, nz } = stencil;
  const p = framed(nx, nz);
  const q = framed(nx, nz);
  const [first, end] = [nx + 1, nx + 1 + nx * nz];
  residual(stencil, b, x, r);
  let before = 0;
  let lacking = sumOfSizes(r);
  for (let iteration = 0; iteration <= most; iteration++) {
    vCycle(multigrid);
    let rz = 0;
    let head = 0;
    for (let k = first; k < end; k++) {
      rz += r[k] * z[k];
      const error = Math.abs(z[k]);
      if (error > head) head = error;
    }
    if (head <= tolerance.head && lacking <= tolerance.flow()) {
      // The last correction is at hand: it costs nothing to add.
      for (let k = first; k < end; k++) x[k] += z[k];
      return iteration + 1;
    }
    const beta = iteration === 0 ? 0 : rz / before;
    for (let k = first; k < end; k++) p[k] = z[k] + beta * p[k];
    const alpha = rz / multiply(stencil, p, q);
    lacking = 0;
    for (let k = first; k < end; k++) {
      x[k] += alpha * p[k];
      r[k] -= alpha * q[k];
      lacking += Math.abs(r[k]);
    }
    before = rz;
  }
  return undefined;
}

function sumOfSizes(v: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < v.length; k++) sum += Math.abs(v[k]);
  return sum;
}
