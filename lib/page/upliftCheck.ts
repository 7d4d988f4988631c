/** The one check without chances, for the inspector: EN 1997-1, limit state UPL, by hand in two minutes. */
import { ADVICE_NAMES } from '../figures/words.js';
import type { OptionResult, Report } from '../risk/index.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import { EUROCODE_7, upliftUtilisation } from '../uplift/flotation.js';
import { netHead, waterPressure } from '../uplift/index.js';

const { lifts: LIFTS, holds: HOLDS } = EUROCODE_7.uplift;
/** Standard normal scores of 0.95 and 0.90. */
const SCORE_95 = 1.6449;
const SCORE_90 = 1.2816;

export interface UpliftCheck {
  option: OptionResult['option'];
  /** m above the lowest rim ground */
  pond: number;
  high95: number;
  floor: number;
  /** factored pressures on the floor, Pa */
  lifting: number;
  holding: number;
  /** lifting over holding */
  utilisation: number;
  met: boolean;
}

/**
 * Compares the yearly high exceeded in one year of twenty with the usual lowest pond level, pressures on the floor with
 * partial factors 1.0 on what lifts and 0.9 on what holds.
 * @param report what was computed; the high is carried from its 1 in 10 to 1 in 20 by a normal tail
 * @param option one of its options
 * @param raise rise of rim and floor that goes with the option, m
 * @param depth dug, m
 */
export function upliftCheck(
  { pond }: Report,
  option: OptionResult,
  raise: number,
  depth: number,
): UpliftCheck {
  const { p10, p50 } = option.full.net_head_m;
  const lowest = pond.full_level_m + raise - pond.usual_drawdown_m;
  const high95 = lowest - (p50 - ((p50 - p10) * SCORE_95) / SCORE_90);
  const floor = raise - depth;
  const lifts = waterPressure.compute(Math.max(netHead.compute(high95, floor), 0));
  const holds = waterPressure.compute(Math.max(netHead.compute(lowest, floor), 1e-6));
  const utilisation = upliftUtilisation.compute(LIFTS, lifts, HOLDS, holds);
  return {
    option: option.option,
    pond: lowest,
    high95,
    floor,
    lifting: LIFTS * lifts,
    holding: HOLDS * holds,
    utilisation,
    met: utilisation <= 1,
  };
}

/** The check in one line. */
export function upliftLine(check: UpliftCheck, units: UnitSystem): string {
  const level = (value: number) => formatQuantity(value, 'level', units);
  const pressure = (value: number) => formatQuantity(value, 'pressure', units);
  const levels =
    `${ADVICE_NAMES[check.option]}: yearly high outside, exceeded in 1 year of 20, ${level(check.high95)}; ` +
    `usual lowest pond level ${level(check.pond)}; floor ${level(check.floor)}.`;
  if (check.lifting === 0) return `${levels} The water outside stays below the floor: nothing lifts. Met.`;
  return (
    `${levels} Lifts: ${LIFTS.toFixed(1)} × ${pressure(check.lifting / LIFTS)} = ${pressure(check.lifting)}. ` +
    `Holds: ${HOLDS} × ${pressure(check.holding / HOLDS)} = ${pressure(check.holding)}. ` +
    `Ratio ${check.utilisation.toFixed(2)}, at most 1: ${check.met ? 'met' : 'not met'}.`
  );
}
