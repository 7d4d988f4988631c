/** soakage.csv: falling-level tests. */

import { SECONDS_PER_DAY } from '../formula/index.js';
import { named, quantity, required, text, word } from './column.js';
import * as garden from './gardenWords.js';
import type { Findings } from './problem.js';
import { distinct, groupBy, sorted } from './rows.js';
import type { Sheet } from './sheet.js';
import type { SoakageLook } from './survey.js';
import { type Row, readTable, type Values } from './table.js';
import { FLOOR_TOLERANCE } from './water.js';

/** The columns of soakage.csv. */
export const SOAKAGE_COLUMNS = {
  pit: required(named(text(), 'hole')),
  test: required(text()),
  minutes: required(
    named(quantity('time', { min: 0, max: 60 * SECONDS_PER_DAY, unit: 'min' }), 'time_min', 'min'),
  ),
  depth_to_water: required(quantity('length', { min: -1, max: 10 })),
  hole_depth: quantity('length', { min: 0.05, max: 10 }),
  hole_diameter: quantity('length', { min: 0.01, max: 5, oddAbove: 1.5 }),
  soaked_before: word(['yes', 'no'], garden.YES_NO),
};
type Reading = Values<typeof SOAKAGE_COLUMNS>;

/** Reads soakage.csv: looks by test and time; what is said of the hole in one row holds for the test. */
export function readSoakage(sheet: Sheet | undefined, findings: Findings): SoakageLook[] {
  const testOf = ({ pit, test }: Reading) => `test ${test} in ${pit}`;
  const once = distinct(
    readTable(sheet, SOAKAGE_COLUMNS, findings),
    (look) => `${testOf(look)} after ${look.minutes} s`,
    (look) => look,
    'depth_to_water',
    findings,
  );
  const inOrder = sorted(once, testOf, (look) => look.minutes, findings);
  const tests = groupBy(inOrder, ({ values }) => testOf(values));
  return [...tests].flatMap(([name, rows]) => readTest(name, rows, findings));
}

function readTest(name: string, rows: Row<Reading>[], findings: Findings): SoakageLook[] {
  const said = <K extends keyof Reading>(key: K) =>
    rows.find((row) => row.values[key] !== undefined)?.values[key];
  const ofTest = {
    depth: said('hole_depth'),
    diameter: said('hole_diameter'),
    soaked: said('soaked_before'),
  };
  const [first] = rows;
  if (first && rows.length < 2 && findings.clean(first.origin.file)) {
    findings.warn({
      ...first.origin,
      code: 'short-test',
      message: `${name} has one look, which measures no fall`,
    });
  }
  return rows.map((row, at) => {
    const { values, origin } = row;
    const holeDepth = values.hole_depth ?? ofTest.depth;
    const place = row.cell('depth_to_water');
    if (holeDepth !== undefined && values.depth_to_water > holeDepth + FLOOR_TOLERANCE) {
      const message = `invalid '${place.found}' - the water would be below the floor of the hole, ${Number(holeDepth.toPrecision(4))} m`;
      findings.refuse({
        ...place,
        code: 'below-floor',
        message,
        remedy: 'Check both depths, and that they are from the same mark.',
      });
    }
    const before = rows[at - 1];
    if (before && values.depth_to_water < before.values.depth_to_water) {
      const message = `'${place.found}' is higher than the look before it: the water rose during ${name}`;
      findings.warn({ ...origin, column: place.column, code: 'rising-water', message });
    }
    return {
      pit: values.pit,
      test: values.test,
      time: values.minutes,
      depthToWater: values.depth_to_water,
      holeDepth,
      holeDiameter: values.hole_diameter ?? ofTest.diameter,
      soakedBefore: values.soaked_before ?? ofTest.soaked,
      origin,
    };
  });
}
