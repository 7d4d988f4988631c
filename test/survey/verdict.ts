/** What a run on a folder of files must end in: a result in which every number is possible, or a refusal with places. */

import type { Result } from '../../lib/contract/index.js';
import { assess } from '../../lib/decision/index.js';
import { resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { parseSurvey, SURVEY_FILES, SurveyError } from '../../lib/survey/index.js';

export type Verdict = { kind: 'result'; result: Result } | { kind: 'refused'; codes: string[] };

/** Runs it all with few samples. @throws whatever is neither a result nor a refusal, and a result out of range */
export function verdictOn(files: Record<string, string | Uint8Array>, samples = 8): Verdict {
  const survey = orRefusal(() => parseSurvey(files, { name: 'fuzzed' }));
  if ('kind' in survey) return survey;
  const site = orRefusal(() => siteModel(survey, { samples }));
  if ('kind' in site) return site;
  const result = resultOf(assess(site));
  checkResult(result);
  return { kind: 'result', result };
}

/** What reading, or making a site, ends in. @throws whatever is neither that nor a refusal with places and remedies */
export function orRefusal<T>(made: () => T): T | (Verdict & { kind: 'refused' }) {
  try {
    return made();
  } catch (error) {
    if (!(error instanceof SurveyError)) throw error;
    return refusal(error);
  }
}

/** @throws Error where a number is impossible or a place is missing */
export function checkResult(result: Result): void {
  checkNumbers(result);
  // What cannot be built has no figures, and never those of another.
  for (const { option, possible, why_not, ...figures } of result.options)
    for (const name of FIGURES)
      if ((figures[name] === null) === possible) throw new Error(`${option}: ${name}, possible: ${possible}`);
  for (const warning of result.warnings) checkPlace(warning.file, warning.message);
}

function refusal({ problems, warnings }: SurveyError): Verdict & { kind: 'refused' } {
  if (problems.length === 0) throw new Error('refused without a problem');
  for (const { file, message, remedy, line } of problems) {
    checkPlace(file, message);
    if (!/^(invalid|unknown|missing|outside) /.test(message))
      throw new Error(`problem in other words: ${message}`);
    if (!/[.?]$/.test(remedy)) throw new Error(`no remedy: ${message}`);
    if (line !== undefined && !(line >= 1)) throw new Error(`no line ${line}: ${message}`);
  }
  for (const { file, message } of warnings) checkPlace(file, message);
  return { kind: 'refused', codes: problems.map(({ code }) => code) };
}

function checkPlace(file: string, message: string): void {
  if (file === '' || message === '') throw new Error(`names no place: ${file}: ${message}`);
  if (file.endsWith('.csv') && !(SURVEY_FILES as readonly string[]).includes(file) && !message.includes(file))
    throw new Error(`names an unknown place: ${file}`);
}

const FIGURES = [
  'risk_at_wish',
  'risk_in_life',
  'per_dig',
  'full',
  'work',
  'lowest_safe_level_m',
  'lowest_safe_level_water',
  'hours_empty_safe',
] as const;

/** Ranges of the contract; what is not named need only be finite. */
const RANGES: [RegExp, number, number][] = [
  [/(per_year|risk_in_life|heave|slump|wet_floor|dry_floor_chance|chance_to_change)$/, 0, 1],
  // A share of a part is estimated from the sample itself and may lie below none by its error.
  [/drivers\.\d+\.(first_order|total)$/, -1, 1],
  // What lies between 0 and 1 cannot scatter wider than by half of it.
  [/standard_error$/, 0, 0.5],
  [/(month|months\.\d+)$/, 1, 12],
  [/safe_depth_m$|depth_searched_m$|recommendation\.depth_m$|raise_m$/, 0, 10],
  [/ksat_m_s\.p\d\d$/, 0, 10],
  [/(table|seasonal_high)_depth_m\.p\d\d$/, -25, 60],
  [/(tub_level_m|net_head_m)\.p\d\d$/, -60, 60],
  [/hours_empty_safe\.\d+$/, 0, 1e9],
  [/inflow_m3_s|pipe_capacity|pipe_diameter|quantities\.\d+\.amount/, 0, 1e12],
  [/line$/, 1, 1e7],
];

function checkNumbers(value: unknown, path = 'result'): void {
  if (typeof value === 'number') {
    // Chances per dig keep their factors beside them.
    if (path.includes('.factor.')) return;
    const [, low, high] = RANGES.find(([form]) => form.test(path)) ?? [undefined, -1e12, 1e12];
    if (!(value >= low && value <= high)) throw new Error(`${path} is ${value}, outside ${low} to ${high}`);
  } else if (value !== null && typeof value === 'object') {
    const { p10, p50, p90 } = value as { p10?: number; p50?: number; p90?: number };
    if (p10 !== undefined && !(p10 <= (p50 ?? p10) && (p50 ?? p10) <= (p90 ?? p10)))
      throw new Error(`${path} is not in order: ${p10}, ${p50}, ${p90}`);
    for (const [key, one] of Object.entries(value)) checkNumbers(one, `${path}.${key}`);
  }
}
