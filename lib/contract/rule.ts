import type { RuleValues } from './ruleValues.js';

/** Code and subject of a rule: `empty-only-in/free`. */
export type RuleKey = keyof RuleValues;

/** What holds for a rule beside what it speaks of. */
export interface RuleBounds {
  /** months it holds in; absent: always */
  months?: number[];
  level_m?: number;
}

/** A rule of use that the recommendation depends on, as it is decided; the values SI. */
export type Rule = {
  [Key in RuleKey]: Key extends `${infer Code}/${infer Subject}`
    ? { code: Code; subject: Subject; values: RuleValues[Key] } & RuleBounds
    : never;
}[RuleKey];

/** A rule as `result.json` has it. */
export type RuleWithText = Rule & { text: string };

/**
 * A rule by its code and subject.
 * @param key - `code/subject`
 * @param values - what it speaks of, SI
 * @param bounds - months and level it holds for
 * @returns the rule
 */
export function ruleOf<Key extends RuleKey>(
  key: Key,
  values: RuleValues[Key],
  bounds: RuleBounds = {},
): Rule {
  const [code, subject] = key.split('/');
  return { code, subject, values, ...bounds } as Rule;
}
