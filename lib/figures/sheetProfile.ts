/** The pipe from its head to its end with chainage, invert levels and ground; heights drawn larger than lengths. */
import type { Report } from '../contract/index.js';
import { bareLevel, MARKED, partTitle, profileScale, signedLevel } from '../text/sheetWords.js';
import type { UnitSystem } from '../units/index.js';
import { widthOf } from './drawing.js';
import { type Region, ROW, type SheetPaper, scaleFor, TYPE } from './sheetPaper.js';
import { scaleBar } from './sheetScaleBar.js';
import { spread } from './spread.js';

/** Rows under the profile. */
const ROWS = ['number', 'chainage', 'invert', 'mark'] as const;

export function sheetProfile(paper: SheetPaper, report: Report, region: Region, units: UnitSystem): void {
  const set = report.setting_out!;
  const { way } = set.pipe!;
  const stations = set.pegs.filter(
    ({ of, chainage_m }) => chainage_m !== undefined && of !== 'trench' && of !== 'branch-head',
  );
  const head = set.pegs.find(({ of }) => of === 'pipe-head')!;
  const last = way.at(-1)!;
  const all = [
    { ...head, chainage_m: 0 },
    ...stations,
    // The end of the pipe in a sump has no peg but the sump's corners.
    ...(set.pipe!.sump
      ? [{ ...head, ...last, of: 'sump' as const, mark_m: last.level_m + set.datum_mark_m, ground_m: null }]
      : []),
  ];
  const titles = { number: 'peg', chainage: MARKED.chainage, invert: MARKED.invert, mark: MARKED.mark };
  const left = Math.max(...Object.values(titles).map((text) => widthOf(text, TYPE))) + 3;
  const cells = (row: (typeof ROWS)[number], peg: (typeof all)[number]) =>
    ({
      number: peg.of === 'sump' ? MARKED.sump : String(peg.number),
      chainage: bareLevel(peg.chainage_m!, units),
      invert: signedLevel(peg.level_m, units),
      mark: bareLevel(peg.mark_m, units),
    })[row];
  const high = ROWS.map((row) => Math.max(...all.map((peg) => widthOf(cells(row, peg), TYPE))) + 2);
  const band = high.reduce((a, b) => a + b, 0);
  const room = { width: region.width - left - 6, height: region.height - band - 20 };
  const total = last.chainage_m;
  const grounds = all.flatMap(({ ground_m }) => (ground_m === null ? [] : [ground_m]));
  const levels = [...way.map(({ level_m }) => level_m), ...grounds];
  const [low, top] = [Math.min(...levels), Math.max(...levels)];
  const along = scaleFor({ width: total, height: 0 }, room, units);
  const upright = scaleFor({ width: 0, height: top - low }, room, units);
  const [mx, my] = [1000 / along, 1000 / upright];
  const x0 = region.x + left;
  const base = region.y + 9 + room.height;
  const at = (chainage: number, z: number): [number, number] => [x0 + chainage * mx, base - (z - low) * my];
  paper.text(partTitle('profile', profileScale(along, upright, units)), region.x, region.y + ROW - 1, {
    bold: true,
  });
  paper.shape(
    'blue',
    way.map((p) => at(p.chainage_m, p.level_m)),
    { width: 0.6, closed: false },
  );
  const known = all.filter(({ ground_m }) => ground_m !== null).map((p) => at(p.chainage_m!, p.ground_m!));
  if (known.length > 1) {
    paper.shape('edge', known, { width: 0.35, closed: false });
    const [gx, gy] = known[0]!;
    paper.label(MARKED.ground, [gx + 6, gy], { ...region, y: region.y + 6, height: base - region.y - 6 });
  }
  // The most that have room: changes first, then every so many of the rest.
  const most = Math.floor(room.width / (ROW + 0.2));
  const changes = all.filter(({ of }) => of !== 'chainage');
  const rest = all.filter(({ of }) => of === 'chainage');
  const every = Math.max(1, Math.ceil(rest.length / Math.max(most - changes.length, 1)));
  const shown = [...changes, ...rest.filter((_, i) => (i + 1) % every === 0)].sort(
    (a, b) => a.chainage_m! - b.chainage_m!,
  );
  const places = spread(
    shown.map((p) => at(p.chainage_m!, 0)[0]),
    ROW + 0.2,
    x0 + 3,
    region.x + region.width - 3,
  );
  shown.forEach((peg, i) => {
    const [x, y] = at(peg.chainage_m!, peg.level_m);
    paper.dot([x, y], 0.6);
    paper.line('rule', [x, y], [x, base + 1], 0.18);
    paper.line('rule', [x, base + 1], [places[i]!, base + 4], 0.18);
    let y1 = base + 4;
    ROWS.forEach((row, r) => {
      y1 += high[r]!;
      paper.upright(cells(row, peg), places[i]! + TYPE * 0.3, y1 - 1);
    });
  });
  let y1 = base + 4;
  ROWS.forEach((row, r) => {
    paper.line('rule', [region.x, y1], [region.x + region.width, y1], 0.13);
    y1 += high[r]!;
    paper.text(titles[row], region.x, y1 - high[r]! / 2 + 1.2);
  });
  scaleBar(paper, region.x, region.y + region.height - 1, along, units);
}
