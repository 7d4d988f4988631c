/** The bank around a pond that stands above the lowest ground. */
import { formula, LEVEL_RESOLUTION } from '../formula/index.js';
import type { Site } from '../site/index.js';
import { FREEBOARD } from './pondGoods.js';

/** Width of its top, m, and its outer side, horizontal to 1 vertical. Our choice. */
export const BANK = { crest: 0.4, slope: 1.5 };
/** Least height that is called a bank, m; past two centimetres, so that no rounding of levels decides. */
export const LEAST_BANK = 0.02 + LEVEL_RESOLUTION;

/** Earth in a bank around a rim. */
export const bankVolume = formula({
  title: 'Earth in the bank around a pond',
  symbol: 'V',
  unit: 'm³',
  expression: 'p*h*(c + h*(b + m)/2)',
  parameters: {
    p: { meaning: 'way around the rim', unit: 'm', min: 0, max: 500 },
    h: { meaning: 'mean height above the ground', unit: 'm', min: 0, max: 5 },
    c: { meaning: 'width of its top', unit: 'm', min: 0, max: 5 },
    b: { meaning: 'slope of its outer side, horizontal to 1 vertical', unit: '-', min: 0, max: 10 },
    m: { meaning: 'slope of its inner side, horizontal to 1 vertical', unit: '-', min: 0, max: 10 },
  },
  compute: (p: number, h: number, c: number, b: number, m: number) => p * h * (c + (h * (b + m)) / 2),
  validity: 'corners are not counted',
  source: 'geometry: a trapezium along the rim',
});

/** Mean height of its top above the ground around the rim, half way up to the highest, m; 0 where that is no bank. */
export function bankHeight({ pond, places }: Pick<Site, 'pond' | 'places'>, raise: number): number {
  const height = raise + Math.max(pond.fullLevel + FREEBOARD, 0) - places.highRim / 2;
  return height > LEAST_BANK ? height : 0;
}
