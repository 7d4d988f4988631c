/** The survey against what is tried, in one small table. */
import type { Situation } from '../contract/index.js';
import { type Judged, monthsFree } from '../decision/index.js';
import { decidingRows } from '../figures/situationTables.js';
import type { Table } from '../figures/table.js';
import { reportOf } from '../report/index.js';
import { monthWords } from '../text/index.js';
import { sentence } from '../figures/words.js';
import { formatGap, formatQuantity, type UnitSystem } from '../units/index.js';
import { yearsText } from './whatIfAnswer.js';

/** States of a pond whose margin is told. */
const STATES: readonly Situation['situation'][] = ['full', 'drawn-down', 'emptied', 'outlet-flood'];

/**
 * The table.
 * @param survey - judged as surveyed, with what is held built; undefined where it cannot be had
 * @param tried - the same of what is tried
 */
export function comparedTried(survey: Judged | undefined, tried: Judged | undefined, units: UnitSystem): Table {
  const columns = [told(survey, units), told(tried, units)] as const;
  return {
    name: 'The survey and what is tried',
    columns: [
      { key: 'what', label: '' },
      { key: 'survey', label: 'as surveyed' },
      { key: 'tried', label: 'as tried' },
    ],
    rows: Object.keys(columns[1]).map((key) => [
      key,
      columns[0][key as keyof Told],
      columns[1][key as keyof Told],
    ]),
  };
}

interface Told {
  Depth: string;
  'It fails': string;
  'To spare': string;
  'May be emptied': string;
}

function told(a: Judged | undefined, units: UnitSystem): Told {
  const verdict = a?.decision.verdict;
  if (!a || !verdict)
    return { Depth: 'not possible', 'It fails': '–', 'To spare': '–', 'May be emptied': '–' };
  const months = monthsFree(a.limits.lowestSafeLevel);
  const margin = leastMargin(a);
  return {
    Depth: formatQuantity(a.site.pond.depth, 'length', units),
    'It fails': verdict.chance.lacks ? 'it does not work' : yearsText(verdict),
    'To spare':
      margin === undefined
        ? 'not known'
        : margin >= 0
          ? formatGap(margin, units, 'down')
          : `${formatGap(-margin, units, 'up')} too little`,
    'May be emptied':
      months.length === 12 ? 'in any month' : months.length === 0 ? 'in no month' : sentence(monthWords(months)),
  };
}

/** The least that is in hand against the water, of the states in which the pond may be, m. */
function leastMargin(a: Judged): number | undefined {
  const rows = decidingRows(reportOf(a, { quick: true })).filter(
    ({ situation, month, margin_m, allowed, why }) =>
      margin_m !== null &&
      STATES.includes(situation) &&
      why !== 'briefly' &&
      (situation === 'emptied' ? allowed : month === null),
  );
  return rows.length === 0 ? undefined : Math.min(...rows.map(({ margin_m }) => margin_m!));
}
