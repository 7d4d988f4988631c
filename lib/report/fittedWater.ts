import type { FittedParameter } from '../contract/index.js';
import { MODEL_ERROR, openParameters } from '../groundwater/index.js';
import { percentiles } from '../sampling/index.js';
import type { Site } from '../site/index.js';
import { logPercentiles } from '../soil/index.js';

/** What was fitted of the daily store of the water; none where none was run. */
export function fittedWater({ fit }: Pick<Site, 'fit'>): FittedParameter[] {
  if (!fit) return [];
  const { priors, sets, modelError } = fit;
  return [
    ...openParameters(priors).map((name) => ({
      name,
      before: logPercentiles(priors[name]),
      after: percentiles(Float64Array.from(sets, (set) => set[name])),
    })),
    { name: 'missed', before: logPercentiles(MODEL_ERROR), after: percentiles(modelError.slice()) },
  ];
}
