import { formula, method } from '../formula/index.js';
import {
  curveNumber,
  curveNumberOf,
  curveNumberRetention,
  curveNumberRunoff,
  type GardenCover,
} from './curveNumber.js';
import { runGreenAmpt, type WettingSoil } from './greenAmpt.js';
import type { HydrologicGroup } from './hydrologicGroup.js';
import { RUNOFF_COEFFICIENT, WOODLAND_SHARE } from './runoffCoefficient.js';

/** Rain fallen by a time in a storm that swells and fades in straight lines. */
export const triangularRain = formula({
  title: 'Rain fallen by a time in a triangular storm',
  symbol: 'P(x)',
  unit: 'm',
  expression: 'P*(2*x^2 - max(2*x - 1, 0)^2)',
  parameters: {
    P: { meaning: 'rain of the storm', unit: 'm', min: 0.001, max: 0.5 },
    x: { meaning: 'time over the duration', unit: '-', min: 0.01, max: 1 },
  },
  compute: (P: number, x: number) => P * (2 * x * x - Math.max(2 * x - 1, 0) ** 2),
  validity: 'peak in the middle, twice the mean rate; a cloudburst peaks sooner and higher',
  source: 'Yen & Chow 1980, triangular hyetograph (from memory), peak set in the middle: our choice',
});

export const stormToRing = method({
  title: 'What a design storm brings to the ring',
  what:
    'Water reaching the strip round the pond, by source: rain on it, run-off from uphill by Green–Ampt with the room ' +
    'above the water table, and the roof; and the same run-off by curve number beside it.',
  assumptions: [
    'all run-off from uphill arrives at the ring',
    'roof and paving shed by their run-off coefficient; woodland sheds half of what lawn does, as in the daily model',
    'ground wet before the storm: curve number for condition III',
  ],
  source: 'Green–Ampt and curve number as declared; common practice for the losses',
});

/** Storm and what drains to the ring. Areas m². */
export interface RingStorm {
  /** m, above 0 */
  rain: number;
  /** s, above 0 */
  duration: number;
  uphillArea: number;
  /** of the area uphill */
  cover: GardenCover;
  roofArea: number;
  ringArea: number;
  soil: WettingSoil;
  group: HydrologicGroup;
}

/** Water reaching the ring, m³. */
export interface RingWater {
  ring: number;
  uphill: number;
  roof: number;
  total: number;
  /** highest rate of all together, m³/s */
  peak: number;
  /** uphill by curve number, m³ */
  uphillByCurveNumber: number;
  /** s from the start; absent: the ground uphill takes it all */
  pondsAt?: number;
  /** rain less infiltration less run-off of the ground uphill, m */
  closure: number;
}

const STEPS = 240;

/** The storm step by step: rain, and what a square metre of the ground uphill sheds of it, m. */
function shedding({ rain, duration, cover, soil }: Pick<RingStorm, 'rain' | 'duration' | 'cover' | 'soil'>) {
  const fallen = (i: number) => (i === 0 ? 0 : triangularRain.compute(rain, i / STEPS));
  const burst = Float64Array.from({ length: STEPS }, (_, i) => fallen(i + 1) - fallen(i));
  const shed = new Float64Array(STEPS);
  const balance = runGreenAmpt(burst, duration / STEPS, soil, shed);
  const share = cover === 'woodland' ? WOODLAND_SHARE : 1;
  const off = (i: number) =>
    cover === 'paved' ? RUNOFF_COEFFICIENT.paved.likely * burst[i] : share * shed[i];
  return { burst, balance, shed: Float64Array.from(burst, (_, i) => off(i)) };
}

/**
 * Share of a storm that the ground uphill sheds, 0–1; see {@link stormToRing}.
 * @param storm - rain, duration, cover and soil
 * @returns 0–1
 */
export function shedShare(storm: Pick<RingStorm, 'rain' | 'duration' | 'cover' | 'soil'>): number {
  return shedding(storm).shed.reduce((sum, off) => sum + off, 0) / storm.rain;
}

/**
 * Water a storm brings to the ring; see {@link stormToRing}.
 * @param storm - rain, areas, cover and soil, SI
 * @returns m³ by the way it comes, with the highest rate, m³/s
 */
export function ringStorm(storm: RingStorm): RingWater {
  const { rain, duration, uphillArea, cover, roofArea, ringArea, group } = storm;
  const step = duration / STEPS;
  const { burst, shed, balance } = shedding(storm);
  const uphillStep = (i: number) => shed[i] * uphillArea;
  const roofStep = (i: number) => RUNOFF_COEFFICIENT.roof.likely * burst[i] * roofArea;
  let [uphill, roof, peak] = [0, 0, 0];
  for (let i = 0; i < STEPS; i++) {
    uphill += uphillStep(i);
    roof += roofStep(i);
    peak = Math.max(peak, (uphillStep(i) + roofStep(i) + burst[i] * ringArea) / step);
  }
  const retention = curveNumberRetention.compute(curveNumberOf(curveNumber(cover, group), 'wet'));
  const { pondsAt, closure } = balance;
  return {
    ring: rain * ringArea,
    uphill,
    roof,
    total: rain * ringArea + uphill + roof,
    peak,
    uphillByCurveNumber: curveNumberRunoff.compute(rain, retention) * uphillArea,
    pondsAt,
    closure,
  };
}
