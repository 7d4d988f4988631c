import { UNIT_WEIGHT_OF_WATER } from '../formula/index.js';
import { type PondFacts, type Problem, type Survey, SurveyError } from '../survey/index.js';
import {
  ballastHead,
  CONCRETE_UNIT_WEIGHT,
  deepestFloor,
  GRAVEL,
  type PondShape,
  submergedUnitWeight,
} from '../uplift/index.js';
import type { Assumptions } from './assumptions.js';
import { overDatum } from './places.js';
import { planOf } from './planOf.js';
import { keptOf, type PondKept } from './pondKept.js';

/** The planned pond with every gap filled. Levels m above the lowest natural ground at the rim. */
export interface Pond {
  shape: PondShape;
  /** as wished: from the lowest natural ground at the rim down to the liner's lowest point, m */
  depth: number;
  fullLevel: number;
  kept: PondKept;
  /** where it goes what runs over the brim */
  overflow: NonNullable<PondFacts['overflow']>;
  /** by which the rim may be raised at most, m */
  highestRaise: number;
  /** dug wider and filled back: m, depth from the lowest natural ground; absent: to the floor */
  ring: {
    width: number;
    depth?: number;
    fill: NonNullable<PondFacts['ring_fill']>;
    capped: boolean /** m/s; absent: not said */;
    permeability?: number;
  };
  /** under the liner, m thick */
  bedding: { kind: NonNullable<PondFacts['bedding']>; thickness: number };
  /** head held down on the floor by what lies there in every option, m */
  floorBallast: number;
  /** Pa at the edge */
  edgingLoad: number;
  /** months of emptying, 1–12; 'any' where the survey does not say */
  emptiedIn: number[] | 'any';
  /** days it stays empty then */
  daysEmpty: number;
  /** months of digging, 1–12; absent: not said */
  builtIn?: number[];
  /** kept between the pond and the water outside, m */
  margin: number;
  /** chance a year, 0–1 */
  acceptedRisk: number;
  existing: boolean;
  bulge: boolean;
  /** what holds upright sides */
  wall: NonNullable<PondFacts['wall']>;
  /** slope as drawn, where the ground has the sides laid back further; horizontal to 1 vertical */
  drawnSlope?: number;
}

/** A step in the sides; one without a width is as wide as a plant basket. */
function shelfOf({ shelf_depth, shelf_width }: PondFacts, assume: Assumptions): PondShape['shelf'] {
  if (shelf_depth === undefined || shelf_depth === 0) return undefined;
  const width = assume.or(shelf_width, 'shelf_width', 0.3, 'm', 'a plant basket stands on it');
  return width > 0 ? { depth: shelf_depth, width } : undefined;
}

/** @throws SurveyError where the full pond would hold no water above its floor */
function requireWater({ pond, origins }: Survey, shape: PondShape, fullLevel: number): void {
  const floor = Math.min(pond.depth ?? 0, deepestFloor(shape));
  if (fullLevel + floor > 0) return;
  const metres = (value: number) => `${Number(value.toPrecision(3))} m`;
  const item = pond.full_level === undefined ? 'water_above_rim_ground' : 'full_level';
  const problem: Problem = {
    file: 'pond.csv',
    ...origins.pond[item],
    code: 'contradiction',
    message: `invalid ${item} - full it would stand ${metres(-fullLevel)} below the lowest ground at the rim, its floor is ${metres(floor)} below it`,
    expected: 'a level above the floor',
    remedy: 'Check it, the depth, and the slope, whose sides may meet higher than the depth.',
  };
  throw new SurveyError([problem], []);
}

/** The pond of a survey; what it does not say is assumed and listed. */
export function pondOf(survey: Survey, datum: number, assume: Assumptions): Pond {
  const p = survey.pond;
  const shapeName = assume.or(
    p.shape,
    'shape',
    'box',
    '',
    'straight sides are the unfavourable case for seepage and side slump',
  );
  const sideSlope = assume.or(
    p.side_slope,
    'side_slope',
    1,
    'horizontal to 1 vertical',
    'the steepest side on which a liner is usually left bare',
  );
  const fullLevel =
    p.full_level !== undefined
      ? overDatum.compute(p.full_level, datum)
      : assume.or(
          p.water_above_rim_ground,
          'water_above_rim_ground',
          0,
          'm',
          'level with the lowest ground at the rim',
        );
  const shape: PondShape = { shape: shapeName, ...planOf(p), sideSlope, shelf: shelfOf(p, assume) };
  requireWater(survey, shape, fullLevel);
  const beddingKind = assume.or(p.bedding, 'bedding', 'none', '', 'not mentioned');
  const ballast = p.ballast ?? 'none';
  const ballastThickness = p.ballast_thickness ?? 0;
  const emptied = p.emptied_in;
  return {
    shape,
    depth: p.depth ?? 0,
    fullLevel,
    kept: keptOf(p, assume),
    overflow: p.overflow ?? 'ring',
    highestRaise: assume.or(
      p.highest_raise,
      'highest_raise',
      0.3,
      'm',
      'a rim can usually be lifted a foot; say 0 if it must stay',
    ),
    ring: {
      width: assume.or(
        p.ring_width,
        'ring_width',
        0.15,
        'm',
        'a hole dug by hand is a hand wider than the pond and filled back',
      ),
      depth: p.ring_depth,
      fill: assume.or(p.ring_fill, 'ring_fill', 'topsoil', '', 'filled back with what was dug'),
      permeability: p.ring_ksat,
      capped: assume.or(p.ring_cap, 'ring_cap', 'no', '', 'no cap mentioned') === 'yes',
    },
    bedding: {
      kind: beddingKind,
      thickness:
        beddingKind === 'none'
          ? 0
          : (p.bedding_thickness ??
            assume.or(
              undefined as number | undefined,
              'bedding_thickness',
              beddingKind === 'mat' ? 0.01 : 0.05,
              'm',
              'usual thickness',
            )),
    },
    floorBallast:
      ballast === 'gravel'
        ? ballastHead.compute(submergedUnitWeight.compute(GRAVEL.unitWeight, GRAVEL.grains), ballastThickness)
        : ballast === 'slab'
          ? ballastHead.compute(CONCRETE_UNIT_WEIGHT - UNIT_WEIGHT_OF_WATER, ballastThickness)
          : 0,
    edgingLoad: assume.or(p.edging_load, 'edging_load', 0, 'Pa', 'no heavy edging mentioned'),
    emptiedIn: emptied === 'never' ? [] : (emptied ?? 'any'),
    daysEmpty: emptied === 'never' ? 0 : assume.or(p.days_empty, 'days_empty', 3, 'd', 'a weekend clean'),
    builtIn: p.built_in,
    margin: assume.or(p.margin, 'margin', 0.1, 'm', 'our choice: waves, settling of the rim, reading errors'),
    acceptedRisk: assume.or(
      p.accepted_risk,
      'accepted_risk',
      0.02,
      'a year',
      'our choice: once in fifty years',
    ),
    existing: p.state === 'existing',
    bulge: p.bulge === 'yes',
    wall: p.wall ?? 'none',
  };
}
