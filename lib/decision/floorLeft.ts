import { insetAt, type PondShape } from '../uplift/index.js';

/** Length and width of the floor that sides of a slope leave, m. */
export function floorLeft(shape: PondShape, depth: number): [length: number, width: number] {
  const inset = insetAt(shape, depth);
  return [shape.length - 2 * inset, shape.width - 2 * inset];
}
