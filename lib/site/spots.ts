import { method } from '../formula/index.js';
import { type LevelledHead, type WaterTablePlane, waterTablePlane } from '../groundwater/index.js';
import type { LevelPoint, Survey } from '../survey/index.js';
import { DIP_ERROR, type PitDip } from './dips.js';

export const spotHeadMethod = method({
  title: 'Head at a candidate spot',
  what:
    'Water level at each spot from the plane through three or more levelled holes; without a plane from the nearest ' +
    'hole, following part of the ground, with more spread.',
  assumptions: [
    'looks within three days of each other are one round, and so is a month of heads.csv; the round with the most holes and, of those, the highest water is shown',
    'a table differs from a plane by 0.05 m (one standard deviation; our choice)',
    'from one hole the table follows 0.85 ± 0.15 of the difference in ground, and 0.1 m ± 10 mm a metre of way ' +
      '(one standard deviation; our choice, common practice)',
    'a hole or spot without a place on the plan counts as 10 m away',
  ],
  source: 'three-point problem of hydrogeology; common practice',
});

/** Share of a rise of the ground that the water table follows, one standard deviation. Common practice. */
export const TABLE_FOLLOWS_GROUND = { mean: 0.85, spread: 0.15 };
const ROUND_DAYS = 3;
const PLANE_ERROR = 0.05;
const NEAREST = { spread: 0.1, perMetre: 0.01, unknownWay: 10 };

/** A place for the pond and the water under it. Levels m on the mark of levels.csv. */
export interface SpotHead {
  name: string;
  planned: boolean;
  ground: number;
  head: number;
  /** head below the ground there, m; negative above it */
  depth: number;
  /** one standard deviation, m */
  spread: number;
  /** head less the head at the planned spot, m */
  rise: number;
  by: 'plane' | 'nearest hole';
  /** holes it rests on */
  holes: string[];
  /** of the round shown, days since 1970-01-01; absent: a month of heads.csv */
  day?: number;
}

/** Heads at the spots, and the plane they rest on where there is one. */
export interface SpotHeads {
  plane?: WaterTablePlane;
  /** why three or more levelled holes give no plane at the pond */
  noPlane?: string;
  /** the planned one first; empty where no levelled hole has shown a level */
  spots: SpotHead[];
}

interface Hole extends Partial<LevelledHead> {
  pit: string;
  ground: number;
  head: number;
}

/** A place the pond may go to. */
interface CandidateSpot {
  name: string;
  x?: number;
  y?: number;
  ground: number;
}

/**
 * Head at each candidate spot of a survey.
 * @param dips - looks made into depths; those that say 'level' are used
 * @returns spots with the head of the best round
 */
export function spotHeads(survey: Survey, dips: readonly PitDip[]): SpotHeads {
  const rounds = [...roundsOf(survey, dips), ...knownRounds(survey)];
  const candidates = candidateSpots(survey.levels);
  if (rounds.length === 0 || candidates.length === 0) return { spots: [] };

  const placed = rounds
    .map(({ day, holes }) => ({ day, holes: holes.filter(isPlaced) }))
    .filter(({ holes }) => holes.length > 0);
  const pits = new Set(placed.flatMap(({ holes }) => holes.map((h) => h.pit)));
  const error = Math.hypot(Math.max(DIP_ERROR, ...dips.map((d) => d.error)), PLANE_ERROR);
  const through =
    pits.size >= 3
      ? waterTablePlane(
          placed.map((round) => round.holes),
          error,
        )
      : undefined;
  const [{ x, y }] = candidates;
  const plane = x === undefined || y === undefined || through?.reaches(x, y) ? through : undefined;
  const noPlane =
    pits.size < 3 || plane
      ? undefined
      : through
        ? 'the pond lies more than ten times as far from the middle of the levelled holes as they do'
        : 'the levelled holes lie nearly in a line, or their water rises more than 1 in 2: look whether a place or level is wrong';

  const heads = candidates.map((spot): Omit<SpotHead, 'planned' | 'rise'> => {
    if (plane && spot.x !== undefined && spot.y !== undefined && plane.reaches(spot.x, spot.y)) {
      const shown = best(placed);
      const { head, spread } = plane.headAt(spot.x, spot.y, placed.indexOf(shown));
      const base = { name: spot.name, ground: spot.ground, head, spread, depth: spot.ground - head };
      return { ...base, by: 'plane', holes: [...pits], day: shown.day };
    }
    return fromNearest(spot, best(rounds));
  });
  const planned = heads[0].head;
  return { plane, noPlane, spots: heads.map((h, i) => ({ ...h, planned: i === 0, rise: h.head - planned })) };
}

interface Round<H extends Hole = Hole> {
  day?: number;
  holes: H[];
}

const isPlaced = (h: Hole): h is Hole & LevelledHead => h.x !== undefined && h.y !== undefined;

/** Levels of levelled holes, looks close in time together; the last of a hole counts. */
function roundsOf(survey: Survey, dips: readonly PitDip[]): Round[] {
  const points = new Map(survey.levels.filter((p) => p.role === 'pit').map((p) => [p.point, p]));
  const rounds: (Round & { day: number })[] = [];
  for (const dip of [...dips].sort((a, b) => a.day - b.day)) {
    const point = points.get(dip.pit);
    if (dip.says !== 'level' || !point) continue;
    const hole: Hole = {
      pit: dip.pit,
      x: point.x,
      y: point.y,
      ground: point.level,
      head: point.level - dip.depth,
    };
    const last = rounds.at(-1);
    if (last && dip.day - last.day <= ROUND_DAYS)
      last.holes = [...last.holes.filter((h) => h.pit !== hole.pit), hole];
    else rounds.push({ day: dip.day, holes: [hole] });
  }
  return rounds;
}

type Month = Survey['heads'][number]['month'];

/** Levels of levelled holes that heads.csv knows, a round a month. */
function knownRounds({ heads, levels }: Survey): (Round & { month: Month })[] {
  const rounds = new Map<Month, Hole[]>();
  for (const { place, month, depth } of heads) {
    const point = levels.find((p) => p.role === 'pit' && p.point === place);
    if (!point) continue;
    const hole = { pit: place, x: point.x, y: point.y, ground: point.level, head: point.level - depth };
    rounds.set(month, [...(rounds.get(month) ?? []), hole]);
  }
  return [...rounds].map(([month, holes]) => ({ month, holes }));
}

/** Level at the low side of the pond in a month, on the survey's mark, and its standard deviation, m. */
interface PlannedHead {
  month: Month;
  head: number;
  spread: number;
}

/**
 * Levels at the low side of the planned pond by the plane through the levelled holes that heads.csv knows.
 * @param survey - with heads.csv and levels.csv
 * @returns one a month that a hole is known in; empty where fewer than three holes span no plane
 */
export function plannedHeads(survey: Survey): PlannedHead[] {
  const rounds = knownRounds(survey)
    .map(({ month, holes }) => ({ month, holes: holes.filter(isPlaced) }))
    .filter(({ holes }) => holes.length > 0);
  const spot = lowSide(survey.levels);
  if (rounds.length === 0 || spot?.x === undefined || spot.y === undefined) return [];
  const { x, y } = spot;
  const told = Math.max(0, ...survey.heads.map((head) => head.spread ?? 0));
  const plane = waterTablePlane(
    rounds.map((round) => round.holes),
    Math.hypot(told, PLANE_ERROR),
  );
  return plane?.reaches(x, y) ? rounds.map(({ month }, r) => ({ month, ...plane.headAt(x, y, r) })) : [];
}

/** The round with the most holes and, of those, the highest water. */
function best<R extends Round>(rounds: R[]): R {
  const height = (r: R) => r.holes.reduce((sum, h) => sum + h.head, 0) / r.holes.length;
  return rounds.reduce((a, b) => {
    if (b.holes.length !== a.holes.length) return b.holes.length > a.holes.length ? b : a;
    return height(b) > height(a) ? b : a;
  });
}

/** The spots of levels.csv; without any, the rim: its centre and its lowest ground. */
function candidateSpots(levels: readonly LevelPoint[]): CandidateSpot[] {
  const spots = levels.filter((p) => p.role === 'spot');
  if (spots.length > 0) return spots.map(({ point, x, y, level }) => ({ name: point, x, y, ground: level }));
  const rims = levels.filter((p) => p.role === 'rim');
  if (rims.length === 0) return [];
  const onPlan = rims.filter((p) => p.x !== undefined && p.y !== undefined);
  const centre = (of: (p: LevelPoint) => number) =>
    onPlan.length > 0 ? onPlan.reduce((sum, p) => sum + of(p), 0) / onPlan.length : undefined;
  const ground = Math.min(...rims.map((p) => p.level));
  return [{ name: 'planned pond', x: centre((p) => p.x!), y: centre((p) => p.y!), ground }];
}

/** Rise of the water from the low side of the pond to behind its uphill wall, and its standard deviation, m. */
export interface UphillRise {
  rise: number;
  spread: number;
}

/** The point of the rim on the lowest ground that has a place on the plan; without one the planned spot. */
export function lowSide(levels: readonly LevelPoint[]): { x?: number; y?: number } | undefined {
  const rims = levels.filter((p) => p.role === 'rim' && p.x !== undefined && p.y !== undefined);
  if (rims.length === 0) return candidateSpots(levels)[0];
  return rims.reduce((a, b) => (b.level < a.level ? b : a));
}

/**
 * Rise of the water across the pond as the plane has it: to the point of the rim where it stands highest.
 * @returns undefined where fewer than two points of the rim have a place on the plan
 */
export function uphillRiseBy(levels: readonly LevelPoint[], plane: WaterTablePlane): UphillRise | undefined {
  const rims = levels.filter((p) => p.role === 'rim' && p.x !== undefined && p.y !== undefined);
  const low = lowSide(levels);
  if (rims.length < 2 || low === undefined) return undefined;
  return rims
    .map((p) => plane.riseOver(p.x! - low.x!, p.y! - low.y!))
    .reduce((a, b) => (b.rise > a.rise ? b : a));
}

function fromNearest(spot: CandidateSpot, round: Round): Omit<SpotHead, 'planned' | 'rise'> {
  const way = (h: Hole) =>
    h.x === undefined || h.y === undefined || spot.x === undefined || spot.y === undefined
      ? NEAREST.unknownWay
      : Math.hypot(h.x - spot.x, h.y - spot.y);
  const hole = round.holes.reduce((a, b) => (way(b) < way(a) ? b : a));
  const step = spot.ground - hole.ground;
  const head = hole.head + TABLE_FOLLOWS_GROUND.mean * step;
  return {
    name: spot.name,
    ground: spot.ground,
    head,
    depth: spot.ground - head,
    spread: Math.hypot(NEAREST.spread, NEAREST.perMetre * way(hole), TABLE_FOLLOWS_GROUND.spread * step),
    by: 'nearest hole',
    holes: [hole.pit],
    day: round.day,
  };
}
