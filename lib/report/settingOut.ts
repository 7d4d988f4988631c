import type { Peg, PegOf, PegPlace, PondLine, SettingOut, SiteDrain } from '../contract/index.js';
import {
  BED_THICKNESS,
  BEDS,
  type BedLayers,
  FILTER_THICKNESS,
  GROOVE_WIDTH,
  isMat,
  LEAST_FALL,
  MAT_THICKNESS,
} from '../drain/index.js';
import { method } from '../formula/index.js';
import { type Across, acrossOf, frameOf, placedPoints, placeOn } from '../site/index.js';
import type { LevelPoint } from '../survey/index.js';
import { FOOT } from '../units/index.js';
import { LEAST_BANK } from '../works/index.js';
import { groundFinder } from './groundAt.js';
import { type PipeLine, pipeLine, type WayPoint } from './pipeLine.js';
import { type DugPond, pointsOf, pondLines } from './pondLines.js';
import { referencesOf } from './tieReferences.js';

export const settingOutMethod = method({
  title: 'Setting-out table',
  what:
    'Pegs of the rim, the bank, the shelf, the toe, the pipe, its trench and the sump with place, tie distances, levels ' +
    'and cut.',
  assumptions: [
    'the middle of the pond is the mean of its rim points, its length along the axis of the survey they reach farther on',
    'the drain leaves square to a side, at the end or the middle that is nearest to where it goes, then straight on',
    'ground at the pond: plane of least squares through the rim points; elsewhere a levelled point within 2 m (our choice)',
    'a bank 0.4 m wide on top, its outer side 1.5 to 1',
  ],
  source: 'geometry; common practice',
});

/** Pegs along the pipe stand so far apart, m. Common practice: 5 m, 15 ft. */
const STEP = { metric: 5, us: 15 * FOOT };
/** A peg of the chainage is left out so near to another, m. */
const SAME = 0.25;
/** Ground within so far of the rim is that of the pond, m. */
const AROUND = 1;

/** What is set out. */
interface SetOut {
  pond: DugPond;
  levels: readonly LevelPoint[];
  /** of the lowest natural ground at the rim, on the mark of the levels, m */
  datum: number;
  highRim: number;
  /** under the liner where no drain lies there, m */
  bedding: number;
  drain: SiteDrain | null;
  units: 'metric' | 'us';
}

/** A peg before it has number, place and ground. */
interface Mark extends PegPlace {
  of: PegOf;
  at: Across;
  level: number;
  dug: number;
}

/** Where everything to be dug lies, see {@link settingOutMethod}. */
export function settingOutOf({ pond, levels, datum, highRim, bedding, drain, units }: SetOut): SettingOut {
  const frame = frameOf(levels);
  const box = pond.shape.shape === 'box';
  const lines = pondLines(pond);
  const line = (of: PondLine['of']) => lines.find((each) => each.of === of);
  const rim = line('rim')!;
  const outer = lines.reduce((a, b) => (b.half_width_m > a.half_width_m ? b : a));
  const towards = frame.axes === 'survey' ? endOf(drain, levels) : undefined;
  const pipe = drain && pipeLine(drain, { length: 2 * rim.half_length_m, width: 2 * rim.half_width_m }, box);
  const bed = drain ? (isMat(drain.bed) ? MAT_THICKNESS : BED_THICKNESS) : bedding;
  const marks: Mark[] = [
    ...(['rim', 'crest', 'shelf', 'toe'] as const).flatMap((of) => {
      const found = line(of);
      return found
        ? pointsOf(found, box).map(({ at, place }) => ({
            of,
            ...place,
            at,
            level: found.level_m,
            dug: found.level_m - (of === 'toe' ? bed : 0),
          }))
        : [];
    }),
    ...(drain && pipe ? pipeMarks(drain, pipe, STEP[units]) : []),
  ];
  const ground = groundFinder(levels, datum, highRim);
  const found = marks.map((mark) => {
    const { x_m, y_m } = placeOn(frame, mark.at);
    const atPond =
      Math.abs(mark.at[0]) <= rim.half_length_m + AROUND && Math.abs(mark.at[1]) <= rim.half_width_m + AROUND;
    return { mark, x_m, y_m, ...ground(x_m, y_m, atPond) };
  });
  // No bank where the ground is as high.
  const kept = found.filter(
    ({ mark, ground_m }) => mark.of !== 'crest' || ground_m === null || mark.level > ground_m + LEAST_BANK,
  );
  const references = referencesOf(
    frame,
    levels,
    outer,
    pointsOf(rim, box).map(({ at }) => at),
    pipe ? { to: towards, out: pipe.out } : undefined,
  );
  const pegs = kept.map(({ mark, ...place }, i): Peg => {
    const { at: _, level, dug, ...named } = mark;
    return {
      number: i + 1,
      ...named,
      ...place,
      ...tiesTo(references, place),
      level_m: level,
      mark_m: level + datum,
      dug_m: dug,
      cut_m: place.ground_m === null ? null : place.ground_m - dug,
    };
  });
  const on = (at: Across) => placeOn(frame, at);
  return {
    ...frame,
    datum_mark_m: datum,
    rim_off_m: rimOff(
      rim,
      box,
      placedPoints(levels)
        .filter(({ role }) => role === 'rim')
        .map((p) => acrossOf(frame, p)),
    ),
    references,
    lines,
    pipe: pipe && {
      bed: pipe.bed.map((points) => points.map(on)),
      way: pipe.way.map(({ at, level, chainage }) => ({ ...on(at), level_m: level, chainage_m: chainage })),
      leaves_bed: pipe.leavesBed,
      fall: pipe.fall,
      least_fall: LEAST_FALL,
      known_way: pipe.knownWay,
      trench_width_m: GROOVE_WIDTH,
      sump: pipe.sump?.map(on) ?? null,
    },
    pegs,
  };
}

/** Where the pipe goes, where the survey gives its place. */
function endOf(drain: SiteDrain | null, levels: readonly LevelPoint[]) {
  if (!drain) return undefined;
  const { end } = drain.input;
  const name = end.kind === 'outlet' ? end.name : end.to;
  const roles = end.kind === 'outlet' ? ['outlet'] : ['discharge', 'outlet'];
  return placedPoints(levels).find((p) => p.point === name && roles.includes(p.role));
}

function tiesTo(
  [a, b]: SettingOut['references'],
  { x_m, y_m }: { x_m: number; y_m: number },
): Pick<Peg, 'ties_m' | 'side'> {
  const off = (p: { x_m: number; y_m: number }) => Math.hypot(p.x_m - x_m, p.y_m - y_m);
  const turn = (b.x_m - a.x_m) * (y_m - a.y_m) - (b.y_m - a.y_m) * (x_m - a.x_m);
  return { ties_m: [off(a), off(b)], side: turn >= 0 ? 'left' : 'right' };
}

/** Pegs of the pipes, the trench and the sump. */
function pipeMarks(drain: SiteDrain, pipe: PipeLine, step: number): Mark[] {
  const { filter, mat }: BedLayers = BEDS[drain.bed];
  // The filter sand goes on under the pipe in a groove.
  const groove = filter === 'fabric' || mat ? 0 : FILTER_THICKNESS;
  const { way, leavesBed } = pipe;
  const inBed = (chainage: number) => chainage <= way[leavesBed]!.chainage + 1e-9;
  const mark = (of: PegOf, { at, level, chainage }: WayPoint, more: PegPlace = {}): Mark => ({
    of,
    at,
    level,
    dug: level - (inBed(chainage) ? groove : 0),
    ...more,
  });
  const last = way.length - 1;
  const changes = way.flatMap((point, i): Mark[] => {
    const place = { chainage_m: point.chainage };
    if (i === 0) return [];
    if (i < leavesBed) return [mark('pipe-joins', point, place)];
    if (i === leavesBed) return [mark('pipe-leaves-bed', point, place)];
    if (i < last) return [mark('pipe-at-rim', point, place)];
    return pipe.sump ? [] : [mark('mouth', point, place)];
  });
  const total = way[last]!.chainage;
  const stations = Array.from({ length: Math.floor(total / step) }, (_, i) => (i + 1) * step)
    .filter((chainage) => way.every((point) => Math.abs(point.chainage - chainage) > SAME))
    // Round the floor the pipe has its own pegs.
    .filter((chainage) => pipe.round.length === 0 || chainage > way[1]!.chainage)
    .map((chainage) => mark('chainage', pointAt(way, chainage), { chainage_m: chainage }));
  return [
    ...pipe.heads.map((head) => mark('pipe-head', head)),
    ...pipe.round.map((point) => mark('pipe-round', point)),
    ...pipe.branchHeads.map((head) => mark('branch-head', head)),
    ...[...changes, ...stations].sort((a, b) => a.chainage_m! - b.chainage_m!),
    ...trenchMarks(way.slice(leavesBed + 1)),
    ...(pipe.sump ?? []).map(
      (at): Mark => ({
        of: 'sump',
        at,
        level: -drain.sumpDepth!,
        dug: -drain.sumpDepth!,
      }),
    ),
  ];
}

function pointAt(way: readonly WayPoint[], chainage: number): WayPoint {
  const i = way.findIndex((point) => point.chainage >= chainage);
  const [from, to] = [way[i - 1]!, way[i]!];
  const t = (chainage - from.chainage) / (to.chainage - from.chainage);
  const between = (a: number, b: number) => a + t * (b - a);
  return {
    at: [between(from.at[0], to.at[0]), between(from.at[1], to.at[1])],
    level: between(from.level, to.level),
    chainage,
  };
}

/** Both edges of the trench where it begins at the rim and where it ends, square to it. */
function trenchMarks(run: readonly WayPoint[]): Mark[] {
  const [from, to] = [run[0]!, run.at(-1)!];
  const long = Math.hypot(to.at[0] - from.at[0], to.at[1] - from.at[1]);
  if (!(long > 0)) return [];
  const [du, dv] = [(to.at[0] - from.at[0]) / long, (to.at[1] - from.at[1]) / long];
  return [from, to].flatMap(({ at, level, chainage }) =>
    (['left', 'right'] as const).map((edge): Mark => {
      const off = (edge === 'left' ? 1 : -1) * (GROOVE_WIDTH / 2);
      return {
        of: 'trench',
        edge,
        chainage_m: chainage,
        at: [at[0] - dv * off, at[1] + du * off],
        level,
        dug: level,
      };
    }),
  );
}

/** Farthest that levelled rim points lie off the rim; along the ray from the middle. */
function rimOff(
  { half_length_m: a, half_width_m: b }: PondLine,
  box: boolean,
  rims: Across[],
): number | null {
  if (rims.length < 2) return null;
  return Math.max(
    ...rims.map(([u, v]) => {
      const times = box ? Math.max(Math.abs(u) / a, Math.abs(v) / b) : Math.hypot(u / a, v / b);
      const r = Math.hypot(u, v);
      return times > 0 ? Math.abs(r - r / times) : Math.min(a, b);
    }),
  );
}
