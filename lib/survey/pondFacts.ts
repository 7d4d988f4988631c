/** pond.csv: the pond that is planned, or there. */

import { SECONDS_PER_DAY } from '../formula/index.js';
import { months } from './calendar.js';
import { type Column, quantity, word, wordOr } from './column.js';
import { type Facts, type Items, readFacts } from './facts.js';
import * as garden from './gardenWords.js';
import type { Findings, Problem } from './problem.js';
import type { Sheet } from './sheet.js';
import {
  BALLASTS,
  BEDDINGS,
  LINERS,
  OVERFLOWS,
  type PondFacts,
  RING_FILLS,
  SHAPES,
  WALLS,
} from './survey.js';

/** Days as a plain number; the unit cell may say hours. */
function days(): Column<number> {
  const time = quantity('time', {
    min: 3600,
    max: 366 * SECONDS_PER_DAY,
    unit: 'd',
    oddAbove: 90 * SECONDS_PER_DAY,
    oddBelow: SECONDS_PER_DAY / 2,
  });
  return {
    ...time,
    read: (cell, style) => time.read(cell, style) / SECONDS_PER_DAY,
    odd: (value) => time.odd?.(value * SECONDS_PER_DAY),
  };
}

/** The items of pond.csv. */
export const POND_ITEMS: Items<PondFacts> = {
  shape: word(SHAPES, garden.SHAPES),
  length: quantity('length', { min: 0.3, max: 200, oddAbove: 50 }),
  width: quantity('length', { min: 0.3, max: 200, oddAbove: 50 }),
  area: quantity('area', { min: 0.1, max: 20_000, oddAbove: 1000, oddBelow: 0.5 }),
  depth: quantity('length', { min: 0.1, max: 6, oddAbove: 2, oddBelow: 0.28 }),
  side_slope: quantity('none', { min: 0, max: 10, oddAbove: 5 }),
  shelf_depth: quantity('length', { min: 0, max: 3 }),
  shelf_width: quantity('length', { min: 0, max: 20 }),
  full_level: quantity('length', { min: -500, max: 9000 }),
  water_above_rim_ground: quantity('length', { min: -3, max: 3, oddAbove: 0.6, oddBelow: -1 }),
  highest_raise: quantity('length', { min: 0, max: 3, oddAbove: 0.9 }),
  ring_width: quantity('length', { min: 0, max: 5, oddAbove: 1 }),
  ring_depth: quantity('length', { min: 0, max: 6 }),
  ring_fill: word(RING_FILLS),
  ring_ksat: quantity('speed', { min: 1e-9, max: 1 }),
  ring_cap: word(['yes', 'no'], garden.YES_NO),
  bedding: word(BEDDINGS),
  bedding_thickness: quantity('length', { min: 0, max: 1, oddAbove: 0.3 }),
  liner: word(LINERS),
  ballast: word(BALLASTS),
  ballast_thickness: quantity('length', { min: 0, max: 1.5, oddAbove: 0.6 }),
  wall: word(WALLS),
  floor_fall: quantity('fraction', { min: 0, max: 0.5, unit: '%', oddAbove: 0.1, oddBelow: 0.001 }),
  edging_load: quantity('pressure', { min: 0, max: 200_000, oddAbove: 20_000 }),
  usual_drawdown: quantity('length', { min: 0, max: 6, oddAbove: 1 }),
  kept_within: wordOr('never', quantity('length', { min: 0.005, max: 3, oddAbove: 0.5 })),
  overflow: word(OVERFLOWS),
  emptied_in: wordOr('never', months()),
  days_empty: days(),
  built_in: months(),
  filled_in: months(),
  margin: quantity('length', { min: 0, max: 1, oddAbove: 0.3 }),
  accepted_risk: quantity('fraction', { min: 1e-5, max: 0.9, unit: 'ratio', oddAbove: 0.11, oddBelow: 5e-4 }),
  state: word(['planned', 'existing']),
  bulge: word(['yes', 'no'], garden.YES_NO),
  old_drain: word(['yes', 'no'], garden.YES_NO),
};

/** Reads pond.csv: a depth and a size are needed, and what it says must hold together. */
export function readPond(sheet: Sheet | undefined, findings: Findings): Facts<PondFacts> {
  const pond = readFacts<PondFacts>(sheet, POND_ITEMS, findings);
  if (!sheet) return pond;
  // An item refused in its own row is not missing.
  if (findings.clean('pond.csv')) requireSize(pond, findings);
  for (const [item, message, remedy] of contradictions(pond.facts)) {
    const place = pond.cell(item);
    if (place)
      findings.refuse({
        ...place,
        code: 'contradiction',
        message: `invalid '${place.found}' - ${message}`,
        remedy,
      });
  }
  return pond;
}

function requireSize({ facts: pond, cell }: Facts<PondFacts>, findings: Findings): void {
  const missing = (item: keyof PondFacts, why: string, remedy: string): Problem => {
    const left = cell(item);
    return {
      ...(left ?? { file: 'pond.csv', column: 'item' }),
      code: 'missing-item',
      message: `missing ${left ? 'value of ' : 'item '}'${item}' - ${why}`,
      expected: item,
      remedy,
    };
  };
  if (pond.depth === undefined) {
    findings.refuse(
      missing('depth', 'nothing can be said without the depth wished for', "Write it as 'depth,1.0,m,'."),
    );
  }
  if (pond.area !== undefined) return;
  if (pond.length === undefined) {
    findings.refuse(
      missing(
        'length',
        'the size of the pond is not said',
        'Write length and width (a round pond: length is its diameter), or area.',
      ),
    );
  } else if (pond.width === undefined && pond.shape !== 'round') {
    findings.refuse(
      missing(
        'width',
        'only a round pond is described by its length alone',
        "Write width or area, or 'shape,round,,'.",
      ),
    );
  }
}

function contradictions(pond: PondFacts): [item: keyof PondFacts, message: string, remedy: string][] {
  const found: [keyof PondFacts, string, string][] = [];
  const check = (broken: boolean, item: keyof PondFacts, message: string, remedy: string) => {
    if (broken) found.push([item, message, remedy]);
  };
  const { depth = Number.POSITIVE_INFINITY, length, width = length, area } = pond;
  check(
    pond.full_level !== undefined && pond.water_above_rim_ground !== undefined,
    'water_above_rim_ground',
    'full_level gives the water level already',
    'Keep one of full_level and water_above_rim_ground.',
  );
  check(
    (pond.shelf_depth ?? 0) > depth,
    'shelf_depth',
    'the shelf lies deeper than the pond',
    'Check shelf_depth and depth.',
  );
  check(
    (pond.usual_drawdown ?? 0) > depth,
    'usual_drawdown',
    'it is more than the pond is deep',
    'Check usual_drawdown and depth.',
  );
  check(
    pond.usual_drawdown !== undefined && pond.kept_within !== undefined,
    'kept_within',
    'usual_drawdown says already how its level is kept',
    'Keep one: kept_within where it is topped up, usual_drawdown where a level is held below full.',
  );
  check(
    typeof pond.kept_within === 'number' && pond.kept_within > depth,
    'kept_within',
    'it is more than the pond is deep',
    "Check kept_within and depth; 'never' where nobody tops it up.",
  );
  check(
    area !== undefined && length !== undefined && width !== undefined && area > length * width * 1.05,
    'area',
    'it is more than length times width',
    'Check area, length and width.',
  );
  check(
    pond.shape === 'round' &&
      length !== undefined &&
      width !== undefined &&
      Math.abs(length - width) > 0.02 * length,
    'width',
    'a round pond has one diameter',
    "Leave width out, or write 'oval' as the shape.",
  );
  check(
    pond.bedding === 'none' && (pond.bedding_thickness ?? 0) > 0,
    'bedding_thickness',
    'bedding is none',
    'Name the bedding, or leave its thickness out.',
  );
  check(
    pond.ballast === 'none' && (pond.ballast_thickness ?? 0) > 0,
    'ballast_thickness',
    'ballast is none',
    'Name the ballast, or leave its thickness out.',
  );
  check(
    pond.state === 'planned' && pond.bulge === 'yes',
    'bulge',
    'a planned pond has no bulge',
    "Write 'existing' as the state.",
  );
  check(
    pond.state === 'planned' && pond.old_drain === 'yes',
    'old_drain',
    'a planned pond has no drain yet',
    "Write 'existing' as the state.",
  );
  return found;
}
