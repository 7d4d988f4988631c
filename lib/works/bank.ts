/** The bank around a pond that stands above the lowest ground. */
import { formula, LEVEL_RESOLUTION, type Use, unrecorded } from '../formula/index.js';
import type { Site } from '../site/index.js';
import { outline, widened } from '../uplift/index.js';
import { edgeOut, linerEdge } from './linerEdge.js';

/** Width of its top, m, and its outer side, horizontal to 1 vertical. Our choice. */
export const BANK = { crest: 0.4, slope: 1.5 };
/** Least height that is called a bank, m; past two centimetres, so that no rounding of levels decides. */
export const LEAST_BANK = 0.02 + LEVEL_RESOLUTION;

/** Earth in a bank that goes evenly from one height to another. */
export const bankVolume = formula({
  title: 'Earth in the bank around a pond',
  symbol: 'V',
  unit: 'm³',
  expression: 'p*(c*(h + k)/2 + (b + m)*(h^2 + h*k + k^2)/6)',
  parameters: {
    p: { meaning: 'length along the middle of its top', unit: 'm', min: 0, max: 500 },
    h: { meaning: 'height where the ground is lowest', unit: 'm', min: 0, max: 5 },
    k: { meaning: 'height where the ground is highest', unit: 'm', min: 0, max: 5 },
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

/** Length of a bank: where the ground behind the pond rises above it there is none. */
export const bankLength = formula({
  title: 'Length of the bank along the middle of its top',
  symbol: 'p',
  unit: 'm',
  expression: 'P*h/max(g, h)',
  parameters: {
    P: { meaning: 'all round', unit: 'm', min: 0, max: 500 },
    h: { meaning: 'height where the ground is lowest', unit: 'm', min: 0.001, max: 5 },
    g: { meaning: 'rise of the ground along the rim', unit: 'm', min: 0, max: 10 },
  },
  compute: (P: number, h: number, g: number) => (P * h) / Math.max(g, h),
  validity: 'ground that rises evenly along it',
  source: 'geometry',
});

/** A bank around a pond that stands above the lowest ground, m³; nought where it is too low to be one. */
export function bankEarth(
  { pond, places: { highRim } }: Pick<Site, 'pond' | 'places'>,
  raise: number,
  use: Use = unrecorded,
): number {
  const { shape, fullLevel } = pond;
  if (raise + linerEdge(fullLevel) <= LEAST_BANK) return 0;
  const edge = linerEdge(fullLevel, use);
  const height = use(bankHeight, raise, edge);
  const top = outline(widened(shape, use(edgeOut, shape.sideSlope, edge, BANK.crest / 2), use), 0, use);
  return use(
    bankVolume,
    use(bankLength, top, height, highRim),
    height,
    use(bankLeast, height, highRim),
    BANK.crest,
    BANK.slope,
    shape.sideSlope,
  );
}
