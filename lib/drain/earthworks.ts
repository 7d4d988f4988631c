import { formula } from '../formula/index.js';

/** Swell of clay, 0–1: 30 % (earthwork tables, second-hand). */
export const CLAY_SWELL = 0.3;
/** What loose clay still takes more than it did in the ground once it has settled for a winter, 0–1. Common practice. */
export const CLAY_SETTLED = 0.1;

/** Earth that is loosened, or has settled. */
export const loosened = formula({
  title: 'Earth that takes more room than in the ground',
  symbol: 'V',
  unit: 'm³',
  expression: 'a*(1 + s)',
  parameters: {
    a: { meaning: 'before it is loosened', unit: 'm³', min: 0, max: 1e4 },
    s: { meaning: 'more room, as a share', unit: '-', min: 0, max: 1 },
  },
  compute: (a: number, s: number) => a * (1 + s),
  validity: 'clay that is dug, tamped or left for a winter',
  source: 'common practice for the share',
});

/** What is left of one amount of earth when another is taken from it. */
export const earthLeft = formula({
  title: 'Earth left over, or lacking',
  symbol: 'V',
  unit: 'm³',
  expression: 'max(a - b, 0)',
  parameters: {
    a: { meaning: 'what there is', unit: 'm³', min: 0, max: 1e4 },
    b: { meaning: 'what is taken', unit: 'm³', min: 0, max: 1e4 },
  },
  compute: (a: number, b: number) => Math.max(a - b, 0),
  validity: 'before it is loosened',
  source: 'balance of volumes',
});
