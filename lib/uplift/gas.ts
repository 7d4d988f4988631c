import { formula, SECONDS_PER_DAY } from '../formula/index.js';
import { FOOT } from '../units/index.js';

/** Gas that has to get out from under a liner. */
export const gasInflow = formula({
  title: 'Gas under a liner',
  symbol: 'Q',
  unit: 'm³/s',
  expression: 'A*(q + a*v)',
  parameters: {
    A: { meaning: 'plan area of the liner', unit: 'm²', min: 0.5, max: 1000 },
    q: { meaning: 'gas given off by the soil', unit: 'm³/m²/s', min: 0, max: 1e-6 },
    a: { meaning: 'air in the soil', unit: 'm³/m³', min: 0, max: 0.3 },
    v: { meaning: 'rise of the water table under it', unit: 'm/s', min: 0, max: 1e-4 },
  },
  compute: (A: number, q: number, a: number, v: number) => A * (q + a * v),
  validity: 'all of it goes up: clay around lets none out',
  source: 'balance of volumes',
});

/** Gas that a vent pipe lets out. */
export const ventFlow = formula({
  title: 'Flow of gas through a vent pipe',
  symbol: 'Q',
  unit: 'm³/s',
  expression: 'pi*d^4*p/(128*m*L)',
  parameters: {
    d: { meaning: 'inside diameter', unit: 'm', min: 0.005, max: 0.05 },
    p: { meaning: 'pressure that may build up', unit: 'Pa', min: 1, max: 200 },
    m: { meaning: 'viscosity of the gas', unit: 'Pa·s', min: 1e-5, max: 2e-5 },
    L: { meaning: 'length', unit: 'm', min: 0.5, max: 50 },
  },
  compute: (d: number, p: number, m: number, L: number) => (Math.PI * d ** 4 * p) / (128 * m * L),
  validity: 'laminar (Hagen–Poiseuille), as it is at litres an hour',
  source: 'Hagen–Poiseuille',
});

/** Wet peat gives off well under a litre a day and square metre; five is allowed for. Our choice. */
const PEAT_GAS = 0.005 / SECONDS_PER_DAY;
/** A storm that lifts the water half a metre in a day through ground with 3 % air. Our choice. */
const TABLE_RISE = 0.5 / SECONDS_PER_DAY;
const AIR = 0.03;
/** A tenth of what 0.1 m of water presses: the vent works long before the liner stirs. Our choice. */
const VENT_PRESSURE = 100;
/** Air at 10 °C; methane is thinner and goes more easily. */
const VISCOSITY = 1.8e-5;
/** Least fall of the floor that leads gas to the high point, m/m. Common practice; 0.75 % was seen not to. */
export const GAS_FALL = 0.02;
/** Thinnest vent that stays open, m. Common practice. */
const LEAST_VENT = 0.025;
/** Vents of large lined ponds stand 15 to 25 ft apart along the high side; the least of it, m. Common practice. */
const VENT_SPACING = 15 * FOOT;

/** What is known of gas under a pond. Levels m above one datum. */
export interface GasSigns {
  /** top of peat or organic soil, m below the ground; absent: none met */
  organicTop?: number;
  /** a hole smelt of it */
  smell: boolean;
  /** dug depth, m below the ground */
  depth: number;
  /** level of the floor */
  floor: number;
  /** highest head outside, a level too */
  head: number;
  /** of the floor, m/m; absent: level */
  floorFall?: number;
  /** plan area of the liner, m² */
  area: number;
  /** length of the high side, m */
  highSide: number;
  /** from the high point to the open air, m */
  ventLength: number;
}

/** Whether gas is to be reckoned with, and the vent for it. */
export interface GasCheck {
  expected: boolean;
  /** the floor leads it to a high point */
  falls: boolean;
  /** m³/s to be let out */
  inflow: number;
  /** inside diameter of each, m; how many; what one lets out, m³/s. null: no gas to be reckoned with */
  vent: { diameter: number; count: number; capacity: number } | null;
  /** water stands above the floor */
  wet: boolean;
}

/** Depth of organic soil below the floor from which gas still reaches the liner, m. Our choice. */
const REACH = 1;

/**
 * Whether organic soil lies less than 1 m below a floor (our choice), or smells, so that gas is to be reckoned with.
 * @param organicTop - top of the first organic layer, m below the ground; absent: none
 * @param smell - whether a hole smelt of it
 * @param depth - of the floor, m below the ground
 * @returns true where it is
 */
export function gasExpected(organicTop: number | undefined, smell: boolean, depth: number): boolean {
  return smell || (organicTop !== undefined && organicTop < depth + REACH);
}

/**
 * Checks for gas under a liner and sizes its vent.
 * @param signs - organic soil, smell, and the shape of the floor; m, m² and levels of one datum
 * @returns whether gas is to be expected, how much, m³/s, and the vent for it
 */
export function gasCheck(signs: GasSigns): GasCheck {
  const { organicTop, smell, depth, floor, head, floorFall = 0, area, highSide, ventLength } = signs;
  const expected = gasExpected(organicTop, smell, depth);
  const inflow = gasInflow.compute(area, expected ? PEAT_GAS : 0, AIR, TABLE_RISE);
  const falls = floorFall >= GAS_FALL;
  const wet = head > floor;
  if (!expected) return { expected, falls, inflow, vent: null, wet };
  const enough = (diameter: number) =>
    ventFlow.compute(diameter, VENT_PRESSURE, VISCOSITY, ventLength) >= inflow;
  const diameter = [LEAST_VENT, 0.032, 0.04, 0.05].find(enough) ?? 0.05;
  const capacity = ventFlow.compute(diameter, VENT_PRESSURE, VISCOSITY, ventLength);
  const count = Math.max(Math.ceil(highSide / VENT_SPACING - 1e-9), Math.ceil(inflow / capacity), 1);
  return { expected, falls, inflow, vent: { diameter, count, capacity }, wet };
}
