import { method } from '../formula/index.js';
import { InputError } from '../units/index.js';

export const hydrologicSoilGroup = method({
  title: 'Hydrologic soil group',
  what:
    'A (little run-off) to D (much) from the depth to a tight layer, the depth to the high water table and the least ' +
    'conductive layer above; two letters where drainage would change it.',
  assumptions: [
    'tight: below 1e-8 m/s, rock or a pan',
    'a conductivity on a limit belongs to the slower group; it is never rounded first',
  ],
  source:
    'USDA-NRCS National Engineering Handbook Part 630 ch. 7 (2009), Table 7-1 (limits and depths read in an NRCS script; ' +
    'the pairing of the rows from memory)',
});

/** Hydrologic soil group, A the most permeable. */
export type GroupLetter = 'A' | 'B' | 'C' | 'D';

/** Group as it is, and as it would be with the water table drained away. */
export interface HydrologicGroup {
  drained: GroupLetter;
  undrained: GroupLetter;
}

/** A layer of the ground. */
export interface PermeableLayer {
  /** m below the ground */
  top: number;
  bottom: number;
  /** permeability full of water, m/s */
  permeability: number;
}

const TIGHT = 1e-8;
/** Lower limits of A, B and C, m/s. */
const SHALLOW_LIMITS = [40e-6, 10e-6, 1e-6];
const DEEP_LIMITS = [10e-6, 4e-6, 0.4e-6];

/**
 * Group of a pair as written: `D`, or `C/D` where drainage changes it.
 * @param group - of a profile
 * @returns one letter, or two
 */
export function groupText({ drained, undrained }: HydrologicGroup): string {
  return drained === undrained ? drained : `${drained}/${undrained}`;
}

/**
 * Hydrologic soil group of a profile, see {@link hydrologicSoilGroup}.
 * @param layers - depths m below the ground, permeability m/s
 * @param highWater - depth to the seasonal high water table, m below the ground; Infinity when there is none
 * @returns the letter drained, and as it lies
 * @throws InputError when no layer begins in the depth that the table looks at, 0.5 to 1 m
 */
export function hydrologicGroup(layers: PermeableLayer[], highWater: number): HydrologicGroup {
  const least = (depth: number) => {
    const within = layers.filter((l) => l.top < depth);
    if (within.length === 0)
      throw new InputError(
        'missing-input',
        `missing layers in the top ${depth} m: log the pit from the ground down`,
      );
    return Math.min(...within.map((l) => l.permeability));
  };
  const tight = Math.min(...layers.filter((l) => l.permeability < TIGHT).map((l) => l.top));
  if (tight < 0.5) return { drained: 'D', undrained: 'D' };
  const wet = highWater < 0.6;
  const letter =
    tight <= 1
      ? letterOf(least(wet ? 0.6 : 0.5), SHALLOW_LIMITS)
      : highWater >= 0.6 && highWater <= 1
        ? letterOf(least(0.5), SHALLOW_LIMITS)
        : letterOf(least(1), DEEP_LIMITS);
  return { drained: letter, undrained: wet ? 'D' : letter };
}

function letterOf(permeability: number, [a, b, c]: number[]): GroupLetter {
  return permeability > a ? 'A' : permeability > b ? 'B' : permeability > c ? 'C' : 'D';
}
