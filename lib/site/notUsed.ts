import type { SiteFacts, Survey, Warning } from '../survey/index.js';

/** A warning for everything the survey says that the answer cannot use. */
export function notUsed({ site, levels, origins }: Survey): Warning[] {
  const idle = (item: keyof SiteFacts, why: string): Warning[] =>
    site[item] === undefined
      ? []
      : [
          {
            code: 'not-used',
            message: `${item} is not used: ${why}`,
            ...(origins.site[item] ?? { file: 'site.csv' }),
          },
        ];
  const has = (role: string) => levels.some((p) => p.role === role);
  return [
    ...(has('boundary')
      ? []
      : idle('outlet_setback', 'levels.csv has no boundary points to measure it from')),
    ...(has('outlet') ? [] : idle('outlet_within_boundary', 'levels.csv has no outlet')),
  ];
}
