import { method } from '../formula/index.js';

export const pondShapeMethod = method({
  title: 'Plan and volume of the pond',
  what: 'Areas, outline and volume of a box, round or oval pond with straight sides of one slope.',
  assumptions: ['each side moves in by slope × depth', 'volume by the prismoidal rule, exact for these solids'],
  source: 'geometry; prismoidal rule as in USDA Agriculture Handbook 590 (from memory)',
});

/** Dimensions at the rim, m; `sideSlope` horizontal to 1 vertical. */
export interface PondShape {
  shape: 'box' | 'round' | 'oval';
  length: number;
  width: number;
  sideSlope: number;
}

/** Length and width at a depth below the rim, m. */
function sizeAt(p: PondShape, depth: number): { length: number; width: number } {
  const inward = 2 * p.sideSlope * depth;
  return { length: Math.max(p.length - inward, 0), width: Math.max(p.width - inward, 0) };
}

/** Plan area at a depth below the rim, m²; nought where the sides have met. */
export function planArea(p: PondShape, depth: number): number {
  const { length, width } = sizeAt(p, depth);
  return (p.shape === 'box' ? 1 : Math.PI / 4) * length * width;
}

/** Outline at a depth below the rim, m (ellipse by Ramanujan's first formula, within 1e-4 for garden shapes). */
export function outline(p: PondShape, depth = 0): number {
  const { length, width } = sizeAt(p, depth);
  if (p.shape === 'box') return 2 * (length + width);
  const a = length / 2;
  const b = width / 2;
  return Math.PI * (3 * (a + b) - Math.sqrt((3 * a + b) * (a + 3 * b)));
}

/** Depth at which the sides meet and no floor is left, m; Infinity for upright sides. */
export function deepestFloor(p: PondShape): number {
  return Math.min(p.length, p.width) / (2 * p.sideSlope);
}

/** Volume from the rim down to a depth, m³. */
export function pondVolume(p: PondShape, depth: number): number {
  return (depth / 6) * (planArea(p, 0) + 4 * planArea(p, depth / 2) + planArea(p, depth));
}
