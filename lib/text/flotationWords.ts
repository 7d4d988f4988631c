import type { FlotationConvention } from '../uplift/index.js';

/** Conventions for the factor of a body under water, as their papers name them. */
export const FLOTATION_NAMES: Record<FlotationConvention, string> = {
  'total-weights': 'total weights over all displaced water',
  eurocode: 'EN 1997-1 UPL, recommended factors',
  'eurocode-uk': 'EN 1997-1 UPL, UK annex',
  usace: 'USACE EM 1110-2-2100',
  'submerged-weights': 'submerged weights over the empty volume',
};

/** Why one body has several factors. */
export const FLOTATION_WORDS =
  'The figures differ because each convention moves the water displaced by concrete and soil to another side of the ' +
  'fraction; all of them are 1 for the same body, the one that just floats. The first is the answer here.';
