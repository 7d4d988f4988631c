import { coarseCorrection, type Multigrid } from './multigrid.js';
import { factorSlope, type SlopeLines, slopeResidual, slopeTimes, sweepColumns, sweepRows } from './slope.js';
import { framed } from './stencil.js';
import type { UnsaturatedSystem } from './unsaturated.js';

/** Longest sequence of directions kept. */
const MOST_DIRECTIONS = 30;

/** Room for the steps of one section. */
interface StepRoom {
  lines?: SlopeLines;
  directions: Float64Array[];
  rest: Float64Array;
}

/** See {@link StepRoom}. */
export function stepRoom(nx: number, nz: number): StepRoom {
  return { directions: [], rest: framed(nx, nz) };
}

/**
 * z ≈ J⁻¹ r: one V-cycle that relaxes rows and columns of the slope itself on the finest grid, and takes the coarser
 * grids from the symmetric part.
 */
function precondition(
  { slope }: UnsaturatedSystem,
  lines: SlopeLines,
  multigrid: Multigrid,
  r: Float64Array,
  z: Float64Array,
  rest: Float64Array,
): void {
  z.fill(0);
  sweepRows(slope, lines, r, z, 0);
  sweepRows(slope, lines, r, z, 1);
  sweepColumns(slope, lines, r, z, 0);
  sweepColumns(slope, lines, r, z, 1);
  slopeResidual(slope, r, z, rest);
  coarseCorrection(multigrid, rest, z);
  sweepColumns(slope, lines, r, z, 1);
  sweepColumns(slope, lines, r, z, 0);
  sweepRows(slope, lines, r, z, 1);
  sweepRows(slope, lines, r, z, 0);
}

/**
 * Solves J δ = −excess by the method of generalised minimal residuals (Saad & Schultz 1986), on the preconditioned
 * residual, which is an error in head, so that slow ground weighs as much as fast, until that has fallen to a part of
 * the first.
 * @param reduction - that part
 * @param delta - the step, framed; overwritten
 * @returns number of V-cycles
 */
export function newtonStep(
  system: UnsaturatedSystem,
  multigrid: Multigrid,
  delta: Float64Array,
  reduction: number,
  room: StepRoom,
): number {
  const { nx, nz } = system.slope;
  const [first, end] = [nx + 1, nx + 1 + nx * nz];
  const { directions, rest } = room;
  room.lines = factorSlope(system.slope, room.lines);
  const { lines } = room;
  const direction = (i: number) => {
    directions[i] ??= framed(nx, nz);
    return directions[i];
  };
  const dot = (a: Float64Array, b: Float64Array) => {
    let sum = 0;
    for (let k = first; k < end; k++) sum += a[k] * b[k];
    return sum;
  };
  const scale = (a: Float64Array, factor: number) => {
    for (let k = first; k < end; k++) a[k] *= factor;
  };
  delta.fill(0);
  const image = framed(nx, nz);
  for (let k = first; k < end; k++) image[k] = -system.excess[k];
  precondition(system, lines, multigrid, image, direction(0), rest);
  const start = Math.sqrt(dot(directions[0], directions[0]));
  if (start === 0) return 1;
  scale(directions[0], 1 / start);
  /** the small least-squares problem, made triangular by rotations as it grows */
  const columns: number[][] = [];
  const [cosines, sines] = [[] as number[], [] as number[]];
  const right = [start];
  let size = 0;
  while (size < MOST_DIRECTIONS && Math.abs(right[size]) > reduction * start) {
    slopeTimes(system.slope, directions[size], image);
    const next = direction(size + 1);
    precondition(system, lines, multigrid, image, next, rest);
    const column: number[] = [];
    for (let i = 0; i <= size; i++) {
      const share = dot(next, directions[i]);
      column.push(share);
      const d = directions[i];
      for (let k = first; k < end; k++) next[k] -= share * d[k];
    }
    const length = Math.sqrt(dot(next, next));
    for (let i = 0; i < size; i++) {
      const [a, b] = [column[i], column[i + 1]];
      column[i] = cosines[i] * a + sines[i] * b;
      column[i + 1] = cosines[i] * b - sines[i] * a;
    }
    const pivot = Math.hypot(column[size], length);
    cosines.push(column[size] / pivot);
    sines.push(length / pivot);
    column[size] = pivot;
    right.push(-sines[size] * right[size]);
    right[size] *= cosines[size];
    columns.push(column);
    size++;
    if (length === 0) break;
    scale(next, 1 / length);
  }
  for (let i = size - 1; i >= 0; i--) {
    let sum = right[i];
    for (let j = i + 1; j < size; j++) sum -= columns[j][i] * right[j];
    right[i] = sum / columns[i][i];
    const d = directions[i];
    for (let k = first; k < end; k++) delta[k] += right[i] * d[k];
  }
  return size + 1;
}
