import type { RuleBounds, RuleKey, RuleValues } from '../contract/index.js';

/** Takes a rule of use: its code and subject, what it speaks of, and months or a level where it has some. */
export type AddRule = <Key extends RuleKey>(key: Key, values: RuleValues[Key], bounds?: RuleBounds) => void;
