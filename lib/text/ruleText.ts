import type { Rule, RuleKey, RuleValues } from '../contract/index.js';
import type { UnitSystem } from '../units/index.js';
import { ASKING_RULES } from './askingRules.js';
import { BUILDING_RULES } from './buildingRules.js';
import { DRAIN_RULES } from './drainRules.js';
import { type Say, sayer, type Wording } from './say.js';
import { USING_RULES } from './usingRules.js';

const RULES: Wording<RuleValues> = { ...USING_RULES, ...DRAIN_RULES, ...BUILDING_RULES, ...ASKING_RULES };

/**
 * A rule of use in words.
 * @param rule - its code and subject with its values
 * @param units - of the reader
 * @returns a sentence or two
 */
export function ruleText({ code, subject, values }: Rule, units: UnitSystem): string {
  const words = RULES[`${code}/${subject}` as RuleKey] as (values: unknown, say: Say) => string;
  return words(values, sayer(units));
}
