/** The second path, from the level in the clay to the ring, the failing years and the inflow. SI. */

/** A rim with straight or elliptic outline. */
export interface Plan {
  shape: 'box' | 'oval';
  length: number;
  width: number;
  sideSlope: number;
}

export function areaAt({ shape, length, width, sideSlope }: Plan, depth: number): number {
  const [a, b] = [length, width].map((side) => Math.max(side - 2 * sideSlope * depth, 0)) as [number, number];
  return (shape === 'box' ? 1 : Math.PI / 4) * a * b;
}

/** Outline of the rim; of an ellipse by integration. */
export function outlineOf({ shape, length, width }: Plan): number {
  if (shape === 'box') return 2 * (length + width);
  const steps = 20_000;
  let sum = 0;
  for (let i = 0; i < steps; i++) {
    const t = ((i + 0.5) / steps) * 2 * Math.PI;
    sum += Math.hypot((length / 2) * Math.sin(t), (width / 2) * Math.cos(t));
  }
  return (sum * 2 * Math.PI) / steps;
}

/** What was dug and filled back: a level pool in a ring of loose fill over a bed. Levels above the lowest rim. */
export interface Ring {
  floor: number;
  spill: number;
  area: number;
  porosity: number;
  /** rain that the top of the fill holds back, m */
  hold: number;
  outline: number;
  bed: { area: number; thickness: number; porosity: number };
}

/** Water of a day: what reaches the ground, falls through the roots, cannot enter; mm. */
export interface WaterOfDay {
  liquid: Float64Array;
  recharge: Float64Array;
  excess: Float64Array;
}

/** Parts of a day: the exchange with the clay is stepped on explicitly, and its error is that of the step. */
const PARTS = 48;
const DAY = 86_400;

/**
 * Level in the ring day by day, an uncapped ring under lawn: rain on it once its top is wet, what the lawn above sheds,
 * and K × wetted area × gradient to and from the clay, the gradient over 0.5 m and at most 1 outwards.
 */
export function ringLevels(
  ring: Ring,
  { liquid, recharge, excess }: WaterOfDay,
  et0: Float64Array,
  clay: Float64Array,
  conductivity: number,
  lawn: number,
): Float64Array {
  const { floor, spill, area, porosity, bed } = ring;
  const inBed = bed.area * bed.porosity * bed.thickness;
  const volumeAt = (z: number) =>
    bed.area * bed.porosity * Math.min(Math.max(z - floor + bed.thickness, 0), bed.thickness) +
    area * porosity * Math.max(z - floor, 0);
  const levelAt = (v: number) =>
    v < inBed
      ? floor - bed.thickness + v / (bed.area * bed.porosity)
      : floor + (v - inBed) / (area * porosity);
  const levels = new Float64Array(liquid.length);
  let volume = 0;
  let dry = 0;
  for (let d = 0; d < levels.length; d++) {
    const rain = liquid[d]! / 1000;
    const through = Math.max(rain - dry, 0);
    dry = Math.min(Math.max(dry - rain, 0) + et0[d]! / 1000, ring.hold);
    const shed = Math.max(excess[d]! / 1000, recharge[d]! / 1000 - conductivity * DAY, 0);
    const inflow = through * area + shed * lawn;
    for (let part = 0; part < PARTS; part++) {
      volume += inflow / PARTS;
      const z = levelAt(volume);
      const wall = ring.outline * Math.max(Math.min(Math.max(z, clay[d]!), spill) - floor, 0);
      const gradient = Math.min((z - clay[d]!) / 0.5, 1);
      const out = ((conductivity * DAY) / PARTS) * (area + bed.area + wall) * gradient;
      // It neither empties below nothing nor seeps in above the level it comes from.
      const ceiling = Math.max(volumeAt(Math.min(clay[d]!, spill)), volume);
      volume = Math.min(Math.max(volume - out, 0), ceiling, volumeAt(spill));
    }
    levels[d] = levelAt(volume);
  }
  return levels;
}

/** Water over the floor that counts as lifted, m. */
const LIFTED = 0.02;

/**
 * Whether an emptied liner lifts while it stands empty: the clay brings 4·K·r·s to the disc as large as the mean of floor
 * and plan at the water, day by day with the head of that day.
 */
export function liftsEmptied(
  plan: Plan,
  depth: number,
  heads: ArrayLike<number>,
  conductivity: number,
): boolean {
  const floor = Math.max(areaAt(plan, depth), 0.05);
  let arrived = 0;
  for (let d = 0; d < heads.length; d++) {
    const rise = heads[d]! + depth;
    if (rise <= 0) continue;
    const radius = Math.sqrt((floor + areaAt(plan, Math.max(depth - rise, 0))) / 2 / Math.PI);
    arrived += 4 * conductivity * radius * rise * DAY;
    if (arrived >= LIFTED * floor) return true;
  }
  return false;
}

/** Seepage to a drain under the floor, m³/s: the same disc, of the mean of rim and floor. */
export function seepage(plan: Plan, depth: number, conductivity: number, head: number): number {
  const radius = Math.sqrt((areaAt(plan, 0) + areaAt(plan, depth)) / 2 / Math.PI);
  return 4 * conductivity * radius * Math.max(head, 0);
}
