/** The simulated water behind the percentiles of the worked calculation, column by column. */

import { type Basis, drawdownOf, keptHeads, keptHigh, keptMonths } from '../basis/index.js';
import type { Judged } from '../decision/index.js';
import { type Drawn, highestOf, type Measures, MOSTLY, risesOf } from '../heads/index.js';
import { monthValues } from '../site/index.js';
import { monthName, sentence } from '../text/index.js';
import type { HeadColumn, Recording } from './workedFrom.js';

/** Name of a column, of letters that a calculator takes for one symbol. */
function nameOf(a: Judged, basis: Basis, what: string, m: Pick<Measures, 'way' | 'cutoff'>): string {
  const changed = basis.site.water === a.basis.site.water ? '' : '_changed';
  const measures = m.way === 'asIs' && m.cutoff === undefined ? '' : '_advised';
  return `${what}${changed}${measures}_m`;
}

const WHAT: Record<Drawn['of'], { name: string; meaning: string }> = {
  year: { name: 'outside', meaning: 'highest water outside of the year, before any drain under the floor' },
  month: { name: 'outside', meaning: 'highest water outside of the month, before any drain under the floor' },
  emptied: {
    name: 'emptied',
    meaning: 'highest water outside while it stands empty, before any drain under the floor',
  },
  uphill: { name: 'uphill', meaning: 'highest water behind the uphill wall' },
  clay: { name: 'clay', meaning: 'highest water in the clay' },
  ring: { name: 'ring', meaning: 'highest water in the ring, that in the clay where it is dry' },
};

const monthOf = (month: number | undefined) =>
  month === undefined ? '' : `_${monthName(month).toLowerCase()}`;
const inMonth = (month: number | undefined) => (month === undefined ? '' : ` (${monthName(month)})`);
const stay = (share: number) => `${Number((100 * share).toPrecision(6))} % stay below`;

/** Records a percentile of the water outside; `result` is what the answer used. */
export function drawnWater(
  r: Recording,
  a: Judged,
  basis: Basis,
  drawn: Drawn,
  share: number,
  result: number,
): void {
  const { name, meaning } = WHAT[drawn.of];
  const column: HeadColumn = {
    name: nameOf(a, basis, `${name}${monthOf(drawn.month)}`, drawn),
    meaning: `${meaning}${inMonth(drawn.month)}`,
    values: basis.highs.values(drawn),
  };
  r.drawn(column, share, result, sentence(`${meaning}${inMonth(drawn.month)}, ${stay(share)}`));
}

/** Records a percentile of the water outside and what the pond lacks together, and the most that it lacks. */
export function drawnKept(
  r: Recording,
  a: Judged,
  basis: Basis,
  m: Measures,
  share: number,
  month?: number,
): void {
  const { kept } = basis.site.pond;
  if ('held' in kept) return;
  const months = () => keptMonths(basis, m);
  const meaning = `water outside and what the pond lacks on the same day, highest${inMonth(month)}`;
  const column: HeadColumn = {
    name: nameOf(a, basis, `kept${monthOf(month)}`, m),
    meaning,
    values: month === undefined ? keptHeads(basis, m).slice() : monthValues(months(), month),
  };
  r.drawn(column, share, keptHigh(basis, m, share, month), sentence(`${meaning}, ${stay(share)}`));
  if (m.drain) drawnLacks(r, a, basis, 1);
}

/** Records what the pond lacks at its lowest of a year. */
export function drawnLacks(r: Recording, a: Judged, basis: Basis, share: number): void {
  if ('held' in basis.site.pond.kept) return;
  const meaning = 'most that the pond lacks in the year, below full';
  const column: HeadColumn = {
    name: nameOf(a, basis, 'lacks', { way: 'asIs' }),
    meaning,
    values: highestOf(basis.site.water.pond!.drawdown),
  };
  r.drawn(
    column,
    share,
    drawdownOf(basis, share),
    sentence(`${meaning}, ${share === 1 ? 'of all years' : stay(share)}`),
  );
}

/** Records how much higher the water stands uphill than at the low side in a month. */
export function drawnRise(r: Recording, a: Judged, month: number, result: number, named: string): void {
  const column: HeadColumn = {
    name: `rise_uphill_${named.toLowerCase()}_m`,
    meaning: `rise of the water from the low side to the uphill wall (${named})`,
    values: risesOf(a.basis.site.water, month),
  };
  r.drawn(column, MOSTLY, result, sentence(`${column.meaning}, ${stay(MOSTLY)}`));
}

/** Records the water while it is dug that one year in ten exceeds. */
export function drawnDig(
  r: Recording,
  a: Judged,
  basis: Basis,
  months: number[],
  share: number,
  result: number,
): void {
  const all =
    months.length === 12 ? '' : `_${months.map((month) => monthName(month).toLowerCase()).join('_')}`;
  const column: HeadColumn = {
    name: nameOf(a, basis, `dug${all}`, { way: 'asIs' }),
    meaning: 'highest water in the clay beside the hole while it is dug',
    values: highestOf(basis.site.water.clayHigh.month, months),
  };
  r.drawn(column, share, result, sentence(`${column.meaning}, ${stay(share)}`));
}
