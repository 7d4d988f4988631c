import { type BandedFactor, bandedWork, factorBanded, solveBanded } from './bandedCholesky.js';
import { coarseLines, lineStrengths } from './coarseLines.js';
import { coarseOperator } from './coarseOperator.js';
import { factorLines, type LineFactors, relaxColumns, relaxRows, startRows } from './lineRelaxation.js';
import { type Prolongation, prolong, prolongationOf, restrict } from './prolongation.js';
import { framed, residual, type Stencil } from './stencil.js';

interface Level {
  stencil: Stencil;
  lines: LineFactors;
  /** of the last level, which is solved outright */
  direct?: BandedFactor;
  /** from the next coarser level; absent on the last */
  prolongation?: Prolongation;
  x: Float64Array;
  b: Float64Array;
  r: Float64Array;
}

/** Work for solving a grid outright, a cell of the finest, below which that is done. */
const SMALL = 25;

/** An operator on ever coarser grids, down to one that is solved outright. */
export interface Multigrid {
  levels: Level[];
}

/** Takes an operator down through coarser grids. */
export function multigridOf(fine: Stencil): Multigrid {
  const levels: Level[] = [];
  let stencil = fine;
  for (;;) {
    const { nx, nz } = stencil;
    const room = () => framed(nx, nz);
    const level: Level = { stencil, lines: factorLines(stencil), x: room(), b: room(), r: room() };
    levels.push(level);
    if (nx === 1 || nz === 1 || bandedWork(stencil) <= SMALL * fine.centre.length) {
      level.direct = factorBanded(stencil);
      return { levels };
    }
    const strength = lineStrengths(stencil);
    level.prolongation = prolongationOf(stencil, coarseLines(strength.columns), coarseLines(strength.rows));
    stencil = coarseOperator(stencil, level.prolongation);
  }
}

/**
 * z ≈ A⁻¹ r: one V-cycle, rows and columns relaxed in turn before and, in the opposite order, after. As an operator it is
 * symmetric and positive. It reads `levels[0].b` and leaves its answer in `levels[0].x`.
 */
export function vCycle({ levels }: Multigrid): void {
  descend(levels, 0);
}

/** z += what the coarser grids say to a residual, framed; nothing on a single line. */
export function coarseCorrection({ levels }: Multigrid, residual: Float64Array, z: Float64Array): void {
  const { prolongation } = levels[0];
  if (!prolongation) return;
  restrict(prolongation, residual, levels[1].b);
  descend(levels, 1);
  prolong(prolongation, levels[1].x, z);
}

function descend(levels: Level[], depth: number): void {
  const { stencil, lines, direct, prolongation, x, b, r } = levels[depth];
  if (direct || !prolongation) {
    if (direct) solveBanded(direct, b, x);
    return;
  }
  startRows(stencil, lines, b, x);
  relaxRows(stencil, lines, b, x, 1);
  relaxColumns(stencil, lines, b, x, 0);
  relaxColumns(stencil, lines, b, x, 1);
  residual(stencil, b, x, r, 2);
  const coarse = levels[depth + 1];
  restrict(prolongation, r, coarse.b, 2);
  descend(levels, depth + 1);
  prolong(prolongation, coarse.x, x);
  relaxColumns(stencil, lines, b, x, 1);
  relaxColumns(stencil, lines, b, x, 0);
  relaxRows(stencil, lines, b, x, 1);
  relaxRows(stencil, lines, b, x, 0);
}
