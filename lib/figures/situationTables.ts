import type { LadderRung, Report, Situation } from '../contract/index.js';
import { decidingRows } from '../contract/index.js';
import { LEVEL_RIM } from '../site/index.js';
import { monthName } from '../text/monthWords.js';
import { rungName } from '../text/rungName.js';
import { rareEnough } from '../text/situationWords.js';
import { SITUATION_NAMES, WATER_NAMES, WHY_WORDS } from '../text/terms.js';
import { formatBound, formatQuantity, type UnitSystem } from '../units/index.js';
import type { Table } from './table.js';

/**
 * The ladder of waters: the wettest month in a middle year, and the highest of the year by how rare it is.
 * @param report - from {@link reportOf}
 * @param units - how numbers are written
 * @returns a row a rung, the lowest water first
 */
export function ladderTable({ result, accepted_risk, pond }: Report, units: UnitSystem): Table {
  const { ladder } = result.water;
  const level = (value: number | null) => (value === null ? null : formatQuantity(value, 'level', units));
  const wettest = ladder
    .filter(({ highest_of }) => highest_of === 'month')
    .reduce((a, b) => (b.low_side_m > a.low_side_m ? b : a));
  const shown = ladder.filter(({ highest_of, month }) => highest_of === 'year' || month === wettest.month);
  const uphill = pond.high_rim_m > LEVEL_RIM;
  const ring = shown.some(({ ring_m }) => ring_m !== null);
  return {
    name: 'How high the water comes with nothing done',
    columns: [
      { key: 'water', label: 'water' },
      { key: 'low', label: uphill ? 'in the clay, low side' : 'in the clay' },
      ...(uphill ? [{ key: 'uphill', label: 'behind the uphill wall' }] : []),
      ...(ring ? [{ key: 'ring', label: 'in the ring' }] : []),
      ...(uphill || ring ? [{ key: 'outside', label: 'highest of these' }] : []),
    ],
    rows: shown.map((rung) => [
      rungName(rung, accepted_risk),
      level(rung.low_side_m),
      ...(uphill ? [level(rung.uphill_wall_m)] : []),
      ...(ring ? [isDry(rung) ? 'dry' : level(rung.ring_m)] : []),
      ...(uphill || ring ? [level(rung.outside_m)] : []),
    ]),
  };
}

/** A ring that stands at its floor has no water that counts. */
function isDry({ ring_m, outside_m }: LadderRung): boolean {
  return ring_m !== null && outside_m !== null && ring_m > outside_m + 1e-6;
}

/** One row a situation: the year's, else the month with the least in hand, of those allowed where there are such. */
function worstRows(rows: Situation[]): Situation[] {
  const names = [...new Set(rows.map(({ situation }) => situation))];
  return names.flatMap((name) => {
    const of = rows.filter(({ situation }) => situation === name);
    const yearly = of.filter(({ month }) => month === null);
    const months = of.filter(({ month }) => month !== null);
    if (name === 'drawn-down') return yearly;
    const allowed = months.filter((row) => row.allowed);
    // A dig has no margin; the sheet to sign weighs its floor against the water all the same.
    const spare = ({ margin_m, level_m, water }: Situation) =>
      margin_m ?? (water ? level_m - water.level_m : Number.POSITIVE_INFINITY);
    const least = (among: Situation[]) =>
      among.length === 0 ? [] : [among.reduce((a, b) => (spare(b) < spare(a) ? b : a))];
    const free = (name === 'emptied' || name === 'dig') && allowed.length > 0;
    return [...yearly, ...least(free ? allowed : months)];
  });
}

/**
 * Every design situation of what is recommended, the worst month of each.
 * @param report - from {@link reportOf}
 * @param units - how numbers are written
 * @returns a row a situation
 */
export function situationTable(report: Report, units: UnitSystem): Table {
  const level = (value: number) => formatQuantity(value, 'level', units);
  return {
    name: 'What is in hand, situation by situation',
    columns: [
      { key: 'when', label: 'situation' },
      { key: 'level', label: 'pond, or floor' },
      { key: 'water', label: 'water outside' },
      { key: 'spare', label: 'to spare' },
      { key: 'verdict', label: 'verdict' },
    ],
    rows: worstRows(decidingRows(report)).map((row) => [
      `${SITUATION_NAMES[row.situation]}${row.month === null ? '' : `, ${monthName(row.month)}`}`,
      level(row.level_m),
      row.water ? `${level(row.water.level_m)}, ${WATER_NAMES[row.water.which]}` : null,
      row.margin_m === null
        ? null
        : row.margin_m >= 0
          ? formatBound(row.margin_m, 'depth', units, 'down')
          : `${formatBound(-row.margin_m, 'depth', units, 'up')} too little`,
      row.allowed && row.margin_m !== null && row.margin_m < 0 && row.why === 'holds' && row.chance
        ? rareEnough(row.chance.middle)
        : WHY_WORDS[row.why],
    ]),
  };
}
