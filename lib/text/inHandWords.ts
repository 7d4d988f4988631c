/** What the water may still rise before the liner lifts. */
import { decidingRows, emptiedRows, hoursEmpty, type Report, type Situation } from '../contract/index.js';
import { formatGap, type UnitSystem } from '../units/index.js';
import { duringMonths, monthName } from './monthWords.js';
import { timeWords } from './situationWords.js';
import { WHY_WORDS } from './terms.js';

/** Names of the states that water is held against, after `with the pond`. */
const STATE: Partial<Record<Situation['situation'], string>> = {
  full: 'full',
  'drawn-down': 'as low as it gets in use',
  emptied: 'emptied',
  'outlet-flood': 'emptied with the outlet in flood',
};

/** Margins that differ by less are one, m. */
const ALIKE = 1e-6;

/**
 * The least that is in hand as it is used, of the emptying that the picture shows; and in a month in which it may be
 * emptied as well, where that is less.
 * @param report - from {@link reportOf}
 * @param units - how numbers are written
 * @returns one sentence, or two
 */
export function inHandWords(report: Report, units: UnitSystem): string {
  const deciding = decidingRows(report);
  const all = deciding.filter(
    ({ situation, margin_m }) => margin_m !== null && STATE[situation] !== undefined,
  );
  // Above its margin the water may stand, for a time.
  const brief = all.filter(({ why }) => why === 'briefly');
  const rows = all.filter(({ why }) => why !== 'briefly');
  const advised = rows.some(({ of }) => of === 'recommended');
  const told = emptiedRows(report);
  const never = told?.never ?? true;
  const month = told?.done ? told.done.shown?.month : told?.bare.month;
  const inUse = rows.filter((row) => {
    const empty = row.situation === 'emptied' || row.situation === 'outlet-flood';
    return (
      row.month === (row.situation === 'emptied' ? month : null) &&
      (!empty || (!never && (row.allowed || !advised)))
    );
  });
  const least = leastOf(inUse);
  if (!least) return 'Nothing can be told yet of what is in hand.';
  const when = least.month === null ? '' : ` in ${monthName(least.month)}`;
  const bare = advised ? '' : ' and nothing done';
  // What breaks through the floor is the water below it, not what lifts the liner.
  const below =
    least.why === 'floor-heaves'
      ? deciding.find(
          ({ of, situation, month, margin_m }) =>
            situation === `seam-${least.situation}` &&
            of === least.of &&
            month === least.month &&
            margin_m! < 0,
        )
      : undefined;
  const { water: decides, margin_m: spare } = below ?? least;
  const water = `the highest water of 1 year in ${Math.round(1 / decides!.statistic.exceeded)}${below ? ' below the clay' : ''}`;
  const about = `With the pond ${STATE[least.situation]!}${when}${bare}, ${water}`;
  if (spare! < 0)
    return `${about} stands ${formatGap(-spare!, units, 'up')} too high: ${least.why === 'lifts' ? 'the liner lifts' : WHY_WORDS[least.why]}.`;
  // A no is not told with what would be in hand if it were none.
  if (['move', 'do-not-dig'].includes(report.result.recommendation.option))
    return 'Nothing is in hand as wished: what fails stands in the answer.';
  const gap = ({ margin_m }: Situation) => formatGap(Math.max(margin_m!, 0), units, 'down');
  const free = rows.filter(({ situation, allowed }) => situation === 'emptied' && allowed);
  // The month of the picture first, so that it is named where others are like it.
  const low = leastOf([...free.filter((row) => row.month === month), ...free]);
  const less =
    low && low.margin_m! < least.margin_m! - ALIKE && gap(low) !== gap(least)
      ? ` Emptied in ${monthName(low.month!)}, which is allowed, it would stay ${gap(low)} below.`
      : '';
  return `${about} stays ${gap(least)} below what would lift the liner.${less}${timeInHand(brief, report)}`;
}

/** Of the months in which time alone keeps the empty pond down. */
function timeInHand(rows: Situation[], report: Report): string {
  if (rows.length === 0) return '';
  const hours = Math.min(...rows.map((row) => hoursEmpty(row, report)!));
  return ` Emptied ${duringMonths(rows.map(({ month }) => month!))}, time alone keeps it down: no more than ${timeWords(hours)}.`;
}

function leastOf(rows: Situation[]): Situation | undefined {
  return rows.reduce<Situation | undefined>(
    (a, b) => (a && a.margin_m! <= b.margin_m! + ALIKE ? a : b),
    undefined,
  );
}
