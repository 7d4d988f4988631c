import { type Rule, ruleOf, type SiteDrain } from '../contract/index.js';

/** The rules, with an engineer to ask where the drain lowers the water in clay that may shrink under a house. */
export function withLowering(rules: Rule[], drain: SiteDrain | null): Rule[] {
  const house = drain?.lowering.find((place) => place.caution && place.name !== 'boundary');
  if (!house || rules.some(({ subject }) => subject === 'lowered-house')) return rules;
  return [
    ...rules,
    ruleOf('ask-engineer/lowered-place', { place: house.name, lowered_m: house.lowered.likely }),
  ];
}
