import { formula } from '../formula/index.js';

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
