import { formula, GRAVITY, method } from '../formula/index.js';

/** Friction factor of a pipe running full and turbulent. */
export const swameeJain = formula({
  title: 'Friction factor of a pipe (Swamee–Jain)',
  symbol: 'f',
  unit: '-',
  expression: '0.25/log10(e/3.7 + 5.74/R^0.9)^2',
  parameters: {
    e: { meaning: 'height of the roughness over the diameter', unit: '-', min: 1e-6, max: 0.05 },
    R: { meaning: 'Reynolds number', unit: '-', min: 4000, max: 1e8 },
  },
  compute: (e: number, R: number) => 0.25 / Math.log10(e / 3.7 + 5.74 / R ** 0.9) ** 2,
  validity: 'turbulent flow; within 1 to 3 % of Colebrook',
  source: 'Swamee & Jain 1976; form read in a teaching article',
});

/** Head lost to friction and fittings. */
export const darcyWeisbach = formula({
  title: 'Head lost in a pressure pipe (Darcy–Weisbach)',
  symbol: 'h',
  unit: 'm',
  expression: '(f*L/D + k)*v^2/(2*9.80665)',
  parameters: {
    f: { meaning: 'friction factor', unit: '-', min: 0.005, max: 1 },
    L: { meaning: 'length', unit: 'm', min: 0, max: 500 },
    D: { meaning: 'inside diameter', unit: 'm', min: 0.01, max: 1 },
    k: { meaning: 'sum of the coefficients of bends, valves and exit', unit: '-', min: 0, max: 50 },
    v: { meaning: 'velocity', unit: 'm/s', min: 0, max: 10 },
  },
  compute: (f: number, L: number, D: number, k: number, v: number) =>
    (((f * L) / D + k) * v ** 2) / (2 * GRAVITY),
  validity: 'steady flow in a full round pipe',
  source: 'Darcy 1857, Weisbach 1845; teaching article',
});

/** Viscosity of water at 5 °C, m²/s. */
const VISCOSITY = 1.5e-6;
/** Height of the roughness of plastic hose and pipe, m. Common practice. */
const PLASTIC = 1e-5;

/**
 * Head lost in a plastic pressure pipe, by {@link darcyWeisbach} and {@link swameeJain}; laminar below a Reynolds number of
 * 2300.
 * @param flow - m³/s, 0 or more
 * @param diameter - inside, m
 * @param length - m
 * @param fittings - sum of the loss coefficients of bends, valves and exit, dimensionless
 * @returns m of water
 */
export function lineLoss(flow: number, diameter: number, length: number, fittings: number): number {
  if (flow <= 0) return 0;
  const velocity = flow / ((Math.PI / 4) * diameter ** 2);
  const reynolds = (velocity * diameter) / VISCOSITY;
  const f =
    reynolds < 2300 ? 64 / reynolds : swameeJain.compute(PLASTIC / diameter, Math.max(reynolds, 4000));
  return darcyWeisbach.compute(f, length, diameter, fittings, velocity);
}

export const pumpDuty = method({
  title: 'Duty point of a sump pump',
  what: 'Flow at which the head of the pump equals lift and losses of its line.',
  assumptions: [
    'head of the pump H = shut-off head × (1 − (Q/largest flow)²), both as printed on it',
    'line of plastic; two bends, a non-return valve and the exit count 5 velocity heads',
  ],
  source: 'Darcy–Weisbach; common practice for the shape of the pump curve',
});

/** What is printed on a pump. */
export interface Pump {
  /** head at which it moves nothing, m */
  shutOff: number;
  /** flow without lift, m³/s */
  largest: number;
}
/** Bends, non-return valve and exit, velocity heads. Common practice. */
const FITTINGS = 5;

/**
 * What a pump gives through its line, see {@link pumpDuty}.
 * @param pump - its highest head, m, and largest flow, m³/s
 * @param lift - from the water in the sump to the end of the line, m
 * @param line - inside diameter and length, m
 * @returns flow, m³/s, and head, m; no flow where the lift is as much as the pump can, or more
 */
export function dutyPoint(
  pump: Pump,
  lift: number,
  line: { diameter: number; length: number },
): { flow: number; head: number } {
  if (lift >= pump.shutOff) return { flow: 0, head: lift };
  let low = 0;
  let high = pump.largest;
  for (let i = 0; i < 60; i++) {
    const flow = (low + high) / 2;
    const spare =
      pump.shutOff * (1 - (flow / pump.largest) ** 2) -
      lift -
      lineLoss(flow, line.diameter, line.length, FITTINGS);
    if (spare > 0) low = flow;
    else high = flow;
  }
  return { flow: low, head: lift + lineLoss(low, line.diameter, line.length, FITTINGS) };
}
