/** What a pond holds, and what its hole is. */
import { formula, type Use, unrecorded } from '../formula/index.js';
import { areaWithin, type PondShape, sideInset } from './pondShape.js';

/** Volume between two level plans. */
export const prismoid = formula({
  title: 'Volume between two levels of the hole (prismoidal rule)',
  symbol: 'V',
  unit: 'm³',
  expression: 'h*(A + 4*M + B)/6',
  parameters: {
    h: { meaning: 'height', unit: 'm', min: 0, max: 10 },
    A: { meaning: 'plan area at its top', unit: 'm²', min: 0, max: 1e4 },
    M: { meaning: 'plan area half way down', unit: 'm²', min: 0, max: 1e4 },
    B: { meaning: 'plan area at its bottom', unit: 'm²', min: 0, max: 1e4 },
  },
  compute: (h: number, A: number, M: number, B: number) => (h * (A + 4 * M + B)) / 6,
  validity: 'exact for sides of one slope',
  source: 'USDA Agriculture Handbook 590 (from memory)',
});

/** Half way between two insets. */
export const insetBetween = formula({
  title: 'How far the sides have come in half way down',
  symbol: 'i',
  unit: 'm',
  expression: '(a + b)/2',
  parameters: {
    a: { meaning: 'at the top', unit: 'm', min: 0, max: 50 },
    b: { meaning: 'at the bottom', unit: 'm', min: 0, max: 50 },
  },
  compute: (a: number, b: number) => (a + b) / 2,
  validity: 'sides of one slope',
  source: 'geometry',
});

/** Height of the hole below a shelf. */
export const belowShelf = formula({
  title: 'Height of the hole below the shelf',
  symbol: 'h',
  unit: 'm',
  expression: 'd - s',
  parameters: {
    d: { meaning: 'depth', unit: 'm', min: 0, max: 10 },
    s: { meaning: 'depth of the shelf', unit: 'm', min: 0, max: 5 },
  },
  compute: (d: number, s: number) => d - s,
  validity: 'below the rim',
  source: 'geometry',
});

/** Volume with a shelf. */
export const withShelf = formula({
  title: 'The hole above and below its shelf',
  symbol: 'V',
  unit: 'm³',
  expression: 'a + b',
  parameters: {
    a: { meaning: 'above the shelf', unit: 'm³', min: 0, max: 1e4 },
    b: { meaning: 'below it', unit: 'm³', min: 0, max: 1e4 },
  },
  compute: (a: number, b: number) => a + b,
  validity: 'one shelf',
  source: 'sum of what is put in',
});

/**
 * Volume of a slice between two insets, m³: the prismoidal rule.
 * @param p - shape, length and width, m
 * @param height - of the slice, m
 * @param top - inset at its top, m
 * @param bottom - inset at its bottom, m
 * @param use - what evaluates the formulas, for a record
 * @returns m³
 */
function sliceVolume(
  p: Omit<PondShape, 'sideSlope'>,
  height: number,
  top: number,
  bottom: number,
  use: Use = unrecorded,
): number {
  const within = (inset: number) => areaWithin(p, inset, use);
  return use(prismoid, height, within(top), within(use(insetBetween, top, bottom)), within(bottom));
}

/**
 * Volume from the rim down to a depth, m³.
 * @param p - shape of the pond
 * @param depth - m below the rim, not below {@link deepestFloor}
 * @param use - what evaluates the formulas, for a record
 * @returns m³
 * @example
 * ```ts
 * pondVolume({ shape: 'box', length: 4, width: 3, sideSlope: 0 }, 0.8); // 9.6
 * ```
 */
export function pondVolume(p: PondShape, depth: number, use: Use = unrecorded): number {
  const { sideSlope, shelf } = p;
  const inset = (z: number, step: number) => use(sideInset, sideSlope, z, step);
  if (!shelf || depth <= shelf.depth) return sliceVolume(p, depth, 0, inset(depth, 0), use);
  const above = sliceVolume(p, shelf.depth, 0, inset(shelf.depth, 0), use);
  const [top, bottom] = [inset(shelf.depth, shelf.width), inset(depth, shelf.width)];
  return use(withShelf, above, sliceVolume(p, use(belowShelf, depth, shelf.depth), top, bottom, use));
}
