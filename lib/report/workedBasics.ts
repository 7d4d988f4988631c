/** What the steps of the worked calculation share: where the numbers of levels and shapes come from. */

import { keptSum, waterOfSum } from '../basis/index.js';
import type { Judged } from '../decision/index.js';
import { deepestDug, dugTo, gravelLeftOut, sideHeight } from '../digging/index.js';
import {
  BED_THICKNESS,
  bedUnderside,
  fallNeeded,
  LEAST_FALL,
  runLength,
  strokeTo,
  sumpDug,
} from '../drain/index.js';
import { relievedHead } from '../groundwater/index.js';
import {
  drainLevel,
  FLOOD_ABOVE,
  floodAbove,
  floodOf,
  floorAt,
  floorLevel,
  fullAt,
  holdAt,
  type Measures,
} from '../heads/index.js';
import { overDatum, type Site } from '../site/index.js';
import type { LevelPoint, LevelRole } from '../survey/index.js';
import {
  boxOutline,
  emptiedSlabHead,
  leaningCut,
  ovalOutline,
  planWithin,
  sideInset,
  wetCrackedCut,
  withSlab,
} from '../uplift/index.js';
import { assumed, pondItem, pondRow, Recording, rowsWords, rowWords } from './workedFrom.js';

/** A levelled point of a role at a level above the datum, or by its name. */
export function pointOf(
  { survey, places }: Site,
  role: LevelRole,
  at: number | string,
): LevelPoint | undefined {
  return survey.levels.find(
    (p) =>
      p.role === role &&
      (typeof at === 'string' ? p.point === at : overDatum.compute(p.level, places.datum) === at),
  );
}

/** The row of a levelled point; `words` where it does not hold the number itself. */
export function pointRow(point: LevelPoint | undefined, column: string, words?: string): string {
  if (!point) return assumed(words ?? column);
  const row = rowWords({ ...point.origin, column });
  return words ? `${row}: ${words}` : row;
}

/** Way to a point: as taped, or by its place on the plan. */
export function wayRow(point: LevelPoint | undefined): string {
  return point?.distance === undefined
    ? pointRow(point, 'x', 'way by its place on the plan')
    : pointRow(point, 'distance');
}

/** The ground that levels count from. */
function datumRow({ survey, places }: Site): string {
  const rim =
    survey.levels.find((p) => p.role === 'rim' && p.level === places.datum) ??
    survey.levels.find((p) => p.role === 'spot' && p.level === places.datum);
  return rim ? pointRow(rim, 'level') : assumed('levels are given from that ground');
}

/** Levels that are counted from the survey's own mark: of the full pond, and where a drain of measures ends. */
export function levelsPart({ site }: Judged, m: Measures): Recording {
  const { drain } = m;
  const { places, survey } = site;
  const r = new Recording('Levels', 'Counted from the lowest natural ground at the rim.');
  const over = (level: number, row: string) => {
    r.tell(overDatum, { l: row, d: datumRow(site) });
    r.use(overDatum, level, places.datum);
  };
  const { full_level } = survey.pond;
  if (full_level !== undefined) over(full_level, pondItem(site, 'full_level', full_level));
  const point = (at: LevelPoint | undefined) => at && over(at.level, pointRow(at, 'level'));
  if (drain?.kind === 'sump')
    point(pointOf(site, 'discharge', drain.to.name) ?? pointOf(site, 'outlet', drain.to.name));
  if (drain?.kind !== 'outlet') return r;
  const { outlet } = drain;
  point(pointOf(site, 'outlet', outlet.name));
  if (outlet.flood !== undefined) point(pointOf(site, 'flood', outlet.flood));
  else {
    if (outlet.ditch !== undefined) point(pointOf(site, 'ditch', outlet.ditch));
    r.tell(floodAbove, {
      a: assumed(`no flood mark at the outlet: ${FLOOD_ABOVE} m above its ordinary water, our choice`),
    });
    floodOf(outlet, r.use);
  }
  return r;
}

/** Tells where the numbers of the levels of measures at a depth come from, whichever formula asks. */
export function tellLevels(r: Recording, site: Site, m: Measures, depth: number): Recording {
  const { pond } = site;
  const raised = m.raise > 0 ? assumed('the rim is raised as recommended') : assumed('not raised');
  const deep = depth === pond.depth ? pondItem(site, 'depth', depth) : assumed('depth of this answer');
  // A level on the survey's own mark has its step.
  const full =
    site.survey.pond.full_level === undefined
      ? { f: pondItem(site, 'water_above_rim_ground', pond.fullLevel) }
      : {};
  const { drain } = m;
  r.tell(floorAt, { r: raised, d: deep })
    .tell(fullAt, { ...full, r: raised })
    .tell(holdAt, {
      g:
        pond.floorBallast > 0
          ? pondRow(site, 'ballast_thickness', 'as a head')
          : assumed('nothing lies on it'),
      b: assumed('no slab'),
    })
    .tell(emptiedSlabHead, {
      b: assumed('the slab of this answer, as a head'),
      c: assumed('unit weight of concrete: common practice'),
    })
    .tell(withSlab, { b: assumed('the slab of this answer, as a head') })
    .tell(bedUnderside, { t: assumed(`a bed ${BED_THICKNESS} m thick: common practice`) })
    .tell(dugTo, {
      d: deep,
      r: raised,
      b: m.drain
        ? assumed(`a bed ${BED_THICKNESS} m thick: common practice`)
        : gravelLeftOut(site, m)
          ? assumed('bedding left out: without a way out it only holds water')
          : pondItem(site, 'bedding_thickness', pond.bedding.thickness),
    })
    .tell(fallNeeded, { S: assumed(`least fall laid ${LEAST_FALL}: common practice`) });
  if ('held' in pond.kept) {
    const held = heldRow(site, pond.kept.held);
    r.tell(keptSum, { d: held }).tell(waterOfSum, { d: held });
  }
  tellShape(r, site, deep);
  if (drain?.kind === 'outlet') r.tell(runLength, { d: wayRow(pointOf(site, 'outlet', drain.outlet.name)) });
  return r.tell(relievedHead, { d: assumed('head lost in the bed: our choice') });
}

/** Where a level that is held below full comes from. */
export function heldRow(site: Site, held: number): string {
  const { usual_drawdown, kept_within } = site.survey.pond;
  if (usual_drawdown === held) return pondItem(site, 'usual_drawdown', held);
  return kept_within === held ? pondItem(site, 'kept_within', held) : assumed('fall of the pond');
}

/** Length or width of the pond: as said, or what the area or the other side makes of it. */
export function sideRow(site: Site, item: 'length' | 'width', value: number): string {
  const { pond } = site.survey;
  if (pond[item] === value) return pondItem(site, item, value);
  return pond.area !== undefined
    ? pondRow(site, 'area', 'what it leaves')
    : pondRow(site, item === 'width' ? 'length' : 'width', 'as the other side');
}

/** Tells where the numbers of the pond's plan come from; `deep` of a depth below the rim. */
export function tellShape(r: Recording, site: Site, deep: string): void {
  const { shape } = site.pond;
  const outer = { L: sideRow(site, 'length', shape.length), W: sideRow(site, 'width', shape.width) };
  r.tell(boxOutline, outer).tell(ovalOutline, outer);
  r.tell(sideInset, {
    s: pondItem(site, 'side_slope', shape.sideSlope),
    z: deep,
    w: shape.shelf ? pondRow(site, 'shelf_width', 'where it lies above that depth') : assumed('no shelf'),
  }).tell(planWithin, {
    f: pondRow(site, 'shape', shape.shape),
    ...outer,
  });
}

/** Tells where the numbers of a side that is weighed come from. */
export function tellSides(r: Recording, site: Site): Recording {
  const { pond, places, ground } = site;
  const logs = rowsWords(ground.layers.map(({ row }) => row.origin));
  const weight = assumed('unit weight of wet ground: common practice');
  return r
    .tell(sideHeight, {
      g: assumed(
        places.highRim > Math.max(pond.fullLevel, 0)
          ? 'the highest rim of levels.csv, above its lowest, or the bank on it'
          : 'the bank on it, if there is one',
      ),
    })
    .tell(wetCrackedCut, { c: `${logs}: middle of the strength of the layers`, g: weight })
    .tell(leaningCut, {
      n: assumed(`chart of Taylor for a side of ${pond.shape.sideSlope} to 1`),
      q: pond.edgingLoad > 0 ? pondRow(site, 'edging_load') : assumed('nothing stands at the edge'),
      g: weight,
    });
}

/** How deep the deepest of what is dug lies, recorded; of a sump the height between start and stop has its steps under the drain. */
export function knownDeepest(r: Recording, site: Site, m: Measures, depth: number): number {
  const { drain } = m;
  if (drain?.kind !== 'sump') return deepestDug(site, m, depth, r.use);
  const floor = floorLevel(depth, m, r.use);
  r.tell(sumpDug, {
    t: assumed(`a bed ${BED_THICKNESS} m thick: common practice`),
    s: assumed('what an ordinary pump starts and stops between, worked out under the drain'),
  });
  return r.use(sumpDug, BED_THICKNESS, floor, strokeTo(drainLevel(m, floor), drain.to).stroke);
}
