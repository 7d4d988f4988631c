import type { ClimateRecord } from '../climate/index.js';
import { method } from '../formula/index.js';
import { type PondSeries, type PondStage, pondSeries, pondStage, runPond } from '../pond/index.js';
import { keepHighestOf, monthsOfRecord } from './monthlyHighs.js';
import type { Pond } from './pond.js';
import { USUALLY_KEPT } from './pondKept.js';
import type { PondLossDraws } from './pondLooks.js';
import { roofInflow } from './roofIntoPond.js';
import type { Unknowns } from './unknowns.js';
import { type PondYears, WAYS, type WaterEnsemble } from './water.js';

export const pondYearsMethod = method({
  title: 'The pond as it is kept beside the water outside',
  what:
    'The daily balance of the pond in the same days as the water outside: the highest sum of the water outside and what ' +
    'the pond lacks on the same day, month by month, and what is topped up.',
  assumptions: [
    'coefficient of open water 1.05 (FAO-56 Table 12), log standard deviation 0.15 for shelter and plants (our choice)',
    'topped up within what the survey says, else 0.1 m, log standard deviation 0.42 (our choice)',
    'what runs over the brim goes into the ring unless the survey leads it away; it is led away where surface water is kept out',
    'a level that is held stays as far below full all year; what runs over is that of a pond topped up within 0.1 m',
    'coefficient and leak by the looks at the level of the pond itself, where they tell; else the liner does not leak',
    'what leaks goes into the ring where there is one, else away below; ground uphill sheds into the ring, not into the pond, and so does a roof unless its downpipe runs into the pond',
    'known month by month, the highest water of a month stands on every day of it',
  ],
  source: 'water balance',
});

/** A pond to be run through the weather. */
export interface PondInWeather extends Pick<Pond, 'kept' | 'overflow'> {
  stage: PondStage;
  /** of a roof led into it, m² */
  roof: number;
  losses: PondLossDraws;
  unknowns: Unknowns;
}

/**
 * A pond to be run where its days matter: its level follows from them, or they reach a ring.
 * @param roof - led into it, m²
 * @param lossesOf - what is drawn of its losses
 */
export function pondInWeather(
  pond: Pond,
  roof: number,
  unknowns: Unknowns,
  ring: boolean,
  lossesOf: (stage: PondStage) => PondLossDraws,
): PondInWeather | undefined {
  const { kept, overflow, shape, fullLevel, depth } = pond;
  const matters = !('held' in kept) || (ring && overflow === 'ring');
  if (!matters) return undefined;
  const stage = pondStage(shape, fullLevel, depth);
  return { kept, overflow, roof, unknowns, stage, losses: lossesOf(stage) };
}

/**
 * Runs the pond of one sample after another through the days of a record, and keeps what its months lack and are given.
 * @param firstYear - of the ensemble, that the record's first year stands for; daily levels are kept of the first
 * @returns the series of a sample, filled anew each time
 */
export function pondRunner(
  e: WaterEnsemble,
  { stage, kept, roof, unknowns, losses }: PondInWeather,
  record: ClimateRecord,
  firstYear = 0,
): (s: number) => PondSeries {
  const n = record.rain.length;
  const months = monthsOfRecord(record);
  const out = pondSeries(n);
  if (losses.leak) out.leaked = new Float64Array(n);
  const { daily } = e;
  const inflow = roofInflow(record, roof);
  return (s) => {
    const within =
      'held' in kept ? USUALLY_KEPT.within : kept.within * Math.exp(kept.spread * unknowns['topping up'][s]);
    const coefficient = losses.coefficient[s];
    const leak = losses.leak?.[s];
    const { closure } = runPond(
      stage,
      { rain: record.rain, demand: record.demand, coefficient, inflow, leak, within },
      out,
    );
    e.closure = Math.max(e.closure, closure);
    if (!e.pond) return out;
    const first = (s * e.years + firstYear) * 12;
    keepHighestOf(e.pond.drawdown, first, months, out.drawdown);
    months.from.forEach((from, slot) => {
      let sum = 0;
      for (let d = from; d < from + months.days[slot]; d++) sum += out.topUp[d];
      e.pond!.topUp[first + slot] = sum;
    });
    if (firstYear === 0 && daily && s < daily.samples) {
      daily.drawdown ??= new Float32Array(daily.samples * n);
      daily.drawdown.set(out.drawdown, s * n);
    }
    return out;
  };
}

/**
 * Pairs water known month by month with the most that the pond lacks in the month.
 * @param years - with what its months lack
 * @param ringByDay - that of the ring is paired already
 */
export function pairByMonth(e: WaterEnsemble, years: PondYears, ringByDay: boolean): void {
  const pair = (sums: Float32Array, levels: Float32Array) => {
    for (let i = 0; i < sums.length; i++) sums[i] = levels[i] + years.drawdown[i];
  };
  pair(years.clayLow, e.clayLow.month);
  pair(years.clayHigh, e.clayHigh.month);
  if (years.tub && e.tub && !ringByDay) for (const way of WAYS) pair(years.tub[way], e.tub[way].month);
}
