import { excess } from '../climate/index.js';
import { formula, method, SECONDS_PER_DAY, type Use, unrecorded } from '../formula/index.js';

export const tubStore = method({
  title: 'The tub: water in the dug ring and the bedding',
  what:
    'Daily level in what was dug and filled back around and under the liner: rain and run-off come in, it trades ' +
    'water with the clay, and what stands above the spill level leaves over it.',
  assumptions: [
    'level pool in a ring of drainable porosity over a bed; the bed fills first',
    'exchange with the clay: conductivity × wetted area × gradient, the gradient being the difference of level over ' +
      '0.5 m, at most 1 outwards (our choice)',
    'implicit step: never negative, stable for any conductance',
    'a drain takes what stands above its outlet and above the water it ends in; without a flap that water comes in, ' +
      'up to the level it stands at',
    'a way out below the ground draws the ring down only as fast as its fill lets water along to it: the level is that farthest ' +
      'from it, the depth it flows through that of the evening before',
    'run-off reaching it is what the clay above cannot take in the day, and what the full ground sheds',
    'rain on the ring goes in once the top of the fill is wet: it dries at the reference demand by at most 20 mm in ' +
      'soil, 10 mm in sand and nothing in gravel (FAO-56 eq. 73 over 0.1 m)',
  ],
  source:
    'water balance; checked against the physics of DESIGN on real daily weather and against an ODE solution',
});

/** Distance over which a difference of level between tub and clay is spent, m. Our choice. */
export const EXCHANGE_LENGTH = 0.5;
const PER_LENGTH = 1 / EXCHANGE_LENGTH;

/** Share of rain and run-off that still gets through a clay cap, 0–1. Common practice. */
export const CAP_LEAK = 0.05;

/** Levels in m above one datum, areas m². */
export interface TubGeometry {
  /** floor of the ring: the liner's lowest point, or where the ring ends */
  floor: number;
  /** level of the ground, over which all runs off that the ring does not hold */
  spill: number;
  /** a way out below it, through the fill of the ring */
  exit?: TubDrain;
  /** to which the water stands at times where that way out ends, and in the ring with it; absent: lower than the way out */
  flooded?: number;
  ringArea: number;
  /** drainable, 0–1; that of the bed too */
  ringPorosity: number;
  /** rain the top of the fill holds back and gives to the air again, m */
  ringHold: number;
  /** length of clay wall around the ring, m */
  perimeter: number;
  bedArea: number;
  /** m, below the floor of the ring */
  bedThickness: number;
  bedPorosity: number;
}

/** What reaches the tub, m³ a day, and the clay it stands in. */
export interface TubForcing {
  inflow: Float64Array;
  /** level in the clay, m above the datum, day by day */
  clay: Float64Array;
  /** permeability of the clay around it, m/s */
  permeability: number;
}

/** A drain out of the tub. */
export interface TubDrain {
  /** level of its outlet, m above the datum */
  level: number;
  /** flow per metre of head, m²/s */
  conductance: number;
  /** the same for each metre of water over the floor of the ring at either end, m/s; absent: it flows in a pipe */
  perDepth?: number;
  /** water it ends in, m above the datum, day by day; absent where it falls free */
  receiver?: Float64Array;
  /** a flap keeps the receiving water out */
  flap?: boolean;
}

/** Water that ring and bedding hold. */
export const tubHolds = formula({
  title: 'Water that the ring and the bedding hold at a level',
  symbol: 'V',
  unit: 'm³',
  expression: 'B*n*min(max(z - f + t, 0), t) + R*m*max(z - f, 0)',
  parameters: {
    B: { meaning: 'area of the bedding', unit: 'm²', min: 0, max: 1e4 },
    n: { meaning: 'drainable porosity of the bedding', unit: '-', min: 0, max: 1 },
    t: { meaning: 'thickness of the bedding', unit: 'm', min: 0, max: 1 },
    R: { meaning: 'area of the ring', unit: 'm²', min: 0, max: 1e4 },
    m: { meaning: 'drainable porosity of the ring', unit: '-', min: 0, max: 1 },
    z: { meaning: 'level of the water', unit: 'm', min: -20, max: 20 },
    f: { meaning: 'floor of the ring', unit: 'm', min: -20, max: 20 },
  },
  compute: (B: number, n: number, t: number, R: number, m: number, z: number, f: number) =>
    B * n * Math.min(Math.max(z - f + t, 0), t) + R * m * Math.max(z - f, 0),
  validity: 'a level pool in ring and bedding',
  source: 'balance of volumes',
});

/**
 * Water held at a level.
 * @param g - of the tub
 * @param level - m above the datum
 * @param use - what evaluates the formula, for a record
 * @returns m³; 0 at the underside of the bed and below
 */
export function tubVolume(g: TubGeometry, level: number, use: Use = unrecorded): number {
  return use(tubHolds, g.bedArea, g.bedPorosity, g.bedThickness, g.ringArea, g.ringPorosity, level, g.floor);
}

/** Water that a store gives between two levels. */
export const tubGives = formula({
  title: 'Water that stands in the ring above a level',
  symbol: 'V',
  unit: 'm³',
  expression: 'a - b',
  parameters: {
    a: { meaning: 'water held at the higher level', unit: 'm³', min: 0, max: 1e4 },
    b: { meaning: 'water held at the lower level', unit: 'm³', min: 0, max: 1e4 },
  },
  compute: (a: number, b: number) => a - b,
  validity: 'a level pool',
  source: 'balance of volumes',
});

/**
 * Underside of the bed of a store, where a dry one stands.
 * @param g - of the tub
 * @returns m above the datum
 */
export function tubBottom(g: TubGeometry): number {
  return g.floor - g.bedThickness;
}

/** Water a store holds without a head, as height over its bottom, m: what a spade or a tape can tell. Our choice. */
const FILM = 1e-3;

/**
 * Head of what a store holds.
 * @param g - of the tub
 * @param level - in it, m above the datum
 * @returns the level; −Infinity where the store is dry to a millimetre over the underside of its bed: no water, no head
 */
export function tubHead(g: TubGeometry, level: number): number {
  return level > tubBottom(g) + FILM ? level : Number.NEGATIVE_INFINITY;
}

/**
 * The same of a series of levels.
 * @param g - of the tub
 * @param levels - m above the datum, day by day; changed to heads
 */
export function tubHeads(g: TubGeometry, levels: Float64Array): void {
  const wet = tubBottom(g) + FILM;
  for (let d = 0; d < levels.length; d++) if (!(levels[d] > wet)) levels[d] = Number.NEGATIVE_INFINITY;
}

/** The ground that a ring stands in: level of its water, m above the datum, and its permeability, m/s. */
export interface GroundAround {
  level: number;
  permeability: number;
}

/**
 * What a ring that stands at a level loses to the ground and to its own way out, by the rules of {@link tubStore}.
 * @param g - of the tub
 * @param ground - that it stands in
 * @param level - of the ring, m above the datum
 * @returns m³/s; below 0 where the ground gives
 */
export function tubLoses(
  { floor, spill, exit, ringArea, perimeter, bedArea }: TubGeometry,
  ground: GroundAround,
  level: number,
): number {
  const wet = Math.min(Math.max(level, ground.level), spill);
  const gradient = Math.min((level - ground.level) * PER_LENGTH, 1);
  const seeps = ground.permeability * (ringArea + bedArea + perimeter * excess(wet, floor)) * gradient;
  const [over, foot] = exit ? [excess(level, floor), excess(exit.level, floor)] : [0, 0];
  return seeps + (exit?.perDepth ?? 0) * excess(over * over, foot * foot);
}

/**
 * Runs the tub day by day from empty, see {@link tubStore}, and asserts that it closes.
 * @param g - of the tub
 * @param forcing - what arrives, and the clay around it
 * @param level - filled with the level at the end of each day, m above the datum
 * @param drain - absent: the ring's own way out below the ground, if there is one
 * @returns closure error, m³
 * @throws Error when the balance does not close to 1e-9 m over the ring, or over 1 m² where that is more
 */
export function runTub(
  g: TubGeometry,
  { inflow, clay, permeability }: TubForcing,
  level: Float64Array,
  drain: TubDrain | undefined = g.exit,
): { closure: number } {
  // In hand before the loop: what is read of an object is fetched anew every day.
  const { floor, spill, ringArea, ringPorosity, perimeter, bedArea, bedThickness, bedPorosity } = g;
  const ring = ringArea * ringPorosity;
  const bed = bedArea * bedPorosity;
  const bedFull = bed * bedThickness;
  const [perRing, perBed] = [1 / ring, 1 / bed];
  const bottom = tubBottom(g);
  const held = (level: number) =>
    tubHolds.compute(bedArea, bedPorosity, bedThickness, ringArea, ringPorosity, level, floor);
  const brim = held(spill);
  const perDay = permeability * SECONDS_PER_DAY;
  const piped = (drain?.conductance ?? 0) * SECONDS_PER_DAY;
  const perDepth = (drain?.perDepth ?? 0) * SECONDS_PER_DAY;
  const outlet = drain?.level ?? Number.POSITIVE_INFINITY;
  const receiver = drain?.receiver;
  const flap = drain?.flap ?? false;
  /** Level z at which the water held and a pull in proportion to the level balance: volume(z) + w·z = q. */
  const balanced = (q: number, w: number) => {
    const z = (q - bedFull + ring * floor) / (ring + w);
    return z >= floor || bed === 0 ? z : (q + bed * bottom) / (bed + w);
  };
  let z = bottom;
  let v = 0;
  let closure = 0;
  for (let d = 0; d < inflow.length; d++) {
    const before = v;
    const came = inflow[d];
    const h = clay[d];
    // Wall wetted by the higher of the two waters, floor of ring and bed.
    let wet = h;
    if (z > wet) wet = z;
    if (wet > spill) wet = spill;
    const most = perDay * (ringArea + bedArea + perimeter * excess(wet, floor));
    const linked = most * PER_LENGTH;
    const own = v + came;
    const foot = receiver ? Math.max(outlet, receiver[d]) : outlet;
    const deep = Math.max(z, foot);
    const drainPerDay = perDepth > 0 ? piped + perDepth * (deep + foot - 2 * floor) : piped;
    // Without a flap a receiver above the outlet pushes back.
    const both = receiver !== undefined && !flap && foot > outlet;
    // Implicit in the new level: outwards the gradient is that of the new level, and at most 1.
    let next = balanced(own + linked * h, linked);
    if (next > foot || both) next = balanced(own + linked * h + drainPerDay * foot, linked + drainPerDay);
    if (next > spill) next = spill;
    const steep = next - h > EXCHANGE_LENGTH;
    if (steep) {
      next = balanced(own - most, 0);
      if (next > foot || both) next = balanced(own - most + drainPerDay * foot, drainPerDay);
      if (next > spill) next = spill;
    }
    let exchange = steep ? most : linked * (next - h);
    let drained = both || next > foot ? drainPerDay * (next - foot) : 0;
    const available = own + excess(-exchange, 0) + excess(-drained, 0);
    const out = excess(exchange, 0) + excess(drained, 0);
    if (out > available) {
      const share = available / out;
      if (exchange > 0) exchange *= share;
      if (drained > 0) drained *= share;
    }
    v = own - exchange - drained;
    if (v < 0) v = 0;
    // Seepage stops at the level it comes from.
    if (exchange < 0) {
      const ceiling = Math.max(held(Math.min(h, spill)), own - drained);
      if (v > ceiling) {
        exchange += v - ceiling;
        v = ceiling;
      }
    }
    const over = v > brim ? v - brim : 0;
    v -= over;
    // Full is the spill level itself, whatever its volume rounds to.
    z = over > 0 ? spill : v < bedFull ? bottom + v * perBed : floor + (v - bedFull) * perRing;
    if (z > spill) z = spill;
    level[d] = z;
    closure += came - exchange - drained - over - (v - before);
  }
  if (!(Math.abs(closure) <= 1e-9 * Math.max(ringArea, 1)))
    throw new Error(`tub balance does not close: ${closure} m³ over ${inflow.length} days`);
  return { closure };
}
