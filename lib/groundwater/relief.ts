import { formula } from '../formula/index.js';

/** What a drain offers the water under a liner. */
export interface Relief {
  /** level the water can fall to at the outlet, m above the datum */
  level: number;
  /** flow per metre of head, m²/s */
  conductance: number;
  /** largest flow, m³/s */
  capacity: number;
}

/** Head left under a liner by a drain with a flap that reaches the layer. */
export const relievedHead = formula({
  title: 'Head under the liner with a working drain and flap',
  symbol: 'h',
  unit: 'm',
  expression: 'min(u, max(o, r) + d)',
  parameters: {
    u: { meaning: 'head without a drain', unit: 'm', min: -10, max: 10 },
    o: { meaning: 'outlet level', unit: 'm', min: -10, max: 10 },
    r: { meaning: 'level of the receiving water', unit: 'm', min: -10, max: 10 },
    d: { meaning: 'head lost from the farthest wet point to the outlet', unit: 'm', min: 0, max: 1 },
  },
  compute: (u: number, o: number, r: number, d: number) => Math.min(u, Math.max(o, r) + d),
  validity: 'the layer drained touches all of the liner that is meant',
  source: 'hydrostatics',
});

/** The same without a flap: the receiving water stands in the bed. */
export const unflappedHead = formula({
  title: 'Head under the liner with a drain without flap',
  symbol: 'h',
  unit: 'm',
  expression: 'max(r, min(u, max(o, r) + d))',
  parameters: relievedHead.parameters,
  compute: (u: number, o: number, r: number, d: number) => Math.max(r, relievedHead.compute(u, o, r, d)),
  validity: 'as with a flap',
  source: 'hydrostatics',
});

/** Head lost along a blanket to its pipe. */
export const blanketLoss = formula({
  title: 'Head lost in a drainage blanket',
  symbol: 'Δh',
  unit: 'm',
  expression: 'q*L^2/(2*K*t)',
  parameters: {
    q: { meaning: 'inflow per area', unit: 'm/s', min: 0, max: 1e-4 },
    L: { meaning: 'distance from the farthest point to the pipe', unit: 'm', min: 0, max: 20 },
    K: { meaning: 'conductivity of the blanket', unit: 'm/s', min: 1e-6, max: 1 },
    t: { meaning: 'thickness of the blanket', unit: 'm', min: 0.003, max: 1 },
  },
  compute: (q: number, L: number, K: number, t: number) => (q * L * L) / (2 * K * t),
  validity: 'blanket full, level, evenly fed; closed form of the strip',
  source: 'Darcy with uniform inflow, integrated',
});
