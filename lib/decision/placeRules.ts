import type { ClimateRecord } from '../climate/index.js';
import type { Site } from '../site/index.js';
import type { AddRule } from './addRule.js';

/** What trees and frost do to a pond there, where they come in. Common practice. */
export function placeRules({ survey, record, pond }: Site, add: AddRule): void {
  if (survey.site.shrinkable_clay === 'yes') add('trees/clay', {});
  if (record && freezes(record)) add('ice/rim', { walled: pond.wall !== 'none' });
}

/** Whether the mean of some month lies below freezing, so that ice lasts. */
function freezes({ tmean, month, noTemperature }: ClimateRecord): boolean {
  if (noTemperature) return false;
  const [sum, days] = [new Float64Array(12), new Float64Array(12)];
  tmean.forEach((degrees, i) => {
    sum[month[i] - 1] += degrees;
    days[month[i] - 1]++;
  });
  return sum.some((total, i) => days[i] > 0 && total / days[i] < 0);
}
