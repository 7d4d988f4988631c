/** Amounts as they are carried by hand. Sizes are common practice and stand beside every amount. */

import type { SiteDrain } from '../contract/index.js';
import { SECONDS_PER_DAY } from '../formula/constants.js';
import type { UnitSystem } from '../units/index.js';
import { FOOT, INCH } from '../units/index.js';
import { drainWords } from './drainWords.js';

interface Measure {
  /** m³ that it is filled to */
  holds: number;
  one: string;
  many: string;
  size: string;
}

const LITRE = 1e-3;
const GALLON = 3.785411784e-3;
const CUBIC_FOOT = FOOT ** 3;

const MEASURES: Record<UnitSystem, { bucket: Measure; barrow: Measure; bag: Measure }> = {
  metric: {
    bucket: { holds: 10 * LITRE, one: 'bucket', many: 'buckets', size: '10 L' },
    barrow: { holds: 80 * LITRE, one: 'barrow', many: 'barrows', size: '80 L' },
    bag: { holds: 16 * LITRE, one: 'bag', many: 'bags', size: '25 kg, about 16 L' },
  },
  us: {
    bucket: { holds: 4 * GALLON, one: 'bucket', many: 'buckets', size: '5 gal filled to 4' },
    barrow: { holds: 3 * CUBIC_FOOT, one: 'barrow', many: 'barrows', size: '6 ft³ filled to 3' },
    bag: { holds: 0.5 * CUBIC_FOOT, one: 'bag', many: 'bags', size: '50 lb, about 1/2 ft³' },
  },
};

function count(volume: number, { holds, one, many }: Measure): string {
  const n = Math.max(1, Math.ceil(volume / holds - 1e-9));
  // Two figures, up: too few barrows are missed, one too many is not.
  const step = n < 20 ? 1 : 10 ** (Math.floor(Math.log10(n)) - 1);
  const round = Math.ceil(n / step - 1e-9) * step;
  return `${round} ${round === 1 ? one : many}`;
}

/** Rain as a gauge shows it: millimetres, or hundredths of an inch. */
export function rainText(rain: number, units: UnitSystem): string {
  return units === 'us'
    ? `${Number((rain / INCH).toFixed(2))} in`
    : `${Number((rain * 1000).toPrecision(3))} mm`;
}

/** What a measure holds, for the note under a table. */
function measureSizes(units: UnitSystem): string {
  const { bucket, barrow, bag } = MEASURES[units];
  return `A bucket is ${bucket.size}, a barrow ${barrow.size}, a bag ${bag.size}.`;
}

/** Loose earth, sand or gravel in barrows, and in bags where it is sold in them. */
export function bulkWords(volume: number, sold: boolean, units: UnitSystem): string {
  const { bucket, barrow, bag } = MEASURES[units];
  return sold
    ? `${count(volume, barrow)}, or ${count(volume, bag)}`
    : `${count(volume, barrow)}, or ${count(volume, bucket)}`;
}

/** Water of a day in buckets. */
export function bucketWords(volume: number, units: UnitSystem): string {
  const { bucket } = MEASURES[units];
  return volume < bucket.holds / 2 ? 'less than half a bucket' : `${count(volume, bucket)} of ${bucket.size}`;
}

/**
 * What the amounts hold.
 * @param units - how numbers are written
 * @param walled - the pond stands within walls
 * @returns sentences
 */
export function amountsNote(units: UnitSystem, walled: boolean): string {
  const wall = walled
    ? ' The hole, its earth and the hours are without room for the walls, their footing and the slope behind them: whoever designs the walls tells how much more is dug and filled.'
    : '';
  return `${measureSizes(units)} Our choice; ask what the shop's bag holds. Amounts include waste, laps and what loosened earth takes more. Before the liner is cut, lay a string over the finished hole both ways, and add ${units === 'us' ? '1 ft' : '0.3 m'} at every rim.${wall}`;
}

/**
 * What a drain carries a day when the water stands high, in buckets, and what a hole in the liner adds.
 * @param drain - as designed
 * @param units - how numbers are written
 * @returns sentences
 */
export function dayWords(drain: SiteDrain, units: UnitSystem): string {
  const day = bucketWords(drain.inflow.clay * SECONDS_PER_DAY, units);
  return `When the water stands high, ${day} a day come from the clay. ${drainWords(drain, units).leak}`;
}
