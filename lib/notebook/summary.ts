import type { Result } from '../risk/index.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';

/** A recommendation's code in words: `drain-to-outlet` is `drain to outlet`. */
const words = (code: string) => code.replaceAll('-', ' ');

/**
 * The recommendation as lines for a terminal: what to do, why, the rules of use, what to measure next.
 * @param system units the reader is used to
 */
export function summary({ recommendation }: Result, system: UnitSystem): string {
  const { option, also, depth_m, raise_m, reason, rules, close_call, measure_next } = recommendation;
  const length = (metres: number) => formatQuantity(metres, 'length', system);
  const what = [option, ...also].map(words).join(', with ');
  const raised = raise_m > 0 ? `, rim and floor raised ${length(raise_m)}` : '';
  return [
    `Recommendation: ${what}; ${length(depth_m)} deep${raised}`,
    reason.trim(),
    ...(close_call ? ['It is a close call: the figures could as well fall out the other way.'] : []),
    ...(rules.length > 0 ? ['Rules of use:'] : []),
    ...rules.map(({ text }) => `- ${text}`),
    ...(measure_next.length > 0 ? ['What would make it surer:'] : []),
    ...measure_next.map(({ what, where }) => `- ${what} (${where})`),
  ].join('\n');
}
