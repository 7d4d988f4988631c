import type { DepthCurve, Report } from '../contract/index.js';
import type { Table } from '../figures/table.js';
import { chanceText } from '../text/say.js';
import { ADVICE_NAMES } from '../text/terms.js';
import { formatBound, type UnitSystem } from '../units/index.js';

/** Accepted chances a year shown beside the survey's own. */
const BESIDE = [0.01, 0.05];

/** Safe depth of each possible option at other accepted chances, to the computed depth. */
export function acceptedRisksTable({ curves, accepted_risk }: Report, units: UnitSystem): Table {
  const accepted = [...new Set([...BESIDE, accepted_risk])].sort((a, b) => a - b);
  return {
    name: 'Safe depth, were another chance accepted',
    columns: [
      { key: 'option', label: 'option' },
      ...accepted.map((chance) => ({ key: `at_${chance}`, label: `${chanceText(chance)} a year` })),
    ],
    rows: curves
      .filter(({ possible }) => possible)
      .map((curve) => [
        ADVICE_NAMES[curve.option],
        ...accepted.map((chance) => {
          const depth = deepestSafe(curve, chance, accepted_risk);
          if (depth === undefined) return 'at no depth';
          const words = formatBound(depth, 'length', units, 'down');
          return depth === curve.depth_m.at(-1) ? `${words} at least` : words;
        }),
      ]),
  };
}

/**
 * Deepest of the computed depths down to which all are safe at a chance. Where a depth is unsafe though its chances are
 * accepted, a condition fails there (fall, footing, place for the water), at any chance.
 */
export function deepestSafe(curve: DepthCurve, chance: number, accepted_risk: number): number | undefined {
  const within = (at: number, limit: number) => curve.per_year[at]! <= limit && curve.per_dig[at]! <= limit;
  const safe = (at: number) => within(at, chance) && (curve.safe[at]! || !within(at, accepted_risk));
  const first = curve.depth_m.findIndex((_, at) => !safe(at));
  return first === -1 ? curve.depth_m.at(-1) : curve.depth_m[first - 1];
}
