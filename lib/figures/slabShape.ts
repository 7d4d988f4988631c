/** The slab on the liner where a pond is cut. */
import type { SlabLaid } from '../contract/index.js';

/**
 * Concrete on floor and sides, up to the rim.
 * @param slab - that is cast
 * @param pond - level of rim and floor and width at the rim, m; `inset`: how far a side has come in at a level, m
 * @returns corners round it: m from the left rim, level
 */
export function slabShape(
  { thickness_m, across_m }: SlabLaid,
  { rim, floor, wide, inset }: { rim: number; floor: number; wide: number; inset: (level: number) => number },
): [x: number, z: number][] {
  const top = floor + thickness_m;
  const face = (level: number) => Math.min(inset(level) + across_m, wide / 2);
  return [
    [inset(rim), rim],
    [inset(floor), floor],
    [wide - inset(floor), floor],
    [wide - inset(rim), rim],
    [wide - face(rim), rim],
    [wide - face(top), top],
    [face(top), top],
    [face(rim), rim],
  ];
}
