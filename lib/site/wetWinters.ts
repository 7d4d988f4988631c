import type { ClimateRecord } from '../climate/index.js';
import { method } from '../formula/index.js';

export const wetWinterScaling = method({
  title: 'Wet winters of a short record',
  what:
    'A record of fewer than ten years is counted three times: as it was, and with the water of its wet season more ' +
    'and less by what the mean of so few winters may be off.',
  assumptions: [
    'the rain of a wet season varies from year to year by 25 % (one standard deviation; our choice)',
    'three equally likely points stand for the normal distribution of the mean: 0 and ±1.22 standard deviations',
  ],
  source: 'standard error of a mean; three points of equal weight with the same variance',
});

/** Whole years of weather that hold their share of wet winters. Our choice. */
const LONG_RECORD = 10;
/** Year-to-year variation of the wet season's rain, one standard deviation as a share. Our choice. */
const WINTER_VARIATION = 0.25;

/** By how much the wet season of a record is scaled up and down, as a share; 0 for a long record. */
export function wetWinterShare(years: number): number {
  return years >= LONG_RECORD ? 0 : Math.sqrt(1.5) * (WINTER_VARIATION / Math.sqrt(years));
}

/**
 * A record with its wet and its dry twin where it is short, else itself alone; the record as it was comes first.
 * @param wetMonths - 1–12
 */
export function wetWinters(record: ClimateRecord, wetMonths: readonly number[]): ClimateRecord[] {
  const share = wetWinterShare(record.years);
  if (share === 0) return [record];
  const scaled = (factor: number): ClimateRecord => {
    const rain = record.rain.map((fell, d) => (wetMonths.includes(record.month[d]) ? factor * fell : fell));
    return { ...record, rain };
  };
  return [record, scaled(1 + share), scaled(1 - share)];
}
