import type { Section } from './section.js';

/** What passes through the edges of a section, a metre of it. */
export interface SectionFlows {
  /** out of the ground by the name of the contact, m²/s; negative: into it */
  out: Record<string, number>;
  /** rain and other supply, m²/s */
  supplied: number;
  /** what goes in, m²/s */
  through: number;
  /** in less out less stored, over what goes in; nought where hardly more moves than rounding does */
  imbalance: number;
}

/** A flow so many times what rounding makes has no digit left in its balance. */
const NO_DIGIT = 10;

/**
 * Sums the flow through the contacts by name.
 * @param flow - out through each contact, m²/s
 * @param stored - taken into storage, m²/s
 * @param rounding - flow that rounding of the heads can make, m²/s
 */
export function flowsOf(
  section: Section,
  flow: Float64Array,
  stored: number,
  rounding: number,
): SectionFlows {
  const out: Record<string, number> = {};
  const supplied = section.supply?.reduce((a, b) => a + b, 0) ?? 0;
  let into = supplied + Math.max(-stored, 0);
  let left = supplied - stored;
  section.contacts.forEach(({ name }, c) => {
    out[name] = (out[name] ?? 0) + flow[c];
    left -= flow[c];
    into -= Math.min(flow[c], 0);
  });
  return { out, supplied, through: into, imbalance: into <= NO_DIGIT * rounding ? 0 : left / into };
}
