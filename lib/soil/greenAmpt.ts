import { formula, method } from '../formula/index.js';

const K = { meaning: 'conductivity behind the front', unit: 'm/s', min: 1e-11, max: 1e-3 };
const P = {
  meaning: 'suction at the front (and depth of water on top) times the moisture it fills',
  unit: 'm',
  min: 1e-4,
  max: 1,
};
const F = { meaning: 'water soaked in so far', unit: 'm', min: 1e-5, max: 10 };
const validity = 'sharp front into uniform soil; no cracks, no water table near, no drying between bursts';
const source =
  'Green & Ampt 1911; Mein & Larson 1973; Chow, Maidment & Mays 1988, Applied Hydrology ch. 4 and 5 (from memory)';

/** Rate at which ponded soil takes water. */
export const greenAmptRate = formula({
  title: 'Infiltration rate under ponding (Green–Ampt)',
  symbol: 'f',
  unit: 'm/s',
  expression: 'K*(1 + P/F)',
  parameters: { K, P, F },
  compute: (K: number, P: number, F: number) => K * (1 + P / F),
  validity,
  source,
});

/** Time in which ponded soil takes a depth of water. */
export const greenAmptTime = formula({
  title: 'Time to soak in a depth of water under ponding (Green–Ampt)',
  symbol: 't',
  unit: 's',
  expression: '(F - P*log(1 + F/P))/K',
  parameters: { K, P, F: { ...F, min: 0.001 } },
  compute: (K: number, P: number, F: number) => (F - P * Math.log(1 + F / P)) / K,
  validity,
  source,
});

/** Time after which steady rain stands on the ground. */
export const pondingTime = formula({
  title: 'Time to ponding under steady rain (Green–Ampt, Mein–Larson)',
  symbol: 'tp',
  unit: 's',
  expression: 'K*P/((K + e)*e)',
  parameters: {
    K,
    P,
    e: { meaning: 'rain rate above the conductivity', unit: 'm/s', min: 1e-10, max: 1e-3 },
  },
  compute: (K: number, P: number, e: number) => (K * P) / ((K + e) * e),
  validity: 'rain no faster than the conductivity never ponds',
  source,
});

export const greenAmptStorm = method({
  title: 'Infiltration and run-off of a storm (Green–Ampt, unsteady rain)',
  what:
    'Steps through rain of any shape: below the intake rate all of it soaks in; at ponding the implicit equation is ' +
    'solved for the rest of the step; what the soil does not take, or has no room for, runs off.',
  assumptions: [
    validity,
    'rain steady within a step; nothing is stored on the surface',
    'in a gap the front stays where it is, so a later burst runs off too soon rather than too late',
    'when the room above the water table is full all rain runs off (saturation excess)',
  ],
  source,
});

/**
 * Growth u of the wetting under ponding, in units of what has soaked in and P together: u − a ln(1 + u) = tau.
 * Halley's method from the root of the equation to second order in u.
 */
function growth(a: number, tau: number): number {
  const b = 1 - a;
  let u = tau < 1 ? (2 * tau) / (b + Math.sqrt(b * b + 2 * a * tau)) : tau + a * Math.log(1 + tau);
  for (let i = 0; i < 6; i++) {
    const v = 1 + u;
    const g = u - a * Math.log1p(u) - tau;
    const slope = (b + u) / v;
    const step = (2 * g * slope) / (2 * slope * slope - (g * a) / (v * v));
    u -= step;
    // The error left is of the order of the cube of the step.
    if (Math.abs(step) <= 1e-5 * u) return u;
  }
  return u;
}

/**
 * Water soaked in under ponding from the start (Green–Ampt): {@link greenAmptTime} solved for the water.
 * @param conductivity - m/s, above 0
 * @param suctionDeficit - suction head times fillable moisture, m, above 0
 * @param time - s, 0 or more
 * @returns m
 * @example
 * ```ts
 * pondedInfiltration(1e-6, 0.05, 3600); // 0.0214
 * ```
 */
export function pondedInfiltration(conductivity: number, suctionDeficit: number, time: number): number {
  return time === 0 ? 0 : suctionDeficit * growth(1, (conductivity * time) / suctionDeficit);
}

/** The soil as a storm meets it. */
export interface WettingSoil {
  /** m/s, above 0 */
  conductivity: number;
  /** suction head times fillable moisture, m, above 0 */
  suctionDeficit: number;
  /** room for water before the soil is full, m; absent: no limit */
  room?: number;
}

/** What became of a storm, m. */
export interface StormBalance {
  infiltration: number;
  runoff: number;
  /** s from the start to the first ponding; absent when there was none */
  pondsAt?: number;
  /** rain less infiltration less run-off, m */
  closure: number;
}

/**
 * Steps a storm through {@link greenAmptStorm}.
 * @param rain - m in each step, 0 or more
 * @param step - length of each, s, above 0
 * @param soil - as the storm meets it
 * @param runoff - receives the run-off of each step, m; as long as `rain`
 * @returns infiltration, run-off and closure, m, and the time water first stood, s
 */
export function runGreenAmpt(
  rain: Float64Array,
  step: number,
  soil: WettingSoil,
  runoff: Float64Array,
): StormBalance {
  const { conductivity: k, suctionDeficit: p, room = Number.POSITIVE_INFINITY } = soil;
  const n = rain.length;
  const take = k * step;
  let soaked = 0;
  let pondsAt: number | undefined;
  let total = 0;
  let shed = 0;
  for (let i = 0; i < n; i++) {
    const r = rain[i];
    let after = soaked + r;
    let over = 0;
    // Under the intake rate to the end of the step: k (1 + p/F) at least the rain rate.
    if (take * (after + p) < r * after) {
      let from = soaked;
      let left = take;
      let start = i * step;
      if (take * (soaked + p) > r * soaked) {
        from = (take * p) / (r - take);
        const share = (from - soaked) / r;
        left = take * (1 - share);
        start += share * step;
      }
      pondsAt ??= start;
      const reach = from + p;
      after = from + reach * growth(p / reach, left / reach);
      // Ponding that begins at the end of a step, within rounding.
      if (after > soaked + r) after = soaked + r;
      over = r - (after - soaked);
    }
    if (after > room) {
      after = Math.max(room, soaked);
      over = r - (after - soaked);
      pondsAt ??= i * step;
    }
    runoff[i] = over;
    total += r;
    shed += over;
    soaked = after;
  }
  return { infiltration: soaked, runoff: shed, pondsAt, closure: total - soaked - shed };
}
