/** What a pond makes to be dug, before it is loosened. */
import { formula, type Use, unrecorded } from '../formula/index.js';
import type { Measures } from '../heads/index.js';
import type { Site } from '../site/index.js';
import { outline, planArea, pondVolume, widened } from '../uplift/index.js';
import { dugTo } from './digging.js';
import { beddingLaid } from './gravelLeftOut.js';
import { roundAndAlong } from './uphillSide.js';

/** How high the ground stands above the rim at its highest. */
export const cutHeight = formula({
  title: 'Height of the cut above the rim where the ground is highest',
  symbol: 'q',
  unit: 'm',
  expression: 'max(g - r, 0)',
  parameters: {
    g: { meaning: 'highest ground at the rim, above the lowest', unit: 'm', min: 0, max: 10 },
    r: { meaning: 'rim raised by', unit: 'm', min: 0, max: 2 },
  },
  compute: (g: number, r: number) => Math.max(g - r, 0),
  validity: 'the rim level all round',
  source: 'geometry',
});

/** Where what is cut back beyond the rim has its middle. */
export const cutOut = formula({
  title: 'Middle of what is cut back beyond the rim, outside it',
  symbol: 'x',
  unit: 'm',
  expression: 'm*q/3',
  parameters: {
    m: { meaning: 'slope of the sides, horizontal to 1 vertical', unit: '-', min: 0, max: 10 },
    q: { meaning: 'height of the cut above the rim', unit: 'm', min: 0, max: 10 },
  },
  compute: (m: number, q: number) => (m * q) / 3,
  validity: 'the sides go on at their slope up to the ground',
  source: 'geometry: a triangle',
});

/** What is cut off ground that rises behind the pond. */
export const groundCut = formula({
  title: 'Ground cut off where it rises behind the pond, with its sides cut back',
  symbol: 'V',
  unit: 'm³',
  expression: 'A*q^2/(2*g) + m*q^2*(l/2 + (P - 2*l)*q/(6*g))',
  parameters: {
    A: { meaning: 'plan area at the rim', unit: 'm²', min: 0, max: 1e4 },
    q: { meaning: 'height of the cut above the rim', unit: 'm', min: 0, max: 10 },
    g: { meaning: 'highest ground at the rim, above the lowest', unit: 'm', min: 0.001, max: 10 },
    m: { meaning: 'slope of the sides, horizontal to 1 vertical', unit: '-', min: 0, max: 10 },
    l: { meaning: 'length along the high side', unit: 'm', min: 0, max: 500 },
    P: { meaning: 'all round', unit: 'm', min: 0, max: 500 },
  },
  compute: (A: number, q: number, g: number, m: number, l: number, P: number) =>
    (A * q * q) / (2 * g) + m * q * q * (l / 2 + ((P - 2 * l) * q) / (6 * g)),
  validity:
    'ground that rises evenly across the pond and is level beyond its rim; exact for a box that it meets square, near for an ellipse',
  source: 'geometry: a wedge, and triangles along its sides',
});

/** A ring around the liner. */
export const ringDug = formula({
  title: 'The ring around the liner',
  symbol: 'R',
  unit: 'm³',
  expression: 'P*w*min(t, d)',
  parameters: {
    P: { meaning: 'outline along its middle', unit: 'm', min: 0, max: 500 },
    w: { meaning: 'width', unit: 'm', min: 0, max: 5 },
    t: { meaning: 'depth planned', unit: 'm', min: 0, max: 10 },
    d: { meaning: 'depth of the hole', unit: 'm', min: 0, max: 10 },
  },
  compute: (P: number, w: number, t: number, d: number) => P * w * Math.min(t, d),
  validity: 'not deeper than the hole',
  source: 'geometry',
});

/** The hole of a pond with its ring. */
export const wholeHole = formula({
  title: 'The hole of the pond, with its ring and what is cut off above it',
  symbol: 'H',
  unit: 'm³',
  expression: 'W + V + R',
  parameters: {
    W: { meaning: 'cut off where the ground rises', unit: 'm³', min: 0, max: 1e4 },
    V: { meaning: 'below the lowest ground', unit: 'm³', min: 0, max: 1e4 },
    R: { meaning: 'the ring', unit: 'm³', min: 0, max: 1e4 },
  },
  compute: (W: number, V: number, R: number) => W + V + R,
  validity: 'without the bed of a drain',
  source: 'sum of what is put in',
});

/** The ring around the liner that the survey plans, m³; it is not dug deeper than the pond. */
export function ringVolume(site: Site, m: Measures, depth: number, use: Use = unrecorded): number {
  const { shape, ring } = site.pond;
  if (ring.width === 0) return 0;
  const dug = dugBelow(site, m, depth, use);
  const middle = widened(shape, ring.width / 2, use);
  return use(ringDug, outline(middle, 0, use), ring.width, ring.depth ?? dug, dug);
}

/** From the lowest ground down to what the liner or the bed of a drain lies on, m. */
const dugBelow = (site: Site, m: Measures, depth: number, use: Use) =>
  Math.max(use(dugTo, depth, m.raise, beddingLaid(site, m)), 0);

/** Cut off ground that rises above the rim, m³. */
function cutAbove(site: Site, raise: number, use: Use): number {
  const { pond, places } = site;
  const { shape } = pond;
  const height = use(cutHeight, places.highRim, raise);
  if (height === 0) return 0;
  const { round, along } = roundAndAlong(site, use(cutOut, shape.sideSlope, height), use);
  return use(groundCut, planArea(shape, 0, use), height, places.highRim, shape.sideSlope, along, round);
}

/**
 * The pond's own hole with its ring and bedding, m³, and what is cut off the ground that rises behind it to
 * the highest rim; without the bed of a drain.
 */
export function holeOf(site: Site, m: Measures, depth: number, use: Use = unrecorded): number {
  const { shape } = site.pond;
  const above = cutAbove(site, m.raise, use);
  const below = pondVolume(shape, dugBelow(site, m, depth, use), use);
  return use(wholeHole, above, below, ringVolume(site, m, depth, use));
}
