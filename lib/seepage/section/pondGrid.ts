import { InputError } from '../../units/index.js';
import { GROWTH, type GridMark, gradedLines, type SectionGrid } from './grid.js';
import { type HoleCells, pipeHole } from './pipeHole.js';
import { placeOf } from './placeOf.js';
import { floorOf, type PondGround, soilsOf, undersidesOf } from './pondGround.js';

/** How fine a section is cut. */
export interface Fineness {
  /** cells across and upwards, about */
  across: number;
  up: number;
  /** cells along the side of a pipe's hole */
  hole: HoleCells;
}

/** 200 by 100 cells, holes of two by two. */
export const USUAL_FINENESS: Fineness = { across: 200, up: 100, hole: 2 };

/** A finer grid grows more gently, so that all its cells are smaller, not only those at the corners. */
function growth(cells: number, usual: number): number {
  return Math.min((GROWTH * usual) / cells, MOST_GROWTH);
}

const MOST_GROWTH = 0.25;

/** Sizes of cells that are asked for, relative to each other; the grid scales them to the number wanted. */
const AT_EDGE = 0.02;
const AT_BOUNDARY = 0.06;
const FAR = 1;

/** Grid of a pond's ground, refined to the corners of the liner, the edges of ring and blanket, and the pipes. */
export function pondGrid(ground: PondGround, fineness: Fineness): { grid: SectionGrid; holes: Hole[] } {
  const { outline, surface, layers, ring, base, pipes } = ground;
  const soils = soilsOf(ground);
  const what = placeOf(ground);
  const holes = pipes.map((pipe): Hole => {
    const place = what(pipe);
    const soil = typeof place === 'number' ? soils[place] : undefined;
    if (!soil)
      throw new InputError(
        'invalid-input',
        `a pipe at x ${pipe.x} m, z ${pipe.z} m lies in the ${place}, not in the ground`,
      );
    return pipeHole(pipe, soil.across, soil.down, fineness.hole);
  });
  const floor = floorOf(ground);
  refuseAtLiner(ground, holes, floor);
  const top = Math.max(...surface.map((p) => p.z), ...outline.map((p) => p.z));
  const edge = (at: number): GridMark => ({ at, size: AT_EDGE });
  const boundary = (at: number): GridMark => ({ at, size: AT_BOUNDARY });
  const [left, right] = [surface[0].x, surface[surface.length - 1].x];
  const inside = (marks: GridMark[], low: number, high: number) =>
    marks.filter((m) => m.at > low + 1e-6 && m.at < high - 1e-6);
  const x = inside(
    [
      ...outline.map((p) => edge(p.x)),
      ...(ring ? outline.flatMap((p) => [boundary(p.x - ring.width), boundary(p.x + ring.width)]) : []),
      ...surface.map((p) => boundary(p.x)),
    ],
    left,
    right,
  );
  const soilBottoms = layers
    .slice(0, -1)
    .map((_, l) => layers.slice(0, l + 1).reduce((sum, layer) => sum + layer.thickness, 0));
  const z = inside(
    [
      ...outline.map((p) => edge(p.z)),
      ...undersidesOf(ground).map(boundary),
      ...(ring?.bottom === undefined ? [] : [boundary(ring.bottom)]),
      ...surface.flatMap((p) => [boundary(p.z), ...soilBottoms.map((d) => boundary(p.z - d))]),
    ],
    base,
    top,
  );
  const end = (at: number): GridMark => ({ at, size: FAR });
  // Pipes side by side share rows, pipes one above another columns.
  const blocks = (axis: 'x' | 'z') =>
    holes
      .map((hole) => hole[axis])
      .filter((block, i, all) => all.findIndex((other) => Math.abs(other.from - block.from) < 1e-9) === i);
  return {
    grid: {
      x: gradedLines(
        [end(left), ...x, end(right)],
        blocks('x'),
        fineness.across,
        growth(fineness.across, USUAL_FINENESS.across),
      ),
      z: gradedLines(
        [end(base), ...z, { at: top, size: AT_BOUNDARY }],
        blocks('z'),
        fineness.up,
        growth(fineness.up, USUAL_FINENESS.up),
      ),
    },
    holes,
  };
}

/** The grid needs a line at the floor, and one at the upper side of the hole half a cell away at least. */
function refuseAtLiner({ outline, pipes }: PondGround, holes: Hole[], floor: number): void {
  holes.forEach(({ z }, p) => {
    const { x, z: middle } = pipes[p];
    const under = x > outline[0].x && x < outline[outline.length - 1].x && middle < floor;
    const room = z.to - middle + (0.5 * (z.to - z.from)) / z.cells;
    if (under && middle + room >= floor)
      throw new InputError(
        'invalid-input',
        `a pipe at x ${x} m lies ${(floor - middle).toFixed(3)} m under the floor; at its radius of ${pipes[p].radius} m it needs ` +
          `more than ${room.toFixed(3)} m to its middle. Lay it deeper.`,
      );
  });
}

/** The hole of a pipe. */
type Hole = ReturnType<typeof pipeHole>;
