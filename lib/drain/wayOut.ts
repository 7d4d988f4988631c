/** By which side of the pond the pipe of a drain leaves. */
import type { Layout } from './layout.js';

/** Length of a pond and across it, at the rim, m. */
interface Plan {
  length: number;
  width: number;
}

/**
 * The pipe leaves the pond square to its side, at the end or in the middle of the long side, whichever lies nearer to
 * where it goes; the end where branches join it.
 * @param kind - of the layout
 * @param rim - length and width, m
 * @param towards - where it goes, along the pond's length and across it from its middle, m; absent: not known
 * @returns one of `[1, 0]`, `[-1, 0]` (the ends), `[0, 1]`, `[0, -1]` (the long sides)
 */
export function wayOut(
  kind: Layout['kind'],
  { length, width }: Plan,
  towards: readonly [number, number] | undefined,
): [number, number] {
  const ends: [number, number][] = [
    [1, 0],
    [-1, 0],
  ];
  const sides: [number, number][] = [
    [0, -1],
    [0, 1],
  ];
  const reach = ([u, v]: [number, number]) =>
    towards ? Math.hypot((u * length) / 2 - towards[0], (v * width) / 2 - towards[1]) : 0;
  return [...ends, ...(kind === 'herringbone' ? [] : sides)].reduce((best, way) =>
    reach(way) < reach(best) - 1e-9 ? way : best,
  );
}

/**
 * Pipe in the bed from the middle of a spine to the foot of the long side by which it leaves.
 * @param layout - kind of the layout
 * @param floor - length and width of the floor, m
 * @param underSide - from the foot of a side to the rim, level, m
 * @param towards - see {@link wayOut}
 * @returns m; nought where it leaves by an end, or from a ring
 */
export function sideBranch(
  { kind }: Pick<Layout, 'kind'>,
  floor: Plan,
  underSide: number,
  towards: readonly [number, number] | undefined,
): number {
  const rim = { length: floor.length + 2 * underSide, width: floor.width + 2 * underSide };
  return kind === 'spine' && wayOut(kind, rim, towards)[0] === 0 ? floor.width / 2 : 0;
}
