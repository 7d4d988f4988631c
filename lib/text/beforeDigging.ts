import { BEFORE_DIGGING, type Report } from '../contract/index.js';

/**
 * What must be known before a figure is read as leave to dig.
 * @param report what was computed
 * @returns a sentence; null where digging is advised
 */
export function beforeDiggingWords({ result, pond }: Report): string | null {
  const { option } = result.recommendation;
  if (!BEFORE_DIGGING.includes(option)) return null;
  if (option === 'measure-first') return 'Not yet: measure first. What is shown may change.';
  if (option === 'move')
    return pond.existing
      ? 'It does not hold: ask a licensed engineer first.'
      : 'Not here: another spot is advised. What is shown is of this one.';
  return pond.existing
    ? 'Change nothing before the regulator agrees. What is shown is of the water alone.'
    : 'Do not dig here, whatever the water allows.';
}
