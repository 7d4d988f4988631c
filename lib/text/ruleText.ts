import type { Rule, RuleKey, RuleValues } from '../contract/index.js';
import type { RulesName } from '../site/index.js';
import type { UnitSystem } from '../units/index.js';
import { ASKING_RULES } from './askingRules.js';
import { BUILDING_RULES } from './buildingRules.js';
import { DRAIN_RULES } from './drainRules.js';
import { type Say, sayer, type Wording } from './say.js';
import { USING_RULES } from './usingRules.js';
import { workingSlopeRule } from './workingSlopeRule.js';

const wordsUnder = (rules: RulesName): Wording<RuleValues> => ({
  ...USING_RULES,
  ...DRAIN_RULES,
  ...BUILDING_RULES,
  ...workingSlopeRule(rules),
  ...ASKING_RULES,
});
const RULES: Readonly<Record<RulesName, Wording<RuleValues>>> = {
  us: wordsUnder('us'),
  gb: wordsUnder('gb'),
  ie: wordsUnder('ie'),
  en: wordsUnder('en'),
};

/**
 * A rule of use in words.
 * @param rule - its code and subject with its values
 * @param units - of the reader
 * @param country - by whose law somebody digs; the one that goes with the units unless said
 * @returns a sentence or two
 */
export function ruleText(
  { code, subject, values }: Rule,
  units: UnitSystem,
  country: RulesName = units === 'us' ? 'us' : 'en',
): string {
  const words = RULES[country][`${code}/${subject}` as RuleKey] as (values: unknown, say: Say) => string;
  return words(values, sayer(units));
}
