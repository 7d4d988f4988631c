import { type Advice, isOption, type OptionName } from './optionNames.js';
import type { Report } from './report.js';
import { type PossibleOption, possibleOption, type Result } from './result.js';

/**
 * The option that is recommended, where it is one that was computed; of several at once the one that names it.
 * @param result - as in `result.json`
 * @returns the option, at the depth wished; or nothing
 */
export function advisedOption(
  result: Pick<Result, 'options' | 'recommendation'>,
): PossibleOption | undefined {
  const [name] = advisedOptions(result.recommendation);
  return name && possibleOption(result, name);
}

/**
 * Every option that is built at once, first the one that gives the recommendation its name.
 * @param recommendation - as in `result.json`
 * @returns none before any digging; dug less deep than wished with nothing built it is the one with no drain
 */
export function advisedOptions({ option, also }: Result['recommendation']): OptionName[] {
  const built = [option, ...also].filter(isOption);
  return built.length === 0 && option === 'shallower' ? ['no-drain'] : built;
}

/**
 * What is recommended as one option, as deep as all that is built at once holds, used as wished.
 * @param report - from {@link reportOf}
 * @returns {@link advisedOption}, its depth and what ends it from the curve of the recommendation where that is of several
 */
export function advisedTogether({ result, advised }: Report): PossibleOption | undefined {
  const option = advisedOption(result);
  if (!option || advisedOptions(result.recommendation).length < 2) return option;
  const { depth_m, safe, governs } = advised;
  const fails = safe.indexOf(false);
  return fails < 0
    ? { ...option, safe_depth_m: null, governs: 'none' }
    : { ...option, safe_depth_m: depth_m[fails - 1] ?? 0, governs: governs[fails]! };
}

/** Advice that comes before any digging. */
export const BEFORE_DIGGING: readonly Advice[] = ['measure-first', 'move', 'do-not-dig'];

/** Whether a recommendation is of a hole to be dug: not of a pond that is there, nor one that waits. */
export function isDug({
  recommendation,
  situations,
}: Pick<Result, 'recommendation' | 'situations'>): boolean {
  const { option, as_built } = recommendation;
  return (
    !as_built &&
    !BEFORE_DIGGING.includes(option) &&
    situations.some(({ of, situation }) => of === 'recommended' && situation === 'dig')
  );
}
