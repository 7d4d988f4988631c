/** Details true to scale: the bed cut across the pipe, and the side with its bank. */
import type { PondLine, Report } from '../contract/index.js';
import {
  BED_THICKNESS,
  BEDS,
  type BedLayers,
  FILTER_THICKNESS,
  GROOVE_WIDTH,
  MAT_THICKNESS,
} from '../drain/index.js';
import { dimensionText, MARKED, partTitle, scaleText, slopeText } from '../text/sheetWords.js';
import { slabLabel } from '../text/slabWords.js';
import type { UnitSystem } from '../units/index.js';
import { paint, widthOf } from './drawing.js';
import { type Region, ROW, type SheetPaper, scaleFor, TYPE } from './sheetPaper.js';
import { scaleBar } from './sheetScaleBar.js';
import { cutOf, sideOf, underLiner } from './sheetSection.js';
import { slabSide } from './sheetSlab.js';
import { px } from './svgParts.js';

/** So much of the bed is drawn, and of the ground under it, m. */
const VIEW = { width: 0.5, ground: 0.1 };

export function sheetBed(paper: SheetPaper, report: Report, region: Region, units: UnitSystem): void {
  const drain = report.drain!;
  const { filter, core, mat }: BedLayers = BEDS[drain.bed];
  const groove = filter === 'fabric' || mat ? 0 : FILTER_THICKNESS;
  const top = BED_THICKNESS - (mat ? MAT_THICKNESS : 0);
  const sand = core === undefined ? BED_THICKNESS : groove;
  const named = (name: string, thickness: number) => `${name}, ${dimensionText(thickness, units)}`;
  const flags: [string, number][] = [
    [MARKED.liner, BED_THICKNESS],
    ...(mat ? ([[named('drainage mat', MAT_THICKNESS), top + MAT_THICKNESS / 2]] as [string, number][]) : []),
    ...(core ? ([[named(core, top - (mat ? 0 : sand)), (top + sand) / 2]] as [string, number][]) : []),
    [named(MARKED.pipe, drain.pipeDiameter), drain.pipeDiameter / 2],
    ...(filter === 'fabric'
      ? ([[MARKED.fabric, 0]] as [string, number][])
      : [[named(filter, sand), sand / 2] as [string, number]]),
    [MARKED.undisturbed, -VIEW.ground * 0.8],
  ];
  const beside = Math.max(...flags.map(([text]) => widthOf(text, TYPE))) + 7;
  const room = { width: region.width - beside - 10, height: region.height - 30 };
  const scale = scaleFor({ width: VIEW.width, height: BED_THICKNESS + VIEW.ground }, room, units);
  const mm = 1000 / scale;
  const middle = region.x + 10 + room.width / 2;
  const base = region.y + 12 + room.height / 2 + ((BED_THICKNESS - VIEW.ground) / 2) * mm;
  const at = (x: number, z: number): [number, number] => [middle + x * mm, base - z * mm];
  const [half, g] = [VIEW.width / 2, GROOVE_WIDTH / 2];
  paper.text(partTitle('bed', scaleText(scale, units)), region.x, region.y + ROW - 1, { bold: true });
  const layer = (from: number, to: number, dip: [number, number], reach = half): [number, number][] => [
    at(-reach, from),
    at(-g, from),
    at(-g, from - dip[0]),
    at(g, from - dip[0]),
    at(g, from),
    at(reach, from),
    at(reach, to),
    at(g, to),
    at(g, to - dip[1]),
    at(-g, to - dip[1]),
    at(-g, to),
    at(-reach, to),
  ];
  paper.shape('soil', layer(-VIEW.ground, mat ? top : 0, [0, groove]));
  if (sand > 0 && filter !== 'fabric')
    paper.shape('some', layer(0, sand, [groove, core ? groove : 0], mat ? g : half));
  if (core)
    paper.shape(
      'stone',
      layer(
        filter === 'fabric' || mat ? 0 : sand,
        top,
        [filter === 'fabric' || mat ? 0 : groove, 0],
        mat ? g : half,
      ),
    );
  if (mat) paper.shape('ring', layer(top, BED_THICKNESS, [0, 0]));
  const [cx, cy] = at(0, drain.pipeDiameter / 2);
  paper.add(
    `<circle cx="${px(cx)}" cy="${px(cy)}" r="${px((drain.pipeDiameter / 2) * mm)}" ${paint('paper')} stroke="currentColor" stroke-width="0.5"/>`,
  );
  paper.line('edge', at(-half, BED_THICKNESS), at(half, BED_THICKNESS), 0.7);
  const flagX = region.x + region.width - beside + 5;
  paper.flags(
    flags.map(([text, z]) => ({ text, at: at(half, z) })),
    flagX,
    [region.y + 10, region.y + region.height - 14],
  );
  paper.up(dimensionText(BED_THICKNESS, units), at(-half, 0)[0] - 3, at(0, BED_THICKNESS)[1], at(0, 0)[1]);
  paper.across(dimensionText(GROOVE_WIDTH, units), at(-g, 0)[0], at(g, 0)[0], at(0, -VIEW.ground)[1] + 6);
  scaleBar(paper, region.x, region.y + region.height - 1, scale, units);
}

/** One side from the floor to the foot of the bank, with its measures. */
export function sheetSide(paper: SheetPaper, report: Report, region: Region, units: UnitSystem): void {
  const set = report.setting_out!;
  const { half } = cutOf(set);
  const side = sideOf(set, half);
  const of = (name: PondLine['of']) => set.lines.find((line) => line.of === name);
  const [rim, toe, out, foot, ring] = [
    of('rim')!,
    of('toe')!,
    of('crest-outer'),
    of('bank-foot'),
    of('ring'),
  ];
  const under = underLiner(report);
  const top = side[0]![1];
  const inner = half(toe) - Math.min(0.4, half(toe));
  const outer = Math.max(half(foot ?? ring ?? rim), half(ring ?? rim)) + 0.2;
  const room = { width: region.width - 28, height: region.height - 36 };
  const size = { width: outer - inner, height: top - toe.level_m + under };
  const scale = scaleFor(size, room, units);
  const mm = 1000 / scale;
  const x0 = region.x + 16 + (room.width - size.width * mm) / 2;
  const y0 = region.y + 19 + (room.height - size.height * mm) / 2;
  const at = (s: number, z: number): [number, number] => [x0 + (s - inner) * mm, y0 + (top - z) * mm];
  paper.text(partTitle('side', scaleText(scale, units)), region.x, region.y + ROW - 1, { bold: true });
  if (under > 0)
    paper.shape('stone', [
      at(inner, toe.level_m),
      at(half(toe), toe.level_m),
      at(half(toe), toe.level_m - under),
      at(inner, toe.level_m - under),
    ]);
  if (ring) {
    paper.shape('ring', [
      ...side.filter(([s]) => s <= half(rim)).map(([s, z]) => at(s, z)),
      at(half(ring), ring.level_m),
      at(half(ring), rim.level_m),
    ]);
    paper.across(
      dimensionText(half(ring) - half(rim), units),
      at(half(rim), 0)[0],
      at(half(ring), 0)[0],
      at(0, toe.level_m - under)[1] + 7,
    );
  }
  if (out && foot) {
    paper.shape('soil', [
      at(half(rim), Math.min(rim.level_m, top)),
      at(side[0]![0], top),
      at(half(out), top),
      at(half(foot), 0),
    ]);
    paper.across(
      dimensionText(half(out) - side[0]![0], units),
      at(side[0]![0], 0)[0],
      at(half(out), 0)[0],
      at(0, top)[1] - 4,
    );
  }
  const { slab } = report;
  if (slab) {
    const { liner, face } = slabSide(side, rim.level_m, slab, report.pond.side_slope);
    const cut = [toe.level_m, toe.level_m + slab.thickness_m].map((z): [number, number] => [inner, z]);
    paper.shape(
      'concrete',
      [...liner, ...cut, ...face.reverse()].map(([s, z]) => at(s, z)),
    );
  }
  paper.line('edge', at(half(ring ?? rim), 0), at(outer, 0), 0.35, '1.5 1');
  paper.shape('edge', [at(inner, toe.level_m), ...[...side].reverse().map(([s, z]) => at(s, z))], {
    width: 0.7,
    closed: false,
  });
  paper.up(
    dimensionText(rim.level_m - toe.level_m, units),
    at(inner, 0)[0] - 3,
    at(0, rim.level_m)[1],
    at(0, toe.level_m)[1],
  );
  if (top > rim.level_m)
    paper.up(
      dimensionText(top - rim.level_m, units),
      at(inner, 0)[0] - 9,
      at(0, top)[1],
      at(0, rim.level_m)[1],
    );
  if (slab)
    paper.text(
      slabLabel(slab, units),
      at(inner, 0)[0],
      at(0, toe.level_m - under)[1] + (ring ? 2 : 1) * ROW + 1,
    );
  const slope = at((half(toe) + half(rim)) / 2, (toe.level_m + rim.level_m) / 2);
  paper.text(slopeText(report.pond.side_slope), slope[0] - 2, slope[1], { anchor: 'end' });
  scaleBar(paper, region.x, region.y + region.height - 1, scale, units);
}
