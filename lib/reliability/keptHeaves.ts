import type { Basis } from '../basis/index.js';
import { headIn, levelOverSeams } from '../digging/index.js';
import { LEVEL_RESOLUTION } from '../formula/index.js';
import { floorLevel, fullLevel, type Measures } from '../heads/index.js';
import { Remembered } from '../sampling/index.js';

/** First depths at which the floor heaves over a seam under a pond with water in it; their count where it does at none. */
interface KeptHeaves {
  /** full to the brim, by sample */
  full: Uint16Array;
  /** as low as it gets in each month, index sample × years + year */
  drawn: Uint16Array;
}

/**
 * Heave of the floor under the pond as it is kept, by its level of each month and the seams' water of that month;
 * undefined without a seam.
 * @param depths - on the axis of the wish, ascending, m
 * @param shift - of the pond's level, m
 */
export function keptHeaves(
  basis: Basis,
  m: Measures,
  depths: ArrayLike<number>,
  shift: number,
): KeptHeaves | undefined {
  if (basis.site.ground.seams.length === 0) return undefined;
  // No drain reaches a seam.
  const key = JSON.stringify([m.raise, m.ballast, shift, Array.from(depths)]);
  return found.of(basis.counted, key, () => firstHeaves(basis, m, depths, shift));
}

const found = new Remembered<KeptHeaves>(8);

function firstHeaves(
  { site, draws }: Basis,
  m: Measures,
  depths: ArrayLike<number>,
  shift: number,
): KeptHeaves {
  const { seams } = site.ground;
  const { samples, years } = draws;
  const count = depths.length;
  // Months in which no seam differs are judged at their lowest level.
  const alike = new Map<string, number[]>();
  for (let month = 1; month <= 12; month++) {
    const key = seams.map((seam) => headIn(seam, [month])).join();
    alike.set(key, [...(alike.get(key) ?? []), month]);
  }
  const groups = [...alike.values()].map((months) => ({
    lacks: lacksIn(site, months),
    wanted: Array.from(depths, (depth) => levelOverSeams(site, m, floorLevel(depth, m), months)),
  }));
  const full = new Uint16Array(samples).fill(count);
  const drawn = new Uint16Array(samples * years).fill(count);
  const brim = fullLevel(site, m) + shift + LEVEL_RESOLUTION;
  const levels = new Float64Array(count);
  for (let s = 0; s < samples; s++) {
    const scores = { head: draws.seamHead[s]!, weight: draws.unitWeight[s]! };
    for (const { lacks, wanted } of groups) {
      for (let d = 0; d < count; d++) levels[d] = wanted[d]!(scores) ?? Number.NEGATIVE_INFINITY;
      full[s] = Math.min(full[s]!, firstAbove(levels, brim));
      for (let i = s * years; i < (s + 1) * years; i++)
        drawn[i] = Math.min(drawn[i]!, firstAbove(levels, brim - lacks(i)));
    }
  }
  return { full, drawn };
}

/** How far the pond of a year is below full at most in some months, m. */
function lacksIn({ pond, water }: Basis['site'], months: readonly number[]): (year: number) => number {
  const { kept } = pond;
  if ('held' in kept) return () => kept.held;
  const { drawdown } = water.pond!;
  return (year) => Math.max(...months.map((month) => drawdown[year * 12 + month - 1]!));
}

/** Place of the first level above another; how many there are where none is. */
function firstAbove(levels: Float64Array, level: number): number {
  const at = levels.findIndex((each) => each > level);
  return at < 0 ? levels.length : at;
}
