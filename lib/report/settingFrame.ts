/** The axes that pegs are set out on, and the points that distances are taped from. */
import type { SettingOut, TieReference } from '../contract/index.js';
import type { LevelPoint, LevelRole } from '../survey/index.js';
import type { Across } from './pondLines.js';

type Placed = LevelPoint & { x: number; y: number };

/** Points with a place. */
export function placedPoints(levels: readonly LevelPoint[]): Placed[] {
  return levels.filter((p): p is Placed => p.x !== undefined && p.y !== undefined);
}

/** The pond's middle and the direction of its length, as the plan has them. */
export type Frame = Pick<SettingOut, 'axes' | 'middle' | 'along'>;

/**
 * Middle and length of the pond on the surveyor's axes: the mean of the rim points, along the axis they reach farther on;
 * without two of them its own axes.
 */
export function frameOf(levels: readonly LevelPoint[]): Frame {
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

/** What stays where it is while the pond is dug, what lasts best first. */
const LASTING: readonly LevelRole[] = [
  'house',
  'footing',
  'neighbour-house',
  'well',
  'boundary',
  'discharge',
  'outlet',
  'pit',
  'dip-pipe',
  'other',
];
/** A reference stands so far off what is dug at least, m. */
const CLEAR = 0.5;
/** As far as a tape measures well, m. */
const TAPE = 30;
/** Least sine of the angle in which two tapes cross. Common practice: not flatter than about 15 degrees. */
const LEAST_SINE = 0.26;

/** Two points to tape from: of the survey where two see the pond at a good angle, else two pegs beside it. */
export function referencesOf(
  frame: Frame,
  levels: readonly LevelPoint[],
  dug: { half_length_m: number; half_width_m: number },
  pegs: readonly Across[],
  pipe: { to: LevelPoint | undefined; out: Across } | undefined,
): [TieReference, TieReference] {
  const clear = ([u, v]: Across) =>
    Math.abs(u) > dug.half_length_m + CLEAR || Math.abs(v) > dug.half_width_m + CLEAR;
  const points =
    frame.axes === 'pond'
      ? []
      : placedPoints(levels)
          // The end of the trench is dug up.
          .filter((p) => LASTING.includes(p.role) && p !== pipe?.to)
          .map((p) => ({ p, at: acrossOf(frame, p) }))
          .filter(({ at }) => clear(at))
          // Whatever their order in the file.
          .sort((a, b) => (a.p.point < b.p.point ? -1 : 1));
  let best: { worth: number; pair: [TieReference, TieReference] } | undefined;
  points.forEach((a, i) => {
    for (const b of points.slice(i + 1)) {
      const sines = pegs.map((peg) => crossing(a.at, b.at, peg));
      const least = Math.min(...sines.map(({ sine }) => sine));
      const far = Math.max(...sines.map(({ far }) => far));
      const lasting = LASTING.indexOf(a.p.role) + LASTING.indexOf(b.p.role);
      const worth = (least * Math.min(1, TAPE / far)) / (1 + 0.02 * lasting);
      if (least >= LEAST_SINE && worth > (best?.worth ?? 0)) {
        const of = ({ p }: typeof a): TieReference => ({ name: p.point, x_m: p.x, y_m: p.y });
        best = { worth, pair: [of(a), of(b)] };
      }
    }
  });
  if (best) return best.pair;
  // On a line beside the pond, so that every peg of it lies on one side, and the pipe on the other.
  const aside = (Math.ceil(2 * (dug.half_width_m + 1)) / 2) * (pipe && pipe.out[1] < 0 ? -1 : 1);
  const ends = Math.ceil(2 * dug.half_length_m) / 2;
  const peg = (u: number): TieReference => ({ name: null, ...placeOn(frame, [u, -aside]) });
  return [peg(-ends), peg(ends)];
}

/** Sine of the angle in which two tapes meet, and the longer of them. */
function crossing([a, b]: Across, [c, d]: Across, [u, v]: Across): { sine: number; far: number } {
  const [x1, y1, x2, y2] = [a - u, b - v, c - u, d - v];
  const [r1, r2] = [Math.hypot(x1, y1), Math.hypot(x2, y2)];
  return { sine: Math.abs(x1 * y2 - y1 * x2) / Math.max(r1 * r2, 1e-9), far: Math.max(r1, r2) };
}
