import { formula, GRAVITY, method, type Use, unrecorded } from '../formula/index.js';
import { leftByTrial } from '../seepage/index.js';

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

/** Velocity in a full pipe. */
export const fullVelocity = formula({
  title: 'Velocity in a full pipe',
  symbol: 'v',
  unit: 'm/s',
  expression: 'Q/((pi/4)*D^2)',
  parameters: {
    Q: { meaning: 'flow', unit: 'm³/s', min: 0, max: 0.1 },
    D: { meaning: 'inside diameter', unit: 'm', min: 0.01, max: 1 },
  },
  compute: (Q: number, D: number) => Q / ((Math.PI / 4) * D ** 2),
  validity: 'a full round pipe',
  source: 'continuity',
});

/** Reynolds number of a full pipe. */
export const reynoldsNumber = formula({
  title: 'Reynolds number in a pipe',
  symbol: 'R',
  unit: '-',
  expression: 'v*D/w',
  parameters: {
    v: { meaning: 'velocity', unit: 'm/s', min: 0, max: 10 },
    D: { meaning: 'inside diameter', unit: 'm', min: 0.01, max: 1 },
    w: { meaning: 'viscosity of the water', unit: 'm²/s', min: 1e-7, max: 1e-5 },
  },
  compute: (v: number, D: number, w: number) => (v * D) / w,
  validity: 'laminar below 2300',
  source: 'definition',
});

/** Roughness by the diameter. */
export const relativeRoughness = formula({
  title: 'Height of the roughness over the diameter',
  symbol: 'e',
  unit: '-',
  expression: 'k/D',
  parameters: {
    k: { meaning: 'height of the roughness', unit: 'm', min: 1e-7, max: 1e-3 },
    D: { meaning: 'inside diameter', unit: 'm', min: 0.01, max: 1 },
  },
  compute: (k: number, D: number) => k / D,
  validity: 'plastic pipe: 0.01 mm',
  source: 'definition',
});

/** Friction of slow flow. */
export const laminarFriction = formula({
  title: 'Friction factor of a pipe in slow flow',
  symbol: 'f',
  unit: '-',
  expression: '64/R',
  parameters: { R: { meaning: 'Reynolds number', unit: '-', min: 1, max: 2300 } },
  compute: (R: number) => 64 / R,
  validity: 'laminar flow',
  source: 'Hagen 1839, Poiseuille 1841',
});

/** Head that a pump works against. */
export const pumpedHead = formula({
  title: 'Head that the pump works against',
  symbol: 'H',
  unit: 'm',
  expression: 'l + h',
  parameters: {
    l: { meaning: 'lift from the water in the sump to the end of the line', unit: 'm', min: 0, max: 50 },
    h: { meaning: 'head lost in the line', unit: 'm', min: 0, max: 50 },
  },
  compute: (l: number, h: number) => l + h,
  validity: 'steady flow',
  source: 'energy',
});

/** Head of a pump at a flow. */
export const pumpHead = formula({
  title: 'Head of the pump at its flow',
  symbol: 'H',
  unit: 'm',
  expression: 'S*(1 - (Q/M)^2)',
  parameters: {
    S: { meaning: 'head at which it moves nothing', unit: 'm', min: 0.1, max: 50 },
    Q: { meaning: 'flow', unit: 'm³/s', min: 0, max: 0.1 },
    M: { meaning: 'flow without lift', unit: 'm³/s', min: 1e-5, max: 0.1 },
  },
  compute: (S: number, Q: number, M: number) => S * (1 - (Q / M) ** 2),
  validity: 'a pump by the two numbers that are printed on it',
  source: 'common practice for the shape of the pump curve',
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
 * @param use - what evaluates the formulas, for a record
 * @returns m of water
 */
export function lineLoss(
  flow: number,
  diameter: number,
  length: number,
  fittings: number,
  use: Use = unrecorded,
): number {
  if (flow <= 0) return 0;
  const velocity = use(fullVelocity, flow, diameter);
  const reynolds = use(reynoldsNumber, velocity, diameter, VISCOSITY);
  const f =
    reynolds < 2300
      ? use(laminarFriction, reynolds)
      : use(swameeJain, use(relativeRoughness, PLASTIC, diameter), Math.max(reynolds, 4000));
  return use(darcyWeisbach, f, length, diameter, fittings, velocity);
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
 * @param use - what evaluates the formulas at the flow that is found, for a record
 * @returns flow, m³/s, and head, m; no flow where the lift is as much as the pump can, or more
 */
export function dutyPoint(
  pump: Pump,
  lift: number,
  line: { diameter: number; length: number },
  use: Use = unrecorded,
): { flow: number; head: number } {
  if (lift >= pump.shutOff) return { flow: 0, head: lift };
  let low = 0;
  let high = pump.largest;
  for (let i = 0; i < 60; i++) {
    const flow = (low + high) / 2;
    const spare =
      pumpHead.compute(pump.shutOff, flow, pump.largest) -
      lift -
      lineLoss(flow, line.diameter, line.length, FITTINGS);
    if (spare > 0) low = flow;
    else high = flow;
  }
  const loss = lineLoss(low, line.diameter, line.length, FITTINGS, use);
  const head = use(pumpedHead, lift, loss);
  use(leftByTrial, use(pumpHead, pump.shutOff, low, pump.largest), head);
  return { flow: low, head };
}
