import { isoDate } from '../climate/index.js';
import { method } from '../formula/index.js';
import { quantileSorted } from '../sampling/index.js';
import type { Survey, Warning } from '../survey/index.js';
import type { PitDip } from './dips.js';
import type { Ground } from './ground.js';
import type { Places } from './places.js';
import type { WaterEnsemble } from './water.js';

export const highEvidenceMethod = method({
  title: 'The seasonal high against what the ground and people say',
  what:
    'Compares the yearly highest water, as simulated, with the depth of mottles and grey, with the highest mark that ' +
    'someone remembers, and with the highest level read.',
  assumptions: [
    'colours tell the high of an ordinary year: they disagree where the middle year lies outside 1.64 standard deviations',
    'a remembered mark is the highest of many years: it disagrees where one year in twenty is not as high, or where ' +
      'the middle year is higher, by more than 0.1 m (our choice)',
    'a level read is too high for what is simulated where not one year in twenty comes to 0.1 m below it (our choice)',
  ],
  source: 'soil survey practice for the colours; common practice',
});

/** What speaks of the highest water besides the model. Depths m below the lowest ground at the rim. */
export interface HighEvidence {
  source: 'mottles and grey' | 'highest mark remembered';
  depth: number;
  /** one standard deviation, m; 0 for a mark */
  spread: number;
  /** what is said against what is simulated */
  says: 'agrees' | 'higher' | 'lower';
}

const TOLERANCE = 0.1;

/** Evidence of the highest water, and a warning for each piece that disagrees, and for a level read that none comes to. */
export function highEvidenceOf(
  survey: Survey,
  places: Places,
  dips: readonly PitDip[],
  colour: Ground['colour'],
  { samples, years, clayLow }: WaterEnsemble,
): { evidence: HighEvidence[]; warnings: Warning[] } {
  const highs = Float64Array.from({ length: samples * years }, (_, i) => {
    let depth = Number.POSITIVE_INFINITY;
    for (let m = 0; m < 12; m++) depth = Math.min(depth, -clayLow.month[i * 12 + m]);
    return depth;
  }).sort();
  const [nearest, middle, deep] = [0.05, 0.5, 0.9].map((p) => quantileSorted(highs, p));
  const evidence: HighEvidence[] = [];
  if (colour) {
    const spread = Math.sqrt(colour.spread ** 2 + ((deep - middle) / 1.2816) ** 2);
    const off = (middle - colour.depth) / spread;
    const says = Math.abs(off) <= 1.645 ? 'agrees' : off > 0 ? 'higher' : 'lower';
    evidence.push({ source: 'mottles and grey', depth: colour.depth, spread: colour.spread, says });
  }
  const mark = survey.site.highest_water_mark;
  if (mark !== undefined) {
    const depth = places.datum - mark;
    const says = depth < nearest - TOLERANCE ? 'higher' : depth > middle + TOLERANCE ? 'lower' : 'agrees';
    evidence.push({ source: 'highest mark remembered', depth, spread: 0, says });
  }
  const warnings = evidence
    .filter(({ says }) => says !== 'agrees')
    .map(({ source, depth, says }): Warning => {
      const place =
        source === 'mottles and grey'
          ? { file: 'pits.csv' }
          : (survey.origins.site.highest_water_mark ?? { file: 'site.csv' });
      return {
        code: 'seasonal-high-disagrees',
        message:
          `${source}: water at ${depth.toFixed(2)} m below the rim's ground, ${says} than the ` +
          `${middle.toFixed(2)} m simulated for an ordinary year's high; ${says === 'higher' ? 'look for water that the model does not know, and plan for the higher' : 'dips through a wet season tell which is right'}`,
        ...place,
      };
    });
  return { evidence, warnings: [...warnings, ...readHigher(dips, nearest)] };
}

/** @param nearest - high of one year in twenty, m below the lowest ground at the rim */
function readHigher(dips: readonly PitDip[], nearest: number): Warning[] {
  const levels = dips.filter(({ says }) => says === 'level');
  if (levels.length === 0) return [];
  const { pit, day, depth } = levels.reduce((a, b) => (b.depth < a.depth ? b : a));
  if (depth >= nearest - TOLERANCE) return [];
  return [
    {
      code: 'read-above-high',
      message:
        `${pit} on ${isoDate(day)}: water at ${depth.toFixed(2)} m below the rim's ground, and not one simulated year in ` +
        `twenty comes nearer than ${nearest.toFixed(2)} m: plan for what was read, and look again in the same season`,
      file: 'water.csv',
    },
  ];
}
