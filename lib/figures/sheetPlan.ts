/** Plans true to scale: the pond with its pegs, and the garden around it. */
import type { PondLine, Report, SettingOut } from '../contract/index.js';
import { referenceNames } from '../text/settingOutWords.js';
import { dimensionText, MARKED, partTitle, scaleText } from '../text/sheetWords.js';
import type { UnitSystem } from '../units/index.js';
import { LANDMARKS } from './landmarks.js';
import { type Region, ROW, type SheetPaper, scaleFor } from './sheetPaper.js';
import { scaleBar } from './sheetScaleBar.js';
import { visible } from './visible.js';

type Place = { x_m: number; y_m: number };
type At = [x: number, y: number];

/** How places come onto the paper. */
interface View {
  scale: number;
  at(place: Place): At;
}

function viewOf(places: Place[], room: Region, units: UnitSystem): View {
  const xs = places.map(({ x_m }) => x_m);
  const ys = places.map(({ y_m }) => y_m);
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const scale = scaleFor({ width: x1 - x0, height: y1 - y0 }, room, units);
  const mm = 1000 / scale;
  return {
    scale,
    at: ({ x_m, y_m }) => [
      room.x + room.width / 2 + (x_m - (x0 + x1) / 2) * mm,
      room.y + room.height / 2 - (y_m - (y0 + y1) / 2) * mm,
    ],
  };
}

/** Points of a line round the pond, on the axes of the table. */
function outlinePlaces(set: SettingOut, line: PondLine, box: boolean): Place[] {
  const { middle, along } = set;
  const { half_length_m: a, half_width_m: b } = line;
  const across: At[] = box
    ? [
        [a, b],
        [-a, b],
        [-a, -b],
        [a, -b],
      ]
    : Array.from(
        { length: 72 },
        (_, i): At => [a * Math.cos((i * Math.PI) / 36), b * Math.sin((i * Math.PI) / 36)],
      );
  return across.map(([u, v]) => ({
    x_m: middle.x_m + u * along.x - v * along.y,
    y_m: middle.y_m + u * along.y + v * along.x,
  }));
}

const DRAWN: Record<PondLine['of'], { tone: 'edge' | 'rule'; width: number; dash?: string }> = {
  toe: { tone: 'edge', width: 0.5 },
  shelf: { tone: 'edge', width: 0.25 },
  'shelf-back': { tone: 'edge', width: 0.25 },
  rim: { tone: 'edge', width: 0.7 },
  ring: { tone: 'edge', width: 0.25, dash: '2 1' },
  crest: { tone: 'edge', width: 0.35 },
  'crest-outer': { tone: 'edge', width: 0.25 },
  'bank-foot': { tone: 'rule', width: 0.25, dash: '1 1' },
};

function drawPond(
  paper: SheetPaper,
  report: Report,
  set: SettingOut,
  view: View,
  lines: readonly PondLine[],
): void {
  const box = report.pond.shape === 'box';
  const rim = lines.find(({ of }) => of === 'rim')!;
  paper.shape('pond', outlinePlaces(set, rim, box).map(view.at));
  for (const each of lines) {
    const { tone, width, dash = '' } = DRAWN[each.of];
    paper.shape(tone, outlinePlaces(set, each, box).map(view.at), { width, dash });
  }
  for (const pipe of set.pipe?.bed ?? [])
    paper.shape('edge', pipe.map(view.at), { width: 0.4, dash: '3 1', closed: false });
}

/** Both edges of the trench and the pipe, so far as its points are given. */
function drawRun(paper: SheetPaper, set: SettingOut, view: View): void {
  if (!set.pipe) return;
  const { way, leaves_bed, trench_width_m, sump } = set.pipe;
  const run = way.slice(leaves_bed);
  paper.shape('blue', run.map(view.at), { width: 0.5, closed: false });
  const [from, to] = [run[1]!, run.at(-1)!];
  const long = Math.hypot(to.x_m - from.x_m, to.y_m - from.y_m);
  if (long > 0)
    for (const side of [1, -1]) {
      const off = (side * trench_width_m) / 2 / long;
      const edge = (p: Place): Place => ({
        x_m: p.x_m - (to.y_m - from.y_m) * off,
        y_m: p.y_m + (to.x_m - from.x_m) * off,
      });
      paper.line('edge', view.at(edge(from)), view.at(edge(to)), 0.18);
    }
  if (sump) paper.shape('edge', sump.map(view.at), { width: 0.5 });
}

/** The pond with every peg that lies at it. */
export function sheetPondPlan(paper: SheetPaper, report: Report, region: Region, units: UnitSystem): void {
  const set = report.setting_out!;
  const box = report.pond.shape === 'box';
  const inner: Region = {
    x: region.x + 14,
    y: region.y + 12,
    width: region.width - 24,
    height: region.height - 38,
  };
  // The foot of the bank goes without where it would make all smaller.
  const fits = (lines: readonly PondLine[]) => lines.flatMap((line) => outlinePlaces(set, line, box));
  const shown = set.lines.filter(({ of }) => of !== 'bank-foot');
  const extra = [...(set.pipe?.sump ?? []), ...(set.pipe ? [set.pipe.way[set.pipe.leaves_bed + 1]!] : [])];
  const all = viewOf([...fits(set.lines), ...extra], inner, units);
  const less = viewOf([...fits(shown), ...extra], inner, units);
  const [view, lines] = all.scale <= less.scale ? [all, set.lines] : [less, shown];
  paper.text(partTitle('pond', scaleText(view.scale, units)), region.x, region.y + ROW - 1, { bold: true });
  drawPond(paper, report, set, view, lines);
  const outer = lines.flatMap((line) => outlinePlaces(set, line, box).map(view.at));
  const rim = outlinePlaces(set, set.lines.find(({ of }) => of === 'rim')!, box).map(view.at);
  const ends = (points: At[], key: 0 | 1): [number, number] => [
    Math.min(...points.map((p) => p[key])),
    Math.max(...points.map((p) => p[key])),
  ];
  const [left, low] = [ends(outer, 0)[0] - 4, ends(outer, 1)[1] + 7];
  const [rx, ry] = [ends(rim, 0), ends(rim, 1)];
  const mm = 1000 / view.scale;
  const size = (paperLength: number) => dimensionText(paperLength / mm, units);
  for (const x of rx) paper.line('rule', [x, (ry[0] + ry[1]) / 2], [x, low + 1], 0.13);
  for (const y of ry) paper.line('rule', [(rx[0] + rx[1]) / 2, y], [left - 1, y], 0.13);
  paper.across(size(rx[1] - rx[0]), rx[0], rx[1], low);
  paper.up(size(ry[1] - ry[0]), left, ry[0], ry[1]);
  scaleBar(paper, region.x, region.y + region.height - 5, view.scale, units);
  const reach: Region = {
    x: left + 1,
    y: region.y + 6,
    width: region.x + region.width - left - 1,
    height: low - region.y - 11,
  };
  const inside = ([x, y]: At) =>
    x > reach.x && x < reach.x + reach.width && y > reach.y && y < reach.y + reach.height;
  if (set.pipe) {
    const [toe, edge] = [set.pipe.way[set.pipe.leaves_bed]!, set.pipe.way[set.pipe.leaves_bed + 1]!];
    paper.line('blue', view.at(toe), view.at(edge), 0.5);
    if (set.pipe.sump) drawRun(paper, set, view);
  }
  const near = set.pegs.map((peg) => ({ peg, at: view.at(peg) })).filter(({ at }) => inside(at));
  for (const { at } of near) {
    paper.dot(at);
    paper.keep({ x: at[0] - 0.8, y: at[1] - 0.8, width: 1.6, height: 1.6 });
  }
  for (const { peg, at } of near) paper.label(String(peg.number), at, reach, true);
}

/** The garden with pond, pipe, boundary and the points that are taped from. */
export function sheetSitePlan(paper: SheetPaper, report: Report, region: Region, units: UnitSystem): void {
  const set = report.setting_out!;
  const box = report.pond.shape === 'box';
  const placed =
    set.axes === 'survey'
      ? report.points.filter((p): p is typeof p & Place => p.x_m !== null && p.y_m !== null)
      : [];
  const boundary = placed.filter(({ role }) => role === 'boundary');
  const spots = placed.filter(({ role }) => LANDMARKS.includes(role));
  const outer = set.lines.reduce((a, b) => (b.half_width_m > a.half_width_m ? b : a));
  const inner: Region = {
    x: region.x + 9,
    y: region.y + 11,
    width: region.width - 18,
    height: region.height - 36,
  };
  const view = viewOf(
    [...outlinePlaces(set, outer, box), ...set.references, ...(set.pipe?.way ?? []), ...boundary, ...spots],
    inner,
    units,
  );
  paper.text(partTitle('site', scaleText(view.scale, units)), region.x, region.y + ROW - 1, { bold: true });
  drawPond(
    paper,
    report,
    set,
    view,
    set.lines.filter(({ of }) => of === 'rim' || of === 'toe'),
  );
  if (boundary.length > 1)
    paper.shape('red', boundary.map(view.at), { width: 0.4, dash: '3 1.5', closed: false });
  drawRun(paper, set, view);
  scaleBar(paper, region.x, region.y + region.height - 5, view.scale, units);
  axesAt(paper, set, region);
  const reach: Region = { x: region.x, y: region.y + 6, width: region.width, height: region.height - 24 };
  const [a, b] = referenceNames(set);
  const named: [string, Place][] = [];
  const add = (name: string, place: Place) => {
    if (!named.some(([n, p]) => n === name && p.x_m === place.x_m && p.y_m === place.y_m))
      named.push([name, place]);
  };
  add(a, set.references[0]);
  add(b, set.references[1]);
  // Raised, it runs over where the old ground is lowest.
  const lowest = placed.filter(({ role }) => role === 'rim').sort((p, q) => p.level_m - q.level_m)[0];
  if (lowest && report.result.recommendation.raise_m > 0 && report.next_door.overflow === 'rim')
    add(MARKED.overflow, lowest);
  for (const spot of [...spots, ...boundary]) add(spot.name, spot);
  const stations = set.pegs.filter(({ of }) => of === 'chainage' || of === 'mouth');
  const dots = [...named.map(([, p]) => p), ...stations].map(view.at);
  for (const at of dots) {
    paper.dot(at);
    paper.keep({ x: at[0] - 0.8, y: at[1] - 0.8, width: 1.6, height: 1.6 });
  }
  for (const [name, place] of named) paper.label(short(name), view.at(place), reach);
  for (const peg of stations) paper.label(String(peg.number), view.at(peg), reach, true);
}

/** A name of the survey, so long as a plan has room for. */
const short = (name: string) => {
  const seen = visible(name);
  return seen.length > 22 ? `${seen.slice(0, 21)}…` : seen;
};

/** The axes of the table, and that north is not known. */
function axesAt(paper: SheetPaper, set: SettingOut, region: Region): void {
  const [x, y] = [region.x + region.width - 20, region.y + region.height - 7];
  paper.line('edge', [x, y], [x + 9, y], 0.35);
  paper.line('edge', [x, y], [x, y - 9], 0.35);
  paper.text('x', x + 10, y + 1);
  paper.text('y', x - 0.8, y - 10);
  paper.text(set.axes === 'survey' ? MARKED.north : '', x + 14, y + 5, { anchor: 'end' });
}
