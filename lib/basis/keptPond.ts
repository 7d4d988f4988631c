import { formula, method, type Use, unrecorded } from '../formula/index.js';
import {
  type Draws,
  floorLevel,
  fullLevel,
  highestOf,
  type Measures,
  NO_SHIFT,
  relievedBy,
  undrainedHead,
} from '../heads/index.js';
import { quantile, Remembered } from '../sampling/index.js';
import { monthValues } from '../site/index.js';
import { excessTaken, LIFT_VOLUME_DEPTH, planArea } from '../uplift/index.js';
import type { Basis } from './basis.js';

export const keptPondMethod = method({
  title: 'The pond as it is kept',
  what:
    'The yearly highest of the head outside and what the pond lacks on the same day. Above the full level, and what ballast ' +
    'holds, the liner lifts: the net head of the day is the full level less that sum.',
  assumptions: [
    'with a drain, or one uphill, the sum is at most what the drain leaves and the most that the pond lacks: a bound',
    'below its brim a pond rises by what comes under its liner; an excess that brings less than 20 mm over the floor is no lift',
    'a level that is held lacks the same every day, and what comes under the liner is let go',
  ],
  source: 'level against level, day by day; balance of volumes for the small excess',
});

const level = (meaning: string) => ({ meaning, unit: 'm', min: -20, max: 20 });
const lack = { meaning: 'what the pond lacks, below full', unit: 'm', min: 0, max: 10 };

/** Water outside with what the pond lacks. */
export const keptSum = formula({
  title: 'Water outside and what the pond lacks, together',
  symbol: 's',
  unit: 'm',
  expression: 'h + d',
  parameters: { h: level('water outside'), d: lack },
  compute: (h: number, d: number) => h + d,
  validity: 'of one day; where a drain holds the water, a bound',
  source: 'level against level',
});

/** The water in such a sum. */
export const waterOfSum = formula({
  title: 'Water outside, where the pond lacks most',
  symbol: 'h',
  unit: 'm',
  expression: 's - d',
  parameters: { s: level('water outside and what the pond lacks, together'), d: lack },
  compute: (s: number, d: number) => s - d,
  validity: 'the most that the pond lacks on any day, taken for the day of the highest water: a bound',
  source: 'level against level',
});

/** Level of the pond on the day that decides. */
export const pondOfDay = formula({
  title: 'Level of the pond on the day that decides',
  symbol: 'p',
  unit: 'm',
  expression: 'f + h - s',
  parameters: {
    f: level('level of the full pond'),
    h: level('water outside'),
    s: level('water outside and what the pond lacks, together'),
  },
  compute: (f: number, h: number, s: number) => f + h - s,
  validity: 'as far below full as the sum of the day stands above its water',
  source: 'level against level',
});

const sums = new Remembered<Float64Array>(6);
const found = new Remembered<number>();

type Undrained = Pick<Measures, 'way' | 'cutoff'>;

/** What is drawn of the water and how the pond is kept in it. */
type Kept = Pick<Basis, 'site' | 'draws' | 'highs'>;

/**
 * Highest sum of the undrained head and what the pond lacks that day, of each year; m above the datum.
 * @param shift - of the clay's water, m
 */
export function keptHeads({ site, draws }: Kept, m: Undrained, shift = NO_SHIFT.water): Float64Array {
  const { kept } = site.pond;
  const key = `${m.way} ${m.cutoff}`;
  if ('held' in kept)
    return sums.of(draws, `${key} ${shift} ${kept.held}`, () => heldHeads(draws, m, kept.held, shift));
  const make = () => Float64Array.from(highestOf(keptMonths({ site }, m, shift)));
  return shift === NO_SHIFT.water ? sums.of(site.water, key, make) : make();
}

/** The same where a level is held. */
function heldHeads(
  { clayLow, clayHigh, tub }: Draws,
  { way, cutoff }: Undrained,
  held: number,
  shift: number,
): Float64Array {
  const ring = tub?.[way];
  const of = new Float64Array(clayLow.length);
  for (let i = 0; i < of.length; i++) {
    const standing = ring ? ring[i] : Number.NEGATIVE_INFINITY;
    of[i] = undrainedHead(cutoff, clayLow[i] + shift, clayHigh[i] + shift, standing) + held;
  }
  return of;
}

/**
 * The same of each month of each year, index (sample × years + year) × 12 + month − 1; m above the datum.
 * @param shift - of the clay's water, m
 */
export function keptMonths(
  { site: { water, pond } }: Pick<Basis, 'site'>,
  m: Undrained,
  shift = NO_SHIFT.water,
): Float32Array {
  const held = 'held' in pond.kept ? pond.kept.held : undefined;
  const { clayLow, clayHigh, tub } =
    held === undefined
      ? water.pond!
      : {
          clayLow: water.clayLow.month,
          clayHigh: water.clayHigh.month,
          tub: water.tub && { asIs: water.tub.asIs.month, keptOut: water.tub.keptOut.month },
        };
  const ring = tub?.[m.way];
  const lacks = held ?? 0;
  // Of a pond that falls by its days the waters above are sums already.
  const fallen = held === undefined ? water.pond!.drawdown : undefined;
  return clayLow.map((low, i) => {
    const cutoff = m.cutoff === undefined ? undefined : m.cutoff + (fallen ? fallen[i] : 0);
    const standing = ring ? ring[i] : Number.NEGATIVE_INFINITY;
    return undrainedHead(cutoff, low + shift, clayHigh[i] + shift, standing) + lacks;
  });
}

/** That sum in the year that a share 1 − p exceeds, or in a month (1–12) of it, m above the datum. */
export function keptHigh(
  basis: Kept,
  m: Undrained,
  p: number,
  month?: number,
  use: Use = unrecorded,
): number {
  const { kept } = basis.site.pond;
  if ('held' in kept) return use(keptSum, undrainedHigh(basis, m, p, month), kept.held);
  return found.of(basis.site.water, `${m.way} ${m.cutoff} ${p} ${month}`, () =>
    quantile(month === undefined ? keptHeads(basis, m).slice() : monthValues(keptMonths(basis, m), month), p),
  );
}

function undrainedHigh({ highs }: Kept, m: Undrained, p: number, month?: number): number {
  return month === undefined ? highs.yearly(m, p) : highs.monthly(m, month, p);
}

/** The most that the pond lacks in the year that a share 1 − p exceeds, m below full. */
export function drawdownOf({ site }: Pick<Basis, 'site'>, p: number): number {
  const { kept } = site.pond;
  if ('held' in kept) return kept.held;
  return found.of(site.water, `drawdown ${p}`, () =>
    quantile(Float64Array.from(highestOf(site.water.pond!.drawdown)), p),
  );
}

/** Excess of the sum above what the pond holds that brings no lift, m; see {@link keptPondMethod}. */
export function excessLetBe({ pond }: Basis['site']): number {
  if ('held' in pond.kept) return 0;
  return excessTaken.compute(LIFT_VOLUME_DEPTH, planArea(pond.shape, pond.depth), planArea(pond.shape, 0));
}

/**
 * Head outside and pond level of the day that decides in the year that a share 1 − p exceeds, m above the datum: the
 * highest head of the year, or of a month of it, and the pond as far below full as the sum of the day tells.
 * @param depth - on the axis of the wish, m
 * @param month - 1–12; absent: of the year
 * @param use - what evaluates the formulas, for a record
 */
export function decidingDay(
  basis: Kept,
  m: Measures,
  depth: number,
  p: number,
  month?: number,
  use: Use = unrecorded,
): { head: number; pond: number } {
  const relieve = relievedInFlood(m, depth, use);
  const head = relieve(undrainedHigh(basis, m, p, month));
  const most = drawdownOf(basis, 1);
  const high = keptHigh(basis, m, p, month, use);
  const sum = m.drain ? use(keptSum, relieve(use(waterOfSum, high, most)), most) : high;
  return { head, pond: use(pondOfDay, fullLevel(basis.site, m, use), head, sum) };
}

function relievedInFlood(m: Measures, depth: number, use: Use): (undrained: number) => number {
  const flood = m.drain?.kind === 'outlet' ? m.drain.flood : Number.NEGATIVE_INFINITY;
  return relievedBy(m, m.drain ? floorLevel(depth, m, use) : 0, 'works', flood, use);
}
