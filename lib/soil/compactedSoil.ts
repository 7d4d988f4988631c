import { formula } from '../formula/index.js';

const source = 'Saxton & Rawls 2006, Soil Sci. Soc. Am. J. 70:1569, eqs 7–10 and 19–22 (from memory)';
const theta = (meaning: string) => ({ meaning, unit: 'm³/m³', min: 0.1, max: 0.7 });

/** Porosity of a soil pressed denser, or loosened, than its texture makes it. */
export const compactedSaturation = formula({
  title: 'Water content at saturation, soil denser or looser than usual',
  symbol: "θS'",
  unit: 'm³/m³',
  expression: '1 - D*(1 - s)',
  parameters: {
    s: theta('saturation θS at the usual density'),
    D: { meaning: 'density over the usual density', unit: '-', min: 0.9, max: 1.3 },
  },
  compute: (s: number, D: number) => 1 - D * (1 - s),
  validity: 'density factor 0.9 (loose) to 1.3 (severely compacted)',
  source,
});

/** Field capacity of such a soil. */
export const compactedFieldCapacity = formula({
  title: 'Water content at field capacity, soil denser or looser than usual',
  symbol: "θ33'",
  unit: 'm³/m³',
  expression: 'f - 0.2*(s - c)',
  parameters: {
    f: theta('field capacity θ33'),
    s: theta('saturation θS'),
    c: theta("compacted saturation θS'"),
  },
  compute: (f: number, s: number, c: number) => f - 0.2 * (s - c),
  validity: 'density factor 0.9 to 1.3; the wilting point is left as it is',
  source,
});

const W = { meaning: 'stones, mass fraction of the whole soil', unit: '-', min: 0, max: 0.9 };
const A = {
  meaning: 'density of the fine earth over that of its grains, 1 − θS',
  unit: '-',
  min: 0.3,
  max: 0.9,
};

/** How much stones slow water down. */
export const stonyPermeabilityRatio = formula({
  title: 'Conductivity of stony soil over that of its fine earth',
  symbol: 'Kb/Ks',
  unit: '-',
  expression: '(1 - W)/(1 - W*(1 - 1.5*A))',
  parameters: { W, A },
  compute: (W: number, A: number) => (1 - W) / (1 - W * (1 - 1.5 * A)),
  validity: 'stones embedded in fine earth, no voids between them; not an open gravel',
  source,
});
