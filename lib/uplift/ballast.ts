import { formula, UNIT_WEIGHT_OF_WATER, type Use, unrecorded } from '../formula/index.js';

const W = UNIT_WEIGHT_OF_WATER;

/** Unit weight of grains under water. */
export const submergedUnitWeight = formula({
  title: 'Submerged unit weight',
  symbol: "γ'",
  unit: 'N/m³',
  expression: 'g*(1 - 1/G)',
  parameters: {
    g: { meaning: 'dry unit weight', unit: 'N/m³', min: 5000, max: 27000 },
    G: { meaning: 'density of the grains over that of water', unit: '-', min: 1.5, max: 3.2 },
  },
  compute: (g: number, G: number) => g * (1 - 1 / G),
  validity: 'grains fully under water',
  source: 'ACPA Design Data 41 (1996), as worked in a public sheet',
});

/** Head that a layer under water holds down. */
export const ballastHead = formula({
  title: 'Head held by ballast under water',
  symbol: 'b',
  unit: 'm',
  expression: 's*t/9810',
  parameters: {
    s: { meaning: 'submerged unit weight', unit: 'N/m³', min: 1000, max: 18000 },
    t: { meaning: 'thickness', unit: 'm', min: 0, max: 2 },
  },
  compute: (s: number, t: number) => (s * t) / W,
  validity: 'on a level floor; loose ballast does nothing for steep sides',
  source: 'statics',
});

/** Head that a slab holds down with no water over it: it weighs all of itself then. */
export const emptiedSlabHead = formula({
  title: 'Head held by a slab in an emptied pond',
  symbol: 'e',
  unit: 'm',
  expression: 'b*c/(c - 9810)',
  parameters: {
    b: { meaning: 'head it holds under water', unit: 'm', min: 0, max: 2 },
    c: { meaning: 'unit weight of the slab', unit: 'N/m³', min: 20000, max: 26000 },
  },
  compute: (b: number, c: number) => (b * c) / (c - W),
  validity: 'over the underside of the slab; no water stands over it',
  source: 'statics',
});

/** Slab thickness that balances a head under it. */
export const slabThickness = formula({
  title: 'Thickness of a slab against a head',
  symbol: 't',
  unit: 'm',
  expression: 'F*9810*h/(c - F*9810)',
  parameters: {
    F: { meaning: 'factor of safety', unit: '-', min: 1, max: 1.5 },
    h: { meaning: 'head above the top of the slab', unit: 'm', min: 0, max: 2 },
    c: { meaning: 'unit weight of the slab', unit: 'N/m³', min: 20000, max: 26000 },
  },
  compute: (F: number, h: number, c: number) => (F * W * h) / (c - F * W),
  validity: 'the head acts on the underside, so the slab displaces water too',
  source: 'statics',
});

/** Thickness of a facing that presses on its side as much as a slab does on the floor. */
export const facingThickness = formula({
  title: 'Thickness of a facing on a side',
  symbol: 'f',
  unit: 'm',
  expression: 't*sqrt(1 + m^2)/m',
  parameters: {
    t: { meaning: 'thickness of the slab on the floor', unit: 'm', min: 0, max: 1 },
    m: { meaning: 'side slope, horizontal to 1 vertical', unit: '-', min: 0.05, max: 10 },
  },
  compute: (t: number, m: number) => (t * Math.hypot(1, m)) / m,
  validity: 'measured square to the side; rests on the slab, so it does not slide',
  source: 'statics: of a weight on a slope only the part square to it presses',
});

/** Thickest concrete that is cast in a garden, m; beyond it another answer is cheaper. Our choice. */
export const THICKEST_SLAB = 0.3;

/**
 * A facing of the same weight as a slab, square to a side, m.
 * @param thickness - of the slab on the floor, m
 * @param sideSlope - horizontal to 1 vertical, 0 (upright) and more
 * @param use - a recorder, for the worked sheet
 * @returns m; null where the side is so steep that no thickness cast in a garden holds by its weight: it is a wall then
 */
export function facingOf(thickness: number, sideSlope: number, use: Use = unrecorded): number | null {
  if (sideSlope <= 0 || facingThickness.compute(thickness, sideSlope) > THICKEST_SLAB) return null;
  return use(facingThickness, thickness, sideSlope);
}

/** Gravel that balances a head with the pond empty and the gravel drained. */
export const drainedGravelThickness = formula({
  title: 'Thickness of drained gravel against a head',
  symbol: 't',
  unit: 'm',
  expression: 'F*9810*h/g',
  parameters: {
    F: { meaning: 'factor of safety', unit: '-', min: 1, max: 1.5 },
    h: { meaning: 'head above the liner', unit: 'm', min: 0, max: 2 },
    g: { meaning: 'dry unit weight', unit: 'N/m³', min: 12000, max: 20000 },
  },
  compute: (F: number, h: number, g: number) => (F * W * h) / g,
  validity: 'no water in the gravel; on a level floor',
  source: 'statics',
});

/** Gravel under pond water that balances what the head outside exceeds the pond by. */
export const submergedGravelThickness = formula({
  title: 'Thickness of gravel under water against an excess head',
  symbol: 't',
  unit: 'm',
  expression: 'F*9810*h/(g*(1 - 1/G))',
  parameters: {
    F: { meaning: 'factor of safety', unit: '-', min: 1, max: 1.5 },
    h: { meaning: 'head outside above the pond level', unit: 'm', min: 0, max: 2 },
    g: { meaning: 'dry unit weight', unit: 'N/m³', min: 12000, max: 20000 },
    G: { meaning: 'density of the grains over that of water', unit: '-', min: 1.5, max: 3.2 },
  },
  compute: (F: number, h: number, g: number, G: number) => (F * W * h) / (g * (1 - 1 / G)),
  validity: 'gravel fully under the pond water; the factor is on the submerged weights',
  source: 'statics; about as thick as the head it answers',
});

/** Gravel: dry unit weight, N/m³ (100 lb/ft³), and density of its grains over that of water. Common practice. */
export const GRAVEL = { unitWeight: 16000, grains: 2.65 };
/** Unit weight of concrete, N/m³. Common practice. */
export const CONCRETE_UNIT_WEIGHT = 24000;
/** Soil and stones of a planted shelf: the same two, dry unit weight in N/m³. Common practice. */
const SHELF_SOIL = { unitWeight: 14000, grains: 2.65 };

/** What may lie on a liner. */
export type BallastKind = 'gravel' | 'slab' | 'soil';

/** A layer on the liner, m thick. */
export interface BallastLayer {
  kind: BallastKind;
  thickness: number;
}

/**
 * Dry unit weight and porosity of a kind of ballast; a slab has no pores.
 * @param kind - of ballast
 * @returns dry unit weight, N/m³, and porosity, 0–1
 */
export function ballastMakeup(kind: BallastKind): { dry: number; porosity: number } {
  if (kind === 'slab') return { dry: CONCRETE_UNIT_WEIGHT, porosity: 0 };
  const { unitWeight, grains } = kind === 'gravel' ? GRAVEL : SHELF_SOIL;
  return { dry: unitWeight, porosity: 1 - unitWeight / (grains * W) };
}

/**
 * Weight on a level square metre of liner, Pa: layers, the water in their pores up to the pond level, the pond above.
 * @param layers - from the liner up, each m thick
 * @param liner - level of the liner there, m above any datum
 * @param pond - pond level, m above the same; below the liner counts as empty
 * @returns Pa, 0 or more
 */
export function weightOnLiner(layers: readonly BallastLayer[], liner: number, pond: number): number {
  let foot = liner;
  let weight = 0;
  for (const { kind, thickness } of layers) {
    const { dry, porosity } = ballastMakeup(kind);
    weight += dry * thickness + porosity * W * Math.min(Math.max(pond - foot, 0), thickness);
    foot += thickness;
  }
  return weight + W * Math.max(pond - foot, 0);
}
