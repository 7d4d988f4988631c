import { formula, UNIT_WEIGHT_OF_WATER, type Use, unrecorded } from '../formula/index.js';
import { InputError } from '../units/index.js';

const c = { meaning: 'undrained strength', unit: 'Pa', min: 1000, max: 400000 };
const g = { meaning: 'unit weight of the clay', unit: 'N/m³', min: 14000, max: 23000 };

/** Height of an upright cut with an empty crack to half its depth. */
export const crackedCut = formula({
  title: 'Height of an upright cut with an empty crack',
  symbol: 'Hc',
  unit: 'm',
  expression: '8*c/(3*g)',
  parameters: { c, g },
  compute: (c: number, g: number) => (8 * c) / (3 * g),
  validity: 'crack to half the height; 2.67 c/γ',
  source: 'Terzaghi 1943, from memory',
});

/** Height of an upright cut with a crack to half its depth, full of water. */
export const wetCrackedCut = formula({
  title: 'Height of an upright cut with a water-filled crack',
  symbol: 'Hc',
  unit: 'm',
  expression: '8*c/(3*g + 9810)',
  parameters: { c, g },
  compute: (c: number, g: number) => (8 * c) / (3 * g + UNIT_WEIGHT_OF_WATER),
  validity: 'crack to half the height, filled to the brim by rain or by the water outside',
  source: 'derived from the plane wedge 2c(H−z) = γ(H²−z²)/2 + γw z²/2 at z = H/2',
});

/** Height of a leaning side, from that of an upright one. */
export const leaningCut = formula({
  title: 'Height a side stands, by its lean and the load at its edge',
  symbol: 'Hs',
  unit: 'm',
  expression: 'U*0.261/n - q/g',
  parameters: {
    U: { meaning: 'height of an upright cut', unit: 'm', min: 0, max: 100 },
    n: { meaning: "Taylor's stability number of the side", unit: '-', min: 0.181, max: 0.261 },
    q: { meaning: 'load at the edge', unit: 'Pa', min: 0, max: 200000 },
    g,
  },
  compute: (U: number, n: number, q: number, g: number) => (U * 0.261) / n - q / g,
  validity: 'clay without friction; below 0 the load alone is more than it carries',
  source:
    'proportion of the stability numbers of Taylor 1937, from memory; the load as so much more height of clay',
});

/** How much higher a side would stand than it is. */
export const sideFactor = formula({
  title: 'Factor of safety of a side against slumping',
  symbol: 'FS',
  unit: '-',
  expression: 'S/H',
  parameters: {
    S: { meaning: 'height that stands at factor 1', unit: 'm', min: -10, max: 200 },
    H: { meaning: 'height of the side', unit: 'm', min: 0.01, max: 15 },
  },
  compute: (S: number, H: number) => S / H,
  validity: 'undrained clay, for the days of a dig',
  source: 'definition: strength by height, in proportion',
});

/**
 * Taylor's stability number of a slope in clay without friction (Taylor 1937, from memory): straight between his points
 * from 53° on, 0.181 for flatter ones in deep clay.
 * @param angleDegrees - of the side from the level, above 0 to 90°
 * @returns strength over unit weight times height at which it fails, 0.181–0.261
 * @throws InputError for an angle outside that range
 */
export function taylorNumber(angleDegrees: number): number {
  const points = [
    [53, 0.181],
    [60, 0.191],
    [75, 0.219],
    [90, 0.261],
  ];
  if (!(angleDegrees > 0 && angleDegrees <= 90))
    throw new InputError('invalid-input', `invalid slope angle ${angleDegrees}°: above 0 to 90°`);
  // Below 53° failure runs deep and the number no longer depends on the angle.
  if (angleDegrees <= 53) return 0.181;
  const i = points.findIndex(([angle]) => angleDegrees <= angle);
  const [a0, n0] = points[i - 1];
  const [a1, n1] = points[i];
  return n0 + ((angleDegrees - a0) / (a1 - a0)) * (n1 - n0);
}

/**
 * Height a cracked clay side stands at factor 1, m: the upright cut with a crack, raised for a flatter side in the
 * proportion of Taylor's numbers, less what an edging load uses up.
 * @param strength - undrained strength, Pa
 * @param unitWeight - of the wet clay, N/m³
 * @param sideSlope - horizontal to 1 vertical, 0 (upright) and more
 * @param edgingLoad - Pa at the edge, 0 and more
 * @param crack - what stands in it
 * @param use - a recorder, for the worked sheet
 * @returns m; below 0 where the load alone is more than the clay carries
 * @throws InputError for a side that overhangs
 */
export function standingHeight(
  strength: number,
  unitWeight: number,
  sideSlope: number,
  edgingLoad: number,
  crack: 'water' | 'air' = 'water',
  use: Use = unrecorded,
): number {
  const angle = (Math.atan2(1, sideSlope) * 180) / Math.PI;
  const upright = use(crack === 'water' ? wetCrackedCut : crackedCut, strength, unitWeight);
  return use(leaningCut, upright, taylorNumber(angle), edgingLoad, unitWeight);
}

/** Factor wanted for a side that people work beside. Common practice. */
export const SIDE_FACTOR_WANTED = 1.5;
