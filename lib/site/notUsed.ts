import type { Survey, Warning } from '../survey/index.js';

/** A warning for everything the survey says that the answer cannot use. */
export function notUsed({ site, levels, origins }: Survey): Warning[] {
  if (site.outlet_setback === undefined || levels.some((p) => p.role === 'boundary')) return [];
  return [
    {
      code: 'not-used',
      message: 'outlet_setback is not used: levels.csv has no boundary points to measure it from',
      ...(origins.site.outlet_setback ?? { file: 'site.csv' }),
    },
  ];
}
