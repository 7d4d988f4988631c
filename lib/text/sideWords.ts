/** How deep the side of a dig in clay stands, in words. */
import { formatQuantity, type UnitSystem } from '../units/index.js';
import { SIDE_FACTOR_WANTED } from '../uplift/index.js';

/** Depths at which a side stands, m, on both ends of the slopes drawn. */
interface ToldSide {
  upright: number;
  flattest: number;
}

/**
 * Name of the axis of depths.
 * @param unit - of lengths
 * @returns a heading
 */
export function standingDepthAxis(unit: string): string {
  return `depth that stands with factor ${SIDE_FACTOR_WANTED} (${unit})`;
}

/**
 * Which slope stands at a depth.
 * @param slope - steepest that stands, horizontal to 1 vertical; null: none does
 * @returns words without a stop
 */
function standingSlopeWords(slope: number | null): string {
  if (slope === null) return 'no slope stands';
  return slope === 0 ? 'upright sides stand' : `${slope} to 1 or flatter stands`;
}

/**
 * What stands at the depth wished.
 * @param depth - m
 * @param slope - as in {@link standingSlopeWords}
 * @param units - how numbers are written
 * @returns a label
 */
export function wishStandsText(depth: number, slope: number | null, units: UnitSystem): string {
  return `wish ${formatQuantity(depth, 'length', units)}: ${standingSlopeWords(slope)}`;
}

/**
 * What the sides show, for whoever does not see them.
 * @param told - fresh and softened, the flattest slope drawn, and the wish with the slope that stands there
 * @param units - how numbers are written
 * @returns sentences
 */
export function sideAlt(
  told: { fresh: ToldSide; soft: ToldSide; flattest: number; depth: number; slope: number | null },
  units: UnitSystem,
): string {
  const height = (metres: number) => formatQuantity(metres, 'length', units);
  const { fresh, soft } = told;
  return (
    `Depth a clay side stands wet and cracked with a factor of ${SIDE_FACTOR_WANTED}: upright ${height(fresh.upright)} fresh and ${height(soft.upright)} ` +
    `softened; laid back ${told.flattest} to 1 ${height(fresh.flattest)} and ${height(soft.flattest)}. For the wish of ${height(told.depth)}: ${standingSlopeWords(told.slope)}.`
  );
}
