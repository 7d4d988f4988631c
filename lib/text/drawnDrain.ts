/** What drawings of a drain and of the garden show, for whoever does not see them. */
import type { Report } from '../contract/index.js';
import { BED_THICKNESS, type Drain, LEAST_FALL, takeoffOf } from '../drain/index.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import { listText } from './sentence.js';

const lengthIn = (units: UnitSystem) => (metres: number) => formatQuantity(metres, 'length', units);

/**
 * The drain from above.
 * @param drain - as designed
 * @param floor - its length and width, m
 * @param place - where the run ends
 * @param units - how numbers are written
 * @returns sentences
 */
export function drainPlanAlt(
  drain: Drain,
  floor: { length: number; width: number },
  place: string,
  units: UnitSystem,
): string {
  const {
    bed,
    layout,
    input: { end },
  } = drain;
  const length = lengthIn(units);
  const pipes =
    layout.branches > 0
      ? `a pipe along the middle and ${layout.branches} branches across, ${length(layout.spacing)} apart`
      : layout.kind === 'ring'
        ? 'a pipe round the foot of the sides'
        : 'one pipe along the middle';
  return (
    `Plan of the drain: a bed of ${bed} under the floor of ${length(floor.length)} by ${length(floor.width)} with ${pipes}, ` +
    `${takeoffOf(drain).sideBranch ? 'an inspection pipe at either end, a branch from its middle to the long side' : 'an inspection pipe at its head'}, ${end.kind === 'outlet' ? 'and' : 'a sump beside the pond and'} a run of ${length(end.distance)} to ${place}.`
  );
}

/**
 * How the pipes lie in the bed.
 * @param layout - of the drain
 * @param floorLength - of the floor, m
 * @param units - how numbers are written
 * @returns a label
 */
export function drainPipesText(layout: Drain['layout'], floorLength: number, units: UnitSystem): string {
  const length = lengthIn(units);
  if (layout.branches > 0) return `pipe in the middle, branches every ${length(layout.spacing)}`;
  return layout.kind === 'ring'
    ? 'pipe round the foot of the sides'
    : `pipe in the middle, falls ${length(LEAST_FALL * floorLength)}`;
}

/**
 * The bed, cut across the pipe.
 * @param layers - of the bed, from below, m
 * @param pipe - by name
 * @param units - how numbers are written
 * @returns a sentence
 */
export function drainSectionAlt(
  layers: readonly { name: string; from: number; to: number }[],
  pipe: string,
  units: UnitSystem,
): string {
  const length = lengthIn(units);
  const named = layers.map(({ name, from, to }) => `${length(to - from)} of ${name}`).join(', ');
  return (
    `Section across the bed, ${length(BED_THICKNESS)} thick, from below: the ground, ${named}, ` +
    `in it ${pipe}, its lowest point at the underside of the bed; filter fabric and liner on top.`
  );
}

/**
 * A drain that ends at an outlet.
 * @param outlet - by name, how far and how much lower, written, and its flood
 * @param units - how numbers are written
 * @returns a sentence
 */
export function toOutletWords(
  { name, distance, fall, flood_m }: { name: string; distance: string; fall: string; flood_m: number | null },
  units: UnitSystem,
): string {
  return (
    `A drain leads from the bed under the floor to ${name}, ${distance} away, with a fall of ${fall}` +
    `${flood_m === null ? '' : `; the highest water there stands at ${formatQuantity(flood_m, 'level', units)}`}.`
  );
}

/**
 * A drain that ends in a sump.
 * @param place - that the water is pumped to
 * @returns a sentence
 */
export function toSumpWords(place: string): string {
  return `A drain leads from the bed under the floor to a pumped sump beside the pond; the water goes to ${place}.`;
}

/**
 * The garden from above.
 * @param pond - with its size
 * @param points - that are drawn
 * @param towards - side that the ground at the rim falls to; absent: it is level
 * @param units - how numbers are written
 * @returns sentences
 */
export function planAlt(
  { length_m, width_m }: Report['pond'],
  points: readonly { name: string; level_m: number }[],
  towards: string | undefined,
  units: UnitSystem,
): string {
  const length = lengthIn(units);
  return (
    `Plan of the garden: the pond, ${length(length_m)} by ${length(width_m)}, and ` +
    `${listText(points.map((p) => `${p.name} at ${formatQuantity(p.level_m, 'level', units)}`))}; levels from the lowest ground at the rim.` +
    `${towards ? ` The ground at the rim falls towards ${towards} of the survey's own axes.` : ''}`
  );
}
