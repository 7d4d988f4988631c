import type { MonthlyLevels, Site, WaterEnsemble, WaterMet } from '../site/index.js';

/** Years of the weather that are counted: every one, the middle fifth, or the wettest fifth. */
export type Years = 'all' | 'ordinary' | 'wet';

/** Share of the years that is called wet, or ordinary. Our choice. */
const FIFTH = 0.2;

/** Whether the years of a site are years of the weather, the same for all samples. */
export function hasWeatherYears({ fit, record }: Site): boolean {
  return fit !== undefined && record !== undefined;
}

/** The ensemble with some of its years only, ranked by the highest water of the year in the clay, mean of all samples. */
export function inYears(water: WaterEnsemble, years: Exclude<Years, 'all'>): WaterEnsemble {
  const order = wettestFirst(water);
  const count = Math.max(1, Math.round(FIFTH * order.length));
  const from = years === 'wet' ? 0 : Math.floor((order.length - count) / 2);
  const kept = order.slice(from, from + count);
  const of = (levels: MonthlyLevels): MonthlyLevels => ({
    month: pick(levels.month, water, kept),
    emptied: pick(levels.emptied, water, kept),
  });
  const met = ({ daysEmpty, clayLow, clayHigh, tub, rises }: WaterMet): WaterMet => ({
    daysEmpty,
    clayLow: of(clayLow),
    clayHigh: of(clayHigh),
    tub: tub && { asIs: of(tub.asIs), keptOut: of(tub.keptOut) },
    rises: pick(rises, water, kept),
  });
  return {
    ...water,
    ...met(water),
    weekend: water.weekend && met(water.weekend),
    years: count,
    pond: water.pond && {
      ...water.pond,
      clayLow: pick(water.pond.clayLow, water, kept),
      clayHigh: pick(water.pond.clayHigh, water, kept),
      tub: water.pond.tub && {
        asIs: pick(water.pond.tub.asIs, water, kept),
        keptOut: pick(water.pond.tub.keptOut, water, kept),
      },
      drawdown: pick(water.pond.drawdown, water, kept),
      topUp: pick(water.pond.topUp, water, kept),
    },
  };
}

function wettestFirst({ samples, years, clayLow }: WaterEnsemble): number[] {
  const mean = Array.from({ length: years }, (_, y) => {
    let sum = 0;
    for (let s = 0; s < samples; s++) {
      let high = Number.NEGATIVE_INFINITY;
      for (let m = 0; m < 12; m++) high = Math.max(high, clayLow.month[(s * years + y) * 12 + m]!);
      sum += high;
    }
    return sum / samples;
  });
  return mean.map((_, y) => y).sort((a, b) => mean[b]! - mean[a]!);
}

function pick(values: Float32Array, { samples, years }: WaterEnsemble, kept: number[]): Float32Array {
  const year = values.length / (samples * years);
  const out = new Float32Array(samples * kept.length * year);
  for (let s = 0; s < samples; s++)
    kept.forEach((y, at) => {
      const from = (s * years + y) * year;
      out.set(values.subarray(from, from + year), (s * kept.length + at) * year);
    });
  return out;
}
