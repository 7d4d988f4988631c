/** Exact solutions, each on three grids: what the table of convergence is made of. */

import {
  gradedLines,
  type HoleCells,
  headAt,
  pipeHole,
  type Section,
  type SectionState,
  solveSaturated,
} from '../../../lib/seepage/section/index.js';
import { headLeftUnderFloor } from '../lonePipe.js';
import { ellipticRatio, type GroundInput, groundOf, halved, realArccos } from './ground.js';

export interface ExactCase {
  name: string;
  source: string;
  /** with pipes, whose holes are square */
  pipes?: true;
  /** section at a level: 0 coarse, 1, 2 fine */
  section: (level: 0 | 1 | 2) => Section;
  /** what is compared, as a part of the total head or flow */
  compared: Record<string, (section: Section, state: SectionState) => number>;
  exact: Record<string, number>;
}

const FLOOR = 1;
/** Coarsest lines across a floor and far beyond, refined to its edges. */
const floorLines = (half: number, far: number, size: number, more: number[] = []) =>
  gradedLines(
    [
      { at: -far, size: far / 4 },
      { at: far, size: far / 4 },
      ...[-half, half, ...more].map((at) => ({ at, size })),
    ],
    [],
    COARSE_X,
  );
const COARSE_X = 100;
const COARSE_Z = 50;
const downTo = (depth: number, size: number, more: number[] = []) =>
  gradedLines(
    [{ at: -depth, size: depth / 4 }, { at: 0, size }, ...more.map((at) => ({ at, size }))],
    [],
    COARSE_Z,
  );
/** The same lines on the grids of all three levels. */
const on =
  (x: Float64Array, z: Float64Array, input: (x: Float64Array, z: Float64Array) => Section) =>
  (level: 0 | 1 | 2) =>
    input(halved(x, level), halved(z, level));

const outflow = (name: string) => (_: Section, state: SectionState) => state.flows.out[name];
const at = (x: number, z: number) => (section: Section, state: SectionState) =>
  headAt(section, state.head, x, z);

/** Flat floor: φ = Re arccos(2z/b)/π. */
const flat = (x: number, z: number) => realArccos((2 * x) / FLOOR, (2 * z) / FLOOR) / Math.PI;
const openBeside = (half: number) => (x: number) => (x < -half ? 1 : x > half ? 0 : undefined);

const flatFloor: ExactCase = {
  name: 'flat floor, deep soil',
  source: 'arccos law, UPL-26 (Harr 1962)',

  section: on(floorLines(FLOOR / 2, 8, 0.01), downTo(8, 0.01), (x, z) =>
    groundOf({ x, z, top: openBeside(FLOOR / 2), left: flat, right: flat, bottom: flat }),
  ),
  compared: Object.fromEntries([-0.4, -0.25, 0, 0.25, 0.4].map((x) => [`φ(${x})`, at(x, 0)])),
  exact: Object.fromEntries([-0.4, -0.25, 0, 0.25, 0.4].map((x) => [`φ(${x})`, flat(x, 0)])),
};

const floorOnLayer = (ratio: number): ExactCase => ({
  name: `flat floor b/T = ${ratio} on a layer`,
  source: 'elliptic integrals, UPL-27 (Harr 1962)',

  section: on(floorLines(ratio / 2, ratio / 2 + 6, 0.01), downTo(1, 0.02), (x, z) =>
    groundOf({ x, z, top: openBeside(ratio / 2) }),
  ),
  compared: { 'q/KH': outflow('top right') },
  exact: { 'q/KH': ellipticRatio(Math.tanh((Math.PI * ratio) / 4)) / 2 },
});

/** A sheet from the surface down at x = 0. */
function withPile(section: Section, depth: number): Section {
  const { x, z } = section.grid;
  const nx = x.length - 1;
  const tightRight = new Uint8Array(section.soilOf.length);
  const column = x.findIndex((v) => Math.abs(v) < 1e-9) - 1;
  for (let j = 0; j < z.length - 1; j++) if (z[j] > -depth - 1e-9) tightRight[j * nx + column] = 1;
  return { ...section, tightRight };
}

const sheetPile = (share: number): ExactCase => ({
  name: `sheet pile s/T = ${share} in a layer`,
  source: 'elliptic integrals, UPL-28 (Harr 1962)',

  section: on(floorLines(0, 6, 0.01), downTo(1, 0.02, [-share]), (x, z) =>
    withPile(groundOf({ x, z, top: openBeside(0) }), share),
  ),
  compared: { 'q/KH': outflow('top right') },
  exact: { 'q/KH': ellipticRatio(Math.sin((Math.PI * share) / 2)) / 2 },
});

/** The slit half plane opened: w = √(z² + d²), on the side of x. */
function opened(x: number, z: number, d: number): [number, number] {
  const [re, im] = [x * x - z * z + d * d, 2 * x * z];
  const size = Math.hypot(re, im);
  const u = Math.sqrt(Math.max((size + re) / 2, 0));
  const v = Math.sqrt(Math.max((size - re) / 2, 0));
  return [x < 0 ? -u : u, -v];
}
const endPile = (b: number, d: number) => {
  const half = (d + Math.hypot(b, d)) / 2;
  const middle = (d - Math.hypot(b, d)) / 2;
  return (x: number, z: number) => {
    const [u, v] = opened(x, z, d);
    return realArccos((u - middle) / half, v / half) / Math.PI;
  };
};

const lonePile: ExactCase = (() => {
  const phi = (x: number, z: number) => {
    const [u, v] = opened(x, z, 1);
    return realArccos(u, v) / Math.PI;
  };
  return {
    name: 'lone sheet pile, deep soil',
    source: 'UPL-30 (Harr 1962): (H/π) arcsin(y/s) on the face, H/(πs) at the exit',

    section: on(floorLines(0, 8, 0.02), downTo(8, 0.02, [-1]), (x, z) =>
      withPile(groundOf({ x, z, top: openBeside(0), left: phi, right: phi, bottom: phi }), 1),
    ),
    compared: {
      'φ(y/s = ½)': at(1e-9, -0.5),
      'exit gradient': (section, state) => headAt(section, state.head, 1e-9, -0.06) / 0.06,
    },
    exact: { 'φ(y/s = ½)': Math.asin(0.5) / Math.PI, 'exit gradient': Math.asin(0.06) / Math.PI / 0.06 },
  };
})();

const khosla: ExactCase = (() => {
  const [b, d] = [1, 0.25];
  const phi = endPile(b, d);
  const lambda = (1 + Math.hypot(1, b / d)) / 2;
  return {
    name: 'floor with end pile b/d = 4, deep soil',
    source: 'Khosla, UPL-31: λ = (1 + √(1 + (b/d)²))/2',

    section: on(
      gradedLines(
        [
          { at: -8, size: 2 },
          { at: 8, size: 2 },
          { at: 0, size: 0.006 },
          { at: -b, size: 0.012 },
        ],
        [],
        COARSE_X,
      ),
      downTo(8, 0.012, [-d]),
      (x, z) =>
        withPile(
          groundOf({
            x,
            z,
            top: (s) => (s < -b ? 1 : s > 0 ? 0 : undefined),
            left: phi,
            right: phi,
            bottom: phi,
          }),
          d,
        ),
    ),
    compared: {
      φE: at(-1e-9, 0),
      φD: at(0, -d - 1e-9),
      'φ(−b/2)': at(-b / 2, 0),
    },
    exact: {
      φE: Math.acos((lambda - 2) / lambda) / Math.PI,
      φD: Math.acos((lambda - 1) / lambda) / Math.PI,
      'φ(−b/2)': phi(-b / 2, 0),
    },
  };
})();

const CELLS: Record<0 | 1 | 2, HoleCells> = { 0: 1, 1: 2, 2: 4 };

/** Ground refined to pipes, cells halved from level to level. */
function pipeGround(
  level: 0 | 1 | 2,
  pipes: NonNullable<GroundInput['pipes']>,
  extent: { left: number; right: number; depth: number },
  marks: number[],
  input: Omit<GroundInput, 'x' | 'z' | 'pipes' | 'holeCells'>,
): Section {
  const holeCells = CELLS[level];
  const holes = pipes.map((p) => pipeHole(p, 1, 1, holeCells));
  const size = 0.04 / 2 ** level;
  const growth = 0.12 / 2 ** level;
  const x = gradedLines(
    [
      { at: extent.left, size: size * 40 },
      { at: extent.right, size: size * 40 },
      ...marks.map((m) => ({ at: m, size: size / 4 })),
    ],
    holes.map((h) => h.x),
    100 * 2 ** level,
    growth,
  );
  const z = gradedLines(
    [
      { at: -extent.depth, size: size * 40 },
      { at: 0, size },
    ],
    holes.slice(0, 1).map((h) => h.z),
    50 * 2 ** level,
    growth,
  );
  return groundOf({ x, z, pipes, holeCells, ...input });
}

const drainsUnderFloor = (positions: number[]): ExactCase => {
  const [b, d, radius] = [2, 0.5, 0.05];
  const pipes = positions.map((x) => ({ x, z: -d, radius, head: 0 }));
  const left = headLeftUnderFloor(
    b,
    positions.map((x) => ({ x, depth: d, radius })),
    1,
  );
  const where = [0, 0.25, 0.5, 0.75, 0.9];
  return {
    name: `${positions.length === 1 ? 'one drain' : 'two drains'} under a tight floor`,
    source: `closed form, ${positions.length === 1 ? 'UPL-33, UPL-41' : 'UPL-40'}`,
    pipes: true,
    section: (level) =>
      pipeGround(level, pipes, { left: -16, right: 16, depth: 16 }, [-b / 2, b / 2], {
        top: (x) => (Math.abs(x) > b / 2 ? 1 : undefined),
      }),
    compared: Object.fromEntries(where.map((x) => [`h(${x})`, at((x * b) / 2, 0)])),
    exact: Object.fromEntries(where.map((x) => [`h(${x})`, left((x * b) / 2)])),
  };
};

const soakedDrain: ExactCase = {
  name: 'drain below soaked ground, deep',
  source: 'Kirkham 1949, UPL-34: the image in the surface, exactly Q = 2πKh/arcosh(d/r)',
  pipes: true,
  section: (level) =>
    pipeGround(
      level,
      [{ x: 0, z: -1, radius: 0.05, head: 0 }],
      { left: -60, right: 60, depth: 60 },
      [0.5, -0.5],
      {
        top: () => 1,
      },
    ),
  compared: { 'Q/KH': outflow('pipe 0') },
  exact: { 'Q/KH': (2 * Math.PI) / Math.acosh(1 / 0.05) },
};

/**
 * g of a row of drains below soaked ground, as in soakedRowTerm, but with the head of the whole wall of a drain instead
 * of its top.
 */
function rowTerm(spacing: number, depth: number, drain: number, radius: number): number {
  const points = 16;
  let sum = 0;
  for (let p = 0; p < points; p++) {
    const angle = (2 * Math.PI * (p + 0.5)) / points;
    const near = Math.cos((Math.PI * radius * Math.sin(angle)) / (2 * depth));
    const image = Math.cos((Math.PI * (2 * drain - radius * Math.sin(angle))) / (2 * depth));
    for (let m = -20; m <= 20; m++) {
      const c = Math.cosh((Math.PI * (m * spacing + radius * Math.cos(angle))) / (2 * depth));
      sum += Math.log((((c + near) / (c - near)) * (c - image)) / (c + image)) / points;
    }
  }
  return sum;
}

const soakedRow: ExactCase = {
  name: 'row of drains below soaked ground over a tight layer',
  source: 'Kirkham, UPL-35: L 6, layer at 1.6, drains at 1.2 m',
  pipes: true,
  section: (level) =>
    pipeGround(level, [{ x: 0, z: -1.2, radius: 0.05, head: 0 }], { left: -3, right: 3, depth: 1.6 }, [], {
      top: () => 1,
    }),
  compared: { 'Q/KH': outflow('pipe 0') },
  exact: { 'Q/KH': (4 * Math.PI) / rowTerm(6, 1.6, 1.2, 0.05) },
};

export const EXACT_CASES: ExactCase[] = [
  flatFloor,
  floorOnLayer(0.5),
  floorOnLayer(2),
  sheetPile(0.25),
  sheetPile(0.75),
  lonePile,
  khosla,
  drainsUnderFloor([0]),
  drainsUnderFloor([-0.75, 0.75]),
  soakedDrain,
  soakedRow,
];

/** Errors of a case on one grid. */
export function errorsOf(exact: ExactCase, level: 0 | 1 | 2) {
  const section = exact.section(level);
  const state = solveSaturated(section);
  return {
    cells: section.soilOf.length,
    imbalance: state.flows.imbalance,
    iterations: state.iterations,
    errors: Object.fromEntries(
      Object.entries(exact.compared).map(([name, value]) => [
        name,
        value(section, state) - exact.exact[name],
      ]),
    ),
  };
}
