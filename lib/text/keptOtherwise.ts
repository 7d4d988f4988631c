/** The pond as low as it is kept, where it is not used as wished. */
import { advisedOptions, type Result, type Situation } from '../contract/index.js';
import { formatBound, type UnitSystem } from '../units/index.js';

/**
 * What is recommended, as low as it is kept, where no option at the wish tells of it: used otherwise, less deep, or several
 * options at once.
 */
export function keptOtherwise({
  recommendation,
  situations,
}: Pick<Result, 'recommendation' | 'situations'>): Situation | undefined {
  const { option, change } = recommendation;
  const other = change || option === 'shallower' || advisedOptions(recommendation).length > 1;
  return other ? situations.find(keptAsAdvised) : undefined;
}

const keptAsAdvised = ({ of, situation, month }: Situation) =>
  of === 'recommended' && situation === 'drawn-down' && month === null;

/** Of the recommendation as it is kept, by the water that decides. */
export function keptLine({ margin_m, allowed }: Situation, units: UnitSystem): string {
  const spare = margin_m ?? 0;
  if (!allowed) return 'fails oftener than accepted';
  return spare > 0
    ? `stays down, ${formatBound(spare, 'length', units, 'down')} to spare as it is then kept`
    : 'stays down';
}
