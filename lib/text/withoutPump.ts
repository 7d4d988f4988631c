/** What spares the pump. */
import { advisedOption, type OptionName, type Result } from '../contract/index.js';
import { formatBound, type UnitSystem } from '../units/index.js';
import { WITH_OPTION } from './say.js';
import { lowerFirst } from './sentence.js';

/** Share of the depth that is worth having without a pump. Our choice. */
const NEARLY = 0.75;
/** Built once, with nothing that has to run. */
const STILL: readonly OptionName[] = ['no-drain', 'surface-water-only', 'cutoff-drain', 'drain-to-outlet'];

/**
 * The less depth that needs no pump, where one is advised and little is lost by it.
 * @param result - with the options at their own depths
 * @param units - how numbers are written
 * @returns a sentence; empty where there is none
 */
export function withoutPump(
  { recommendation, options }: Pick<Result, 'recommendation' | 'options'>,
  units: UnitSystem,
): string {
  const { depth_m, change } = recommendation;
  if (advisedOption({ recommendation, options })?.option !== 'drain-to-sump' || change) return '';
  const still = options.flatMap((each) =>
    STILL.includes(each.option) && each.possible && (each.safe_depth_m ?? depth_m) >= NEARLY * depth_m
      ? [{ option: each.option, depth: each.safe_depth_m ?? depth_m }]
      : [],
  );
  const [best] = still.sort((a, b) => b.depth - a.depth);
  return best
    ? `Only ${formatBound(best.depth, 'length', units, 'down')} deep it needs no pump, ${lowerFirst(WITH_OPTION[best.option])}.`
    : '';
}
