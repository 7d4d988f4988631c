import { formula, UNIT_WEIGHT_OF_WATER } from '../formula/index.js';

const W = UNIT_WEIGHT_OF_WATER;
const g = { meaning: 'saturated unit weight of the clay', unit: 'N/m³', min: 14000, max: 23000 };
const h = { meaning: 'pressure head at the top of the seam', unit: 'm', min: 0.01, max: 30 };
const G = { meaning: 'density of the grains over that of water', unit: '-', min: 2.4, max: 2.9 };
const n = { meaning: 'porosity', unit: '-', min: 0.2, max: 0.6 };

/** Factor of safety of a clay plug over water under pressure. */
export const heaveFactor = formula({
  title: 'Factor of safety against heave of the floor',
  symbol: 'FS',
  unit: '-',
  expression: 'g*t/(9810*h)',
  parameters: { g, t: { meaning: 'clay left between floor and seam', unit: 'm', min: 0, max: 20 }, h },
  compute: (g: number, t: number, h: number) => (g * t) / (W * h),
  validity: 'plug wide against its thickness, no shear at its sides',
  source: 'total-stress balance in every soil-mechanics text (Das; from memory)',
});

/** Ground left between a floor and a seam. */
export const plugLeft = formula({
  title: 'Ground left between floor and seam',
  symbol: 't',
  unit: 'm',
  expression: 'max(T + z, 0)',
  parameters: {
    T: { meaning: 'depth of the top of the seam', unit: 'm', min: 0, max: 30 },
    z: { meaning: 'level of the floor', unit: 'm', min: -30, max: 10 },
  },
  compute: (T: number, z: number) => Math.max(T + z, 0),
  validity: 'both counted from the lowest natural ground at the rim',
  source: 'geometry',
});

/** What is in hand over a seam. */
export const plugSpare = formula({
  title: 'That the water of the seam may rise before the floor lacks its factor',
  symbol: 'm',
  unit: 'm',
  expression: '(o - w)/F',
  parameters: {
    o: { meaning: 'water and weight over the floor, as a head', unit: 'm', min: 0, max: 20 },
    w: { meaning: 'water to be left over the floor', unit: 'm', min: -50, max: 50 },
    F: { meaning: 'factor of safety', unit: '-', min: 1, max: 2 },
  },
  compute: (o: number, w: number, F: number) => (o - w) / F,
  validity: 'below 0 the factor is lacking',
  source: 'the balance of the factor, solved for the head',
});

/** Pressure of the ground over a seam. */
export const plugWeight = formula({
  title: 'Weight of the ground over a seam, per square metre',
  symbol: 'w',
  unit: 'Pa',
  expression: 'g*t',
  parameters: { g: { ...g, min: 10000 }, t: { meaning: 'ground left', unit: 'm', min: 0, max: 30 } },
  compute: (g: number, t: number) => g * t,
  validity: 'plug wide against its thickness',
  source: 'statics',
});

/** Pressure of the ground over a seam with what stands and lies on the floor. */
export const plugWithLoad = formula({
  title: 'Weight of the ground over a seam and of what is over the floor, per square metre',
  symbol: 'w',
  unit: 'Pa',
  expression: 'p + q',
  parameters: {
    p: { meaning: 'weight of the ground', unit: 'Pa', min: 0, max: 1e6 },
    q: { meaning: 'pressure of water and slab over the floor', unit: 'Pa', min: 0, max: 1e6 },
  },
  compute: (p: number, q: number) => p + q,
  validity: 'per square metre of floor',
  source: 'statics',
});

/** Deepest cut that keeps a factor against heave. */
export const deepestCut = formula({
  title: 'Deepest cut over a seam under pressure',
  symbol: 'H',
  unit: 'm',
  expression: 'T - F*9810*h/g',
  parameters: {
    T: { meaning: 'depth of the top of the seam', unit: 'm', min: 0.1, max: 30 },
    F: { meaning: 'factor of safety', unit: '-', min: 1, max: 2 },
    h,
    g,
  },
  compute: (T: number, F: number, h: number, g: number) => T - (F * W * h) / g,
  validity: 'as for the factor; below 0 no cut at all keeps it',
  source: 'the factor solved for the depth; worked example, public question bank (ques10 item 32989)',
});

/** How deep a log must go for a floor to be safe whatever lies below it. */
export const logWanted = formula({
  title: 'Depth of a log that rules out heave from a layer below it',
  symbol: 'T',
  unit: 'm',
  expression: '(D*g + F*9810*e)/(g - F*9810) + e',
  parameters: {
    D: { meaning: 'deepest that is dug', unit: 'm', min: 0, max: 12 },
    F: { meaning: 'factor of safety', unit: '-', min: 1, max: 1.4 },
    g,
    e: { meaning: 'ground at the log above the lowest at the rim', unit: 'm', min: -10, max: 10 },
  },
  compute: (D: number, F: number, g: number, e: number) => (D * g + F * W * e) / (g - F * W) + e,
  validity: 'water of the layer at the ground of the log; water that rises over it asks for more',
  source: 'g(T − D) = F·9810·(T + e), solved for the top T of the layer, and e to the ground there',
});

/** Water that must stand over a plug of clay so that it keeps its factor. */
export const waterOverPlug = formula({
  title: 'Water to be left over a floor above a seam under pressure',
  symbol: 'w',
  unit: 'm',
  expression: 'F*h - g*t/9810',
  parameters: {
    F: { meaning: 'factor of safety', unit: '-', min: 1, max: 2 },
    h,
    g: { ...g, min: 10000 },
    t: { meaning: 'ground left between floor and seam', unit: 'm', min: 0, max: 20 },
  },
  compute: (F: number, h: number, g: number, t: number) => F * h - (g * t) / W,
  validity: 'as for the factor; at 0 and below none is needed',
  source: 'the balance of the factor with water of depth w on the floor',
});

/** Upward gradient at which a silty or sandy floor boils. */
export const criticalGradient = formula({
  title: 'Critical hydraulic gradient',
  symbol: 'ic',
  unit: '-',
  expression: '(G - 1)*(1 - n)',
  parameters: { G, n },
  compute: (G: number, n: number) => (G - 1) * (1 - n),
  validity: 'soils without cohesion; clay lifts as a block instead',
  source: 'Terzaghi 1943; worked example read at a public question bank',
});

/** Factor wanted against heave: published practice 1.1 (known head, temporary) to 1.5; from memory. Our choice. */
export const HEAVE_FACTOR_WANTED = 1.25;
