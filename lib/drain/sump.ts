import { formula, method } from '../formula/index.js';
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
export const LINE_DIAMETER = 0.04;
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
 * @returns h
 */
export function powerCutHours(storage: number, inflow: number): number {
  return inflow > 0 ? storage / inflow / 3600 : Number.POSITIVE_INFINITY;
}

/**
 * Hours from the beginning of a storm until its water, and what comes on an ordinary day after it, fill a storage.
 * @param storage - m³
 * @param storm - inflow, m³/s, and how long it lasts, s
 * @param ordinary - inflow after it, m³/s
 * @returns h; Infinity where it is never full
 */
export function stormCutHours(storage: number, storm: SumpInput['storm'], ordinary: number): number {
  const during = powerCutHours(storage, storm.inflow);
  const hours = storm.seconds / 3600;
  return during <= hours ? during : hours + powerCutHours(storage - storm.inflow * storm.seconds, ordinary);
}

/**
 * What the ordinary pump gives from a sump to the end of its line.
 * @param start - level of the water at which it starts, m above the datum
 * @param discharge - level of the end of the line, m above the same, and the way there, m
 * @returns flow, m³/s, and head, m
 */
export function dutyTo(
  start: number,
  discharge: { level: number; distance: number },
): { flow: number; head: number } {
  const lift = Math.max(discharge.level - start, 0);
  return dutyPoint(ORDINARY_PUMP, lift, {
    diameter: LINE_DIAMETER,
    length: Math.max(discharge.distance, 1) + lift,
  });
}

/**
 * Designs a sump, see {@link sumpMethod}.
 * @param input - levels, inflow and storage of the bed, SI; see {@link SumpInput}
 * @returns working volume, m³, what the pump gives, hours without power and energy a year, kWh
 */
export function designSump(input: SumpInput): Sump {
  const { floor, start, discharge, storm, ordinary, bedStorage } = input;
  const duty = dutyTo(start, discharge);
  const working = sumpVolume.compute(3600 / STARTS, duty.flow);
  const storage = bedStorage + Math.max(floor - start, 0) * SUMP_SIDE ** 2;
  const hoursStorm = stormCutHours(storage, storm, ordinary);
  const hoursOrdinary = powerCutHours(storage, ordinary);
  const year = 365.25 * 86400;
  return {
    working,
    startsAnHour: STARTS,
    stroke: working / SUMP_SIDE ** 2,
    duty,
    storage,
    times: duty.flow / Math.max(storm.inflow, 1e-9),
    filledByStorm: storm.inflow > 0 ? Math.min((storm.inflow * storm.seconds) / storage, 1) : 0,
    hoursStorm,
    hoursOrdinary,
    energy: pumpEnergy.compute(Math.min(ordinary * year, 1e5), duty.head, EFFICIENCY) / 3.6e6,
    bridged: hoursStorm >= 24,
  };
}
