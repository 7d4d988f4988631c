import type { GridBlock } from './grid.js';

/**
 * Radius of a pipe over the side of the square hole that stands for it, by the number of cells along the side: the hole
 * of so many cells draws water from uniform ground as a round pipe of that radius does. Found on a fine square
 * lattice; for one cell exactly exp(π/4 − γ)/√8, for very many 0.5902.
 */
const RADIUS_OVER_SIDE: Record<number, number> = {
  1: 0.43538,
  2: 0.531535,
  3: 0.557046,
  4: 0.567905,
  6: 0.577347,
  8: 0.581474,
};

/** How many cells a pipe's hole may have along its side. */
export type HoleCells = 1 | 2 | 3 | 4 | 6 | 8;

/**
 * The square hole, in ground that conducts unequally a rectangle, that draws water as a round pipe does.
 * @param across - conductivity across, and `down` downwards, of the ground around it
 */
export function pipeHole(
  pipe: { x: number; z: number; radius: number },
  across: number,
  down: number,
  cells: HoleCells,
): { x: GridBlock; z: GridBlock } {
  // In lengths stretched until the ground conducts alike, the circle is an ellipse of nearly the mean radius.
  const stretch = (across / down) ** 0.25;
  const side = (pipe.radius * (stretch + 1 / stretch)) / 2 / RADIUS_OVER_SIDE[cells];
  const block = (at: number, length: number): GridBlock => ({
    from: at - length / 2,
    to: at + length / 2,
    cells,
  });
  return { x: block(pipe.x, side * stretch), z: block(pipe.z, side / stretch) };
}
