import { type Advice, isOption, type OptionName } from './optionNames.js';
import { type PossibleOption, possibleOption, type Result } from './result.js';

/**
 * The option that is recommended, where it is one that was computed; dug less deep than wished with nothing built it is
 * the one with no drain.
 * @param result - as in `result.json`
 * @returns the option, at the depth wished; or nothing
 */
export function advisedOption(
  result: Pick<Result, 'options' | 'recommendation'>,
): PossibleOption | undefined {
  const { recommendation } = result;
  const [name = recommendation.option === 'shallower' ? 'no-drain' : undefined] =
    advisedOptions(recommendation);
  return name && possibleOption(result, name);
}

/**
 * Every option that is built at once, first the one that gives the recommendation its name.
 * @param recommendation - as in `result.json`
 * @returns none where none is built
 */
export function advisedOptions({ option, also }: Result['recommendation']): OptionName[] {
  return [option, ...also].filter(isOption);
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
