import { InputError } from '../../units/index.js';

/** A rectangle of cells in a vertical section, by its lines: x to the right, z upwards, m. */
export interface SectionGrid {
  /** lines across, ascending; one more than cells */
  x: Float64Array;
  z: Float64Array;
}

/** A line that the grid keeps, and the size of the cells wanted beside it, m. */
export interface GridMark {
  at: number;
  size: number;
}

/** A stretch that is cut into so many equal cells, as the hole of a pipe is. */
export interface GridBlock {
  from: number;
  to: number;
  cells: number;
}

/** Usual growth of a cell over the one before it, away from a mark. */
export const GROWTH = 0.12;

/**
 * Lines graded towards marks: cells grow from one to the next until the growth from another mark meets
 * them. Marks inside a block or closer to its edge than half a cell of it give way to the block.
 * @param marks - at least the two ends, m
 * @param blocks - apart from each other and between the ends, m
 * @param count - cells wanted; the sizes at the marks are scaled alike to come near it
 * @param growth - of a cell over the one before it, as a part of it, above 0
 * @returns lines, m, ascending
 * @throws InputError without two ends, or with blocks that overlap or leave them
 */
export function gradedLines(
  marks: GridMark[],
  blocks: GridBlock[],
  count: number,
  growth = GROWTH,
): Float64Array {
  const rate = Math.log1p(growth);
  const [low, high] = [Math.min(...marks.map((m) => m.at)), Math.max(...marks.map((m) => m.at))];
  if (!(high > low)) throw new InputError('invalid-input', `a grid from ${low} m to ${high} m has no extent`);
  const sorted = [...blocks].sort((a, b) => a.from - b.from);
  for (let i = 0; i < sorted.length; i++)
    if (sorted[i].from < low || sorted[i].to > high || sorted[i].to > (sorted[i + 1]?.from ?? high))
      throw new InputError(
        'invalid-input',
        `a pipe's hole from ${sorted[i].from} m to ${sorted[i].to} m overlaps another or leaves the section, ${low} to ${high} m`,
      );
  const free = merged(marks).filter((m) =>
    sorted.every((b) => {
      const near = (0.5 * (b.to - b.from)) / b.cells;
      return m.at === low || m.at === high || m.at < b.from - near || m.at > b.to + near;
    }),
  );
  const fixed = sorted.flatMap((b) =>
    [b.from, b.to].map((at) => ({ at, size: (b.to - b.from) / b.cells, block: true })),
  );
  const linesFor = (scale: number) => {
    const all = [...free.map((m) => ({ at: m.at, size: m.size * scale, block: false })), ...fixed].sort(
      (a, b) => a.at - b.at,
    );
    // What a mark asks for is felt from afar, so a fine mark refines a coarse one beside it.
    const size = all.map((m) => Math.min(...all.map((o) => o.size + rate * Math.abs(o.at - m.at))));
    const lines = [all[0].at];
    for (let i = 0; i + 1 < all.length; i++) {
      const block = sorted.find((b) => b.from === all[i].at && b.to === all[i + 1].at);
      const inner = block
        ? Array.from(
            { length: block.cells - 1 },
            (_, c) => block.from + ((c + 1) * (block.to - block.from)) / block.cells,
          )
        : between(all[i].at, all[i + 1].at, size[i], size[i + 1], rate);
      lines.push(...inner, all[i + 1].at);
    }
    return lines;
  };
  let [fine, coarse] = [1e-3, 1e3];
  for (let i = 0; i < 40; i++) {
    const middle = Math.sqrt(fine * coarse);
    if (linesFor(middle).length - 1 > count) fine = middle;
    else coarse = middle;
  }
  return Float64Array.from(linesFor(coarse));
}

/** Marks in order, those of one place as one with the finer size. */
function merged(marks: GridMark[]): GridMark[] {
  const kept: GridMark[] = [];
  for (const m of [...marks].sort((a, b) => a.at - b.at)) {
    const last = kept.at(-1);
    if (last && m.at - last.at < 1e-9) last.size = Math.min(last.size, m.size);
    else kept.push({ ...m });
  }
  return kept;
}

/** Lines inside a stretch, cells growing from both its ends by the same rule, so that a mirrored stretch is mirrored. */
function between(from: number, to: number, first: number, last: number, g: number): number[] {
  const length = to - from;
  // Where growth from the left end meets growth from the right.
  const meet = Math.min(Math.max((length + (last - first) / g) / 2, 0), length);
  const left = Math.log1p((g * meet) / first) / g;
  const right = Math.log1p((g * (length - meet)) / last) / g;
  const cells = Math.max(1, Math.ceil(left + right - 1e-9));
  const step = (left + right) / cells;
  const lines: number[] = [];
  for (let c = 1; c < cells; c++) {
    const u = c * step;
    lines.push(
      u <= left
        ? from + (first * Math.expm1(g * u)) / g
        : to - (last * Math.expm1(g * (cells - c) * step)) / g,
    );
  }
  return lines;
}

/**
 * Lines of equal cells.
 * @param from - m
 * @param to - m, above `from`
 * @param count - of cells, at least 1
 * @returns `count` + 1 coordinates, m
 */
export function evenLines(from: number, to: number, count: number): Float64Array {
  return Float64Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
}

/** Index of the cell that holds a coordinate; the last one for the far end. */
export function cellAt(lines: Float64Array, at: number): number {
  let [low, high] = [0, lines.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (lines[middle] <= at) low = middle;
    else high = middle;
  }
  return low;
}
