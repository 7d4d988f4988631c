/** Where water lifts a liner from rim to rim, in words. */
import { formatQuantity, type UnitSystem } from '../units/index.js';
import { sentence } from './sentence.js';

/**
 * What holds the liner down.
 * @param pond - level of its water, m; null: it is empty
 * @param ballast - head that it holds, m
 * @param units - how numbers are written
 * @returns words without a stop
 */
export function linerHoldWords(pond: number | null, ballast: number, units: UnitSystem): string {
  const water = pond === null ? 'pond empty' : `pond at ${formatQuantity(pond, 'level', units)}`;
  return ballast > 0
    ? `${water}, ballast holds ${formatQuantity(ballast, 'length', units)} of head`
    : `${water}, no ballast`;
}

/**
 * Names of both axes.
 * @param unit - of lengths
 * @returns along the liner, and over it
 */
export function linerAxes(unit: string): { along: string; over: string } {
  return {
    along: `along the liner from rim to rim (${unit})`,
    over: `head over what holds the liner (${unit})`,
  };
}

/**
 * Where it is lifted, and by how much.
 * @param lift - net head where it is largest, m, whether that is on the floor, and how much of the floor lifts
 * @param units - how numbers are written
 * @returns words without a stop
 */
export function linerLiftWords(
  { net, onFloor, share }: { net: number; onFloor: boolean; share: number },
  units: UnitSystem,
): string {
  const where = onFloor ? 'on the floor' : 'at the side';
  if (net <= 0)
    return `nothing lifts; the least to spare is ${formatQuantity(-net, 'length', units)} of head, ${where}`;
  const percent = Math.round(100 * share);
  const floor =
    percent === 0
      ? 'the floor is held'
      : percent === 100
        ? 'all of the floor lifts'
        : `${percent} % of the floor lifts`;
  return `lifted most ${where}, by ${formatQuantity(net, 'length', units)} of head; ${floor}`;
}

/**
 * What the uplift shows, for whoever does not see it.
 * @param held - from {@link linerHoldWords}
 * @param cases - each with its {@link linerLiftWords}
 * @returns sentences
 */
export function linerUpliftAlt(held: string, cases: readonly { name: string; told: string }[]): string {
  const each = cases.map(({ name, told }) => `${sentence(name)}: ${told}.`);
  return `Head over what holds the liner along it from rim to rim, ${held}. ${each.join(' ')}`;
}
