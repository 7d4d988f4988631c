import { formula, UNIT_WEIGHT_OF_WATER } from '../formula/index.js';

const W = UNIT_WEIGHT_OF_WATER;

/** Unit weight of grains under water. */
export const submergedUnitWeight = formula({
  title: 'Submerged unit weight',
  symbol: "γ'",
  unit: 'N/m³',
  expression: 'g*(1 - 1/G)',
  parameters: {
    g: { meaning: 'dry unit weight', unit: 'N/m³', min: 5000, max: 27000 },
    G: { meaning: 'density of the grains over that of water', unit: '-', min: 1.5, max: 3.2 },
  },
  compute: (g: number, G: number) => g * (1 - 1 / G),
  validity: 'grains fully under water',
  source: 'ACPA Design Data 41 (1996), as worked in a public sheet',
});

/** Head that a layer under water holds down. */
export const ballastHead = formula({
  title: 'Head held by ballast under water',
  symbol: 'b',
  unit: 'm',
  expression: 's*t/9810',
  parameters: {
    s: { meaning: 'submerged unit weight', unit: 'N/m³', min: 1000, max: 18000 },
    t: { meaning: 'thickness', unit: 'm', min: 0, max: 2 },
  },
  compute: (s: number, t: number) => (s * t) / W,
  validity: 'on a level floor; loose ballast does nothing for steep sides',
  source: 'statics',
});

/** Slab thickness that balances a head under it. */
export const slabThickness = formula({
  title: 'Thickness of a slab against a head',
  symbol: 't',
  unit: 'm',
  expression: 'F*9810*h/(c - F*9810)',
  parameters: {
    F: { meaning: 'factor of safety', unit: '-', min: 1, max: 1.5 },
    h: { meaning: 'head above the top of the slab', unit: 'm', min: 0, max: 2 },
    c: { meaning: 'unit weight of the slab', unit: 'N/m³', min: 20000, max: 26000 },
  },
  compute: (F: number, h: number, c: number) => (F * W * h) / (c - F * W),
  validity: 'the head acts on the underside, so the slab displaces water too',
  source: 'statics',
});

/** Use of the resistance against uplift in limit-state form. */
export const upliftUtilisation = formula({
  title: 'Utilisation against uplift (EN 1997-1, UPL)',
  symbol: 'Λ',
  unit: '-',
  expression: 'a*U/(b*G)',
  parameters: {
    a: { meaning: 'factor on the destabilising action (1.0; UK annex 1.1)', unit: '-', min: 1, max: 1.5 },
    U: { meaning: 'uplift', unit: 'N or Pa', min: 0, max: 1e9 },
    b: { meaning: 'factor on the stabilising action (0.9)', unit: '-', min: 0.5, max: 1 },
    G: { meaning: 'weight that holds down', unit: 'N or Pa', min: 1e-6, max: 1e9 },
  },
  compute: (a: number, U: number, b: number, G: number) => (a * U) / (b * G),
  validity: 'at most 1 is verified; friction at the sides left out',
  source: 'EN 1997-1:2004 Annex A.4; Bond & Harris 2008',
});

/** Common unit weights, N/m³: gravel dry 16 kN/m³ (100 lb/ft³), concrete 24 kN/m³; grains 2.65. Common practice. */
export const GRAVEL = { unitWeight: 16000, grains: 2.65 };
export const CONCRETE_UNIT_WEIGHT = 24000;
