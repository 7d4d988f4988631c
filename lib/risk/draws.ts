import type { Site } from '../site/index.js';
import { DesignHighs, type YearlyHighs } from './designHighs.js';

/** Everything a chance is counted over, drawn once a site: water by year, and the quality of what is built. */
export interface Draws extends YearlyHighs {
  samples: number;
  years: number;
  highs: DesignHighs;
  /** one a sample: chance that a drain is silted or crushed in a year, and a sump unattended when it fails */
  blocked: Float64Array;
  pumpOut: Float64Array;
  /** shift of the strength, unit weight and seam head, standard normal, one a sample */
  strength: Float64Array;
  unitWeight: Float64Array;
  seamHead: Float64Array;
}

/** A filtered, inspected drain fails in about 1 year of 200; a stuck flap 1 in 20; our choice, common practice. */
export const DRAIN_BLOCKED = { median: 0.005, spread: 0.8 };
export const FLAP_STUCK = 0.05;
/** Two pumps, an alarm and somebody to hear it: unattended in high water about once in 100 years. Our choice. */
export const PUMP_OUT = { median: 0.01, spread: 0.5 };

/** Draws of a site; the same seed gives the same draws for every option and depth. */
export function drawsOf({ water, unknowns }: Site): Draws {
  const { samples, years } = water;
  const often = ({ median, spread }: typeof DRAIN_BLOCKED, z: number) =>
    Math.min(median * Math.exp(spread * z), 1);
  const yearly: YearlyHighs = {
    clayLow: highestOf(water.clayLow.month),
    clayHigh: highestOf(water.clayHigh.month),
    tub: water.tub && {
      asIs: highestOf(water.tub.asIs.month),
      keptOut: highestOf(water.tub.keptOut.month),
    },
  };
  return {
    ...yearly,
    samples,
    years,
    highs: new DesignHighs(water, yearly),
    blocked: unknowns.drain.map((z) => often(DRAIN_BLOCKED, z)),
    pumpOut: unknowns.pump.map((z) => often(PUMP_OUT, z)),
    strength: unknowns.strength,
    unitWeight: unknowns['unit weight'],
    seamHead: unknowns.seam,
  };
}

const ALL_MONTHS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];

/** Highest of some months (1–12) of each year. */
export function highestOf(levels: Float32Array, months: number[] = ALL_MONTHS): Float32Array {
  return Float32Array.from({ length: levels.length / 12 }, (_, i) => {
    let high = Number.NEGATIVE_INFINITY;
    for (const m of months) if (levels[i * 12 + m - 1] > high) high = levels[i * 12 + m - 1];
    return high;
  });
}

/** Months in which it is dug: those named, else the driest one. */
export function digMonths({ pond, water }: Site): number[] {
  if (pond.builtIn) return pond.builtIn;
  const { month } = water.clayLow;
  const sums = new Float64Array(12);
  for (let i = 0; i < month.length; i++) sums[i % 12] += month[i];
  return [sums.indexOf(Math.min(...sums)) + 1];
}
