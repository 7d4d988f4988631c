import { formula, UNIT_WEIGHT_OF_WATER } from '../formula/index.js';

const W = UNIT_WEIGHT_OF_WATER;

/** Use of the resistance against uplift in limit-state form. */
export const upliftUtilisation = formula({
  title: 'Utilisation against uplift or heave (EN 1997-1, UPL and HYD)',
  symbol: 'Λ',
  unit: '-',
  expression: 'a*U/(b*G)',
  parameters: {
    a: { meaning: 'factor on what lifts (UPL 1.0, UK annex 1.1; HYD 1.35)', unit: '-', min: 1, max: 1.5 },
    U: { meaning: 'what lifts: uplift, pore pressure or seepage force', unit: 'N or Pa', min: 0, max: 1e9 },
    b: { meaning: 'factor on what holds (0.9)', unit: '-', min: 0.5, max: 1 },
    G: {
      meaning: 'what holds: weight, total stress or submerged weight',
      unit: 'N or Pa',
      min: 1e-6,
      max: 1e9,
    },
  },
  compute: (a: number, U: number, b: number, G: number) => (a * U) / (b * G),
  validity: 'at most 1 is verified; friction at the sides left out',
  source: 'EN 1997-1:2004, 2.4.7.4 and 2.4.7.5, Annex A.4 and A.5; Bond & Harris 2008',
});

/**
 * Partial factors of EN 1997-1 on what lifts, `variable` where that varies, and on what holds: recommended, and of the UK
 * annex. Table A.15 was read as a handbook on piles reprints it; 1.1 of the UK annex in worked examples, its 1.5 not seen.
 */
export const EUROCODE_7 = {
  uplift: { lifts: 1.0, variable: 1.5, holds: 0.9 },
  upliftUk: { lifts: 1.1, variable: 1.5, holds: 0.9 },
  heave: { lifts: 1.35, holds: 0.9 },
};

/** Factors of EM 1110-2-2100 (2005), table 3-4, by how often the load comes; from memory, its equation 3-2 was read. */
export const USACE_FLOTATION = { usual: 1.3, unusual: 1.2, extreme: 1.1 };

/** The same by the square metre of a floor. */
export const flotationOfFloor = formula({
  title: 'Flotation factor by the square metre of floor, EM 1110-2-2100',
  symbol: 'FS',
  unit: '-',
  expression: 'w/(9810*h)',
  parameters: {
    w: { meaning: 'pressure of what holds', unit: 'Pa', min: 0, max: 1e6 },
    h: { meaning: 'head that lifts', unit: 'm', min: 0.001, max: 20 },
  },
  compute: (w: number, h: number) => w / (W * h),
  validity: 'equation 3-2 with nothing but water and weight on the floor',
  source: 'USACE EM 1110-2-2100 (2005) equation 3-2',
});

/** The convention to go by: EN 1997-1, because its bookkeeping can be redone on a scale and with a bucket. */
export const FLOTATION_WANTED = EUROCODE_7.uplift.lifts / EUROCODE_7.uplift.holds;
