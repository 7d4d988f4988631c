import { formula, method, type Use, unrecorded } from '../formula/index.js';
import { relievedHead, unflappedHead } from '../groundwater/index.js';
import { FOOT } from '../units/index.js';
import { BED_LOSS, BED_THICKNESS } from './layout.js';
import { LEAST_FALL } from './pipe.js';

export const fallBudget = method({
  title: 'Fall budget of a drain',
  what: 'Levels from the liner down to the water that receives the drain, link by link, with what each link must have.',
  assumptions: [
    'pipe in the bed and run to the outlet each at the least fall',
    'a free drop of 0.1 m above the ordinary water at the outlet (Cavelaars et al. 1994, as quoted in a drainage text)',
    'in flood the bed must still be above the water outside, or the flap stays shut and the bed fills',
  ],
  source: 'levelled points; limits as cited',
});

/** Free drop wanted above the ordinary water of the receiver, m. */
const FREE_DROP = 0.1;
/** Earth wanted over a pipe, m: 2.5 ft (ASAE EP480 as read in a university guide); NRCS 2 ft, from memory. */
const COVER = 2.5 * FOOT;

/** A step of the fall budget; levels m above the datum. */
export interface FallLink {
  link: 'bed' | 'pipe' | 'run' | 'drop' | 'flood';
  from: number;
  to: number;
  /** fall it must have, m */
  needs: number;
  /** fall it has, m */
  has: number;
}

/** Length of the run to an outlet. */
export const runLength = formula({
  title: 'Length of the run to the outlet',
  symbol: 'L',
  unit: 'm',
  expression: 'u + d',
  parameters: {
    u: { meaning: 'way in under the side, from the edge to its foot', unit: 'm', min: 0, max: 50 },
    d: { meaning: "way from the pond's edge to the outlet", unit: 'm', min: 0, max: 500 },
  },
  compute: (u: number, d: number) => u + d,
  validity: 'a straight run',
  source: 'geometry',
});

/**
 * Length of pipe between the bed and an outlet: under the side of the pond, then from its edge.
 * @param outlet - its distance from the pond's edge, m
 * @param underSide - way in under the side from the edge to its foot, m
 * @param use - what evaluates the formula, for a record
 * @returns m
 */
export function pipeRun(
  { distance }: { distance: number },
  underSide: number,
  use: Use = unrecorded,
): number {
  return use(runLength, underSide, distance);
}

/** Levels along a drain to an outlet. */
export interface FallInput {
  /** level of the liner's lowest point, m above the datum */
  floor: number;
  /** longest way in the pipe of the bed, m */
  inBed: number;
  /** way in under the side from the pond's edge to its foot, m; absent: upright */
  underSide?: number;
  /** level of its mouth, way there, ordinary and highest water it meets; m, levels above the datum */
  outlet: { level: number; distance: number; ditch?: number; flood?: number };
}

/**
 * Fall link by link, see {@link fallBudget}. What is left over goes to the run, where it makes the pipe steeper.
 * @param input - levels of floor and outlet, m above one datum, and the way between, m
 * @returns from the floor down; each with the fall it needs and has, m
 */
export function fallLinks({ floor, inBed, underSide = 0, outlet }: FallInput): FallLink[] {
  const underside = floor - BED_THICKNESS;
  // The invert falls within the bed's own thickness: its head end lies higher by the fall along the pipe.
  const head = underside + LEAST_FALL * inBed;
  const step = (link: FallLink['link'], from: number, to: number, needs: number): FallLink => ({
    link,
    from,
    to,
    needs,
    has: from - to,
  });
  const links = [
    step('bed', floor, head, BED_LOSS),
    step('pipe', head, underside, LEAST_FALL * inBed),
    step('run', underside, outlet.level, LEAST_FALL * pipeRun(outlet, underSide)),
  ];
  if (outlet.ditch !== undefined) links.push(step('drop', outlet.level, outlet.ditch, FREE_DROP));
  if (outlet.flood !== undefined) links.push(step('flood', floor, outlet.flood, BED_LOSS));
  return links;
}

/**
 * Water in the bed while the receiver is in flood; levels m above one datum.
 * @param outside - head in the ground and the ring without a drain
 * @param relief - level the drain holds, from {@link reliefLevel}
 * @param flood - highest water of the receiver
 * @returns level with a flap, and with an open mouth, the head lost in the bed counted
 */
export function backwater(outside: number, relief: number, flood: number): { flap: number; open: number } {
  return {
    flap: relievedHead.compute(outside, relief, flood, BED_LOSS),
    open: unflappedHead.compute(outside, relief, flood, BED_LOSS),
  };
}

/** Cover of a pipe, m, and what follows from it. */
export interface Cover {
  cover: number;
  /** deep enough for spade and wheelbarrow, less, or above the ground */
  lies: 'deep' | 'shallow' | 'bare';
}

/**
 * Cover of a pipe; levels m above one datum.
 * @param ground - level of the ground
 * @param invert - level of the pipe's lowest inside point
 * @param diameter - inside, of the pipe, m
 * @returns earth over the pipe, m, and whether it is enough
 */
export function coverOf(ground: number, invert: number, diameter: number): Cover {
  const cover = ground - invert - diameter;
  return { cover, lies: cover >= COVER ? 'deep' : cover > 0 ? 'shallow' : 'bare' };
}

/** Largest velocity that bare soil stands, m/s: clay 7 ft/s, sand 3.5 ft/s (NRCS 606, from memory). */
const STANDS = { clay: 7 * FOOT, sand: 3.5 * FOOT };

/** What the ground below an outlet needs, by name. */
export type Erosion = 'flat-stone' | 'paved' | 'apron';

/**
 * What the ground below the outlet needs.
 * @param velocity - of the water at the outlet, m/s
 * @param soil - what it runs out on
 * @returns a flat stone, half a metre of paving, or an apron
 */
export function erosionOf(velocity: number, soil: 'clay' | 'sand'): Erosion {
  return velocity <= STANDS[soil] / 2 ? 'flat-stone' : velocity <= STANDS[soil] ? 'paved' : 'apron';
}

/** What the way out of the water meets. */
export interface OutletWorks {
  /** where the run leaves the pond, and at its mouth */
  cover: { pond: Cover; mouth: Cover };
  erosion: Erosion;
  /** level of the water in the bed while the receiver is in flood, m; absent where no flood is known */
  backwater?: { flap: number; open: number };
}

/** Depth of trench at the mouth of the drain, m. Common practice. */
export const MOUTH = 0.3;

/**
 * What a run to an outlet needs; levels m above the ground over the pipe at the pond, which is taken for the lowest natural
 * ground at the rim.
 * @param run - levels of floor, highest water outside, relief and flood, and diameter, m; velocity of the water at the
 *   mouth, m/s
 * @returns cover, erosion, and the water in the bed in a flood
 */
export function outletWorks(run: {
  floor: number;
  diameter: number;
  velocity: number;
  soil: 'clay' | 'sand';
  outside: number;
  relief: number;
  flood?: number;
}): OutletWorks {
  const { floor, diameter, velocity, soil, outside, relief, flood } = run;
  return {
    cover: { pond: coverOf(0, floor - BED_THICKNESS, diameter), mouth: coverOf(MOUTH, 0, diameter) },
    erosion: erosionOf(velocity, soil),
    ...(flood === undefined ? {} : { backwater: backwater(outside, relief, flood) }),
  };
}
