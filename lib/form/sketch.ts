/** The garden from above: which points of the levels have a place on it, and what a tap on it writes. */
import { outlineOf } from '../figures/outline.js';
import { distanceToLine, type PlanPoint } from '../site/boundary.js';
import { planOf } from '../site/planOf.js';
import { type Frame, frameOf, placeOn } from '../site/pondAxes.js';
import type { LevelRole } from '../survey/index.js';
import { SKETCH_NOTE } from '../text/sketchWords.js';
import { parseQuantity, type UnitSystem } from '../units/index.js';
import { type Answers, type Cell, factRow, textOf, unitsOf, withCell, withRow } from './answers.js';

/** A point on the sketch, m on the axes of the plan. */
export interface SketchPoint extends PlanPoint {
  id: number;
  name: string;
  role: string;
  /** its distance from the pond's edge alone is known: it is drawn on some side, m */
  taped?: number;
}

/** What the sketch shows. */
export interface Sketch {
  points: SketchPoint[];
  /** points of which neither place nor distance is said */
  unplaced: { id: number; name: string }[];
  /** the pond's edge, closed; none while its size is not said */
  outline?: PlanPoint[];
  middle: PlanPoint;
  /** whether the points at the pond's edge tell where it lies */
  rimTells: boolean;
}

/** What a tap is rounded to: nobody points closer. Our choice. */
const SKETCH_STEPS = {
  metric: { unit: 'm', step: 0.1, large: 1 },
  us: { unit: 'ft', step: 0.5, large: 5 },
} as const;

/** The pond's middle is where its edge points have it, where that fits them better by this, m; without an outline by that. */
const FITS_BETTER = { outline: 0.05, none: 10 };
/** So many points at the edge are needed to tell where the pond lies, and how near to where it is drawn, m. */
const RIM_POINTS = 3;
const RIM_NEAR = 0.5;
/** Turn from one taped point to the next, so that none lies on another, radians. */
const NEXT_SIDE = (137.5 * Math.PI) / 180;

/** A cell as a number in SI; nothing where it is none. */
function siOf(cell: Cell | undefined, dimension: 'length' | 'area' = 'length'): number | undefined {
  if (!cell || cell.text.trim() === '') return undefined;
  try {
    return parseQuantity(cell.text, dimension, cell.unit || undefined);
  } catch {
    return undefined;
  }
}

/** Size and shape of the pond as far as they are typed. */
function pondSize(answers: Answers): { length: number; width: number; round: boolean } | undefined {
  const fact = (item: string, dimension?: 'area') => {
    const row = factRow(answers, 'pond.csv', item);
    return siOf({ text: textOf(row, 'value'), unit: textOf(row, 'unit') }, dimension);
  };
  const shape = textOf(factRow(answers, 'pond.csv', 'shape'), 'value')
    .trim()
    .toLowerCase();
  const [length, width, area] = [fact('length'), fact('width'), fact('area', 'area')];
  const said = [length, width, area].filter((each) => each !== undefined).length;
  if (said < (shape === 'round' ? 1 : 2) && area === undefined) return undefined;
  const round = shape === 'round' || shape === 'oval';
  const plan = planOf({ shape: shape === 'round' ? 'round' : round ? 'oval' : 'box', length, width, area });
  return Math.min(plan.length, plan.width) > 0 ? { ...plan, round } : undefined;
}

/** The sketch of what is typed. */
export function sketchOf(answers: Answers): Sketch {
  const rows = answers.rows['levels.csv'].map((row, at) => ({
    id: row.id,
    at,
    name: textOf(row, 'point').trim(),
    role: textOf(row, 'role').trim().toLowerCase() as LevelRole,
    x: siOf(row.cells.x),
    y: siOf(row.cells.y),
    distance: siOf(row.cells.distance),
  }));
  const rims = rows.filter(
    (row): row is typeof row & PlanPoint => row.role === 'rim' && row.x !== undefined && row.y !== undefined,
  );
  const size = pondSize(answers);
  const outlineOn = (frame: Frame): PlanPoint[] | undefined =>
    size &&
    outlineOf(size.length, size.width, size.round).map((at) => {
      const { x_m: x, y_m: y } = placeOn(frame, at);
      return { x, y };
    });
  const off = (frame: Frame) => {
    const line = outlineOn(frame) ?? [middleOf(frame)];
    return Math.max(0, ...rims.map((point) => distanceToLine(point, line)));
  };
  // The plan's origin is the pond's middle, as long as the points at its edge do not say otherwise.
  const [own, told] = [frameOf([]), frameOf(rims)];
  const frame = off(own) - off(told) > (size ? FITS_BETTER.outline : FITS_BETTER.none) ? told : own;
  const [outline, middle] = [outlineOn(frame), middleOf(frame)];
  const mean = middleOf(told);
  const points = rows.flatMap(({ id, at, name, role, x, y, distance }): SketchPoint[] => {
    if (x !== undefined && y !== undefined) return [{ id, name, role, x, y }];
    if (distance === undefined || distance < 0) return [];
    return [{ id, name, role, ...awayFrom(middle, outline, at * NEXT_SIDE, distance), taped: distance }];
  });
  return {
    points,
    unplaced: rows.filter(({ id }) => points.every((p) => p.id !== id)).map(({ id, name }) => ({ id, name })),
    outline,
    middle,
    rimTells: rims.length >= RIM_POINTS && Math.hypot(mean.x - middle.x, mean.y - middle.y) <= RIM_NEAR,
  };
}

const middleOf = ({ middle: { x_m: x, y_m: y } }: Frame): PlanPoint => ({ x, y });

/** So far from the outline, out from the middle on one side. */
function awayFrom(
  middle: PlanPoint,
  outline: readonly PlanPoint[] | undefined,
  side: number,
  distance: number,
): PlanPoint {
  const [ux, uy] = [Math.cos(side), Math.sin(side)];
  // Of a convex outline the way out ends at the nearest of its pieces that it meets.
  const edge = (outline ?? []).slice(1).reduce((least, b, i) => {
    const a = outline![i]!;
    const [nx, ny] = [b.y - a.y, a.x - b.x];
    const along = nx * ux + ny * uy;
    const to = (nx * (a.x - middle.x) + ny * (a.y - middle.y)) / along;
    return along > 0 ? Math.min(least, to) : least;
  }, Number.POSITIVE_INFINITY);
  const out = (Number.isFinite(edge) ? edge : 0) + distance;
  return { x: middle.x + ux * out, y: middle.y + uy * out };
}

/** A place rounded to the step of the form's unit, as cells. */
function cellsAt({ x, y }: PlanPoint, units: UnitSystem): { x: Cell; y: Cell } {
  const { unit, step } = SKETCH_STEPS[units];
  const size = parseQuantity('1', 'length', unit);
  // Adding nothing takes the sign from a zero.
  const cell = (metres: number) => ({
    text: String(Number((Math.round(metres / size / step) * step).toFixed(1)) + 0),
    unit,
  });
  return { x: cell(x), y: cell(y) };
}

/** With a new point where the sketch was tapped. */
export function withTapped(answers: Answers, place: PlanPoint): { answers: Answers; id: number } {
  const role = answers.rows['levels.csv'].length === 0 ? 'rim' : '';
  const cells = { role: { text: role }, note: { text: SKETCH_NOTE }, ...cellsAt(place, unitsOf(answers)) };
  return { answers: withRow(answers, 'levels.csv', cells, { draft: false }), id: answers.next };
}

/** With a point put somewhere; a distance that was taped stays, and counts. */
export function withPlaced(answers: Answers, id: number, place: PlanPoint): Answers {
  const row = answers.rows['levels.csv'].find((one) => one.id === id);
  const cells = cellsAt(place, unitsOf(answers));
  const there = (['x', 'y'] as const).every(
    (name) => row?.cells[name]?.text === cells[name].text && row.cells[name]?.unit === cells[name].unit,
  );
  if (!row || there) return answers;
  const note = textOf(row, 'note') === '' ? SKETCH_NOTE : textOf(row, 'note');
  return Object.entries({ ...cells, note: { text: note } as Cell }).reduce(
    (all, [name, { text, unit }]) => withCell(all, 'levels.csv', id, name, text, unit),
    answers,
  );
}

/** With a point a step farther on. */
export function withStepped(
  answers: Answers,
  id: number,
  [across, up]: readonly [number, number],
  large: boolean,
): Answers {
  // From where it lies now: keys may come faster than it is drawn.
  const point = sketchOf(answers).points.find((one) => one.id === id);
  if (!point) return answers;
  const { unit, ...steps } = SKETCH_STEPS[unitsOf(answers)];
  const by = parseQuantity(String(large ? steps.large : steps.step), 'length', unit);
  return withPlaced(answers, id, { x: point.x + across * by, y: point.y + up * by });
}

/** A free place beside the pond, for a point that has none. */
export function freePlace({ points, outline = [], middle }: Sketch): PlanPoint {
  const x = Math.max(middle.x, ...outline.map((p) => p.x)) + 1;
  const free = (y: number) => points.every((p) => Math.hypot(p.x - x, p.y - y) > 0.9);
  let y = middle.y;
  while (!free(y)) y += 1;
  return { x, y };
}
