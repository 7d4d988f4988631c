/** Sections for the exact solutions: uniform ground below z = 0, heads from a formula where they are given. */
import {
  type Contact,
  cellAt,
  type HoleCells,
  middleOf,
  pipeHole,
  type Section,
  type SectionSoil,
} from '../../../lib/seepage/section/index.js';

export const UNIFORM: SectionSoil = { across: 1, down: 1, sorptive: 1, drainable: 0.1, storage: 0 };

export type Head = (x: number, z: number) => number | undefined;

export interface GroundInput {
  x: Float64Array;
  z: Float64Array;
  soils?: SectionSoil[];
  soilAt?: (x: number, z: number) => number;
  /** head at the face of an edge; undefined: tight */
  top?: Head;
  bottom?: Head;
  left?: Head;
  right?: Head;
  pipes?: { x: number; z: number; radius: number; head: number }[];
  holeCells?: HoleCells;
}

/** A section with given heads on its edges and pipes as holes. */
export function groundOf(input: GroundInput): Section {
  const { x, z, soils = [UNIFORM], soilAt = () => 0, pipes = [], holeCells = 2 } = input;
  const [nx, nz] = [x.length - 1, z.length - 1];
  const grid = { x, z };
  const soilOf = Int8Array.from({ length: nx * nz }, (_, k) => {
    const at = middleOf(grid, k);
    return soilAt(at.x, at.z);
  });
  const contacts: Contact[] = [];
  const add = (
    cell: number,
    face: Contact['face'],
    at: number,
    height: number,
    head: Head | undefined,
    name: string,
  ) => {
    const value = head?.(at, height);
    if (value !== undefined)
      contacts.push({ cell, face, head: value, height, resistance: 0, outOnly: false, name });
  };
  for (let i = 0; i < nx; i++) {
    const at = (x[i] + x[i + 1]) / 2;
    add((nz - 1) * nx + i, 'level', at, z[nz], input.top, at < 0 ? 'top left' : 'top right');
    add(i, 'level', at, z[0], input.bottom, 'bottom');
  }
  for (let j = 0; j < nz; j++) {
    const at = (z[j] + z[j + 1]) / 2;
    add(j * nx, 'upright', x[0], at, input.left, 'left');
    add(j * nx + nx - 1, 'upright', x[nx], at, input.right, 'right');
  }
  pipes.forEach((pipe, p) => {
    const hole = pipeHole(pipe, soils[0].across, soils[0].down, holeCells);
    const [i0, j0] = [cellAt(x, hole.x.from + 1e-9), cellAt(z, hole.z.from + 1e-9)];
    for (let b = 0; b < holeCells; b++)
      for (let a = 0; a < holeCells; a++) soilOf[(j0 + b) * nx + i0 + a] = -1;
    const head = () => pipe.head;
    for (let a = 0; a < holeCells; a++) {
      const j = j0 + a;
      const i = i0 + a;
      add(j * nx + i0 - 1, 'upright', hole.x.from, pipe.z, head, `pipe ${p}`);
      add(j * nx + i0 + holeCells, 'upright', hole.x.to, pipe.z, head, `pipe ${p}`);
      add((j0 - 1) * nx + i, 'level', pipe.x, hole.z.from, head, `pipe ${p}`);
      add((j0 + holeCells) * nx + i, 'level', pipe.x, hole.z.to, head, `pipe ${p}`);
    }
  });
  return { grid, soils, soilOf, contacts };
}

/** Every cell halved, so often. */
export function halved(lines: Float64Array, times: number): Float64Array {
  if (times === 0) return lines;
  const fine = Float64Array.from({ length: 2 * lines.length - 1 }, (_, i) =>
    i % 2 === 0 ? lines[i / 2] : (lines[(i - 1) / 2] + lines[(i + 1) / 2]) / 2,
  );
  return halved(fine, times - 1);
}

/** Arithmetic–geometric mean: K(k) = π / (2 agm(1, k′)). */
export function ellipticRatio(modulus: number): number {
  const agm = (a: number, b: number): number =>
    Math.abs(a - b) < 1e-15 * a ? a : agm((a + b) / 2, Math.sqrt(a * b));
  // K′/K
  return agm(1, Math.sqrt(1 - modulus * modulus)) / agm(1, modulus);
}

/** Real part of the arc cosine of a complex number. */
export function realArccos(x: number, y: number): number {
  const [a, b] = [Math.hypot(x + 1, y), Math.hypot(x - 1, y)];
  return Math.acos(Math.max(-1, Math.min(1, (a - b) / 2)));
}
