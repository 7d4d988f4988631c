/** The bank around a pond that stands above the lowest ground. */
import { formula, LEVEL_RESOLUTION } from '../formula/index.js';
import type { Site } from '../site/index.js';
import { outline } from '../uplift/index.js';
import { linerEdge, widened } from './pondGoods.js';

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

/** A bank around a pond that stands above the lowest ground, as it lies, m³; nought where it is too low to be one. */
export function bankEarth(
  { pond, places: { highRim } }: Pick<Site, 'pond' | 'places'>,
  raise: number,
): number {
  const { shape, fullLevel } = pond;
  const edge = linerEdge(fullLevel);
  const height = raise + edge;
  if (height <= LEAST_BANK) return 0;
  const top = outline(widened(shape, shape.sideSlope * edge + BANK.crest / 2));
  // The ground behind the pond may rise above it: there is none there.
  const share = Math.min(height / highRim, 1);
  const least = Math.max(height - highRim, 0);
  return bankVolume.compute(top * share, height, least, BANK.crest, BANK.slope, shape.sideSlope);
}
