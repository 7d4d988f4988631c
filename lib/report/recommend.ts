import type { Recommendation, RuleWithText } from '../contract/index.js';
import { isCloseCall, type Judged, reasonOf, rulesOf } from '../decision/index.js';
import { isAsBuilt } from '../heads/index.js';
import { safeDepth } from '../options/index.js';
import { measurementText, POND_SITE, reasonText, ruleText } from '../text/index.js';
import type { UnitSystem } from '../units/index.js';
import { unitsOf } from './unitsOf.js';

/**
 * The recommendation of an assessment, in words and numbers.
 * @param a - from {@link assess} or {@link judge}
 * @param units - of the words; those of the survey where none are given
 * @returns option, depth and raise in m, reason and rules, as in `result.json`
 */
export function recommend(a: Judged, units: UnitSystem = unitsOf(a)): Recommendation {
  const { site, decision } = a;
  const rules = rulesOf(a).map((rule) => {
    const { code, subject, values, ...bounds } = rule;
    return {
      code,
      subject,
      values,
      text: ruleText(rule, units, site.country.rules),
      ...bounds,
    } as RuleWithText;
  });
  return {
    option: decision.option,
    also: decision.also,
    depth_m: decision.depth,
    raise_m: decision.measures.raise,
    safe_depth_m: safeDepth(a.advised).depth,
    governs: decision.governs,
    reason: reasonText(reasonOf(a), units),
    // What differs by less than is written is not said twice.
    rules: rules.filter(
      (r, i) => rules.findIndex(({ code, text }) => code === r.code && text === r.text) === i,
    ),
    close_call: isCloseCall(site, decision),
    change: decision.change ?? null,
    as_built: isAsBuilt(decision.measures),
    measure_next: a.measureNext.map((next) => ({
      ...next,
      what: measurementText(next.what, units),
      where: next.where ?? POND_SITE,
    })),
  };
}
