import { method } from '../formula/index.js';
import type { Structure, Texture } from './words.js';

export const sorptiveCategories = method({
  title: 'Sorptive number of a soil',
  what: "How much gravity counts against capillary suck, α*, by the words of the pit log; Gardner's exponent in the section.",
  assumptions: [
    'cracked ground and sands as coarse; fine ground without structure as unstructured; everything else as structured, the ' +
      'first choice where little is known',
    'natural massive clay is not counted as compacted: that is for liners and caps of clay tamped firm',
  ],
  source: 'four categories of Elrick & Reynolds 1992, from memory',
});

/** Sorptive numbers of the categories, 1/m: the larger, the less the soil sucks. */
export const SORPTIVE = { compacted: 1, unstructured: 4, structured: 12, coarse: 36 } as const;

/**
 * Sorptive number α* of a soil, see {@link sorptiveCategories}.
 * @param texture - of the layer
 * @param structure - of the layer; absent: not known
 * @returns 4, 12 or 36 1/m
 * @example
 * ```ts
 * sorptiveNumber('clay', 'massive'); // 4
 * ```
 */
export function sorptiveNumber(texture: Texture, structure?: Structure): number {
  if (structure === 'cracked' || /^(sand|gravel|loamy sand|rock)$/.test(texture)) return SORPTIVE.coarse;
  return structure === 'massive' && /clay|silt/.test(texture) ? SORPTIVE.unstructured : SORPTIVE.structured;
}
