import type { EnvelopeVerdict, GradingFault } from '../drain/index.js';

/** What speaks against a grading as a filter. */
export const GRADING_FAULTS: Record<GradingFault, string> = {
  fines: 'more than 5 % fines: it will not drain; ask for it washed',
  'many-sizes': 'grains of too many sizes: coarse and fine part while it is tipped',
  stones: 'stones above 75 mm',
};

/**
 * How a bed keeps the soil out, as a merchant would be told.
 * @param verdict - of the bed on the soil
 * @returns a sentence, begun small
 */
export function bedWords({ bed, retention, doubtful, ground, coarseness }: EnvelopeVerdict): string {
  if (coarseness === null)
    return (
      `${bed}: a non-woven drainage fabric keeps this ${ground} out, torn or badly lapped it does not` +
      `${doubtful ? '; on a clay this fine it may clog in time, so sand is better where it serves' : ''}.`
    );
  if (retention >= 1) return `${bed}: keeps this ${ground} out.`;
  return coarseness > 1
    ? `${bed} straight on this ${ground} will silt up: its grains are ${Number(coarseness.toPrecision(2))} times as coarse as this ${ground} allows. Put sand or a drainage fabric between.`
    : `${bed}: the sand comes through the stone; put a fabric between them.`;
}
