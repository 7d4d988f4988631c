/** A pond in its ground, cut across, with the water that decides: one panel, true to scale. */
import type { Report } from '../contract/index.js';
import { LEVEL_RIM } from '../site/index.js';
import { box, hatching, line, type Paint, paint, path, widthOf, words } from './drawing.js';
import { marginPlace, type Point, type Segment } from './marginPlace.js';
import { FREEBOARD, type PanelScale } from './panelScale.js';
import { breakParts, drainParts, type Places, ringParts } from './pondPanelParts.js';
import { slabShape } from './slabShape.js';
import { px } from './svgParts.js';
import type { WaterPanel } from './waterPanels.js';

/** A panel whose left upper corner is at that place. */
export function pondPanel(
  panel: WaterPanel,
  report: Report,
  scale: PanelScale,
  at: { x: number; y: number; width: number; type: number },
): string {
  const { pond } = report;
  const { per_m, slope, cut_m, bank_m } = scale;
  const { row, raise_m, pond_m, depth_m, drained, band } = panel;
  const wide = scale.across_m - cut_m;
  const middle = at.x + at.width / 2;
  const X = (metres: number) => middle + (metres - wide / 2) * per_m;
  const Y = (level: number) => at.y + (scale.top_m - level) * per_m;
  const ends = [-bank_m - 0.001, wide + bank_m + 0.001] as const;
  const left = Math.max(at.x, X(ends[0]));
  const right = Math.min(at.x + at.width, X(ends[1]));
  const foot = Y(scale.bottom_m);
  const floor = raise_m - depth_m;
  const full = pond.full_level_m + raise_m;
  const ground = (x: number) => pond.high_rim_m * Math.min(Math.max(1 - x / wide, 0), 1);
  const crest = Math.max(full + FREEBOARD, raise_m);
  const tops = [Math.max(crest, ground(0)), Math.max(crest, 0)] as const;
  const inset = (level: number) => slope * Math.max(raise_m - level, 0);
  const liner = [
    [X(0), Y(tops[0])],
    [X(0), Y(raise_m)],
    [X(inset(floor)), Y(floor)],
    [X(wide - inset(floor)), Y(floor)],
    [X(wide), Y(raise_m)],
    [X(wide), Y(tops[1])],
  ] as [number, number][];
  const lip = 0.12 * per_m;
  const soil: [number, number][] = [
    [left, foot],
    [left, Y(ground(0))],
    [X(0) - 2 * lip, Y(ground(0))],
    [X(0) - lip, Y(tops[0])],
    ...liner,
    [X(wide) + lip, Y(tops[1])],
    [X(wide) + 2 * lip, Y(0)],
    [right, Y(0)],
    [right, foot],
  ];
  const parts = [`<path d="${path(soil, true)}" ${paint('soil')}/>`];
  const surface = soil.slice(1, -1).filter((_, i) => i < 4 || i > 8);
  if (pond.ring_width_m > 0) parts.push(...ringParts(panel, report, { X, Y, wide, inset, floor }));
  parts.push(
    `<path d="${path(surface.slice(0, 4))}" ${paint('rule')} stroke-width="1.5"/><path d="${path(soil.slice(-5, -1))}" ${paint('rule')} stroke-width="1.5"/>`,
  );
  if (drained) parts.push(...drainParts(panel, { X, Y, wide, inset, floor }, per_m));
  if (pond_m !== null) {
    const water: [number, number][] = [
      [X(inset(pond_m)), Y(pond_m)],
      [X(inset(floor)), Y(floor)],
      [X(wide - inset(floor)), Y(floor)],
      [X(wide - inset(pond_m)), Y(pond_m)],
    ];
    if (pond_m > raise_m) {
      water.splice(1, 0, [X(0), Y(raise_m)]);
      water.splice(-1, 0, [X(wide), Y(raise_m)]);
    }
    parts.push(
      `<path d="${path(water, true)}" ${paint('pond')}/>`,
      line('blue', water[0]!, water.at(-1)!, 1.5),
    );
  } else if (row.level_m > floor + 0.002) {
    const [x0, x1] = [X(inset(row.level_m)), X(wide - inset(row.level_m))];
    // What lies on the liner holds as much as water up to here.
    parts.push(
      hatching(
        'rule',
        X(inset(floor)),
        Y(row.level_m),
        X(wide - inset(floor)) - X(inset(floor)),
        Y(floor) - Y(row.level_m),
        6,
      ),
      line('rule', [x0, Y(row.level_m)], [x1, Y(row.level_m)], 1.5, '5 3'),
    );
  }
  if (report.slab && row.of === 'recommended') {
    const slab = slabShape(report.slab, { rim: raise_m, floor, wide, inset }).map(
      ([x, z]): Point => [X(x), Y(z)],
    );
    parts.push(`<path d="${path(slab, true)}" ${paint('concrete')}/>`);
  }
  parts.push(`<path d="${path(liner)}" ${paint('edge')} stroke-width="2.5" stroke-linejoin="round"/>`);
  if (cut_m > 0) parts.push(...breakParts(X(wide / 2), Y(full) - 10, Y(floor) + 12));
  const level = row.water?.level_m;
  if (band) parts.push(bandPart(band, { left, right }, Y, scale));
  const middleX = X(wide * 0.5);
  const found = bracketOf(
    panel,
    scale,
    {
      x: middleX - (cut_m > 0 ? 26 : 0),
      Y,
      frame: { left: at.x, right: at.x + at.width, top: at.y, bottom: foot },
      rim: Y(raise_m),
      floor: Y(floor),
      flat: [X(inset(floor)), X(wide - inset(floor))],
      type: at.type,
    },
    [
      ...segmentsOf(liner),
      ...(level === undefined ? [] : [flat(left, right, Y(level))]),
      ...(pond_m === null ? [] : [flat(X(0), X(wide), Y(pond_m))]),
      ...(cut_m > 0 ? [-8, 8].map((dx) => upright(middleX + dx, Y(full) - 10, Y(floor) + 12)) : []),
    ],
  );
  const x = found?.place.bracket_x ?? middleX;
  if (level !== undefined && level > scale.bottom_m)
    parts.push(...waterParts(panel, report, { X, Y, wide, inset, floor }, { left, right, x }));
  if (found) parts.push(bracketParts(panel, found, at.type));
  return parts.join('');
}

const flat = (from: number, to: number, y: number): Segment => [
  [from, y],
  [to, y],
];
const upright = (x: number, from: number, to: number): Segment => [
  [x, from],
  [x, to],
];
const segmentsOf = (points: readonly Point[]): Segment[] =>
  points.slice(1).map((point, i) => [points[i]!, point]);

/** The water that decides, where it stands, and on dots to the middle of the pond. */
function waterParts(
  { row }: WaterPanel,
  { pond }: Report,
  { X, Y, wide, inset, floor }: Places,
  { left, right, x }: { left: number; right: number; x: number },
): string[] {
  const { which, level_m } = row.water!;
  const y = Y(level_m);
  const [a, b] = [X(inset(Math.max(level_m, floor))), X(wide - inset(Math.max(level_m, floor)))];
  const ring = pond.ring_width_m * (X(1) - X(0));
  const uphill = pond.high_rim_m > LEVEL_RIM;
  const solid = (from: number, to: number) => line('blue', [from, y], [to, y], 3.5);
  const dots = (from: number, to: number) => line('blue', [from, y], [to, y], 2, '2 5');
  // To where it would rise in a pipe, and its push from below.
  if (which === 'seam') return [dots(left, right), ...upward(X, Y, wide, inset(floor), floor)];
  if (level_m < floor) {
    if (which === 'drain' || which === 'receiver') return [solid(a, b)];
    return [solid(left, right)];
  }
  if (which === 'ring') return [solid(a - ring, a), dots(a, b), solid(b, b + ring)];
  const [low, high] = [which !== 'low side' && uphill, which === 'low side' && uphill];
  return [
    ...(high ? [] : [solid(left, a)]),
    dots(high ? x - 10 : a, low ? x + 10 : b),
    ...(low ? [] : [solid(b, right)]),
  ];
}

/** Arrows against the floor from below. */
function upward(X: Places['X'], Y: Places['Y'], wide: number, inset: number, floor: number): string[] {
  const foot = Y(floor) + 22;
  return [0.25, 0.5, 0.75].map((share) => {
    const x = X(inset + share * (wide - 2 * inset));
    const tip = Y(floor) + 4;
    return `<path d="M${px(x)} ${px(foot)}V${px(tip)}M${px(x - 4)} ${px(tip + 6)}L${px(x)} ${px(tip)}L${px(x + 4)} ${px(tip + 6)}" ${paint('blue')} stroke-width="2"/>`;
  });
}

/** Where the month's highest water stands in eight years of ten. */
function bandPart(
  { low_m, high_m, uphill, kept }: NonNullable<WaterPanel['band']>,
  { left, right }: { left: number; right: number },
  Y: (level: number) => number,
  { bottom_m }: PanelScale,
): string {
  const x = uphill ? left + 6 : right - 18;
  const foot = Y(bottom_m);
  if (high_m <= bottom_m + 0.02)
    return `<path d="M${px(x + 6)} ${px(foot - 18)}V${px(foot - 3)}M${px(x + 1)} ${px(foot - 9)}L${px(x + 6)} ${px(foot - 3)}L${px(x + 11)} ${px(foot - 9)}" ${paint('blue')} stroke-width="2"/>`;
  const [y0, y1] = [Y(high_m), Math.max(Math.min(Y(low_m), foot), Y(high_m) + 3)];
  const open = low_m < bottom_m ? '' : 'Z';
  return (
    box(kept ? 'paper' : 'band', x, y0, 12, y1 - y0) +
    `<path d="M${px(x)} ${px(y1)}V${px(y0)}H${px(x + 12)}V${px(y1)}${open}" ${paint('blue')} stroke-width="1.5"${kept ? ' stroke-dasharray="3 2"' : ''}/>`
  );
}

/** From the water to what it may rise to, and where its size is written; null where there is no margin. */
function bracketOf(
  { row, margin, pond_m }: WaterPanel,
  { bottom_m }: PanelScale,
  at: {
    x: number;
    Y: (level: number) => number;
    frame: { left: number; right: number; top: number; bottom: number };
    rim: number;
    floor: number;
    flat: readonly [from: number, to: number];
    type: number;
  },
  lines: readonly Segment[],
) {
  if (!row.water || row.margin_m === null) return null;
  const { Y, type, frame } = at;
  const hold = Y(row.water.level_m + row.margin_m);
  const deep = row.water.level_m <= bottom_m;
  const water = deep ? frame.bottom - 4 : Y(row.water.level_m);
  const [top, foot] = [Math.min(hold, water), Math.max(hold, water)];
  const place = marginPlace(
    {
      ...at,
      width: widthOf(margin, type, true),
      height: type,
      top,
      foot,
      // A low bracket has its words over it, where the pond is empty; one near the rim has them under it, in the pond.
      above: pond_m === null && top - at.rim > 2 * type,
    },
    lines,
  );
  return { hold, water, deep, top, foot, place };
}

function bracketParts(
  { row, margin, verdict }: WaterPanel,
  { hold, water, deep, top, foot, place }: NonNullable<ReturnType<typeof bracketOf>>,
  type: number,
): string {
  const x = place.bracket_x;
  const lacks = row.margin_m! < -1e-4;
  const tone: Paint = lacks ? 'red' : 'edge';
  const head = (y: number, way: 1 | -1) =>
    foot - top > 14
      ? `M${px(x - 5)} ${px(y + 7 * way)}L${px(x)} ${px(y)}L${px(x + 5)} ${px(y + 7 * way)}`
      : '';
  const caps = `M${px(x - 8)} ${px(hold)}H${px(x + 8)}${deep ? '' : `M${px(x - 8)} ${px(water)}H${px(x + 8)}`}`;
  return (
    `<path d="M${px(x)} ${px(top)}V${px(foot)}${caps}${head(top, 1)}${deep ? head(water, -1) : ''}" ${paint(tone)} stroke-width="2.5"/>` +
    words({
      rows: margin,
      x: place.x,
      y: place.y + type * 0.35,
      size: type,
      anchor: 'middle',
      bold: true,
      halo: true,
      paint: lacks && verdict === 'fails' ? 'fail' : 'ink',
    })
  );
}
