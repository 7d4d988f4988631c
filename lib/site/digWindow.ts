import { method } from '../formula/index.js';
import { quantile } from '../sampling/index.js';
import { discInflow } from '../seepage/index.js';
import { InputError } from '../units/index.js';
import { type PondShape, planArea } from '../uplift/index.js';
import { monthValues } from './monthValues.js';
import type { WaterEnsemble } from './water.js';

export const digWindowMethod = method({
  title: 'Digging window and water to pump',
  what:
    'For each month and depth of dig: the chance that the water in the ground stays below the floor all month, and ' +
    'the seepage to be pumped at the month’s highest water.',
  assumptions: [
    'every sample and weather year counts once',
    'the highest water of the month counts for all of it; a floor is dry that lies above the water of the side uphill',
    'seepage through the floor of an open hole of the pond’s mean area, steady; rain that falls into it comes on top',
  ],
  source: 'seepage to a disc; counting over the simulated years',
});

/** Chances at which a floor is called dry. */
const DRY_CHANCES = [0.5, 0.8, 0.95] as const;

/** When it may be dug how deep, and what is to be pumped. First index depth, second month (January = 0). */
export interface DigWindow {
  /** m below the lowest natural ground at the rim */
  depths: number[];
  /** chance that the floor stays dry all month */
  dry: number[][];
  /** seepage at the month's highest water, m³/s: middle, and what one dig in ten exceeds */
  pumped: { p50: number[][]; p90: number[][] };
  /** months 1–12 in which the floor is dry with at least this chance, 0–1; `at` by depth */
  months: { chance: number; at: number[][] }[];
}

/** Radius of the disc that an open dig to a depth seeps like: mean of its area at the ground and at the floor, m. */
export function digRadius(shape: PondShape, depth: number): number {
  return Math.sqrt(Math.max((planArea(shape, 0) + planArea(shape, depth)) / 2, 0.01) / Math.PI);
}

/**
 * The digging window of a site's water, see {@link digWindowMethod}.
 * @param water - `clayLow` and `clayHigh` hold the highest level of each month at the low side and uphill, m above the datum
 * @param shape - of the dig
 * @param depths - of the dig, m below the datum (the lowest natural ground at the rim), above 0
 * @returns by depth and month: chance of a dry floor, 0–1, and what is to be pumped, m³/s
 * @throws InputError where a year lacks a month
 */
export function digWindow(
  water: Pick<WaterEnsemble, 'samples' | 'years' | 'clayLow' | 'clayHigh' | 'permeability'>,
  shape: PondShape,
  depths: readonly number[],
): DigWindow {
  const { samples, years, clayLow, clayHigh, permeability } = water;
  const n = samples * years;
  const byMonth = Array.from({ length: 12 }, (_, m) => {
    const [low, uphill] = [clayLow, clayHigh].map(({ month }) => monthValues(month, m + 1)) as [
      Float64Array,
      Float64Array,
    ];
    const mean = low.map((level, i) => (level + uphill[i]!) / 2);
    if (!mean.every(Number.isFinite))
      throw new InputError('missing-input', `missing level: a year without month ${m + 1}`);
    return { uphill, mean };
  });
  const dry: number[][] = [];
  const p50: number[][] = [];
  const p90: number[][] = [];
  const flow = new Float64Array(n);
  for (const depth of depths) {
    const radius = digRadius(shape, depth);
    const rows = byMonth.map(({ uphill, mean }) => {
      let below = 0;
      for (let i = 0; i < n; i++) {
        const head = mean[i] + depth;
        if (uphill[i] + depth < 0) below++;
        flow[i] = head > 0 ? discInflow.compute(permeability[Math.floor(i / years)], radius, head) : 0;
      }
      const p50 = quantile(flow, 0.5);
      return { dry: below / n, p50, p90: quantile(flow, 0.9, Math.floor(0.5 * (n - 1))) };
    });
    dry.push(rows.map((r) => r.dry));
    p50.push(rows.map((r) => r.p50));
    p90.push(rows.map((r) => r.p90));
  }
  const months = DRY_CHANCES.map((chance) => ({
    chance,
    at: dry.map((row) => row.flatMap((share, m) => (share >= chance ? [m + 1] : []))),
  }));
  return { depths: [...depths], dry, pumped: { p50, p90 }, months };
}
