/** What changed between two surveys: inputs, decision, depth and chances. */

import type { Report } from '../contract/index.js';
import type { Table } from '../figures/table.js';
import { tableText } from '../figures/table.js';
import { visible } from '../figures/visible.js';
import type { Survey } from '../survey/index.js';
import { CHANGED_ANSWER, CHANGED_INPUTS, factTexts, SAME_ANSWER, SAME_INPUTS } from '../text/changedText.js';
import { rowsAdded, rowsGone } from '../text/rowsChanged.js';
import { yearlyText } from '../text/say.js';
import { ADVICE_NAMES, GOVERNS_WORDS } from '../text/terms.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';

/** A survey with what was computed of it. */
export interface Case {
  survey: Survey;
  report: Report;
}

/** What differs between two surveys, as tables without the rows that say the same. */
interface Changes {
  answer: Table;
  inputs: Table;
}

/**
 * What changed from one survey to another, in the units of the second.
 * @param before - the earlier survey with its result
 * @param after - the later one
 * @returns the answer side by side, and every input that differs
 */
export function changesOf(before: Case, after: Case): Changes {
  return {
    answer: answers(before, after),
    inputs: changedInputs(before.survey, after.survey, after.report.units),
  };
}

/**
 * What changed from one survey to another as text for a terminal: the parts of the answer that differ, side by side, and
 * every input that differs, in the units of the second.
 * @param before - the earlier survey with its result
 * @param after - the later one
 * @returns lines
 */
export function changesText(before: Case, after: Case): string {
  const { answer, inputs } = changesOf(before, after);
  return [
    answer.rows.length > 0 ? tableText(answer) : SAME_ANSWER,
    '',
    inputs.rows.length > 0 ? tableText(inputs) : SAME_INPUTS,
  ].join('\n');
}

/**
 * Inputs that differ; lists of rows by how many are new or gone.
 * @param before - the earlier survey
 * @param after - the later one
 * @param units - in which lengths are shown
 * @returns a row an input
 */
function changedInputs(before: Survey, after: Survey, units: UnitSystem): Table {
  const rows: string[][] = [];
  for (const file of ['site', 'pond'] as const) {
    const [a, b]: Record<string, unknown>[] = [{ ...before[file] }, { ...after[file] }];
    for (const item of [...new Set([...Object.keys(a), ...Object.keys(b)])].sort()) {
      const [was = '', is = ''] = factTexts(file, item, [a[item], b[item]], units).map(visible);
      if (was !== is) rows.push([`${file}.csv ${item}`, was, is]);
    }
  }
  const lists = {
    'pits.csv': [before.layers, after.layers],
    'water.csv': [before.looks, after.looks],
    'soakage.csv': [before.soakage, after.soakage],
    'heads.csv': [before.heads, after.heads],
    'levels.csv': [before.levels, after.levels],
    'weather.csv': [before.weather, after.weather],
    'climate.csv': [before.climate, after.climate],
    'prices.csv': [before.prices, after.prices],
  };
  for (const [file, [a, b]] of Object.entries(lists)) {
    const [was, is] = [plainRows(a!), plainRows(b!)];
    const gone = [...was].filter((row) => !is.has(row)).length;
    const added = [...is].filter((row) => !was.has(row)).length;
    if (gone + added > 0) rows.push([file, rowsGone(a!.length, gone), rowsAdded(b!.length, added)]);
  }
  return {
    name: CHANGED_INPUTS,
    columns: ['input', 'before', 'after'].map((label) => ({ key: label, label })),
    rows,
  };
}

/** Rows without the place they stood at. */
function plainRows(rows: readonly object[]): Set<string> {
  return new Set(rows.map((row) => JSON.stringify({ ...row, origin: undefined })));
}

function answers({ report: a }: Case, { report: b }: Case): Table {
  const { units } = b;
  const both = (what: string, say: (report: Report) => string) => [what, say(a), say(b)];
  const size = (value: number) => formatQuantity(value, 'length', units);
  const possible = b.result.options.filter(
    ({ option, possible }) =>
      possible || a.result.options.some((each) => each.option === option && each.possible),
  );
  // Two surveys of one garden may have one name.
  const [was, is] = [visible(a.result.survey.name), visible(b.result.survey.name)];
  const names = was === is ? ['before', 'after'] : [was, is];
  return {
    name: CHANGED_ANSWER,
    columns: ['what', ...names].map((label, at) => ({ key: `c${at}`, label })),
    rows: [
      both('decision', ({ result }) =>
        [result.recommendation.option, ...result.recommendation.also]
          .map((name) => ADVICE_NAMES[name])
          .join(', with '),
      ),
      both('depth', ({ result }) => size(result.recommendation.depth_m)),
      both('what fails first', ({ result }) => GOVERNS_WORDS[result.recommendation.governs]),
      both('water at its yearly high, middle', ({ result }) => size(result.water.seasonal_high_depth_m.p50)),
      ...possible.flatMap(({ option }) => {
        const of = ({ result }: Report) => result.options.find((each) => each.option === option)!;
        return [
          both(`${ADVICE_NAMES[option]}: chance`, (report) => {
            const { risk_at_wish } = of(report);
            return risk_at_wish ? yearlyText(risk_at_wish) : 'not possible';
          }),
          both(`${ADVICE_NAMES[option]}: safe depth`, (report) => {
            const { possible, safe_depth_m, depth_searched_m } = of(report);
            if (!possible) return 'not possible';
            return safe_depth_m === null
              ? `${size(depth_searched_m)} at least`
              : safe_depth_m === 0
                ? 'at no depth'
                : size(safe_depth_m);
          }),
        ];
      }),
    ].filter(([, before, after]) => before !== after),
  };
}
