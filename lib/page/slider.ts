/** The depth slider: every verdict at every computed depth is put in words here, and only shown in the browser. */
import { visible } from '../figures/visible.js';
import { ADVICE_NAMES, chanceText, GOVERNS_WORDS } from '../figures/words.js';
import type { DepthCurve, Report } from '../risk/index.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';

export interface SliderRow {
  per_year: string;
  per_dig: string;
  fails: string;
  safe: boolean;
}

export interface Slider {
  depths: string[];
  /** where it stands first: the recommended depth, or the wish */
  start: number;
  options: { name: string; rows: SliderRow[] }[];
}

/** Verdict of each possible option at each computed depth. */
export function sliderOf({ curves, pond, result }: Report, units: UnitSystem): Slider {
  const possible = curves.filter((curve) => curve.possible && curve.depth_m.length > 0);
  const depths = [...new Set(possible.flatMap((curve) => curve.depth_m))].sort((a, b) => a - b);
  const wanted = result.recommendation.depth_m > 0 ? result.recommendation.depth_m : pond.depth_m;
  return {
    depths: depths.map((depth) => formatQuantity(depth, 'length', units)),
    start: Math.max(0, nearest(depths, wanted)),
    options: possible.map((curve) => ({
      name: visible(ADVICE_NAMES[curve.option]),
      rows: depths.map((depth) => rowAt(curve, nearest(curve.depth_m, depth))),
    })),
  };
}

function rowAt(curve: DepthCurve, at: number): SliderRow {
  return {
    per_year: chanceText(curve.per_year[at]!),
    per_dig: chanceText(curve.per_dig[at]!),
    fails: GOVERNS_WORDS[curve.governs[at]!],
    safe: curve.safe[at]!,
  };
}

function nearest(sorted: number[], value: number): number {
  return sorted.reduce(
    (best, each, at) => (Math.abs(each - value) < Math.abs(sorted[best]! - value) ? at : best),
    0,
  );
}
