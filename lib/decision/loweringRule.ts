import type { Rule, SiteDrain } from '../contract/index.js';
import { LOWERS_BESIDE_HOUSE } from './rules.js';

/** The rules, with an engineer to ask where the drain lowers the water in clay that may shrink under a house. */
export function withLowering(rules: Rule[], drain: SiteDrain | null): Rule[] {
  const house = drain?.lowering.find((place) => place.caution && place.name !== 'boundary');
  if (!house || rules.some(({ text }) => text === LOWERS_BESIDE_HOUSE)) return rules;
  return [
    ...rules,
    {
      code: 'ask-engineer',
      text: `The drain lowers the water in the clay under ${house.name}, and the clay may shrink: ask a licensed engineer first.`,
    },
  ];
}
