/** An answer that holds only once an engineer has agreed. */
import type { Recommendation } from '../contract/index.js';
import { SHRINKING } from '../drain/index.js';

/** What an engineer is asked about before anything is dug, by the subject of the rule. */
const ABOUT: Readonly<Record<string, string>> = {
  'lowered-house': 'the drain lowers the water under a house',
  'lowered-place': 'the drain lowers the water under a building',
  pressure: 'water under pressure lies below the clay',
  footing: 'it is dug beside a footing',
};

/** The condition, as the end of a sentence; empty where there is none. */
export function engineerFirst({ rules }: Pick<Recommendation, 'rules'>): string {
  const about = rules.flatMap((rule) => {
    if (rule.code !== 'ask-engineer' || ABOUT[rule.subject] === undefined) return [];
    // At the permeable end only it stays with the rules.
    const likely = rule.subject !== 'lowered-place' || rule.values.lowered_m > SHRINKING;
    return likely ? [ABOUT[rule.subject]] : [];
  });
  return about.length === 0
    ? ''
    : `only once a licensed engineer has agreed: ${[...new Set(about)].join(', and ')}`;
}
