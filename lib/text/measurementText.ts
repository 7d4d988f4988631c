import { KNOWN_BELOW, type Measurement } from '../contract/index.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';

/**
 * What may still be looked up, and how.
 * @param measurement - by its code
 * @param units - of the reader
 * @returns words without a full stop
 */
export function measurementText(measurement: Measurement, units: UnitSystem): string {
  switch (measurement) {
    case 'season-of-dips':
      return 'weekly dips in a sealed standpipe through the wet half-year, the days after heavy rain among them';
    case 'recovery-test':
      return 'a recovery test: bail the hole and time how fast the water comes back';
    case 'ditch-in-flood':
      return 'how high water ever stands where the drain ends: the line of debris beside it, or whoever has seen it full';
    case 'outlet-at-spill':
      return 'whether a pipe may end at the low way out of the ring, and how high water ever stands there: then enter it as an outlet';
    case 'deeper-hole':
      return `a deeper hole, ${formatQuantity(KNOWN_BELOW, 'length', units)} below the dig: sand under pressure there would lift the floor`;
    case 'seam-pipe':
      return 'how high the water rises in the layer under the clay: a pipe open in that layer only, in the wet half-year';
    case 'rim-corners':
      return 'another corner of the rim or two, levelled and with x and y: with as few on the plan as now, what is drawn near the pond counts as nearer';
  }
}

/** Where there is no hole yet. */
export const POND_SITE = 'the pond site';
