import { MONTHS } from '../climate/index.js';
import type { Site } from '../site/index.js';
import { DesignHighs, type YearlyHighs } from './designHighs.js';
import { oldDrainWorks } from './oldDrain.js';
import { DRAIN_SPREAD, PUMP_SPREAD, type Reliability, reliabilityOf } from './upkeep.js';

/** Everything a chance is counted over, drawn once a site: water by year, and the quality of what is built. */
export interface Draws extends YearlyHighs {
  samples: number;
  years: number;
  highs: DesignHighs;
  /** how what is built fails, at the middle of what is likely */
  reliability: Reliability;
  /** one a sample: chance that a drain is silted or crushed in a year, and a sump unattended when it fails */
  blocked: Float64Array;
  pumpOut: Float64Array;
  /** shift of the strength, unit weight and seam head, standard normal, one a sample */
  strength: Float64Array;
  unitWeight: Float64Array;
  seamHead: Float64Array;
}

/** Draws of a site; the same seed gives the same draws for every option and depth. */
export function drawsOf(site: Site): Draws {
  const { water, unknowns, survey } = site;
  const { samples, years } = water;
  const reliability = reliabilityOf(survey.site, oldDrainWorks(site));
  const often = (median: number, spread: number, z: number) => Math.min(median * Math.exp(spread * z), 1);
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
    reliability,
    blocked: unknowns.drain.map((z) => often(reliability.blocked, DRAIN_SPREAD, z)),
    pumpOut: unknowns.pump.map((z) => often(reliability.pumpOut, PUMP_SPREAD, z)),
    strength: unknowns.strength,
    unitWeight: unknowns['unit weight'],
    seamHead: unknowns.seam,
  };
}

/** Highest of some months (1–12) of each year. */
export function highestOf(levels: Float32Array, months: readonly number[] = MONTHS): Float32Array {
  return Float32Array.from({ length: levels.length / 12 }, (_, i) => {
    let high = Number.NEGATIVE_INFINITY;
    for (const m of months) if (levels[i * 12 + m - 1] > high) high = levels[i * 12 + m - 1];
    return high;
  });
}
