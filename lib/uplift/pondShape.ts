import { formula, method, type Use, unrecorded } from '../formula/index.js';
import { UnderpondError } from '../units/index.js';

export const pondShapeMethod = method({
  title: 'Plan and volume of the pond',
  what: 'Areas, outline and volume of a box, round or oval pond with straight sides of one slope and at most one shelf.',
  assumptions: [
    'each side moves in by slope × depth',
    'volume by the prismoidal rule, exact for these solids',
  ],
  source: 'geometry; prismoidal rule as in USDA Agriculture Handbook 590 (from memory)',
});

/** Dimensions at the rim, m, above 0; `sideSlope` horizontal to 1 vertical, 0 (upright) and more. */
export interface PondShape {
  shape: 'box' | 'round' | 'oval';
  length: number;
  width: number;
  sideSlope: number;
  /** a level step in the sides, all round: its depth below the rim and its width, m */
  shelf?: { depth: number; width: number };
}

/** Length or width of the floor, for pipes. */
export const floorSide = formula({
  title: 'Length or width of the floor',
  symbol: 'L',
  unit: 'm',
  expression: 'max(L - 2*s*d, 0.5)',
  parameters: {
    L: { meaning: 'length or width at the rim', unit: 'm', min: 0.1, max: 100 },
    s: { meaning: 'side slope, horizontal to 1 vertical', unit: '-', min: 0, max: 10 },
    d: { meaning: 'depth', unit: 'm', min: 0, max: 10 },
  },
  compute: (L: number, s: number, d: number) => Math.max(L - 2 * s * d, 0.5),
  validity: 'half a metre at least',
  source: 'geometry',
});

/** A circle as large as a plan. */
export const circleRadius = formula({
  title: 'Radius of the circle as large as a plan',
  symbol: 'r',
  unit: 'm',
  expression: 'sqrt(A/pi)',
  parameters: { A: { meaning: 'plan area at the rim', unit: 'm²', min: 0, max: 1e4 } },
  compute: (A: number) => Math.sqrt(A / Math.PI),
  validity: 'ponds not much longer than wide',
  source: 'geometry',
});

const sides = {
  L: { meaning: 'length at the rim', unit: 'm', min: 0.1, max: 100 },
  W: { meaning: 'width at the rim', unit: 'm', min: 0.1, max: 100 },
  i: { meaning: 'how far the sides have come in', unit: 'm', min: 0, max: 50 },
};

/** Outline of a box. */
export const boxOutline = formula({
  title: 'Outline of a box whose sides have come in',
  symbol: 'P',
  unit: 'm',
  expression: '4*(max(L/2 - i, 0) + max(W/2 - i, 0))',
  parameters: sides,
  compute: (L: number, W: number, i: number) => 4 * (Math.max(L / 2 - i, 0) + Math.max(W / 2 - i, 0)),
  validity: 'a rectangle',
  source: 'geometry',
});

/** Outline of an ellipse. */
export const ovalOutline = formula({
  title: 'Outline of a round or oval pond whose sides have come in',
  symbol: 'P',
  unit: 'm',
  expression:
    'pi*(3*(max(L/2 - i, 0) + max(W/2 - i, 0)) - sqrt((3*max(L/2 - i, 0) + max(W/2 - i, 0))*(max(L/2 - i, 0) + 3*max(W/2 - i, 0))))',
  parameters: sides,
  compute: (L: number, W: number, i: number) => {
    const [a, b] = [Math.max(L / 2 - i, 0), Math.max(W / 2 - i, 0)];
    return Math.PI * (3 * (a + b) - Math.sqrt((3 * a + b) * (a + 3 * b)));
  },
  validity: 'ellipse, within 1e-4 for garden shapes',
  source: "Ramanujan's first formula",
});

/** A pond that cannot be dug or filled as described; the message is for whoever holds the spade. */
export class PondGeometryError extends UnderpondError {
  override readonly name = 'PondGeometryError';
  override readonly code = 'pond-geometry';
}

/** How far sloping sides have come in at a depth. */
export const sideInset = formula({
  title: 'How far the sides have come in at a depth',
  symbol: 'i',
  unit: 'm',
  expression: 's*z + w',
  parameters: {
    s: { meaning: 'side slope, horizontal to 1 vertical', unit: '-', min: 0, max: 10 },
    z: { meaning: 'depth below the rim', unit: 'm', min: 0, max: 10 },
    w: { meaning: 'width of the shelf, where it lies above that depth', unit: 'm', min: 0, max: 20 },
  },
  compute: (s: number, z: number, w: number) => s * z + w,
  validity: 'straight sides',
  source: 'geometry',
});

/** Plan area of a pond whose sides have come in all round. */
export const planWithin = formula({
  title: 'Plan area where the sides have come in',
  symbol: 'A',
  unit: 'm²',
  expression: 'f*max(L - 2*i, 0)*max(W - 2*i, 0)',
  parameters: {
    f: { meaning: 'share of the rectangle around it: 1, or pi/4 if oval', unit: '-', min: 0.5, max: 1 },
    L: { meaning: 'length at the rim', unit: 'm', min: 0.1, max: 100 },
    W: { meaning: 'width at the rim', unit: 'm', min: 0.1, max: 100 },
    i: { meaning: 'how far the sides have come in', unit: 'm', min: 0, max: 50 },
  },
  compute: (f: number, L: number, W: number, i: number) =>
    f * (Math.max(L - 2 * i, 0) * Math.max(W - 2 * i, 0)),
  validity: 'a rectangle, circle or ellipse inside the one at the rim',
  source: 'geometry; area of an ellipse pi/4 times its axes',
});

/** Area of sloping sides along their slope. */
export const slopedSides = formula({
  title: 'Area of the sides, along their slope',
  symbol: 'S',
  unit: 'm²',
  expression: '(P + p)/2*d*sqrt(1 + m^2)',
  parameters: {
    P: { meaning: 'outline at the rim', unit: 'm', min: 0, max: 500 },
    p: { meaning: 'outline at the foot', unit: 'm', min: 0, max: 500 },
    d: { meaning: 'depth', unit: 'm', min: 0, max: 10 },
    m: { meaning: 'slope of the sides, horizontal to 1 vertical', unit: '-', min: 0, max: 10 },
  },
  compute: (P: number, p: number, d: number, m: number) => ((P + p) / 2) * d * Math.hypot(1, m),
  validity: 'sides of one slope; a level shelf takes as much of the floor as it adds',
  source: 'geometry',
});

/**
 * Area of the sides from the rim down to a depth, along their slope.
 * @param p - shape of the pond
 * @param depth - m below the rim
 * @param use - what evaluates the formulas, for a record
 * @returns m²
 */
export function sidesArea(p: PondShape, depth: number, use: Use = unrecorded): number {
  return use(slopedSides, outline(p, 0, use), outline(p, depth, use), depth, p.sideSlope);
}

/**
 * How far the sides have come in at a depth below the rim. A shelf counts once the depth is below it.
 * @param pond - its sides and shelf
 * @param depth - m below the rim, 0 and more
 * @param use - what evaluates the formula, for a record; loops go without
 * @returns m
 */
export function insetAt(
  { sideSlope, shelf }: Pick<PondShape, 'sideSlope' | 'shelf'>,
  depth: number,
  use?: Use,
): number {
  const step = shelf && depth > shelf.depth ? shelf.width : 0;
  return use ? use(sideInset, sideSlope, depth, step) : sideInset.compute(sideSlope, depth, step);
}

/**
 * Plan area where the sides have come in by an inset, m²; nought where they have met.
 * @param pond - shape, length and width, m
 * @param inset - how far they have come in all round, m
 * @param use - what evaluates the formula, for a record; loops go without
 * @returns m²
 */
export function areaWithin(
  { shape, length, width }: Omit<PondShape, 'sideSlope'>,
  inset: number,
  use?: Use,
): number {
  const part = shape === 'box' ? 1 : Math.PI / 4;
  return use ? use(planWithin, part, length, width, inset) : planWithin.compute(part, length, width, inset);
}

/**
 * Plan area at a depth below the rim, m²; nought where the sides have met.
 * @param p - shape of the pond
 * @param depth - m below the rim
 * @param use - what evaluates the formula, for a record; loops go without
 * @returns m²
 * @example
 * ```ts
 * planArea({ shape: 'box', length: 4, width: 3, sideSlope: 0.5 }, 0.8); // 7.04
 * ```
 */
export function planArea(p: PondShape, depth: number, use?: Use): number {
  return areaWithin(p, insetAt(p, depth, use), use);
}

/**
 * Length of the outline at a depth below the rim, m (ellipse by Ramanujan's first formula, within 1e-4 for garden shapes).
 * @param p - shape of the pond
 * @param depth - m below the rim; absent: at the rim
 * @param use - what evaluates the formulas, for a record
 * @returns m
 */
export function outline(p: PondShape, depth = 0, use: Use = unrecorded): number {
  const inset = insetAt(p, depth, use);
  return use(p.shape === 'box' ? boxOutline : ovalOutline, p.length, p.width, inset);
}

/**
 * Depth at which the sides meet and no floor is left; Infinity for upright sides.
 * @param pond - its plan, sides and shelf
 * @returns m below the rim
 */
export function deepestFloor({ length, width, sideSlope, shelf }: PondShape): number {
  const half = Math.min(length, width) / 2;
  const plain = half / sideSlope;
  if (!shelf || plain <= shelf.depth) return plain;
  return Math.max((half - shelf.width) / sideSlope || 0, shelf.depth);
}

/** A side of the plan, wider all round. */
export const widerSide = formula({
  title: 'Length or width, wider all round',
  symbol: 'L',
  unit: 'm',
  expression: 'l + 2*x',
  parameters: {
    l: { meaning: 'length or width at the rim', unit: 'm', min: 0.1, max: 100 },
    x: { meaning: 'wider by, on each side', unit: 'm', min: 0, max: 20 },
  },
  compute: (l: number, x: number) => l + 2 * x,
  validity: 'alike on all sides',
  source: 'geometry',
});

/**
 * A pond's plan so much wider all round.
 * @param shape - of the pond
 * @param by - on each side, m
 * @param use - what evaluates the formula, for a record
 * @returns its shape, the sides as they are
 */
export function widened(shape: PondShape, by: number, use: Use = unrecorded): PondShape {
  return { ...shape, length: use(widerSide, shape.length, by), width: use(widerSide, shape.width, by) };
}
