import type { Report } from '../contract/index.js';
import { advisedOption, advisedOptions } from '../contract/index.js';
import { formatQuantity, type UnitSystem } from '../units/display.js';
import { WITH_OPTION } from './say.js';
import { lowerFirst } from './sentence.js';
/** What is recommended, after `emptied in March,`. */
export function doneWords(report: Report, units: UnitSystem): string {
  const { recommendation } = report.result;
  const { option, also, depth_m, raise_m, as_built, change } = recommendation;
  const say = (metres: number) => formatQuantity(metres, 'length', units);
  const built = advisedOption(report.result)?.option;
  const [, ...others] = advisedOptions(recommendation);
  const parts = [
    as_built
      ? 'with the old drain kept'
      : built === 'raise-pond'
        ? `with the pond raised ${say(raise_m)}`
        : built && built !== 'no-drain' && lowerFirst(WITH_OPTION[built]),
    raise_m > 0 && built !== 'raise-pond' && `raised ${say(raise_m)}`,
    others.includes('surface-water-only') && lowerFirst(WITH_OPTION['surface-water-only']),
    depth_m !== report.pond.depth_m && `dug ${say(depth_m)} deep`,
    [option, ...also].includes('vent') && 'with a gas vent',
    [option, ...also].includes('relieve-and-keep-full') && 'relieved slowly and kept full',
    change && 'used as advised',
  ];
  return parts.filter(Boolean).join(', ') || 'as recommended';
}
