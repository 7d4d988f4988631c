/** How far the sides of a hole are laid back while somebody works in it, under the law of the country. */

import type { BuildingRules } from '../contract/index.js';
import { LEVEL_RIM, type RulesName } from '../site/index.js';
import { FOOT } from '../units/index.js';
import { ENGINEER_DEPTH, PROTECTION_DEPTH } from '../uplift/index.js';
import { diggingLaw } from './diggingLaw.js';
import type { Say, Wording } from './say.js';

/** Spoil is kept so far from the edge, m: 2 ft (29 CFR 1926.651); elsewhere common practice. */
const SPOIL_AWAY: Record<RulesName, number> = { us: 2 * FOOT, gb: 0.6, ie: 0.6, en: 0.6 };

type WorkingSlope = Pick<BuildingRules, 'working-slope/class'>;

/**
 * The words of the rule.
 * @param rules - of the country
 * @returns the rule by its code and subject
 */
export function workingSlopeRule(rules: RulesName): Wording<WorkingSlope> {
  return {
    'working-slope/class': (values, say) => {
      const { from, atLeast } = say;
      const engineer = rules === 'us' ? 'a registered engineer' : 'an engineer';
      const deep = {
        engineer: `Deeper than ${from(ENGINEER_DEPTH)} ${engineer} has to design it. `,
        protect: '',
        'less-deep':
          'A shallower hole can cave in too: keep out where it may, and work beside no upright side. ',
      }[values.due];
      return (
        `${laidBack(values, rules, say)} ${heightWords(values, say)}${deep}` +
        `Spoil ${atLeast(SPOIL_AWAY[rules])} from the edge; look again after rain; never dig alone. ${diggingLaw(rules).decides}`
      );
    },
  };
}

/** How high the sides are where that is told by no depth, and whether it is due. */
function heightWords(
  { height_m, deep_m, due }: WorkingSlope['working-slope/class'],
  { atLeast }: Say,
): string {
  const uphill = height_m > deep_m + LEVEL_RIM;
  const so = due === 'less-deep' ? '' : ': that is due';
  if (uphill) return `The side uphill is ${atLeast(height_m)} high${so && `${so} there`}. `;
  return so && `This hole is ${atLeast(height_m)} deep${so} here. `;
}

function laidBack(
  { type, slope }: WorkingSlope['working-slope/class'],
  rules: RulesName,
  { from }: Say,
): string {
  const deep = from(PROTECTION_DEPTH);
  return rules === 'us'
    ? `Ground like this counts as type ${type} in the United States rule for employers (29 CFR 1926 Subpart P), which from ${deep} deep has the sides laid back ${slope} to 1 or flatter, or shored.`
    : `Good practice in ground like this: from ${deep} deep lay the sides back ${slope} to 1 or flatter, or shore them.`;
}
