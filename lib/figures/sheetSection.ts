/** The pond cut through floor and way out of the pipe, true to scale. */
import type { PondLine, Report, SettingOut } from '../contract/index.js';
import { BED_THICKNESS, isMat, MAT_THICKNESS } from '../drain/index.js';
import { dimensionText, levelsText, MARKED, partTitle, scaleText } from '../text/sheetWords.js';
import type { UnitSystem } from '../units/index.js';
import { widthOf } from './drawing.js';
import { type Region, ROW, type SheetPaper, scaleFor, TYPE } from './sheetPaper.js';
import { scaleBar } from './sheetScaleBar.js';
import { slabSide } from './sheetSlab.js';

/** Direction of the cut, and half of a line round the pond along it. */
export function cutOf(set: SettingOut): { way: { x: number; y: number }; half(line: PondLine): number } {
  const { middle, along, pipe } = set;
  const toe = pipe?.way[pipe.leaves_bed];
  const [dx, dy] = toe ? [toe.x_m - middle.x_m, toe.y_m - middle.y_m] : [along.x, along.y];
  const long = Math.hypot(dx, dy);
  const way = { x: dx / long, y: dy / long };
  const lengthwise = Math.abs(way.x * along.x + way.y * along.y) > 0.5;
  return { way, half: (line) => (lengthwise ? line.half_length_m : line.half_width_m) };
}

/** Thickness of what lies under the liner, m. */
export function underLiner({ drain, pond }: Report): number {
  return drain ? (isMat(drain.bed) ? MAT_THICKNESS : BED_THICKNESS) : pond.bedding_laid_m;
}

/** The liner from its edge down to the toe, on one side: half widths and levels. */
export function sideOf(set: SettingOut, half: (line: PondLine) => number): [number, number][] {
  const order: PondLine['of'][] = ['crest', 'rim', 'shelf-back', 'shelf', 'toe'];
  return order.flatMap((of) => {
    const line = set.lines.find((each) => each.of === of);
    return line ? [[half(line), line.level_m] as [number, number]] : [];
  });
}

export function sheetSection(paper: SheetPaper, report: Report, region: Region, units: UnitSystem): void {
  const set = report.setting_out!;
  const { way, half } = cutOf(set);
  const of = (name: PondLine['of']) => set.lines.find((line) => line.of === name);
  const side = sideOf(set, half);
  const under = underLiner(report);
  const { raise_m, depth_m } = report.result.recommendation;
  const floor = raise_m - depth_m;
  const top = side[0]![1];
  const reach = Math.max(...set.lines.map(half));
  const datum = set.datum_mark_m;
  const full = report.pond.full_level_m + raise_m;
  const flags: [string, number][] = [
    [`${MARKED.crest} ${levelsText(top, datum, units)}`, top],
    [`${MARKED.full} ${levelsText(full, datum, units)}`, full],
    [`${MARKED.rim} ${levelsText(raise_m, datum, units)}`, raise_m],
    [`${MARKED.floor} ${levelsText(floor, datum, units)}`, floor],
    ...(report.slab
      ? ([
          [
            `${MARKED.slab} ${levelsText(floor + report.slab.thickness_m, datum, units)}`,
            floor + report.slab.thickness_m,
          ],
        ] as [string, number][])
      : []),
    ...(under > 0
      ? ([[`${MARKED.dug} ${levelsText(floor - under, datum, units)}`, floor - under]] as [string, number][])
      : []),
  ];
  const shown = of('crest') ? flags : flags.slice(1);
  const beside = Math.max(...shown.map(([text]) => widthOf(text, TYPE))) + 8;
  const room = { width: region.width - beside - 12, height: region.height - 32 };
  const scale = scaleFor({ width: 2 * reach, height: top - floor + under }, room, units);
  const mm = 1000 / scale;
  const middle = region.x + 10 + room.width / 2;
  const upper = region.y + 10 + (room.height - (top - floor + under) * mm) / 2;
  const at = (s: number, z: number): [number, number] => [middle + s * mm, upper + (top - z) * mm];
  paper.text(partTitle('section', scaleText(scale, units)), region.x, region.y + ROW - 1, { bold: true });
  const ring = of('ring');
  const out = of('crest-outer');
  const rim = of('rim')!;
  const toe = of('toe')!;
  const ground = groundAlong(set, way);
  for (const s of [-1, 1]) {
    if (out && top > ground.at(s * half(out))) {
      const foot = half(out) + 1.5 * Math.max(top - ground.at(s * half(out)), 0);
      paper.shape('soil', [
        at(s * half(rim), Math.min(raise_m, top)),
        at(s * side[0]![0], top),
        at(s * half(out), top),
        at(s * foot, ground.at(s * half(out))),
      ]);
    }
    if (ring && half(toe) > 0)
      paper.shape(
        'edge',
        [
          at(s * half(rim), raise_m),
          at(s * half(ring), raise_m),
          at(s * half(ring), ring.level_m),
          at(s * half(toe), floor),
        ],
        {
          width: 0.25,
          dash: '2 1',
          closed: false,
        },
      );
  }
  if (under > 0)
    paper.shape('stone', [
      at(-half(toe), floor),
      at(half(toe), floor),
      at(half(toe), floor - under),
      at(-half(toe), floor - under),
    ]);
  const liner = [...side.map(([s, z]) => at(-s, z)), ...[...side].reverse().map(([s, z]) => at(s, z))];
  const wet = side.findIndex(([, z]) => z <= full);
  const width = widthAt(side, full);
  if (wet >= 0)
    paper.shape('pond', [
      at(-width, full),
      ...side.slice(wet).map(([s, z]) => at(-s, z)),
      ...[...side.slice(wet)].reverse().map(([s, z]) => at(s, z)),
      at(width, full),
    ]);
  if (report.slab) {
    const { liner: under, face } = slabSide(side, rim.level_m, report.slab, report.pond.side_slope);
    const [right, left] = [1, -1].map(
      (s) => (points: [number, number][]) => points.map(([x, z]) => at(s * x, z)),
    );
    paper.shape('concrete', [
      ...right!(under),
      ...left!(under).reverse(),
      ...left!(face),
      ...right!(face).reverse(),
    ]);
  }
  paper.shape('edge', liner, { width: 0.6, closed: false });
  paper.line('blue', at(-width, full), at(width, full), 0.35);
  // Where nobody levelled it, the ground is drawn at the datum, and dashed.
  for (const s of [-1, 1]) {
    const inner = s * half(ring ?? rim);
    paper.line(
      'edge',
      at(inner, ground.at(inner)),
      at(s * reach, ground.at(s * reach)),
      0.35,
      ground.known ? '' : '1.5 1',
    );
  }
  if (set.pipe) {
    const { way: points, leaves_bed } = set.pipe;
    const [end, edge] = [points[leaves_bed]!, points[leaves_bed + 1]!];
    const fall = (edge.level_m - end.level_m) / Math.max(half(rim) - half(toe), 1e-9);
    paper.line('blue', at(half(toe), end.level_m), at(reach, end.level_m + fall * (reach - half(toe))), 0.6);
  }
  const edgeX = middle + reach * mm;
  const flagX = region.x + region.width - beside + 6;
  for (const [, z] of shown) paper.line('rule', [edgeX - 2, at(0, z)[1]], [edgeX + 2, at(0, z)[1]], 0.18);
  paper.flags(
    shown.map(([text, z]) => ({ text, at: [edgeX + 2, at(0, z)[1]] })),
    flagX,
    [region.y + 9, region.y + region.height - 14],
  );
  const below = at(0, floor - under)[1] + 7;
  paper.across(dimensionText(2 * half(toe), units), at(-half(toe), 0)[0], at(half(toe), 0)[0], below);
  paper.up(dimensionText(depth_m, units), at(-reach, 0)[0] - 3, at(0, raise_m)[1], at(0, floor)[1]);
  if (!ground.known) paper.text(MARKED.unknown, region.x + 46, region.y + region.height - 5);
  scaleBar(paper, region.x, region.y + region.height - 5, scale, units);
}

/** Half width of the water at a level. */
function widthAt(side: readonly [number, number][], level: number): number {
  for (let i = 1; i < side.length; i++) {
    const [[s0, z0], [s1, z1]] = [side[i - 1]!, side[i]!];
    if (z0 >= level && z1 <= level) return z0 === z1 ? s0 : s1 + ((level - z1) / (z0 - z1)) * (s0 - s1);
  }
  return side[0]![0];
}

/** Ground along the cut from the pegs of the rim that know it; else level with the datum. */
function groundAlong(
  set: SettingOut,
  way: { x: number; y: number },
): { known: boolean; at(s: number): number } {
  const found = set.pegs.flatMap((peg) =>
    (peg.of === 'rim' || peg.of === 'toe') && peg.ground_m !== null
      ? [{ s: (peg.x_m - set.middle.x_m) * way.x + (peg.y_m - set.middle.y_m) * way.y, z: peg.ground_m }]
      : [],
  );
  if (found.length < 2) return { known: false, at: () => 0 };
  const mean = (key: 's' | 'z') => found.reduce((sum, p) => sum + p[key], 0) / found.length;
  const [ms, mz] = [mean('s'), mean('z')];
  const ss = found.reduce((sum, p) => sum + (p.s - ms) ** 2, 0);
  const slope = ss > 0 ? found.reduce((sum, p) => sum + (p.s - ms) * (p.z - mz), 0) / ss : 0;
  return { known: true, at: (s) => mz + slope * (s - ms) };
}
