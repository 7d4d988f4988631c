/** How to dig, feel and fill a hole, as the sheet for outside says it. */
import type { UnitSystem } from '../units/index.js';

/** Heading of how far a point lies from the pond. */
export function fromEdgeHeading(unit: string): string {
  return `From the pond’s edge (${unit})`;
}

/** Which holes are dug. */
export function digHolesWords(units: UnitSystem): string {
  const deeper = units === 'us' ? '20 in' : '50 cm';
  return `Dig or auger two holes, ${deeper} deeper than the pond is to be, where the pond is to lie. Lay the soil out in order. Do not climb in.`;
}

/** What a shallow hole is good for. */
export const SPADE_HOLE =
  'A hole only as deep as a spade reaches is read too. What lies below it is then not known: the answer says so, and a deeper hole is to be dug before the pond is.';

/** How texture is told by the hand. */
export function ribbonWords(units: UnitSystem): string {
  const ribbons =
    units === 'us'
      ? 'under 1 in: loam; 1 to 2 in: clay loam; longer: clay'
      : 'under 25 mm: loam; 25 to 50 mm: clay loam; longer: clay';
  return `Knead a wet handful to putty, push it up between thumb and finger and measure the ribbon when it breaks: ${ribbons}. Gritty: sandy; silky: silty.`;
}

/** How a hole is made ready for a soakage test. */
export function fillHoleWords(units: UnitSystem): string {
  const water = units === 'us' ? '12 in' : '30 cm';
  return `In a hole of known width scratch the smeared wall with a nail board, then fill it with ${water} of water above its floor, below the topsoil.`;
}
