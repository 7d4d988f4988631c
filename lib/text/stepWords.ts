/** What is done with the spade, and when it is laid down. */
import type { Report, Result } from '../contract/index.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import { castStep } from './slabWords.js';

/** When a digger stops, whatever was reckoned. Common practice. */
export const STOP =
  'Stop and get out when a side cracks or bulges, when the floor softens, rises or boils, or when you meet sand, gravel or running water that no hole showed. Let the water stand, and ask again with what you saw.';

/**
 * How the liner is laid, and a slab on it. Common practice.
 * @param report - with what is recommended
 * @returns sentences
 */
export function lineStep(report: Report): string {
  const lay = 'Lay the fleece and the liner without stretching them';
  return report.slab ? `${lay}. ${castStep(report)}` : `${lay}, and fill the pond the same day.`;
}

/** How a drain is begun. Common practice. */
export const LAY = 'Lay the drain from its outlet upwards, as drawn under Build.';

/**
 * How the drain uphill is laid. Common practice.
 * @param report - with what is recommended
 * @param trench - how far from the rim, and how deep at most, m
 * @param units - how numbers are written
 * @returns sentences; empty where none is
 */
export function cutoffStep(
  { result, pond, next_door }: Report,
  trench: { distance: number; depth: number },
  units: UnitSystem,
): string {
  const { option, also, depth_m } = result.recommendation;
  const { exit } = next_door;
  if (option !== 'cutoff-drain' && !also.includes('cutoff-drain')) return '';
  const size = (value: number) => formatQuantity(value, 'length', units);
  const deep = Math.min(trench.depth, depth_m + pond.high_rim_m);
  return (
    `The trench for the drain uphill first: along the whole uphill side and past both its corners, ${size(trench.distance)} from the rim, ${size(deep)} deep there. ` +
    `Begin at ${exit.kind === 'cutoff' ? exit.name : 'its end'} and dig upwards, so that it falls all the way, 1 in 100 at least. Lay perforated pipe in washed stone, the stone wrapped in fabric to a hand below the ground, and solid pipe past the pond. ` +
    'Its sides are upright and may cave in: lay the pipe from above, and let nobody climb or bend down into it.'
  );
}

/** What to do where the full pond stays down even with its drain stopped; where it may lift a rule says so. */
export const STOPPED =
  'Water that stands in the inspection pipe says that the drain has stopped. The full pond still stays down: fill it to the brim, do not lower it, and free the drain.';

/**
 * How deep is dug.
 * @param result - with what is recommended
 * @param bed - thickness of the bed of a drain, m
 * @param units - how numbers are written
 * @returns sentences
 */
export function digStep(
  { recommendation, drain }: Pick<Result, 'recommendation' | 'drain'>,
  bed: number,
  units: UnitSystem,
): string {
  const { depth_m, raise_m, as_built } = recommendation;
  const size = (value: number) => formatQuantity(value, 'length', units);
  return `${size(Math.max(depth_m - raise_m, 0))} deep, counted down from the lowest old ground at the rim${raise_m > 0 ? `; with the rim raised by ${size(raise_m)} the pond is ${size(depth_m)} deep` : ''}${drain && !as_built ? `. For the bed of the drain, and nothing else, dig ${size(bed)} more` : ''}. Stop there.`;
}
