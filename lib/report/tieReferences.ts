/** The points that distances of pegs are taped from. */
import type { TieReference } from '../contract/index.js';
import { type Across, acrossOf, type Frame, placedPoints, placeOn } from '../site/index.js';
import type { LevelPoint, LevelRole } from '../survey/index.js';

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
