import { formula, type Use, unrecorded } from '../formula/index.js';
import type { Draws, Measures } from '../heads/index.js';
import { Remembered } from '../sampling/index.js';
import { COVER_WEIGHT, layersInSide, type Site, strengthAt } from '../site/index.js';
import { type LogEstimate, logValue } from '../soil/index.js';
import { SOFTENED_SHARE, sideFactor, standingHeight, wetShareAllowed } from '../uplift/index.js';

/** Unit weight of wet clay, N/m³. Common practice. */
export const UNIT_WEIGHT = { mean: COVER_WEIGHT.mineral, spread: 700 };

/** Heights that clay sides stand, m, one a sample. */
export interface SideHeights {
  /** as dug, wet and cracked */
  dug: Float64Array;
  /** softened behind a liner, with water or air in the crack */
  softWet: Float64Array;
  softDry: Float64Array;
}

/** Heights at which the sides of a pond so deep fail, depth m; undefined where they meet no clay, and where walls hold them. */
export type Sides = (depth: number) => SideHeights | undefined;

const standing = new Remembered<SideHeights>();

/** The sides of a site, at the strength of the clay that a pond so deep meets. */
export function sidesOf(site: Site, draws: Draws): Sides {
  return (depth) => sideHeights(site, draws, depth);
}

function sideHeights({ ground, pond }: Site, draws: Draws, depth: number): SideHeights | undefined {
  const strength = strengthAt(ground, depth);
  const { shape, edgingLoad } = pond;
  if (!strength || pond.wall !== 'none') return undefined;
  return standing.of(draws, JSON.stringify([strength, shape.sideSlope, edgingLoad]), () =>
    heightsOf(strength, shape.sideSlope, edgingLoad, draws),
  );
}

function heightsOf(strength: LogEstimate, slope: number, edgingLoad: number, draws: Draws): SideHeights {
  const stands = (share: number, crack?: 'water' | 'air') =>
    Float64Array.from(draws.strength, (z, s) =>
      standingHeight(
        share * logValue(strength, z),
        UNIT_WEIGHT.mean + UNIT_WEIGHT.spread * draws.unitWeight[s],
        slope,
        edgingLoad,
        crack,
      ),
    );
  return { dug: stands(1), softWet: stands(SOFTENED_SHARE), softDry: stands(SOFTENED_SHARE, 'air') };
}

/** The side where the ground is highest. */
export const sideHeight = formula({
  title: 'Height of the side uphill of a hole',
  symbol: 'H',
  unit: 'm',
  expression: 'D > 0 ? D + g : 0',
  parameters: {
    D: { meaning: 'depth that is dug', unit: 'm', min: -2, max: 12 },
    g: { meaning: 'highest ground at the rim, above the lowest', unit: 'm', min: 0, max: 10 },
  },
  compute: (D: number, g: number) => (D > 0 ? D + g : 0),
  validity: 'the rim levelled where it is highest',
  source: 'geometry',
});

/** Height of the side uphill of a hole, m. */
export function sideUphill({ places }: Pick<Site, 'places'>, dug: number, use: Use = unrecorded): number {
  return use(sideHeight, dug, places.highRim);
}

/** The same with the bank that a rim above the ground stands on: its weight counts as so much more of the side. */
export function sideWithBank(
  site: Pick<Site, 'places' | 'pond'>,
  raise: number,
  dug: number,
  use: Use = unrecorded,
): number {
  const bank = raise + Math.max(site.pond.fullLevel, 0);
  return use(sideHeight, dug, Math.max(site.places.highRim, bank));
}

/** A side of a dig as an engineer weighs it: clay of middling strength, wet and cracked. */
interface WeighedSide {
  /** with the bank on it, m */
  height: number;
  /** at factor 1, m */
  stands: number;
  factor: number;
}

/** The highest side of a dig, m deep; undefined where nothing is dug, where it meets no clay and where walls hold it. */
export function weighedSide(
  site: Site,
  raise: number,
  dug: number,
  use: Use = unrecorded,
): WeighedSide | undefined {
  const { ground, pond } = site;
  const strength = strengthAt(ground, sideUphill(site, dug));
  if (!strength || pond.wall !== 'none' || dug <= 0) return undefined;
  const height = sideWithBank(site, raise, dug, use);
  const { sideSlope } = pond.shape;
  const stands = standingHeight(strength.median, UNIT_WEIGHT.mean, sideSlope, pond.edgingLoad, 'water', use);
  return { height, stands, factor: use(sideFactor, stands, height) };
}

/** Sides that an emptied pond bares, by depth. */
interface BaredSides {
  /** heights where they are tallest, uphill or with the bank on them, m */
  heights: Float64Array;
  /** heads outside above which water stands in a crack behind one of them, m above the datum: a crack reaches half way down */
  cracks: Float64Array;
  /** heads outside above which one of them slips by the kinds of ground in it, m above the datum; ±Infinity: always, never */
  slips: Float64Array;
}

/** What an emptied pond bares at each of some depths, m. */
export function baredSides(site: Site, { raise }: Measures, depths: ArrayLike<number>): BaredSides {
  const low = Float64Array.from(depths, (depth) => Math.max(depth - raise, 0));
  return {
    heights: low.map((height) => sideWithBank(site, raise, height)),
    // The lower side's crack begins lower: water in either counts.
    cracks: low.map((height) => -height / 2),
    slips: low.map((height) =>
      Math.min(slipLevel(site, height), slipLevel(site, sideUphill(site, height)) + site.places.highRim),
    ),
  };
}

/** First of ascending sides that is taller than it stands, by side; their count where none is, as where none is bared. */
export function firstTaller(sides: Float64Array, stands: (j: number) => number): number {
  let j = 0;
  while (j < sides.length && sides[j] <= Math.max(stands(j), 0)) j++;
  return j;
}

/**
 * Share of its height up to which the water outside may stand before a side is too steep for the kinds of ground in it;
 * −1 where it is too steep dry, 1 where no water makes it so or walls hold it.
 */
export function shareAllowed({ ground, pond }: Site, height: number): number {
  if (pond.wall !== 'none') return 1;
  const shares = layersInSide(ground.sides, height).map(({ texture, structure }) =>
    wetShareAllowed(texture, structure, pond.shape.sideSlope),
  );
  return Math.min(1, ...shares);
}

/** Level outside above which a side of some height slips by the kinds of ground in it, m above the datum; ±Infinity: always, never. */
export function slipLevel(site: Site, height: number): number {
  const share = height > 0 ? shareAllowed(site, height) : 1;
  return share < 0 ? Number.NEGATIVE_INFINITY : share >= 1 ? Number.POSITIVE_INFINITY : (share - 1) * height;
}
