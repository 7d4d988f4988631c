import { GOVERNS_WORDS } from '../text/terms.js';
import { type FigureSize, LABEL_SIZE, textWidth } from './layout.js';
import type { DrawnLine } from './riskLines.js';

interface FailureLabel {
  text: string;
  depth_m: number;
  log: number;
  /** pixels up from the line, and to the right */
  up: number;
  right: number;
  colour: string;
}

interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** Places tried for a label: along its stretch of the line; pixels up from it, or beside it where it is steep. */
const ALONG = [0.5, 0.3, 0.7, 0.15, 0.85, 0.05, 0.95];
const OFF = [
  ...[10, -10, 20, -20, 32, -32].map((up) => ({ up, side: 0 })),
  ...[1, -1].map((side) => ({ up: 0, side })),
];
const BESIDE = 6;

/**
 * Names of what governs, each beside the stretch of a line where it does, where least is covered; a failure that has no
 * free place is left to the alternative text and the table.
 */
export function failureLabels(
  lines: DrawnLine[],
  pixels: { x: (depth: number) => number; y: (log: number) => number },
  plot: { width: number; height: number },
  size: FigureSize,
  taken: Box[],
): FailureLabel[] {
  const font = LABEL_SIZE[size] - 1;
  const tracks = lines.map((line) => trackOf(line, pixels));
  const boxes = [...taken];
  return lines.flatMap((line) =>
    stretches(line).flatMap(({ from, to }) => {
      const text = GOVERNS_WORDS[line.governs[from]!];
      const width = textWidth(text, font) + 4;
      let best: { cost: number; box: Box; label: FailureLabel } | undefined;
      for (const { up, side } of OFF)
        for (const along of ALONG) {
          const at = from + Math.round(along * (to - from));
          const right = side * (width / 2 + BESIDE);
          const x = pixels.x(line.depth_m[at]!) + right;
          const box = {
            x: x - width / 2,
            y: pixels.y(line.log[at]!) - up - font / 2 - 1,
            width,
            height: font + 2,
          };
          if (box.x < 1 || box.x + width > plot.width - 1 || box.y < 0 || box.y + box.height > plot.height)
            continue;
          const covered = tracks.reduce((sum, track) => sum + track.filter((p) => inside(p, box)).length, 0);
          const cost =
            covered +
            100 * boxes.filter((other) => touch(box, other)).length +
            Math.abs(up) / 20 +
            Math.abs(side);
          if (best === undefined || cost < best.cost)
            best = {
              cost,
              box,
              label: { text, depth_m: line.depth_m[at]!, log: line.log[at]!, up, right, colour: line.colour },
            };
        }
      if (best === undefined || best.cost >= 100) return [];
      boxes.push(best.box);
      return [best.label];
    }),
  );
}

/** Runs of one failure along a line, by index. */
function stretches({ governs }: DrawnLine): { from: number; to: number }[] {
  const found: { from: number; to: number }[] = [];
  for (let from = 0; from < governs.length; ) {
    let to = from;
    while (governs[to + 1] === governs[from]) to++;
    if (governs[from] !== 'none') found.push({ from, to });
    from = to + 1;
  }
  return found;
}

/** Points along a line a few pixels apart. */
function trackOf(line: DrawnLine, pixels: { x: (depth: number) => number; y: (log: number) => number }) {
  return line.depth_m.slice(1).flatMap((depth, at) => {
    const [x0, y0] = [pixels.x(line.depth_m[at]!), pixels.y(line.log[at]!)];
    const [x1, y1] = [pixels.x(depth), pixels.y(line.log[at + 1]!)];
    const steps = Math.max(1, Math.ceil(Math.hypot(x1 - x0, y1 - y0) / 4));
    return Array.from({ length: steps }, (_, i) => ({
      x: x0 + ((x1 - x0) * i) / steps,
      y: y0 + ((y1 - y0) * i) / steps,
    }));
  });
}

function inside(p: { x: number; y: number }, box: Box): boolean {
  return p.x > box.x && p.x < box.x + box.width && p.y > box.y && p.y < box.y + box.height;
}

function touch(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}
