import type { ClimateRecord } from '../climate/index.js';
import type { Site } from '../site/index.js';
import type { AddRule } from './sideRules.js';

/** What trees and frost do to a pond there, where they come in. Common practice. */
export function placeRules({ survey, record, pond }: Site, add: AddRule): void {
  if (survey.site.shrinkable_clay === 'yes')
    add(
      'trees',
      'Shrinkable clay dries out and sinks beside trees: where one stands nearer than it is tall, or is felled, the rim may settle or rise on that side. Look whether it is level after every dry summer, and ask before a root as thick as a thumb is cut.',
    );
  if (record && freezes(record))
    add(
      'ice',
      `Ice pushes on a stiff rim and lifts what is frozen into it${pond.wall === 'none' ? '' : ', the walls among it'}: float wood or a ball on the water, keep a hole open for gas, and let nobody on the ice.`,
    );
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
