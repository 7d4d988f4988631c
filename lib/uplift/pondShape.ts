import { method } from '../formula/index.js';

export const pondShapeMethod = method({
  title: 'Plan and volume of the pond',
  what: 'Areas, outline and volume of a box, round or oval pond with straight sides of one slope and at most one shelf.',
  assumptions: [
    'each side moves in by slope × depth',
    'volume by the prismoidal rule, exact for these solids',
  ],
  source: 'geometry; prismoidal rule as in USDA Agriculture Handbook 590 (from memory)',
});

/** Dimensions at the rim, m; `sideSlope` horizontal to 1 vertical. */
export interface PondShape {
  shape: 'box' | 'round' | 'oval';
  length: number;
  width: number;
  sideSlope: number;
  /** a level step in the sides, all round: its depth below the rim and its width, m */
  shelf?: { depth: number; width: number };
}

/** A pond that cannot be dug or filled as described; the message is for whoever holds the spade. */
export class PondGeometryError extends Error {
  override name = 'PondGeometryError';
}

/** How far the sides have come in at a depth below the rim, m. A shelf counts once the depth is below it. */
export function insetAt({ sideSlope, shelf }: PondShape, depth: number): number {
  return sideSlope * depth + (shelf && depth > shelf.depth ? shelf.width : 0);
}

/** Plan area where the sides have come in by an inset, m²; nought where they have met. */
export function areaWithin({ shape, length, width }: Omit<PondShape, 'sideSlope'>, inset: number): number {
  const across = Math.max(length - 2 * inset, 0) * Math.max(width - 2 * inset, 0);
  return (shape === 'box' ? 1 : Math.PI / 4) * across;
}

/** Plan area at a depth below the rim, m²; nought where the sides have met. */
export function planArea(p: PondShape, depth: number): number {
  return areaWithin(p, insetAt(p, depth));
}

/** Outline at a depth below the rim, m (ellipse by Ramanujan's first formula, within 1e-4 for garden shapes). */
export function outline(p: PondShape, depth = 0): number {
  const inset = insetAt(p, depth);
  const a = Math.max(p.length / 2 - inset, 0);
  const b = Math.max(p.width / 2 - inset, 0);
  if (p.shape === 'box') return 4 * (a + b);
  return Math.PI * (3 * (a + b) - Math.sqrt((3 * a + b) * (a + 3 * b)));
}

/** Depth at which the sides meet and no floor is left, m; Infinity for upright sides. */
export function deepestFloor({ length, width, sideSlope, shelf }: PondShape): number {
  const half = Math.min(length, width) / 2;
  const plain = half / sideSlope;
  if (!shelf || plain <= shelf.depth) return plain;
  return Math.max((half - shelf.width) / sideSlope || 0, shelf.depth);
}

/** Volume of a slice between two insets, m³: the prismoidal rule. */
export function sliceVolume(
  p: Omit<PondShape, 'sideSlope'>,
  height: number,
  top: number,
  bottom: number,
): number {
  return (height / 6) * (areaWithin(p, top) + 4 * areaWithin(p, (top + bottom) / 2) + areaWithin(p, bottom));
}

/** Volume from the rim down to a depth, m³. */
export function pondVolume(p: PondShape, depth: number): number {
  const { sideSlope, shelf } = p;
  if (!shelf || depth <= shelf.depth) return sliceVolume(p, depth, 0, sideSlope * depth);
  const step = sideSlope * shelf.depth;
  return (
    sliceVolume(p, shelf.depth, 0, step) +
    sliceVolume(p, depth - shelf.depth, step + shelf.width, sideSlope * depth + shelf.width)
  );
}
