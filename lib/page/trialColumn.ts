/** The survey against what is tried, in one small table. */
import type { Situation } from '../contract/index.js';

import { monthsFree } from '../contract/index.js';
import type { Table } from '../figures/table.js';
import { situationsOf } from '../report/index.js';
import { monthWords } from '../text/index.js';
import { sentence } from '../text/sentence.js';
import { sidesText } from '../text/sheetWords.js';
import { yearsText } from '../text/whatIfText.js';
import { formatGap, formatQuantity, type UnitSystem } from '../units/index.js';
import type { Trial } from './heldMeasures.js';
import { trialVerdict } from './whatIfAnswer.js';

/** States of a pond whose margin is told. */
const STATES: readonly Situation['situation'][] = ['full', 'drawn-down', 'emptied', 'outlet-flood'];

/**
 * The table.
 * @param survey - as surveyed, with what is held built
 * @param tried - from {@link trialColumn}
 */
export function trialTable(survey: TrialColumn, tried: TrialColumn): Table {
  return {
    name: 'The survey and what is tried',
    columns: [
      { key: 'what', label: 'of this pond' },
      { key: 'survey', label: 'as surveyed' },
      { key: 'tried', label: 'as tried' },
    ],
    rows: (Object.keys(tried) as (keyof TrialColumn)[]).map((key) => [key, survey[key], tried[key]]),
  };
}

/** A column of the table. */
export interface TrialColumn {
  Depth: string;
  Sides: string;
  'Rim raised by': string;
  'It fails, used as wished': string;
  'To spare': string;
  'May be emptied': string;
}

/** What is tried in the cells of a column. */
export function trialColumn({ basis, held: a, stop }: Trial, units: UnitSystem): TrialColumn {
  const Depth = formatQuantity(basis.site.pond.depth, 'length', units);
  const { shape, drawnSlope } = basis.site.pond;
  const Sides = sidesText(shape.sideSlope, drawnSlope);
  const none = 'not possible';
  if (!a || stop)
    return {
      Depth,
      Sides,
      'Rim raised by': none,
      'It fails, used as wished': none,
      'To spare': none,
      'May be emptied': none,
    };
  const { verdict, measures } = a.decision;
  const months = monthsFree(a.limits.lowestSafeLevel);
  const margin = leastMargin(a);
  return {
    Depth,
    Sides,
    'Rim raised by': measures.raise > 0 ? formatQuantity(measures.raise, 'length', units) : 'nothing',
    'It fails, used as wished': verdict.chance.lacks ? 'it does not work' : yearsText(trialVerdict(verdict)),
    'To spare':
      margin === undefined
        ? 'not known'
        : margin >= 0
          ? formatGap(margin, units, 'down')
          : `${formatGap(-margin, units, 'up')} too little`,
    'May be emptied':
      months.length === 12
        ? 'in any month'
        : months.length === 0
          ? 'in no month'
          : sentence(monthWords(months)),
  };
}

/** The least that is in hand against the water, of the states in which the pond may be, m. */
function leastMargin(a: NonNullable<Trial['held']>): number | undefined {
  const rows = situationsOf(a, ['recommended']).filter(
    ({ situation, month, margin_m, allowed, why }) =>
      margin_m !== null &&
      STATES.includes(situation) &&
      why !== 'briefly' &&
      (situation === 'emptied' ? allowed : month === null),
  );
  return rows.length === 0 ? undefined : Math.min(...rows.map(({ margin_m }) => margin_m!));
}
