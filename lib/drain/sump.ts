import { formula, method, SECONDS_PER_DAY, type Use, unrecorded } from '../formula/index.js';
import { timesOver } from './linkReserve.js';
import { dutyPoint, type Pump } from './pumpLine.js';

/** Volume between start and stop of a pump. */
export const sumpVolume = formula({
  title: 'Volume of a sump between start and stop',
  symbol: 'V',
  unit: 'm³',
  expression: 'T*Q/4',
  parameters: {
    T: { meaning: 'least time from start to start', unit: 's', min: 60, max: 3600 },
    Q: { meaning: 'flow of the pump', unit: 'm³/s', min: 0, max: 0.05 },
  },
  compute: (T: number, Q: number) => (T * Q) / 4,
  validity: 'at the worst inflow, half the flow of the pump; at any other it starts less often',
  source: 'FHWA HEC-24, ANSI/HI 9.8 appendix B (derivation read)',
});

/** Water that sump and bed take up. */
export const sumpHolds = formula({
  title: 'Water that sump and bed take up between start and liner',
  symbol: 'V',
  unit: 'm³',
  expression: 'b + max(f - s, 0)*a^2',
  parameters: {
    b: { meaning: 'water that the bed takes up', unit: 'm³', min: 0, max: 1000 },
    f: { meaning: "level of the liner's lowest point", unit: 'm', min: -10, max: 10 },
    s: { meaning: 'level at which the pump starts', unit: 'm', min: -10, max: 10 },
    a: { meaning: 'side of the sump', unit: 'm', min: 0.1, max: 3 },
  },
  compute: (b: number, f: number, s: number, a: number) => b + Math.max(f - s, 0) * a ** 2,
  validity: 'both empty as the power goes',
  source: 'balance of volumes',
});

/** Height of the working volume. */
export const sumpStroke = formula({
  title: 'Height between start and stop in the sump',
  symbol: 'h',
  unit: 'm',
  expression: 'V/a^2',
  parameters: {
    V: { meaning: 'volume between start and stop', unit: 'm³', min: 0, max: 50 },
    a: { meaning: 'side of the sump', unit: 'm', min: 0.1, max: 3 },
  },
  compute: (V: number, a: number) => V / a ** 2,
  validity: 'a square sump',
  source: 'geometry',
});

/** Hours until an inflow fills a storage. */
export const hoursToFill = formula({
  title: 'Hours until an inflow fills what sump and bed take up',
  symbol: 't',
  unit: 'h',
  expression: 'V/Q/3600',
  parameters: {
    V: { meaning: 'what they take up', unit: 'm³', min: 0, max: 1000 },
    Q: { meaning: 'inflow', unit: 'm³/s', min: 1e-12, max: 10 },
  },
  compute: (V: number, Q: number) => V / Q / 3600,
  validity: 'steady inflow',
  source: 'balance of volumes',
});

/** Water that comes in a year of ordinary wet days. */
export const yearsWater = formula({
  title: 'Water of a year of ordinary wet days',
  symbol: 'V',
  unit: 'm³',
  expression: 'min(Q*31557600, 100000)',
  parameters: { Q: { meaning: 'inflow of an ordinary wet day', unit: 'm³/s', min: 0, max: 1 } },
  compute: (Q: number) => Math.min(Q * YEAR, 1e5),
  validity: 'every day as wet: more than comes',
  source: 'balance of volumes',
});

/** Seconds of a year. */
const YEAR = 365.25 * SECONDS_PER_DAY;

/** Energy as it is bought. */
export const kilowattHours = formula({
  title: 'Energy in kilowatt-hours',
  symbol: 'E',
  unit: 'kWh',
  expression: 'J/3600000',
  parameters: { J: { meaning: 'energy', unit: 'J', min: 0, max: 1e12 } },
  compute: (J: number) => J / 3.6e6,
  validity: 'definition',
  source: 'definition',
});

/** Energy to lift a volume. */
export const pumpEnergy = formula({
  title: 'Energy of pumping',
  symbol: 'E',
  unit: 'J',
  expression: '9810*V*H/n',
  parameters: {
    V: { meaning: 'volume pumped', unit: 'm³', min: 0, max: 1e5 },
    H: { meaning: 'head', unit: 'm', min: 0, max: 50 },
    n: { meaning: 'efficiency of pump and motor', unit: '-', min: 0.05, max: 1 },
  },
  compute: (V: number, H: number, n: number) => (9810 * V * H) / n,
  validity: 'fresh water',
  source: 'work against gravity; unit weight of water 9810 N/m³',
});

export const sumpMethod = method({
  title: 'Sump and pump',
  what:
    'Water between start and stop for the starts allowed, duty point of the pump, hours of power cut that sump and bed ' +
    'take up, energy a year.',
  assumptions: [
    'at most 10 starts an hour for small pumps (common practice)',
    'an ordinary drainage pump of 6 m and 2 L/s, efficiency 0.25, line of 40 mm inside; our choice',
    'during a power cut the water rises in sump and bed until it stands at the liner: in the storm as long as it lasts, then ' +
      'as on an ordinary wet day',
  ],
  source: 'formulas cited; common practice',
});

/** Starts an hour a small pump stands. Common practice. */
const STARTS = 10;
/** An ordinary drainage pump and its line. Common practice. */
export const ORDINARY_PUMP: Pump = { shutOff: 6, largest: 2e-3 };
/** Inside diameter of the line of that pump, m. Common practice. */
const LINE_DIAMETER = 0.04;
const EFFICIENCY = 0.25;
/** Side of a sump dug and lined by hand, m. Common practice. */
export const SUMP_SIDE = 0.6;

/** What a sump must do. */
export interface SumpInput {
  /** level of the liner's floor, and of the water at which the pump starts, m above the datum */
  floor: number;
  start: number;
  /** level at which the line ends, m above the datum, and its length, m */
  discharge: { level: number; distance: number };
  /** storm inflow, m³/s, and how long it lasts, s */
  storm: { inflow: number; seconds: number };
  /** inflow of an ordinary wet day, m³/s */
  ordinary: number;
  /** volume the bed takes between start level and liner, m³ */
  bedStorage: number;
}

/** A sump as designed. */
export interface Sump {
  /** between start and stop, m³ */
  working: number;
  startsAnHour: number;
  /** height of that in the sump, m */
  stroke: number;
  /** what the pump gives: m³/s and m */
  duty: { flow: number; head: number };
  /** flow of the pump over the storm inflow */
  times: number;
  /** what sump and bed take up between start and liner during a power cut, m³ */
  storage: number;
  /** share of that which a storm without power fills, 1 where water stands at the liner before it ends */
  filledByStorm: number;
  /** hours without power until water stands at the liner: from the beginning of the storm, and on an ordinary wet day */
  hoursStorm: number;
  hoursOrdinary: number;
  /** kilowatt-hours in a year of ordinary wet days */
  energy: number;
  /** a day without power, storm and all, is taken up by sump and bed */
  bridged: boolean;
}

/**
 * Hours until inflow fills a storage; Infinity where nothing flows in.
 * @param storage - m³
 * @param inflow - m³/s, 0 or more
 * @param use - what evaluates the formula, for a record
 * @returns h
 */
export function powerCutHours(storage: number, inflow: number, use: Use = unrecorded): number {
  return inflow > 0 ? use(hoursToFill, storage, inflow) : Number.POSITIVE_INFINITY;
}

/**
 * Hours from the beginning of a storm until its water, and what comes on an ordinary day after it, fill a storage.
 * @param storage - m³
 * @param storm - inflow, m³/s, and how long it lasts, s
 * @param ordinary - inflow after it, m³/s
 * @param use - what evaluates the formula, for a record
 * @returns h; Infinity where it is never full
 */
export function stormCutHours(
  storage: number,
  storm: SumpInput['storm'],
  ordinary: number,
  use: Use = unrecorded,
): number {
  const during = powerCutHours(storage, storm.inflow, use);
  const hours = storm.seconds / 3600;
  return during <= hours ? during : hours + powerCutHours(storage - storm.inflow * storm.seconds, ordinary);
}

/**
 * What the ordinary pump gives from a sump to the end of its line.
 * @param start - level of the water at which it starts, m above the datum
 * @param discharge - level of the end of the line, m above the same, and the way there, m
 * @param use - what evaluates the formulas, for a record
 * @returns flow, m³/s, and head, m
 */
export function dutyTo(
  start: number,
  discharge: { level: number; distance: number },
  use: Use = unrecorded,
): { flow: number; head: number } {
  const lift = use(liftTo, discharge.level, start);
  const length = use(lineLength, discharge.distance, lift);
  return dutyPoint(ORDINARY_PUMP, lift, { diameter: LINE_DIAMETER, length }, use);
}

/**
 * What a sump must hold between start and stop, and how high that stands in it.
 * @param start - level at which the pump starts, m above any datum
 * @param discharge - where its line ends: level, m above the same, and way there, m
 * @param use - what evaluates the formulas, for a record
 * @returns the pump's duty, m³/s and m; volume, m³; height, m
 */
export function strokeTo(
  start: number,
  discharge: { level: number; distance: number },
  use: Use = unrecorded,
): { duty: { flow: number; head: number }; working: number; stroke: number } {
  const duty = dutyTo(start, discharge, use);
  const working = use(sumpVolume, 3600 / STARTS, duty.flow);
  return { duty, working, stroke: use(sumpStroke, working, SUMP_SIDE) };
}

/** Lift of a pump. */
export const liftTo = formula({
  title: 'Lift from the water in the sump to the end of the line',
  symbol: 'l',
  unit: 'm',
  expression: 'max(e - s, 0)',
  parameters: {
    e: { meaning: 'level at which the line ends', unit: 'm', min: -20, max: 20 },
    s: { meaning: 'level at which the pump starts', unit: 'm', min: -10, max: 10 },
  },
  compute: (e: number, s: number) => Math.max(e - s, 0),
  validity: 'nothing where the line runs down',
  source: 'levelling',
});

/** Length of the pumped line. */
export const lineLength = formula({
  title: 'Length of the pumped line',
  symbol: 'L',
  unit: 'm',
  expression: 'max(d, 1) + l',
  parameters: {
    d: { meaning: "way from the pond's edge to its end", unit: 'm', min: 0, max: 500 },
    l: { meaning: 'lift', unit: 'm', min: 0, max: 50 },
  },
  compute: (d: number, l: number) => Math.max(d, 1) + l,
  validity: 'at least a metre along',
  source: 'geometry',
});

/**
 * Designs a sump, see {@link sumpMethod}.
 * @param input - levels, inflow and storage of the bed, SI; see {@link SumpInput}
 * @param use - what evaluates the formulas, for a record
 * @returns working volume, m³, what the pump gives, hours without power and energy a year, kWh
 */
export function designSump(input: SumpInput, use: Use = unrecorded): Sump {
  const { floor, start, discharge, storm, ordinary, bedStorage } = input;
  const { duty, working, stroke } = strokeTo(start, discharge, use);
  const storage = use(sumpHolds, bedStorage, floor, start, SUMP_SIDE);
  const hoursStorm = stormCutHours(storage, storm, ordinary, use);
  const hoursOrdinary = powerCutHours(storage, ordinary, use);
  return {
    working,
    startsAnHour: STARTS,
    stroke,
    duty,
    storage,
    times: use(timesOver, duty.flow, storm.inflow),
    filledByStorm: storm.inflow > 0 ? Math.min((storm.inflow * storm.seconds) / storage, 1) : 0,
    hoursStorm,
    hoursOrdinary,
    energy: use(kilowattHours, use(pumpEnergy, use(yearsWater, ordinary), duty.head, EFFICIENCY)),
    bridged: hoursStorm >= 24,
  };
}
