/** The sheet for whoever signs: each design situation with its actions, by the rules of the country. */

import type {
  DesignRow,
  DesignSheet,
  HeldBy,
  SideActions,
  Situation,
  Unlooked,
  UpliftActions,
  WaterSource,
} from '../contract/index.js';
import { decidingSituations } from '../contract/index.js';
import type { Judged } from '../decision/index.js';
import {
  deepestDug,
  dugDepth,
  type OverSeam,
  pressedMonths,
  weighedSide,
  worstSeam,
} from '../digging/index.js';
import { LEVEL_RESOLUTION, UNIT_WEIGHT_OF_WATER, type Use, unrecorded } from '../formula/index.js';
import {
  floorLevel,
  isAsBuilt,
  isDrained,
  levelOfDepth,
  type Measures,
  NOTHING,
  upkeepOf,
} from '../heads/index.js';
import { deepestLogged, type Seam, type Site, type WaterModel } from '../site/index.js';
import {
  flotationOfFloor,
  HEAVE_FACTOR_WANTED,
  headOfPressure,
  headOver,
  heaveFactor,
  holdingHead,
  logWanted,
  plugLeft,
  plugWeight,
  plugWithLoad,
  SIDE_FACTOR_WANTED,
  spareHead,
  upliftUtilisation,
  waterPressure,
} from '../uplift/index.js';
import { ACTION_CLASS, categoryOf, UPLIFT_RULES } from './designRules.js';
import { overWith } from './seamSituations.js';

/** Ground over a seam: its unit weight, N/m³, and thickness, m. */
interface Plug {
  weight: number;
  thickness: number;
}

/** What the rows are told of. */
export interface Designed {
  site: Site;
  measures: Measures;
  depth: number;
  floor: number;
}

/**
 * The sheet of design situations: nothing is drawn anew, levels and statistics are those of the rows.
 * @param a - from {@link assess} or {@link judge}
 * @param situations - its rows, from `situationsOf`
 * @returns the sheet; null where no situation could be reckoned
 */
export function designSheetOf(a: Judged, situations: readonly Situation[]): DesignSheet | null {
  const rows = decidingSituations(situations);
  const [first] = rows;
  if (!first) return null;
  const designed = designedOf(a, first);
  const { site, measures, depth } = designed;
  const { code, rules } = site.country;
  return {
    country: code ?? null,
    rules,
    of: first.of,
    depth_m: depth,
    floor_m: designed.floor,
    upkeep: isDrained(measures)
      ? upkeepOf(measures.drain?.kind ?? 'cutoff', site.survey.site, isAsBuilt(measures))
      : [],
    rows: rows.map((row) => designRow(designed, row)),
    unlooked: unlookedOf(designed, deepestDug(site, measures, depth)),
  };
}

/** What a row of the sheet is of. */
export function designedOf({ decision, basis }: Judged, { of }: Situation): Designed {
  const advised = of === 'recommended';
  const measures = advised ? decision.measures : NOTHING;
  const { site } = (advised && decision.changed) || basis;
  const depth = advised ? decision.depth : site.pond.depth;
  return { site, measures, depth, floor: floorLevel(depth, measures) };
}

function designRow(designed: Designed, row: Situation): DesignRow {
  const { situation, month, level_m, water, allowed, why } = row;
  const { rules } = designed.site.country;
  const exceeded = water?.statistic.exceeded ?? 0;
  return {
    situation,
    month,
    action: ACTION_CLASS[situation],
    category: UPLIFT_RULES[rules].method === 'factor-of-safety' ? categoryOf(situation, exceeded) : null,
    level_m,
    water: water && { ...water, source: sourceOf(designed, row) },
    margin_m: row.margin_m ?? (water ? spareHead.compute(level_m, water.level_m) : null),
    uplift: situation === 'dig' || !water ? null : upliftOf(designed, row),
    sides: situation === 'dig' ? sidesOf(designed) : null,
    drained: water?.which === 'drain' || water?.which === 'receiver' || situation === 'outlet-flood',
    allowed,
    why,
  };
}

/**
 * The ground that nobody looked at, taken at its worst.
 * @param deep - of what is dug, m below the datum
 */
export function unlookedOf(
  { site }: Pick<Designed, 'site'>,
  deep: number,
  use: Use = unrecorded,
): Unlooked | null {
  const log = deepestLogged(site);
  if (!log || site.pond.existing || deep <= 0 || log.bottom - log.ground <= deep) return null;
  const { pit, bottom, ground, weight } = log;
  const left = use(plugLeft, bottom - ground, use(levelOfDepth, deep));
  return {
    pit,
    to_m: bottom,
    factor: use(heaveFactor, weight, left, bottom),
    wanted_to_m:
      weight > HEAVE_FACTOR_WANTED * UNIT_WEIGHT_OF_WATER
        ? use(logWanted, deep, HEAVE_FACTOR_WANTED, weight, ground)
        : null,
  };
}

/** The sides of the dig of a row. */
export function sidesOf({ site, measures, depth }: Designed, use: Use = unrecorded): SideActions | null {
  const dug = dugDepth(site, measures, depth, use);
  const side = weighedSide(site, measures.raise, dug, use);
  if (!side) return null;
  const { height, stands, factor } = side;
  return {
    height_m: height,
    stands_m: stands,
    factor,
    wanted: SIDE_FACTOR_WANTED,
    met: factor >= SIDE_FACTOR_WANTED,
  };
}

const MODELS: Readonly<Record<WaterModel, WaterSource>> = {
  'heads.csv': 'heads',
  'daily water balance, fitted to dips': 'balance-fitted',
  'daily water balance, from priors': 'balance-priors',
  dips: 'dips',
  'spill level': 'spill',
};

function sourceOf(designed: Designed, row: Situation): WaterSource {
  const { site, measures } = designed;
  switch (row.water?.which) {
    case 'seam':
      return seamOf(designed, row).assumed ? 'seam-assumed' : 'seam-surveyed';
    case 'drain':
      return 'drain';
    case 'receiver':
      return measures.drain?.kind === 'outlet' && measures.drain.outlet.flood !== undefined
        ? 'flood-surveyed'
        : 'flood-assumed';
    default:
      return MODELS[site.waterModel];
  }
}

/**
 * Head that lifts and head that holds, over the floor; of a seam its pressure and the plug over it.
 * @param use - a recorder, for the worked sheet
 */
export function upliftOf(designed: Designed, row: Situation, use: Use = unrecorded): UpliftActions {
  if (row.water!.which === 'seam') return plugOf(designed, row, use);
  const { floor, measures } = designed;
  const water = row.water!.level_m;
  const holding = use(holdingHead, water, row.margin_m!, floor);
  const weight = isKept(row) ? Math.min(measures.ballast, holding) : holding;
  const actions = {
    lifting: use(waterPressure, use(headOver, water, floor)),
    holding: use(waterPressure, use(headOver, holding, 0)),
    by: heldBy(holding - weight, weight),
  };
  return weighed(designed, row, actions, use);
}

/** A row of the pond with its water in it. */
function isKept({ situation, month }: Situation): boolean {
  return (
    situation === 'full' ||
    situation === 'drawn-down' ||
    situation === 'power-out' ||
    (situation === 'drain-blocked' && month === null)
  );
}

function heldBy(water: number, weight: number): HeldBy {
  const [wet, heavy] = [water > LEVEL_RESOLUTION, weight > LEVEL_RESOLUTION];
  return wet && heavy ? 'both' : wet ? 'water' : heavy ? 'weight' : 'nothing';
}

/** What is held against the seams in a row. */
export function overOf({ site, measures, depth }: Designed, row: Situation, use: Use = unrecorded): OverSeam {
  if (row.situation !== 'seam') return overWith(site, measures, depth, row, use);
  // A row without a month is of a dig whose months are named.
  const months = row.month === null ? site.pond.builtIn! : [row.month];
  return {
    floor: row.level_m,
    holds: row.level_m,
    months: pressedMonths(measures, months),
    exceeded: site.pond.acceptedRisk,
  };
}

/** The seam that decides in a row. */
export function seamOf(designed: Designed, row: Situation): Seam {
  return worstSeam(designed.site, overOf(designed, row))!;
}

function plugOf(designed: Designed, row: Situation, use: Use): UpliftActions {
  const seam = seamOf(designed, row);
  const { floor, holds } = overOf(designed, row);
  const thickness = use(plugLeft, seam.top, floor);
  const top = levelOfDepth.compute(seam.top);
  const water = row.water!.level_m;
  // Water that presses meets a floor cut into its layer where that is.
  const lifting = use(waterPressure, use(headOver, water, water > top ? Math.min(floor, top) : top));
  const plug = thickness > 0 ? use(plugWeight, seam.coverWeight, thickness) : 0;
  const load = holds > floor ? use(waterPressure, use(headOver, holds, floor)) : 0;
  const holding = plug > 0 && load > 0 ? use(plugWithLoad, plug, load) : plug + load;
  const held = load / UNIT_WEIGHT_OF_WATER;
  // No water is left over an emptied floor.
  const weight =
    row.situation === 'seam-emptied'
      ? held
      : Math.min(designed.site.pond.floorBallast + designed.measures.ballast, held);
  const bare = heldBy(held - weight, weight);
  const by = plug > 0 ? (load > 0 ? 'plug-and-load' : 'plug') : bare;
  const alone = plug > 0 && load === 0 ? { weight: seam.coverWeight, thickness } : undefined;
  return weighed(designed, row, { lifting, holding, by, ...(alone && { plug: alone }) }, use);
}

/** Factor of safety by the head that lifts: of a plug of ground, else of what holds. */
const factorOf = (head: number, holding: number, plug: Plug | undefined, use: Use) =>
  plug ? use(heaveFactor, plug.weight, plug.thickness, head) : use(flotationOfFloor, holding, head);

/** Actions with what the rules make of them. */
function weighed(
  { site }: Designed,
  { situation, water }: Situation,
  { lifting, holding, by, plug }: { lifting: number; holding: number; by: HeldBy; plug?: Plug },
  use: Use,
): UpliftActions {
  const rules = UPLIFT_RULES[site.country.rules];
  const common = { lifting_pa: lifting, holding_pa: holding, held_by: by };
  if (rules.method === 'partial-factors') {
    const lifts = ACTION_CLASS[situation] === 'variable' ? rules.variable : rules.lifts;
    const value =
      lifting === 0 ? 0 : holding === 0 ? null : use(upliftUtilisation, lifts, lifting, rules.holds, holding);
    return {
      ...common,
      factor: { lifting: lifts, holding: rules.holds },
      kind: 'utilisation',
      value,
      wanted: 1,
      met: value !== null && value <= 1,
    };
  }
  const wanted = rules.wanted[categoryOf(situation, water!.statistic.exceeded)];
  const value = lifting === 0 ? null : factorOf(use(headOfPressure, lifting), holding, plug, use);
  return {
    ...common,
    factor: { lifting: 1, holding: 1 },
    kind: 'factor-of-safety',
    value,
    wanted,
    met: value === null || value >= wanted,
  };
}
