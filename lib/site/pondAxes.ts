/** The pond's own axes, along its length and across it, on those of the survey. */
import type { LevelPoint } from '../survey/index.js';

/** A point along the pond's length and across it from its middle, m. */
export type Across = [u: number, v: number];

type OnPlan = Pick<LevelPoint, 'x' | 'y'>;

/** Points with a place. */
export function placedPoints<P extends OnPlan>(levels: readonly P[]): (P & { x: number; y: number })[] {
  return levels.filter((p): p is P & { x: number; y: number } => p.x !== undefined && p.y !== undefined);
}

/** The pond's middle and the direction of its length, as the plan has them. */
export interface Frame {
  axes: 'survey' | 'pond';
  middle: { x_m: number; y_m: number };
  along: { x: number; y: number };
}

/**
 * Middle and length of the pond on the surveyor's axes: the mean of the rim points, along the axis they reach farther on;
 * without two of them its own axes.
 */
export function frameOf(levels: readonly Pick<LevelPoint, 'x' | 'y' | 'role'>[]): Frame {
  const rims = placedPoints(levels).filter(({ role }) => role === 'rim');
  if (rims.length < 2) return { axes: 'pond', middle: { x_m: 0, y_m: 0 }, along: { x: 1, y: 0 } };
  const reach = (key: 'x' | 'y') =>
    Math.max(...rims.map((p) => p[key])) - Math.min(...rims.map((p) => p[key]));
  const mean = (key: 'x' | 'y') => rims.reduce((sum, p) => sum + p[key], 0) / rims.length;
  return {
    axes: 'survey',
    middle: { x_m: mean('x'), y_m: mean('y') },
    along: reach('x') >= reach('y') ? { x: 1, y: 0 } : { x: 0, y: 1 },
  };
}

/** From the pond's axes to those of the table. */
export function placeOn({ middle, along }: Frame, [u, v]: Across): { x_m: number; y_m: number } {
  return { x_m: middle.x_m + u * along.x - v * along.y, y_m: middle.y_m + u * along.y + v * along.x };
}

/** And back. */
export function acrossOf({ middle, along }: Frame, { x, y }: { x: number; y: number }): Across {
  const [dx, dy] = [x - middle.x_m, y - middle.y_m];
  return [dx * along.x + dy * along.y, dy * along.x - dx * along.y];
}
