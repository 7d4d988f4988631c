import { LEAST_CHANCE } from '../contract/chances.js';
import type { OptionName } from '../contract/optionNames.js';
import type { Report } from '../contract/report.js';
import type { DepthCurve } from '../contract/result.js';
import { ADVICE_NAMES } from '../text/terms.js';
import { type LineStyle, OPTION_STYLE } from './palette.js';

/** Chance at which the axis ends. */
export const LEAST = LEAST_CHANCE;
/** Lower edge of the strip below it, log10: there the lines lie one above the other only to be seen. */
export const BOTTOM = -3.45;

/** A line as drawn: one option, or several whose chances are the same at every depth. */
export interface DrawnLine extends DepthCurve, LineStyle {
  options: OptionName[];
  names: string[];
  /** log10 of the chance a year, inside the axis */
  log: number[];
}

/** The possible options as lines; those that cannot be told apart are one. */
export function drawnLines({ curves, result }: Report): DrawnLine[] {
  const possible = curves.filter((curve) => curve.possible && curve.depth_m.length > 0);
  const groups: DepthCurve[][] = [];
  for (const curve of possible) {
    const twin = groups.find(([first]) => same(first!, curve) && safeDepth(first!) === safeDepth(curve));
    if (twin) twin.push(curve);
    else groups.push([curve]);
  }
  function safeDepth({ option }: DepthCurve) {
    return result.options.find((each) => each.option === option)?.safe_depth_m;
  }
  const step = (-3 - BOTTOM) / (groups.length + 1);
  return groups.map((group, at) => {
    const curve = group[0]!;
    const low = -3 - step * (at + 1);
    return {
      ...curve,
      ...OPTION_STYLE[curve.option],
      options: group.map(({ option }) => option),
      names: group.map(({ option }) => ADVICE_NAMES[option]),
      log: curve.per_year.map((chance) => (chance < LEAST ? low : Math.log10(chance))),
    };
  });
}

function same(a: DepthCurve, b: DepthCurve): boolean {
  return (
    a.depth_m.length === b.depth_m.length &&
    a.depth_m.every(
      (depth, at) =>
        depth === b.depth_m[at] &&
        a.governs[at] === b.governs[at] &&
        Math.abs(Math.log(Math.max(a.per_year[at]!, LEAST) / Math.max(b.per_year[at]!, LEAST))) < 0.02,
    )
  );
}
