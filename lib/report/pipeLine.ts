/** Where the pipes of a drain lie, on the pond's own axes, and their inverts. */
import type { SiteDrain } from '../contract/index.js';
import { BED_THICKNESS, BESIDE, LEAST_FALL, longestWay, SUMP_SIDE, wayOut } from '../drain/index.js';
import type { Across } from '../site/index.js';

/** A point of the way of the water with the level of its invert. */
export interface WayPoint {
  at: Across;
  level: number;
  /** from the head, m */
  chainage: number;
}

/** The pipes as they are laid. */
export interface PipeLine {
  /** pipes in the bed */
  bed: Across[][];
  heads: WayPoint[];
  branchHeads: WayPoint[];
  /** of a pipe round the floor: its corners, or the ends of its axis across the way out */
  round: WayPoint[];
  /** side that it leaves by */
  out: Across;
  /** the longest way: head, where it joins the run in the bed, end of the bed, rim, mouth or sump */
  way: WayPoint[];
  /** number of the point of the way at which the bed ends */
  leavesBed: number;
  joins: boolean;
  fall: number;
  knownWay: boolean;
  sump: Across[] | null;
}

/** A pipe round the foot of the sides lies so far inside the floor, m. Our choice: as the plan of the drain has it. */
const INSET = 0.1;

/** Corners of a box, counted round. */
const CORNERS: readonly Across[] = [
  [1, 1],
  [-1, 1],
  [-1, -1],
  [1, -1],
];

const apart = ([a, b]: Across, [c, d]: Across) => Math.hypot(a - c, b - d);

/** The pipes of a drain, from its head to its mouth or sump. */
export function pipeLine(
  { layout, input, kind, sumpDepth }: SiteDrain,
  rim: { length: number; width: number },
  box: boolean,
): PipeLine {
  const { floor, floorLength, underSide = 0, end, towards } = input;
  const floorWidth = input.floorWidth ?? input.floorArea / floorLength;
  const on = ([u, v]: Across, length: number, width: number): Across => [(u * length) / 2, (v * width) / 2];
  const out = wayOut(layout.kind, rim, towards);
  const toe = on(out, floorLength, floorWidth);
  const edge = on(out, rim.length, rim.width);
  const along = out[1] === 0;
  const ring = layout.kind === 'ring';
  const inner = { length: floorLength - (ring ? 2 * INSET : 0), width: floorWidth - (ring ? 2 * INSET : 0) };
  const away: Across = ring || along ? [-out[0], -out[1]] : [-1, 0];
  const head = on(away, inner.length, inner.width);
  const join: Across | undefined = ring ? on(out, inner.length, inner.width) : along ? undefined : [0, 0];
  const around = ring ? roundOf(inner, box, out) : undefined;
  const toJoin = around ? lengthOf(around.half) : join ? apart(head, join) : 0;
  const inBed = join ? toJoin + apart(join, toe) : apart(head, toe);
  const underside = floor - BED_THICKNESS;
  // As the fall budget has it, and never flatter than a pipe is laid.
  const headLevel = underside + LEAST_FALL * Math.max(longestWay(layout, floorLength, floorWidth), inBed);
  const rate = (headLevel - underside) / inBed;
  const level = (chainage: number) => underside + rate * (inBed - chainage);
  const last: Across =
    kind === 'sump'
      ? [edge[0] + out[0] * BESIDE, edge[1] + out[1] * BESIDE]
      : (towards ?? [edge[0] + out[0] * end.distance, edge[1] + out[1] * end.distance]);
  const run = underSide + apart(edge, last);
  const fall = kind === 'sump' ? LEAST_FALL : (underside - end.level) / Math.max(run, 1e-9);
  const below = (way: number) => underside - fall * way;
  const way: WayPoint[] = [
    { at: head, level: headLevel, chainage: 0 },
    ...(join ? [{ at: join, level: level(toJoin), chainage: toJoin }] : []),
    { at: toe, level: underside, chainage: inBed },
    { at: edge, level: below(underSide), chainage: inBed + underSide },
    { at: last, level: below(run), chainage: inBed + run },
  ];
  const spine: Across[] = [on([-1, 0], floorLength, 0), on([1, 0], floorLength, 0)];
  const branches = branchesOf(layout, floorLength, floorWidth, box);
  return {
    bed: [around ? around.all : spine, ...branches, ...(join ? [[join, toe]] : [])],
    heads: [way[0]!, ...(join && !ring ? [{ at: spine[1]!, level: headLevel, chainage: 0 }] : [])],
    branchHeads: branches.flatMap((branch) =>
      branch.map((at) => ({
        at,
        level: level(apart(head, [at[0], 0])) + LEAST_FALL * Math.abs(at[1]),
        chainage: apart(head, [at[0], 0]),
      })),
    ),
    round: around
      ? around.marks(toJoin).map(([at, chainage]) => ({ at, level: level(chainage), chainage }))
      : [],
    out,
    way,
    leavesBed: join ? 2 : 1,
    joins: join !== undefined,
    fall,
    knownWay: towards !== undefined,
    sump: kind === 'sump' && sumpDepth !== undefined ? sumpOf(last, out) : null,
  };
}

const lengthOf = (points: Across[]) =>
  points.slice(1).reduce((sum, point, i) => sum + apart(points[i]!, point), 0);

/** A pipe round the floor, and the half of it from the head to where it leaves. */
function roundOf({ length, width }: { length: number; width: number }, box: boolean, [u, v]: Across) {
  const [a, b] = [length / 2, width / 2];
  const from = Math.atan2(-v, -u);
  const all = box
    ? ([
        [-a, -b],
        [a, -b],
        [a, b],
        [-a, b],
        [-a, -b],
      ] as Across[])
    : Array.from({ length: 49 }, (_, i): Across => {
        const t = (i * Math.PI) / 24;
        return [a * Math.cos(t), b * Math.sin(t)];
      });
  const half: Across[] = box
    ? v === 0
      ? [
          [-u * a, 0],
          [-u * a, b],
          [u * a, b],
          [u * a, 0],
        ]
      : [
          [0, -v * b],
          [a, -v * b],
          [a, v * b],
          [0, v * b],
        ]
    : Array.from({ length: 25 }, (_, i): Across => {
        const t = from + (i * Math.PI) / 24;
        return [a * Math.cos(t), b * Math.sin(t)];
      });
  // Both halves fall alike.
  const marks = (halfWay: number): [Across, number][] => {
    if (!box) {
      const [du, dv] = [v * a, u * b];
      return [
        [[du, dv], halfWay / 2],
        [[-du, -dv], halfWay / 2],
      ];
    }
    const first = v === 0 ? b : a;
    return CORNERS.map(([cu, cv]) => [[cu * a, cv * b], cu * u + cv * v < 0 ? first : halfWay - first]);
  };
  return { all, half, marks };
}

function branchesOf(
  { branches, spacing }: SiteDrain['layout'],
  length: number,
  width: number,
  box: boolean,
): Across[][] {
  return Array.from({ length: branches }, (_, i) => {
    const u = (i + 0.5) * spacing - length / 2;
    const half = (width / 2) * (box ? 1 : Math.sqrt(Math.max(1 - ((2 * u) / length) ** 2, 0)));
    return [
      [u, -half],
      [u, half],
    ];
  });
}

/** Corners of the sump, counted round, its near side at the end of the pipe. */
function sumpOf([u, v]: Across, [du, dv]: Across): Across[] {
  const half = SUMP_SIDE / 2;
  const [cu, cv] = [u + du * half, v + dv * half];
  return CORNERS.map(([a, b]) => [cu + a * half, cv + b * half]);
}
