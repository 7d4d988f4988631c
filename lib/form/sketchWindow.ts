/** The piece of the plan that the sketch shows, as squares of a grid. */
import type { PlanPoint } from '../site/boundary.js';
import { parseQuantity, type UnitSystem } from '../units/index.js';
import type { Sketch, SketchPoint } from './sketch.js';

/** The drawing: squares across and up, and their side in its own units, which are pixels on a narrow phone. */
export const GRID = { across: 12, up: 10, side: 28 } as const;
export const DRAWN = { width: GRID.across * GRID.side, height: GRID.up * GRID.side } as const;

/** Sides of a square to choose from, in the form's unit. */
const SIDES = { metric: [0.5, 1, 2, 5, 10, 20], us: [1, 2, 5, 10, 20, 50] } as const;
const UNIT = { metric: 'm', us: 'ft' } as const;
/** The pond takes up half of the drawing at most, so that there is room to tap round it. */
const ROOM = 2;
/** A taped point this far away does not make all else small, m. */
const FAR = 20;
/** Squares that stay free at the edges. */
const EDGE = 0.4;

/** What is shown. */
export interface SketchWindow {
  middle: PlanPoint;
  /** of its square: place in the list of sides, and m */
  size: number;
  side: number;
  /** nothing is smaller, or larger */
  least: boolean;
  most: boolean;
}

/**
 * The window that holds what is there.
 * @param size - that was chosen; absent: the smallest that does
 */
export function windowOf(sketch: Sketch, units: UnitSystem, size?: number): SketchWindow {
  const sides = SIDES[units].map((side) => parseQuantity(String(side), 'length', UNIT[units]));
  const { middle, outline = [], points } = sketch;
  const holds = (side: number) => {
    const within = (p: PlanPoint, times = 1) =>
      times * Math.abs(p.x - middle.x) <= (GRID.across / 2 - EDGE) * side &&
      times * Math.abs(p.y - middle.y) <= (GRID.up / 2 - EDGE) * side;
    return outline.every((p) => within(p, ROOM)) && points.every((p) => (p.taped ?? 0) > FAR || within(p));
  };
  const found = sides.findIndex(holds);
  const last = sides.length - 1;
  const at = Math.min(Math.max(size ?? (found < 0 ? last : found), 0), last);
  return { middle, size: at, side: sides[at]!, least: at === 0, most: at === last };
}

/** Where a place of the plan lies on the drawing. */
export function drawnAt({ middle, side }: SketchWindow, { x, y }: PlanPoint): PlanPoint {
  const scale = GRID.side / side;
  return { x: DRAWN.width / 2 + (x - middle.x) * scale, y: DRAWN.height / 2 - (y - middle.y) * scale };
}

/** The place that was tapped; beyond the edge of the drawing the edge. */
export function tappedAt({ middle, side }: SketchWindow, at: PlanPoint): PlanPoint {
  const within = (value: number, most: number) => Math.min(Math.max(value, 0), most);
  const scale = side / GRID.side;
  return {
    x: middle.x + (within(at.x, DRAWN.width) - DRAWN.width / 2) * scale,
    y: middle.y - (within(at.y, DRAWN.height) - DRAWN.height / 2) * scale,
  };
}

/** Whether a point is seen. */
export function isSeen(window: SketchWindow, point: PlanPoint): boolean {
  const { x, y } = drawnAt(window, point);
  return x >= 0 && x <= DRAWN.width && y >= 0 && y <= DRAWN.height;
}

/** The point meant by a finger: the nearest within its reach. */
export function pointAt(
  window: SketchWindow,
  points: readonly SketchPoint[],
  at: PlanPoint,
  reach: number,
): SketchPoint | undefined {
  const far = (point: SketchPoint) => {
    const { x, y } = drawnAt(window, point);
    return Math.hypot(x - at.x, y - at.y);
  };
  return points.filter((point) => far(point) <= reach).sort((a, b) => far(a) - far(b))[0];
}
