/** The slab on the liner, in the section and in the detail of a side. */
import type { SlabLaid } from '../contract/index.js';

/**
 * The concrete on one side, from the rim down to the floor: half widths and levels.
 * @param side - corners of the liner, from its edge down
 * @param rim - level of the rim, m
 * @param slab - that is cast
 * @param slope - of the sides, horizontal to 1 vertical
 * @returns corners of the liner under it, and of its face
 */
export function slabSide(
  side: readonly [number, number][],
  rim: number,
  { thickness_m: t, across_m: across }: SlabLaid,
  slope: number,
): { liner: [number, number][]; face: [number, number][] } {
  const liner = side.filter(([, z]) => z <= rim);
  const [[edge], ...below] = liner as [[number, number], ...[number, number][]];
  // Every corner moves up by the floor and in by the facing.
  const corners = below.map(([s, z]): [number, number] => [Math.max(s + slope * t - across, 0), z + t]);
  return { liner, face: [[Math.max(edge - across, 0), rim], ...corners] };
}
