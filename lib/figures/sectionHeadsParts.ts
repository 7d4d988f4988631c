import { heightOf, type PondGround, type SectionPoint, undersidesOf, widthAt } from '../seepage/index.js';

type Range = [number, number];

/** Middles of equal parts of a range. */
export function spaced([from, to]: Range, count: number): number[] {
  return Array.from({ length: count }, (_, i) => from + ((to - from) * (i + 0.5)) / count);
}

/** Boundaries of the layers in a range, with gaps where the pond is. */
export function layerLines({ outline, surface, layers }: PondGround, x: Range): (SectionPoint | null)[][] {
  let depth = 0;
  return layers.slice(0, -1).map(({ thickness }) => {
    depth += thickness;
    return spaced(x, 200).map((at) => {
      const z = heightOf(surface, at) - depth;
      const pond = widthAt(outline, z);
      return pond && at > pond.left && at < pond.right ? null : { x: at, z };
    });
  });
}

/** Whether a point of the water table is only the underside of the liner, which holds the water down. */
export function underLiner({ outline }: PondGround, { x, z }: SectionPoint): boolean {
  const pond = widthAt(outline, z + LAID_ON);
  return pond !== undefined && x > pond.left && x < pond.right;
}

/** Nearer than this to the liner the table lies on it, m. */
const LAID_ON = 0.02;

/** A line from left to right, broken where a stretch is left out. */
export function gapped(points: SectionPoint[]): (SectionPoint | null)[] {
  return points.flatMap((p, i) => (i > 0 && p.x - points[i - 1].x > GAP ? [null, p] : [p]));
}

/** m */
const GAP = 0.5;

/** Outer edge of the ring, and the undersides of the layers of the bed. */
export function laidLines(ground: PondGround): SectionPoint[][] {
  const { outline, ring } = ground;
  const wider = ring?.width ?? 0;
  const floor = Math.min(...outline.map((p) => p.z));
  const toes = outline.filter((p) => p.z < floor + 1e-9).map((p) => p.x);
  const [left, right] = [Math.min(...toes) - wider, Math.max(...toes) + wider];
  const bed = undersidesOf(ground);
  const foot = bed.at(-1) ?? floor;
  const beside = (side: -1 | 1) => {
    const way = outline.filter((p) => Math.sign(p.x) === side || p.x === 0);
    const down = side < 0 ? way : [...way].reverse();
    return [...down.map((p) => ({ x: p.x + side * wider, z: p.z })), { x: side < 0 ? left : right, z: foot }];
  };
  return [
    ...(ring ? [beside(-1), beside(1)] : []),
    ...bed.map((z) => [
      { x: left, z },
      { x: right, z },
    ]),
  ];
}

/** Arrows of one length, the way the water moves, where it moves at all. */
export function flowArrows(
  { x, z }: { x: Range; z: Range },
  count: number,
  flux: (point: SectionPoint) => SectionPoint | undefined,
  length: number,
): { from: SectionPoint; to: SectionPoint }[] {
  const rows = Math.max(Math.round(((z[1] - z[0]) / (x[1] - x[0])) * count), 2);
  return spaced(z, rows).flatMap((b) =>
    spaced(x, count).flatMap((a) => {
      const flow = flux({ x: a, z: b });
      const speed = flow ? Math.hypot(flow.x, flow.z) : 0;
      if (!flow || speed < STILL) return [];
      const [dx, dz] = [(flow.x / speed) * (length / 2), (flow.z / speed) * (length / 2)];
      return [{ from: { x: a - dx, z: b - dz }, to: { x: a + dx, z: b + dz } }];
    }),
  );
}

/** Slower than a tenth of a millimetre a year, m/s: only rounding moves. */
const STILL = 3e-12;
