import type { Report } from '../contract/report.js';
import { BED_THICKNESS } from '../drain/index.js';
import { FREEBOARD } from './panelScale.js';

/** A point of the section: m along it from the pond's uphill rim, m above the lowest natural ground at the rim. */
export type Point = [x: number, z: number];

/** The pond cut along its length, as it is drawn. */
export interface Section {
  /** dug depth and rise of the rim that are drawn */
  depth: number;
  raise: number;
  /** as recommended, or as wished where no depth is */
  advised: boolean;
  length: number;
  floor: number;
  full: number;
  lowest: number;
  /** level at which the liner ends */
  crest: number;
  /** yearly highest head outside without a drain, exceeded in one year of ten */
  high: number;
  drained: boolean;
  bedThickness: number;
  ground(x: number): number;
  left(z: number): number;
  right(z: number): number;
  outline(to: number): Point[];
}

/** The section of a report; uphill is on the left. */
export function sectionOf({ pond, result, high_m }: Report): Section {
  const { recommendation, drain } = result;
  const advised = recommendation.depth_m > 0;
  const depth = advised ? recommendation.depth_m : pond.depth_m;
  const raise = advised ? recommendation.raise_m : 0;
  const floor = raise - depth;
  const full = pond.full_level_m + raise;
  // Where the sides meet above the floor, the drawing makes them steeper.
  const slope = Math.min(pond.side_slope, (0.47 * pond.length_m) / depth);
  const left = (z: number) => slope * (raise - z);
  const right = (z: number) => pond.length_m - slope * (raise - z);
  return {
    depth,
    raise,
    advised,
    length: pond.length_m,
    floor,
    full,
    lowest: full - pond.usual_drawdown_m,
    crest: full + FREEBOARD,
    high: high_m,
    drained: drain !== null,
    bedThickness: drain ? BED_THICKNESS : pond.bedding_laid_m,
    ground: (x) => pond.high_rim_m * Math.min(Math.max(1 - x / pond.length_m, -0.15), 1.25),
    left,
    right,
    outline: (to) => [
      [left(to), to],
      [left(floor), floor],
      [right(floor), floor],
      [right(to), to],
    ],
  };
}

/** The clay dug out and filled back beside the liner, left and right, where there is any. */
export function ringOf(section: Section, { pond }: Report): Point[][] {
  if (pond.ring_width_m <= 0) return [];
  const { left, right, raise, depth, ground } = section;
  const foot = raise - Math.min(pond.ring_depth_m > 0 ? pond.ring_depth_m : depth, depth);
  const side = (edge: (z: number) => number, out: number): Point[] => {
    const top = ground(edge(0));
    return [
      [edge(top), top],
      [edge(foot), foot],
      [edge(foot) + out, foot],
      [edge(top) + out, top],
    ];
  };
  return [side(left, -pond.ring_width_m), side(right, pond.ring_width_m)];
}

/** The permeable bed under the floor, and behind the sides where it is a drain's. */
export function bedOf(section: Section, { pond }: Report): Point[] | undefined {
  const { bedThickness: t, left, right, floor, drained, full } = section;
  if (t <= 0) return undefined;
  const out = drained ? 0.1 : Math.max(pond.ring_width_m, 0);
  if (!drained)
    return [
      [left(floor) - out, floor],
      [right(floor) + out, floor],
      [right(floor) + out, floor - t],
      [left(floor) - out, floor - t],
    ];
  const top = Math.min(full, 0);
  return [
    [left(top), top],
    [left(floor), floor],
    [right(floor), floor],
    [right(top), top],
    [right(top) + out, top],
    [right(floor) + out, floor - t],
    [left(floor) - out, floor - t],
    [left(top) - out, top],
  ];
}

/** Bank that holds the liner's edge where it stands above the ground. */
export function banksOf({ left, right, crest, ground }: Section): Point[][] {
  const bank = (edge: (z: number) => number, way: -1 | 1): Point[][] => {
    const foot = edge(crest);
    const rise = crest - ground(foot);
    if (rise <= 0.02) return [];
    const inner = edge(ground(foot));
    const outer = foot + way * (0.15 + 1.5 * rise);
    return [
      [
        [inner, ground(inner)],
        [foot, crest],
        [foot + way * 0.15, crest],
        [outer, ground(outer)],
      ],
    ];
  };
  return [...bank(left, -1), ...bank(right, 1)];
}

/** Layers of the log that reaches deepest, top to bottom. */
export function logShown({ result }: Report): Report['result']['ground']['layers'] {
  const { layers } = result.ground;
  const reach = (pit: string) =>
    Math.max(...layers.filter((layer) => layer.pit === pit).map((layer) => layer.bottom_m));
  const deepest = layers.reduce<string | undefined>(
    (best, { pit }) => (best === undefined || reach(pit) > reach(best) ? pit : best),
    undefined,
  );
  return layers.filter(({ pit }) => pit === deepest).sort((a, b) => a.top_m - b.top_m);
}
