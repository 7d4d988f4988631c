/** The bank around a pond that stands above the lowest ground. */
import { roundAndAlong } from '../digging/index.js';
import { together } from '../drain/index.js';
import { formula, LEVEL_RESOLUTION, type Use, unrecorded } from '../formula/index.js';
import type { Site } from '../site/index.js';
import { edgeOut, linerEdge } from './linerEdge.js';

/** Width of its top, m, and its outer side, horizontal to 1 vertical. Our choice. */
export const BANK = { crest: 0.4, slope: 1.5 };
/** Least height that is called a bank, m; past two centimetres, so that no rounding of levels decides. */
export const LEAST_BANK = 0.02 + LEVEL_RESOLUTION;

/** Earth in a part of a bank that goes evenly from one height to another. */
export const bankVolume = formula({
  title: 'Earth in a part of the bank around a pond',
  symbol: 'V',
  unit: 'm³',
  expression: 'p*(c*(h + k)/2 + (b + m)*(h^2 + h*k + k^2)/6)',
  parameters: {
    p: { meaning: 'length along the middle of its top', unit: 'm', min: 0, max: 500 },
    h: { meaning: 'height at one end of it', unit: 'm', min: 0, max: 5 },
    k: { meaning: 'height at its other end', unit: 'm', min: 0, max: 5 },
    c: { meaning: 'width of its top', unit: 'm', min: 0, max: 5 },
    b: { meaning: 'slope of its outer side, horizontal to 1 vertical', unit: '-', min: 0, max: 10 },
    m: { meaning: 'slope of its inner side, horizontal to 1 vertical', unit: '-', min: 0, max: 10 },
  },
  compute: (p: number, h: number, k: number, c: number, b: number, m: number) =>
    p * ((c * (h + k)) / 2 + ((b + m) * (h * h + h * k + k * k)) / 6),
  validity: 'ground that rises evenly along it',
  source: 'geometry: a trapezium, integrated over its height',
});

/** Height of a bank. */
export const bankHeight = formula({
  title: 'Height of the bank where the ground is lowest',
  symbol: 'h',
  unit: 'm',
  expression: 'r + e',
  parameters: {
    r: { meaning: 'rim raised by', unit: 'm', min: 0, max: 2 },
    e: { meaning: 'edge of the liner above the lowest ground', unit: 'm', min: 0, max: 2 },
  },
  compute: (r: number, e: number) => r + e,
  validity: 'its top level all round',
  source: 'geometry',
});

/** Height of a bank on the higher side. */
export const bankLeast = formula({
  title: 'Height of the bank where the ground is highest',
  symbol: 'k',
  unit: 'm',
  expression: 'max(h - g, 0)',
  parameters: {
    h: { meaning: 'height where it is lowest', unit: 'm', min: 0, max: 5 },
    g: { meaning: 'rise of the ground along the rim', unit: 'm', min: 0, max: 10 },
  },
  compute: (h: number, g: number) => Math.max(h - g, 0),
  validity: 'its top level all round',
  source: 'geometry',
});

/** Length of a bank that runs up the ends: where the ground there rises above it there is none. */
export const bankLength = formula({
  title: 'Length of the bank that goes from the low side to the high side',
  symbol: 'p',
  unit: 'm',
  expression: '(P - 2*l)*h/max(g, h)',
  parameters: {
    P: { meaning: 'all round, along the middle of its top', unit: 'm', min: 0, max: 500 },
    l: { meaning: 'along the low side, and again along the high side', unit: 'm', min: 0, max: 500 },
    h: { meaning: 'height where the ground is lowest', unit: 'm', min: 0.001, max: 5 },
    g: { meaning: 'rise of the ground along the rim', unit: 'm', min: 0, max: 10 },
  },
  compute: (P: number, l: number, h: number, g: number) => ((P - 2 * l) * h) / Math.max(g, h),
  validity: 'ground that rises evenly along it',
  source: 'geometry',
});

/**
 * A bank around a pond that stands above the lowest ground, m³; nought where it is too low to be one. It keeps its height along
 * the low side and the high side, and tapers between them.
 */
export function bankEarth(
  site: Pick<Site, 'survey' | 'pond' | 'places'>,
  raise: number,
  use: Use = unrecorded,
): number {
  const { shape, fullLevel } = site.pond;
  const { highRim } = site.places;
  if (raise + linerEdge(fullLevel) <= LEAST_BANK) return 0;
  const edge = linerEdge(fullLevel, use);
  const low = use(bankHeight, raise, edge);
  const high = use(bankLeast, low, highRim);
  const { round, along } = roundAndAlong(site, use(edgeOut, shape.sideSlope, edge, BANK.crest / 2), use);
  const part = (length: number, from: number, to: number) =>
    use(bankVolume, length, from, to, BANK.crest, BANK.slope, shape.sideSlope);
  const parts = [part(along, low, low), part(use(bankLength, round, along, low, highRim), low, high)];
  if (high > 0) parts.push(part(along, high, high));
  return together('m³', parts, use);
}
