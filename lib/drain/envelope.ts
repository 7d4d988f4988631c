import { formula } from '../formula/index.js';

const size = (meaning: string) => ({ meaning, unit: 'm', min: 1e-7, max: 0.2 });

/** Ratio of two grain sizes that a filter rule limits. */
export const filterRatio = formula({
  title: 'Filter ratio',
  symbol: 'ratio',
  unit: '-',
  expression: 'f/b',
  parameters: { f: size('grain size of the filter'), b: size('grain size of the soil held back') },
  compute: (f: number, b: number) => f / b,
  validity: 'retention: D15 of the filter over D85 of the soil at most 5 (granular rule), 9 on fine clay (NRCS)',
  source: 'FHWA HDS-6; NRCS NEH 633 chapter 26',
});

/** D85 of a clay's fine earth, m (0.06 mm): example soil of NEH 633 chapter 26; common practice for heavy clay. */
export const CLAY_D85 = 6e-5;
/** D15 of what a merchant sells, m. Concrete sand 0.11–0.54 mm suits clay (NEH 633-26); stone from common practice. */
export const ENVELOPES = { 'concrete sand': 3.5e-4, 'pea gravel': 5e-3, '20 mm stone': 1e-2 } as const;
/** Largest D15/D85 on clay. */
export const RETENTION_LIMIT_CLAY = 9;
