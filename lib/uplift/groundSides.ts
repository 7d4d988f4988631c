import { formula, method, UNIT_WEIGHT_OF_WATER } from '../formula/index.js';
import type { Structure, Texture } from '../soil/index.js';

export const groundSides = method({
  title: 'Sides by the kind of ground',
  what: 'Steepest side of every texture, dry and with water seeping out of it; where none can be named, a flat bound.',
  assumptions: [
    'sand, gravel and silt: angle of friction in a loose state, 1.25 on its tangent when dry (EN 1997-1, partial factor on tan φ), ' +
      'and no less than 1 with the water outside seeping along the face; damp cohesion is not counted',
    'loams stand 1 to 1 dry (type B of 29 CFR 1926 Subpart P Appendices A and B), and as sand does once water stands in the side',
    'cracked, blocky or rooted clay is never credited upright: at least 0.5 to 1, the steepest slope in that appendix; massive clay by its strength',
    'peat and made ground: no slope can be named; 3 to 1 dry is a bound of our choice, and an engineer is asked',
  ],
  source:
    'friction: BS 8002:1994 section 2 and Terzaghi & Peck 1967, loose states, both from memory; classes: 29 CFR 1926 Subpart P',
});

/** Factor on the tangent of friction for a dry side: EN 1997-1, set M2. */
const FRICTION_FACTOR = 1.25;
/** Steepest side credited to a clay with cracks, horizontal to 1 vertical. */
export const FISSURED_SLOPE = 0.5;
/** Flat bound where no slope can be named, horizontal to 1 vertical, dry. Our choice. */
export const FLAT_BOUND = 3;
/** Dry side of a loam, horizontal to 1 vertical: type B. */
const LOAM_SLOPE = 1;
/** Saturated unit weight of ground whose sides go by friction, N/m³. Common practice. */
const GRANULAR_WEIGHT = 19000;

/** Angles of friction, degrees, loose. */
const FRICTION: Partial<Record<Texture, number>> = {
  sand: 32,
  'loamy sand': 31,
  gravel: 35,
  silt: 28,
  'sandy loam': 30,
  loam: 30,
  'silt loam': 28,
  rock: 35,
};
const LOAMS: readonly Texture[] = ['sandy loam', 'loam', 'silt loam', 'rock'];
const UNNAMED: readonly Texture[] = ['peat', 'made ground'];

/** How a side of some ground is judged: by strength, by friction, or not at all. */
export type SideKind = 'clay' | 'fissured clay' | 'granular' | 'loam' | 'unnamed';

/**
 * Kind of a ground for its sides.
 * @param texture - of the pit log
 * @param structure - of the pit log; absent: massive
 * @returns by which it is judged, see {@link groundSides}
 */
export function sideKind(texture: Texture, structure?: Structure): SideKind {
  if (UNNAMED.includes(texture)) return 'unnamed';
  if (LOAMS.includes(texture)) return 'loam';
  if (FRICTION[texture] !== undefined) return 'granular';
  return structure === undefined || structure === 'massive' ? 'clay' : 'fissured clay';
}

/** Slope at which a face without cohesion is about to slip. */
export const seepingSlope = formula({
  title: 'Slope of a face without cohesion, water seeping along a share of its height',
  symbol: 's',
  unit: '-',
  expression: 'F/((1 - 9810*m/g)*tan(p))',
  parameters: {
    F: { meaning: 'factor of safety', unit: '-', min: 1, max: 2 },
    m: { meaning: 'share of the height under water outside', unit: '-', min: 0, max: 1 },
    p: { meaning: 'angle of friction', unit: 'rad', min: 0.3, max: 0.8 },
    g: { meaning: 'saturated unit weight', unit: 'N/m³', min: 14000, max: 23000 },
  },
  compute: (F: number, m: number, p: number, g: number) =>
    F / ((1 - (UNIT_WEIGHT_OF_WATER * m) / g) * Math.tan(p)),
  validity: 'long slope; horizontal to 1 vertical; dry at m = 0: the angle of repose with the factor',
  source: 'the long slope without cohesion (Skempton & DeLory 1957, from memory) solved for its slope',
});

/**
 * Steepest side of a ground by its kind alone, see {@link groundSides}; a clay's strength may ask for a flatter one.
 * @param texture - of the pit log
 * @param structure - of the pit log; absent: massive
 * @param wetShare - share of the side's height below the water outside, 0–1
 * @returns horizontal to 1 vertical, 0 (upright) and more
 */
export function steepestByGround(texture: Texture, structure?: Structure, wetShare = 0): number {
  const kind = sideKind(texture, structure);
  if (kind === 'clay') return 0;
  if (kind === 'fissured clay') return FISSURED_SLOPE;
  if (kind === 'unnamed') return FLAT_BOUND / (1 - (UNIT_WEIGHT_OF_WATER * wetShare) / GRANULAR_WEIGHT);
  const friction = (FRICTION[texture]! * Math.PI) / 180;
  const dry =
    kind === 'loam' ? LOAM_SLOPE : seepingSlope.compute(FRICTION_FACTOR, 0, friction, GRANULAR_WEIGHT);
  return wetShare > 0 ? Math.max(dry, seepingSlope.compute(1, wetShare, friction, GRANULAR_WEIGHT)) : dry;
}

/** A difference of slopes that nobody cuts, horizontal to 1 vertical. */
export const SLOPE_RESOLUTION = 0.01;

/**
 * Share of its height up to which the water outside may stand before a side of this slope is too steep.
 * @param texture - of the pit log
 * @param structure - of the pit log; absent: massive
 * @param sideSlope - horizontal to 1 vertical, 0 and more
 * @returns 0–1; 1 where no water makes it too steep, −1 where it is too steep dry
 */
export function wetShareAllowed(
  texture: Texture,
  structure: Structure | undefined,
  sideSlope: number,
): number {
  const stands = (share: number) =>
    sideSlope + SLOPE_RESOLUTION >= steepestByGround(texture, structure, share);
  if (!stands(0)) return -1;
  if (stands(1)) return 1;
  let [dry, wet] = [0, 1];
  for (let i = 0; i < 30; i++) {
    const middle = (dry + wet) / 2;
    if (stands(middle)) dry = middle;
    else wet = middle;
  }
  return dry;
}

/** Load of earth and water on the empty side of an upright wall. */
export const wallLoad = formula({
  title: 'Earth at rest and water behind a wall, a metre of its length',
  symbol: 'P',
  unit: 'N/m',
  expression: '(1 - sin(p))*((g - 9810)*H/2 + q)*H + 9810*H^2/2',
  parameters: {
    p: { meaning: 'angle of friction of the ground', unit: 'rad', min: 0.2, max: 0.8 },
    g: { meaning: 'saturated unit weight of the ground', unit: 'N/m³', min: 10000, max: 23000 },
    H: { meaning: 'height of the wall', unit: 'm', min: 0.1, max: 6 },
    q: { meaning: 'load at its edge', unit: 'Pa', min: 0, max: 100000 },
  },
  compute: (p: number, g: number, H: number, q: number) =>
    (1 - Math.sin(p)) * (((g - UNIT_WEIGHT_OF_WATER) * H) / 2 + q) * H + (UNIT_WEIGHT_OF_WATER * H * H) / 2,
  validity:
    'water outside up to the ground, the pond empty, a wall that does not give; swelling clay pushes harder',
  source: 'Jaky 1944: K0 = 1 − sin φ, from memory; hydrostatics',
});
