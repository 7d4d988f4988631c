import { method, SECONDS_PER_DAY } from '../formula/index.js';

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
    'run-off reaching it is what the clay above cannot take in the day, and what the full ground sheds',
    'rain on the ring goes in once the top of the fill is wet: it dries at the reference demand by at most 20 mm in ' +
      'soil, 10 mm in sand and nothing in gravel (FAO-56 eq. 73 over 0.1 m)',
  ],
  source:
    'water balance; checked against the physics of DESIGN on real daily weather and against an ODE solution',
});

/** Distance over which a difference of level between tub and clay is spent, m. Our choice. */
export const EXCHANGE_LENGTH = 0.5;

/** Share of rain and run-off that still gets through a clay cap, 0–1. Common practice. */
export const CAP_LEAK = 0.05;

/** Levels in m above one datum, areas m². */
export interface TubGeometry {
  /** floor of the ring: the liner's lowest point, or where the ring ends */
  floor: number;
  /** lowest way out */
  spill: number;
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
  /** conductivity of the clay around it, m/s */
  conductivity: number;
}

/** A drain out of the tub. */
export interface TubDrain {
  /** level of its outlet, m above the datum */
  level: number;
  /** flow per metre of head, m²/s */
  conductance: number;
  /** water it ends in, m above the datum, day by day; absent where it falls free */
  receiver?: Float64Array;
  /** a flap keeps the receiving water out */
  flap?: boolean;
}

/**
 * Water held at a level.
 * @param g - of the tub
 * @param level - m above the datum
 * @returns m³; 0 at the underside of the bed and below
 */
export function tubVolume(g: TubGeometry, level: number): number {
  const bed =
    g.bedArea * g.bedPorosity * Math.min(Math.max(level - g.floor + g.bedThickness, 0), g.bedThickness);
  return bed + g.ringArea * g.ringPorosity * Math.max(level - g.floor, 0);
}

function levelOf(g: TubGeometry, volume: number): number {
  const bed = g.bedArea * g.bedPorosity * g.bedThickness;
  if (volume < bed) return g.floor - g.bedThickness + volume / (g.bedArea * g.bedPorosity);
  return g.floor + (volume - bed) / (g.ringArea * g.ringPorosity);
}

/** Level z at which the water held and a pull in proportion to the level balance: volume(z) + w·z = q. */
function balancedLevel(g: TubGeometry, q: number, w: number): number {
  const ring = g.ringArea * g.ringPorosity;
  const bed = g.bedArea * g.bedPorosity;
  const z = (q - bed * g.bedThickness + ring * g.floor) / (ring + w);
  return z >= g.floor || bed === 0 ? z : (q + bed * (g.floor - g.bedThickness)) / (bed + w);
}

/**
 * Runs the tub day by day from empty, see {@link tubStore}, and asserts that it closes.
 * @param g - of the tub
 * @param forcing - what arrives, and the clay around it
 * @param level - filled with the level at the end of each day, m above the datum
 * @param drain - absent: none
 * @returns closure error, m³
 * @throws Error when the balance does not close to 1e-9 m over the ring, or over 1 m² where that is more
 */
export function runTub(
  g: TubGeometry,
  { inflow, clay, conductivity }: TubForcing,
  level: Float64Array,
  drain?: TubDrain,
): { closure: number } {
  const perDay = conductivity * SECONDS_PER_DAY;
  const drainPerDay = (drain?.conductance ?? 0) * SECONDS_PER_DAY;
  const bottom = g.floor - g.bedThickness;
  const brim = tubVolume(g, g.spill);
  let z = bottom;
  let v = 0;
  let closure = 0;
  for (let d = 0; d < inflow.length; d++) {
    const before = v;
    const h = clay[d];
    // Wall wetted by the higher of the two waters, floor of ring and bed.
    const wet = Math.min(Math.max(z, h), g.spill);
    const area = g.ringArea + g.bedArea + g.perimeter * Math.max(wet - g.floor, 0);
    const most = perDay * area;
    const own = v + inflow[d];
    const foot = Math.max(drain?.level ?? 0, drain?.receiver?.[d] ?? Number.NEGATIVE_INFINITY);
    // Without a flap a receiver above the outlet pushes back.
    const both = drain?.receiver !== undefined && !drain.flap && foot > drain.level;
    // Implicit in the new level: outwards the gradient is that of the new level, and at most 1.
    const settle = (pull: number, linked: number) => {
      const free = balancedLevel(g, pull, linked);
      if (!drain || (free <= foot && !both)) return Math.min(free, g.spill);
      return Math.min(balancedLevel(g, pull + drainPerDay * foot, linked + drainPerDay), g.spill);
    };
    let next = settle(own + (most / EXCHANGE_LENGTH) * h, most / EXCHANGE_LENGTH);
    const steep = next - h > EXCHANGE_LENGTH;
    if (steep) next = settle(own - most, 0);
    let exchange = steep ? most : (most / EXCHANGE_LENGTH) * (next - h);
    let drained = drain && (both || next > foot) ? drainPerDay * (next - foot) : 0;
    const available = own + Math.max(-exchange, 0) + Math.max(-drained, 0);
    const out = Math.max(exchange, 0) + Math.max(drained, 0);
    if (out > available) {
      const share = available / out;
      if (exchange > 0) exchange *= share;
      if (drained > 0) drained *= share;
    }
    v = Math.max(own - exchange - drained, 0);
    // Seepage stops at the level it comes from.
    if (exchange < 0) {
      const ceiling = Math.max(tubVolume(g, Math.min(h, g.spill)), own - drained);
      if (v > ceiling) {
        exchange += v - ceiling;
        v = ceiling;
      }
    }
    const over = v > brim ? v - brim : 0;
    v -= over;
    z = levelOf(g, v);
    level[d] = z;
    closure += inflow[d] - exchange - drained - over - (v - before);
  }
  if (!(Math.abs(closure) <= 1e-9 * Math.max(g.ringArea, 1)))
    throw new Error(`tub balance does not close: ${closure} m³ over ${inflow.length} days`);
  return { closure };
}
