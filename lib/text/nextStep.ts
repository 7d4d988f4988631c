/** What to find out next, in one step. */
import { BEFORE_DIGGING, type Report, type Rule } from '../contract/index.js';
import { monthName } from './monthWords.js';
import { isRimTaken, LEVEL_THE_RIM } from './rimTaken.js';
import { listText } from './sentence.js';
import { mayTurn } from './tippingText.js';

/**
 * What to leave alone as long as there is no answer.
 * @param existing - the pond is there
 */
export const nothingYet = (existing: boolean) => `Buy and ${existing ? 'change' : 'dig'} nothing`;

/** The same where it would be told how to build. */
export const waitToBuild = (existing: boolean) =>
  `${nothingYet(existing)} yet: first what is said under “What to do”.`;

/** The next thing to find out, the one that may change most. */
export function nextStep({ result, pond }: Report): string {
  const { measure_next, option, rules, close_call } = result.recommendation;
  const [next] = measure_next;
  if (option === 'measure-first' && next)
    return `Add what you find to the survey and ask again. ${nothingYet(pond.existing)} before.`;
  if (isRimTaken(result) && !BEFORE_DIGGING.includes(option))
    return `First ${LEVEL_THE_RIM}: on a slope this answer may not hold.`;
  if (next) return `You need not wait for it, but this could change most: ${lookOrder(next)}.`;
  const has = (rule: Rule['code']) => rules.some(({ code }) => code === rule);
  const layer = has('seam-unknown') ? ' To dig deeper, read the layer under the clay first.' : '';
  return BEFORE_DIGGING.includes(option)
    ? `No measurement that was tried would change this.${option === 'measure-first' ? ` ${nothingYet(pond.existing)} before.` : pond.existing ? '' : ' Look for another place.'}`
    : `${has('read-before-digging') ? 'Read the water in the layer under the clay before each day of digging.' : nothingMore(close_call, mayTurn(result.tipping_points))}${layer} Read the dip pipe before you lower the water.`;
}

/** @param near - what is not known well and may turn the answer */
function nothingMore(close: boolean, near: string[]): string {
  if (close) return 'It is a close call, and no measurement that was tried would settle it.';
  return near.length === 0
    ? 'Nothing more to measure.'
    : `No measurement that was tried would pay for itself, but ${listText(near)} could still turn the answer.`;
}

/** A look to be taken, as an order begun small. */
export function lookOrder({
  what,
  where,
  month,
  waits,
}: Report['result']['recommendation']['measure_next'][number]): string {
  if (waits) return `read a standpipe at ${where} every week through the wet half-year`;
  return `${what}, at ${where}${month === null ? '' : `, in ${monthName(month)}`}`;
}
