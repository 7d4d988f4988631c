import { formula, method } from '../formula/index.js';
import { type Draws, emptiedSlab, type Measures } from '../heads/index.js';
import type { Seam, Site } from '../site/index.js';
import { deepestCut, HEAVE_FACTOR_WANTED, waterOverPlug } from '../uplift/index.js';
import { UNIT_WEIGHT } from './sides.js';

export const heaveMethod = method({
  title: 'Heave of the floor over a seam',
  what:
    'Deepest floor whose ground down to a seam, and what lies on the liner, weigh 1.25 times the pressure in the seam: of the dig ' +
    'in its months, of the emptied pond, planned or there, in the months it stands empty, and of the pond with its water in it all year.',
  assumptions: [
    'water in the pond counts with its weight, as low as it gets in each month as it is kept; an emptied pond has none left in it; a drain under the liner does not reach the seam',
    'the plug is wide against its thickness and heaves at once; every year of a sample alike',
    'a seam that the floor has cut into counts the same: where its water stands above its top, the last of the plug breaks before',
  ],
  source: 'total-stress balance in every soil-mechanics text (Das; from memory); factor our choice',
});

/** Highest level of a seam in some months (1–12), m below the datum ground. */
export function headIn({ heads }: Seam, months: readonly number[]): number {
  return Math.min(...months.map((month) => heads[month - 1]!));
}

/** Depth of a seam's water that a share of what fits the survey stands above. */
export const seamDepth = formula({
  title: 'Depth of the water in a seam, as high as is rare enough',
  symbol: 'd',
  unit: 'm',
  expression: 'm - z*s',
  parameters: {
    m: { meaning: 'middle of what is known of its depth', unit: 'm', min: -5, max: 30 },
    z: { meaning: 'standard normal score of the chance, no less than nought', unit: '-', min: 0, max: 6 },
    s: { meaning: 'spread of what is known, standard deviation', unit: 'm', min: 0, max: 5 },
  },
  compute: (m: number, z: number, s: number) => m - z * s,
  validity: 'spread as a normal distribution',
  source: 'definition of the normal quantile',
});

/**
 * Deepest floor over a seam that keeps its factor, m below the datum ground; Infinity where nothing presses.
 * @param head - level in the seam, m below the datum ground
 * @param ballast - head of water that what lies on the floor weighs, m
 * @param weightShift - of the unit weight, standard normal
 */
export function deepestOver(seam: Seam, head: number, ballast = 0, weightShift = 0): number {
  const pressure = seam.top - head - ballast / HEAVE_FACTOR_WANTED;
  if (seam.top <= head || pressure <= 0) return Number.POSITIVE_INFINITY;
  const weight = seam.coverWeight + UNIT_WEIGHT.spread * weightShift;
  return deepestCut.compute(seam.top, HEAVE_FACTOR_WANTED, pressure, weight);
}

/** Deepest floor of a sample over all seams in some months. */
export function deepestFloorOver(
  { ground }: Site,
  draws: Draws,
  sample: number,
  months: readonly number[],
  ballast = 0,
): number {
  let deepest = Number.POSITIVE_INFINITY;
  for (const seam of ground.seams) {
    const head = headIn(seam, months) + seam.headSpread * draws.seamHead[sample];
    deepest = Math.min(deepest, deepestOver(seam, head, ballast, draws.unitWeight[sample]));
  }
  return deepest;
}

/** Days of a month, the longest. */
const MONTH = 31;

/** Months (1–12) that an emptying begun on any day of a month reaches into. */
export function monthsEmpty(month: number, days: number): number[] {
  const count = Math.min(1 + Math.ceil(days / MONTH), 12);
  return Array.from({ length: count }, (_, i) => ((month - 1 + i) % 12) + 1);
}

/** How far seam and plug of a sample lie from their middle, standard normal. */
interface Scores {
  /** of the seams' depth of water */
  head: number;
  /** of the plug's unit weight */
  weight: number;
}

/**
 * Lowest pond level of some months (1–12) at which the floor keeps its factor over the seams, m above the datum, by how far
 * seam and plug lie from their middle; null: may be empty.
 * @param floor - level of the liner's lowest point, m above the datum
 */
export function levelOverSeams(
  { ground, pond }: Site,
  m: Measures,
  floor: number,
  months: readonly number[],
): (scores: Scores) => number | null {
  const plugs = ground.seams.map((seam) => ({
    seam,
    pressed: seam.top - headIn(seam, months),
    left: Math.max(seam.top + floor, 0),
    cut: Math.max(-floor - seam.top, 0),
  }));
  const under = pond.floorBallast + m.ballast;
  const bare = pond.floorBallast + emptiedSlab(m);
  return (scores) => {
    let wanted = 0;
    for (const { seam, pressed, left, cut } of plugs) {
      const pressure = pressed - scores.head * seam.headSpread;
      if (pressure <= 0) continue;
      const weight = seam.coverWeight + UNIT_WEIGHT.spread * scores.weight;
      // In the seam its water meets the liner from where the floor is.
      wanted = Math.max(wanted, cut > 0 ? pressure + cut : 0);
      wanted = Math.max(wanted, waterOverPlug.compute(HEAVE_FACTOR_WANTED, pressure, weight, left));
    }
    return wanted > bare ? floor + wanted - under : null;
  };
}

/** Seams whose pressure nobody looked at, and which alone make a floor so deep unsafe, m below the datum ground. */
export function unknownSeams({ ground }: Site, deep: number): Seam[] {
  const holds = (seam: Seam, head: number | undefined) =>
    head === undefined || deepestOver(seam, head) >= deep;
  if (ground.seams.some((seam) => !holds(seam, seam.assumed ? seam.known : seam.headDepth))) return [];
  return ground.seams.filter((seam) => seam.assumed && !holds(seam, seam.headDepth));
}

/** Deepest floor over the seams at the highest that was read of each, m below the datum ground. */
function deepestAsRead({ ground }: Site): number {
  const read = ({ assumed, known, top, headDepth }: Seam) => (assumed ? (known ?? top) : headDepth);
  return Math.min(...ground.seams.map((seam) => deepestOver(seam, read(seam))));
}

/** Whether water under pressure allows less than a floor so deep, m below the datum ground. */
export function isPressed({ ground }: Site, deep: number): boolean {
  return ground.seams.some((seam) => deepestOver(seam, seam.headDepth) < deep);
}

/** Seams whose pressure nobody looked at, and which bind a floor so deep more than all that was read, m below the datum ground. */
export function bindingUnread(site: Site, deep: number): Seam[] {
  const limit = Math.min(deep, deepestAsRead(site));
  return site.ground.seams.filter((seam) => seam.assumed && deepestOver(seam, seam.headDepth) < limit);
}
