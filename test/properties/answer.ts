/** What a survey is answered, and how two answers differ. */

import type { Report, WorkResult } from '../../lib/contract/index.js';
import { assess } from '../../lib/decision/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { surveyOf } from '../folder.js';
import type { Files } from './sheets.js';

/** Draws of each answer: few, since both answers have the same ones. */
export const SAMPLES = 40;

export interface Answer {
  /** the report without digest, places and texts found, and the survey's own axes */
  report: unknown;
  /** codes of the warnings */
  codes: string[];
}

const byName = (a: { name: string; role: string }, b: { name: string; role: string }) =>
  a.name + a.role < b.name + b.role ? -1 : 1;

/** Work by the name of each item: twelve in a row would be taken for months. */
const byItem = (work: WorkResult | null) =>
  work && {
    ...work,
    unpriced: Object.fromEntries(work.unpriced.map((item) => [item, true])),
    quantities: Object.fromEntries(work.quantities.map(({ item, ...quantity }) => [item, quantity])),
  };

/** A report with every place and text of the survey taken out. */
function bare(report: Report): unknown {
  const { result, points, dips: _dips, pits: _pits, water_year, setting_out, drain, ...rest } = report;
  const { survey: _survey, assumptions, warnings: _warnings, ...answer } = result;
  return {
    ...rest,
    // Places, and with them the way of a pipe, are on the axes of the survey; `settingOut.test.ts` turns them.
    drain: drain && { ...drain, input: { ...drain.input, towards: undefined } },
    setting_out: setting_out && {
      // By number, not in a row.
      pegs: Object.fromEntries(
        setting_out.pegs
          .filter(({ of }) => ['rim', 'crest', 'shelf', 'toe'].includes(of))
          .map(({ number, of, level_m, dug_m }) => [number, { of, level_m, dug_m }]),
      ),
    },
    points: points.map(({ name, role, level_m }) => ({ name, role, level_m })).sort(byName),
    // Of days one in thirteen: every season of every year.
    water_year: water_year.filter((_, row) => water_year.length === 12 || row % 13 === 0),
    // What a row rests on goes with what was assumed.
    answer: {
      ...answer,
      situations: answer.situations.map(({ assumptions: _, ...row }) => row),
      options: answer.options.map(({ work, ...option }) => ({ ...option, work: byItem(work) })),
      build: byItem(answer.build),
    },
    assumed: assumptions.map(({ item }) => item).sort(),
  };
}

export function answerOf(files: Files, samples = SAMPLES): Answer {
  const report = reportOf(assess(siteModel(surveyOf(files), { seed: 1, samples })));
  return { report: bare(report), codes: report.result.warnings.map(({ code }) => code).sort() };
}

/** Below this a number is the rounding of the computer. */
const ROUNDING = 1e-9;
const CHANCE = /per_year|standard_error|risk_in_life|per_dig|chance|total|first_order|worth/;

/**
 * Numbers to a millionth, or a unit in their sixth and last figure; chances to one sample; numbers in a text to a unit
 * of their last figure.
 */
export function differences(one: unknown, other: unknown, path = ''): string[] {
  if (typeof one === 'number' && typeof other === 'number') {
    const last = 10 ** (Math.floor(Math.log10(Math.max(Math.abs(one), 1e-300))) - 5);
    const slack = CHANCE.test(path) ? 1 / SAMPLES : Math.max(1e-6 * Math.abs(one), last * 1.001, ROUNDING);
    return Math.abs(one - other) <= slack || one === other ? [] : [`${path}: ${one}, ${other}`];
  }
  if (typeof one === 'string' && typeof other === 'string')
    return sameText(one, other) ? [] : [`${path}: ${one} | ${other}`];
  if (one === null || other === null || typeof one !== 'object' || typeof other !== 'object')
    return one === other ? [] : [`${path}: ${String(one)}, ${String(other)}`];
  const [a, b] = [one as Record<string, unknown>, other as Record<string, unknown>];
  return [...new Set([...Object.keys(a), ...Object.keys(b)])].flatMap((key) =>
    differences(a[key], b[key], `${path}.${key}`),
  );
}

const NUMBER = /\d+(?:\.\d+)?/g;

/** The same words, and numbers within a unit of their last figure. */
function sameText(one: string, other: string): boolean {
  if (one === other) return true;
  if (one.replace(NUMBER, '#') !== other.replace(NUMBER, '#')) return false;
  const numbers = (text: string) => [...text.matchAll(NUMBER)].map(([number]) => number);
  const theirs = numbers(other);
  return numbers(one).every((number, at) => {
    const figures = number.split('.')[1]?.length ?? 0;
    return Math.abs(Number(number) - Number(theirs[at])) <= 1.001 * 10 ** -figures;
  });
}
