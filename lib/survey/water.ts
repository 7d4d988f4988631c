/** water.csv: looks into holes, standpipes, the dig and the pond. */

import { date, dateText, timeOfDay, timeText } from './calendar.js';
import { named, quantity, remark, required, word } from './column.js';
import * as garden from './gardenWords.js';
import { pitName, RESERVED_PITS } from './pits.js';
import type { Findings } from './problem.js';
import { distinct, sorted } from './rows.js';
import type { Sheet } from './sheet.js';
import type { Look } from './survey.js';
import { type Row, readTable, type Values } from './table.js';

/** a tape may read a level this far below the floor it was once dug to, m */
export const FLOOR_TOLERANCE = 0.05 + 1e-9;
const NOON = 0.5;

const READINGS = ['opened', 'bailed', 'level', 'dry', 'strike'] as const;
const DEPTH = { min: -5, max: 30 };
/** The columns of water.csv. */
export const WATER_COLUMNS = {
  pit: required(named(pitName(), 'hole')),
  date: required(date()),
  time: timeOfDay(),
  reading: required(word(READINGS, garden.READINGS)),
  depth: quantity('length', DEPTH),
  hole_depth: quantity('length', DEPTH),
  hole_diameter: quantity('length', { min: 0.01, max: 5, oddAbove: 1.5 }),
  pipe_bore: quantity('length', { min: 0.005, max: 1, oddAbove: 0.3 }),
  open_from: quantity('length', DEPTH),
  pipe_top: quantity('length', { min: -1, max: 3, oddAbove: 1.5 }),
  covered: word(['yes', 'no'], garden.YES_NO),
  note: remark('notes', 'remark', 'remarks', 'comment'),
};
type Reading = Values<typeof WATER_COLUMNS>;

/** Reads water.csv: looks by day, depths from the ground, the hole's floor carried on from when it was dug. */
export function readWater(sheet: Sheet | undefined, findings: Findings): Look[] {
  const once = distinct(
    readTable(sheet, WATER_COLUMNS, findings),
    ({ pit, date: day, time, reading }) =>
      `${reading} in ${pit} on ${dateText(day)}${time === undefined ? '' : ` at ${timeText(time)}`}`,
    ({ note, ...said }) => said,
    'depth',
    findings,
  );
  const rows = sorted(
    once,
    (look) => look.pit,
    (look) => look.date + (look.time ?? NOON),
    findings,
  );
  checkTimes(rows, findings);
  const floors = new Map<string, Pick<Look, 'holeDepth' | 'holeDiameter'>>();
  return rows.map((row) => {
    const look = lookOf(row, floors.get(row.values.pit));
    if (look.reading === 'opened')
      floors.set(look.pit, { holeDepth: look.holeDepth, holeDiameter: look.holeDiameter });
    checkLook(row, look, findings);
    return look;
  });
}

/** On the day a hole is opened, a look without a time may come before or after it. */
function checkTimes(rows: Row<Reading>[], findings: Findings): void {
  rows.forEach((opened, at) => {
    if (opened.values.reading !== 'opened') return;
    for (const row of rows.slice(0, at)) {
      const { pit, date: day, reading, time } = row.values;
      if (pit !== opened.values.pit || day !== opened.values.date || reading === 'strike') continue;
      if ((time === undefined) === (opened.values.time === undefined)) continue;
      const untimed = time === undefined ? row : opened;
      const message = `missing time - ${pit} was opened and looked into on ${dateText(day)}, in which order is not said`;
      findings.refuse({
        ...untimed.cell('time'),
        code: 'missing-time',
        message,
        found: '',
        remedy: 'Write the time of both rows, such as 09:00.',
      });
    }
  });
}

function lookOf(row: Row<Reading>, dug: Pick<Look, 'holeDepth' | 'holeDiameter'> | undefined): Look {
  const { values, origin } = row;
  const fromGround = (depth: number | undefined) =>
    depth === undefined ? undefined : depth - (values.pipe_top ?? 0);
  const depth = fromGround(values.depth);
  const floor = values.reading === 'opened' ? depth : undefined;
  return {
    pit: values.pit,
    day: values.date + (values.time ?? NOON),
    timed: values.time !== undefined,
    reading: values.reading,
    depth: values.reading === 'dry' ? undefined : depth,
    holeDepth: fromGround(values.hole_depth) ?? floor ?? dug?.holeDepth,
    holeDiameter: values.hole_diameter ?? dug?.holeDiameter,
    pipeBore: values.pipe_bore,
    openFrom: fromGround(values.open_from),
    covered: values.covered,
    note: values.note,
    origin,
  };
}

function checkLook(row: Row<Reading>, look: Look, findings: Findings): void {
  const { reading, pit } = look;
  if (reading !== 'dry' && look.depth === undefined) {
    // A depth that was refused has been told of already.
    if (row.cell('depth').found) return;
    const what = reading === 'opened' ? "the hole's floor" : 'the water';
    const message = `missing depth - '${reading}' needs that of ${what}`;
    findings.refuse({
      ...row.cell('depth'),
      code: 'missing-value',
      message,
      found: '',
      remedy: "Write it, or 'dry' as the reading when no water was met.",
    });
    return;
  }
  const openCell = row.cell('open_from');
  if (look.openFrom !== undefined && look.openFrom >= (look.holeDepth ?? Number.POSITIVE_INFINITY)) {
    findings.refuse({
      ...openCell,
      code: 'below-floor',
      message: `invalid '${openCell.found}' - water could enter only below the floor of ${pit}, ${Number(look.holeDepth?.toPrecision(4))} m below ground`,
      remedy: 'Check both depths, and that they are from the same mark.',
    });
  }
  const depthCell = row.cell('depth');
  if (reading === 'dry') {
    if (depthCell.found) {
      const message = `invalid '${depthCell.found}' - a dry hole has no water level`;
      findings.refuse({
        ...depthCell,
        code: 'contradiction',
        message,
        remedy: "Leave depth empty and write the floor's depth as hole_depth.",
      });
    }
    if (look.holeDepth === undefined && !row.cell('hole_depth').found) {
      const message = `missing hole_depth - how deep ${pit} was dry is not said`;
      findings.refuse({
        ...row.cell('hole_depth'),
        code: 'missing-value',
        message,
        found: '',
        remedy: "Write the floor's depth, or add the row of the day the hole was opened.",
      });
    }
    return;
  }
  const [depth, floor] = [look.depth as number, look.holeDepth];
  const below =
    floor !== undefined && (reading === 'opened' ? Math.abs(depth - floor) : depth - floor) > FLOOR_TOLERANCE;
  if (below) {
    const message =
      reading === 'opened'
        ? `invalid '${depthCell.found}' - hole_depth '${row.cell('hole_depth').found}' gives another floor`
        : `invalid '${depthCell.found}' - the water would be below the floor of ${pit}, ${Number(floor.toPrecision(4))} m below ground`;
    findings.refuse({
      ...depthCell,
      code: 'below-floor',
      message,
      remedy: 'Check both depths, and that they are from the same mark.',
    });
  }
  if (reading !== 'level' && (pit === 'pond' || pit === 'dip-pipe')) {
    const message = `invalid '${reading}' - ${pit} is not dug, it has a level`;
    findings.refuse({
      ...row.cell('reading'),
      code: 'unknown-word',
      message,
      expected: 'level',
      remedy: "Write 'level'.",
    });
  }
}

/** Is that the name of a hole, rather than of the pond, its dip pipe or the dig? */
export function isNamedHole(pit: string): boolean {
  return !RESERVED_PITS.includes(pit);
}
