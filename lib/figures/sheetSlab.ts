/** The slab on the liner, in the section and in the detail of a side. */
import type { PondLine, SettingOut, SlabLaid } from '../contract/index.js';
import { sideOf } from './sheetSection.js';

/**
 * The concrete on one side, from the rim down to the floor: half widths and levels.
 * @param set - lines of the pond
 * @param half - half of a line round the pond along the cut, m
 * @param slab - that is cast
 * @param slope - of the sides, horizontal to 1 vertical
 * @returns corners of the liner under it, and of its face
 */
export function slabSide(
  set: SettingOut,
  half: (line: PondLine) => number,
  { thickness_m: t, across_m: across }: SlabLaid,
  slope: number,
): { liner: [number, number][]; face: [number, number][] } {
  const rim = set.lines.find(({ of }) => of === 'rim')!;
  const liner = sideOf(set, half).filter(([, z]) => z <= rim.level_m);
  // As thick on the floor as on the sides: every corner moves in and up by the same.
  const corners = liner
    .slice(1)
    .map(([s, z]): [number, number] => [Math.max(s + slope * t - across, 0), z + t]);
  return { liner, face: [[Math.max(half(rim) - across, 0), rim.level_m], ...corners] };
}
