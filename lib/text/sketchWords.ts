/** Words of the sketch on which levelled points are placed. */
import { formatQuantity, type UnitSystem } from '../units/index.js';

/** How to use it. */
export const SKETCH_HELP =
  'Tap where a point lies, then type its height. Drag a point, or move it by the arrow keys (with Shift by large steps); Enter leads to its height.';

/** What it may stand for in the answer. */
export const SKETCH_AXES =
  'It has no north: turn it as your own plan lies. What a tap or an arrow writes stands under “More” in each point.';

/** Written beside a point whose place nobody measured. */
export const SKETCH_NOTE = 'placed on the sketch';

/** While the pond's edge is not on it, from all sides. */
export const SKETCH_RIM =
  'Put three or four points of the pond’s edge on it, on all sides: how far away other points are is reckoned from them, and their middle is taken for the pond’s.';

/** While there is no outline. */
export const SKETCH_NO_POND = 'The pond is drawn once its length and width are typed under “Pond”.';

/** One square of the grid. */
export function squareWords(side: number, units: UnitSystem): string {
  return `A square is ${formatQuantity(side, 'length', units)}.`;
}

/** Points that lie outside what is drawn. */
export function beyondWords(names: readonly string[]): string {
  return `Beyond the sketch: ${names.join(', ')}.`;
}

/** Points of which nothing says where they are. */
export function unplacedWords(names: readonly string[]): string {
  return `Not on it yet: ${names.join(', ')}. Open the point and put it on the sketch.`;
}

/**
 * Where a point lies.
 * @param across - to the right of the pond's middle, m
 * @param up - above it on the plan, m
 * @returns such as `2.10 m right and 0.50 m down from the pond’s middle`
 */
export function placeWords(across: number, up: number, units: UnitSystem): string {
  const way = (by: number, on: string, back: string) =>
    Math.abs(by) < 5e-4 ? [] : [`${formatQuantity(Math.abs(by), 'length', units)} ${by > 0 ? on : back}`];
  const ways = [...way(across, 'right', 'left'), ...way(up, 'up', 'down')];
  return ways.length === 0 ? 'at the pond’s middle' : `${ways.join(' and ')} from the pond’s middle`;
}

/** A point that was taped and whose side nobody said. */
export function tapedWords(distance: number, units: UnitSystem): string {
  return `${formatQuantity(distance, 'length', units)} from the pond’s edge, its direction not said yet`;
}

/** A point as it is read aloud: what it is called, what it is, where it lies. */
export function sketchPointWords(name: string, role: string, place: string): string {
  return `${[name || 'A point', role].filter(Boolean).join(', ')}: ${place}`;
}
