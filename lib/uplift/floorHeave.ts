import { formula, UNIT_WEIGHT_OF_WATER } from '../formula/index.js';

/** Factor of safety of a clay plug over water under pressure. */
export const heaveFactor = formula({
  title: 'Factor of safety against heave of the floor',
  symbol: 'FS',
  unit: '-',
  expression: 'g*t/(9810*h)',
  parameters: {
    g: { meaning: 'saturated unit weight of the clay', unit: 'N/m³', min: 14000, max: 23000 },
    t: { meaning: 'clay left between floor and seam', unit: 'm', min: 0, max: 20 },
    h: { meaning: 'pressure head at the top of the seam', unit: 'm', min: 0.01, max: 30 },
  },
  compute: (g: number, t: number, h: number) => (g * t) / (UNIT_WEIGHT_OF_WATER * h),
  validity: 'plug wide against its thickness, no shear at its sides',
  source: 'total-stress balance in every soil-mechanics text (Das; from memory)',
});

/** Upward gradient at which a silty or sandy floor boils. */
export const criticalGradient = formula({
  title: 'Critical hydraulic gradient',
  symbol: 'ic',
  unit: '-',
  expression: '(G - 1)*(1 - n)',
  parameters: {
    G: { meaning: 'density of the grains over that of water', unit: '-', min: 2.4, max: 2.9 },
    n: { meaning: 'porosity', unit: '-', min: 0.2, max: 0.6 },
  },
  compute: (G: number, n: number) => (G - 1) * (1 - n),
  validity: 'soils without cohesion; clay lifts as a block instead',
  source: 'Terzaghi 1943; worked example read at a public question bank',
});

/** Factor wanted against heave: published practice 1.1 (known head, temporary) to 1.5; from memory. Our choice. */
export const HEAVE_FACTOR_WANTED = 1.25;
