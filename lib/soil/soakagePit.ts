import { formula } from '../formula/index.js';
import { type HoleTest, refuseBelowTable, soakBias } from './fallingHole.js';
import { FieldTestError, fitLevels, type LevelReading, type PermeabilityTest } from './fieldTest.js';

/** Soakage rate of a pit between three quarters and one quarter full. */
export const soakagePitRate = formula({
  title: 'Soakage rate of a trial pit',
  symbol: 'f',
  unit: 'm/s',
  expression: '0.5*l*b*d/((l*b + (l + b)*d)*t)',
  parameters: {
    l: { meaning: 'length of the pit', unit: 'm', min: 0.2, max: 5 },
    b: { meaning: 'width of the pit', unit: 'm', min: 0.2, max: 3 },
    d: { meaning: 'depth of water when full', unit: 'm', min: 0.1, max: 3 },
    t: { meaning: 'time from three quarters to one quarter full', unit: 's', min: 60, max: 1e7 },
  },
  compute: (l: number, b: number, d: number, t: number) => (0.5 * l * b * d) / ((l * b + (l + b) * d) * t),
  validity:
    'floor and walls to half depth count; take the slowest of three fillings; below 1e-6 m/s no soakaway',
  source: 'BRE Digest 365, as on council pages and an engineer’s sheet (seen)',
});

/** A pit with vertical sides. Lengths m. */
export interface TrialPit extends Omit<HoleTest, 'sorptive' | 'diameter'> {
  length: number;
  width: number;
}

/**
 * Permeability from the emptying of a pit: unit gradient through floor and wet walls, the fall integrated.
 * @param readings - at least two: time, s; level above the floor, m, shrinking
 * @param pit - length and width, m
 * @returns permeability of the ground, m/s, with its spread
 * @throws FieldTestError when the pit or the readings cannot be interpreted, or the pit reaches below the water table
 */
export function soakagePitTest(readings: LevelReading[], pit: TrialPit): PermeabilityTest {
  refuseBelowTable(pit);
  const { length, width } = pit;
  if (!(length > 0 && width > 0))
    throw new FieldTestError(
      'geometry',
      `invalid pit ${length} m by ${width} m`,
      'Measure its length and width.',
    );
  // Floor over outline: the level of a tank that loses as much through its floor as the pit through its walls.
  const c = (length * width) / (2 * (length + width));
  return fitLevels(
    readings,
    {
      method: 'emptying of a soakage pit',
      potential: (h) => c * Math.log(h + c),
      slope: (h) => c / (h + c),
      kind: 'falling',
      methodSpread: 0.4,
      bias: ['unit gradient: reads high in dry soil, by up to twice', ...soakBias(pit)],
    },
    pit.tape,
  );
}

/**
 * Time a pit takes from three quarters to one quarter full, read off its looks on straight lines; for
 * {@link soakagePitRate}.
 * @param readings - time, s, and depth of water, m, in order of time
 * @param full - depth of water when full, m
 * @returns s
 * @throws FieldTestError when the looks do not reach from one to the other
 */
export function halfEmptyingTime(readings: LevelReading[], full: number): number {
  const when = (level: number) => {
    const after = readings.findIndex((r) => r.level <= level);
    if (after <= 0)
      throw new FieldTestError(
        'too-few',
        `missing looks on both sides of ${Number(level.toPrecision(3))} m of water`,
        'Fill the pit to the top and go on until less than a quarter is left.',
      );
    const [a, b] = [readings[after - 1], readings[after]];
    return a.time + ((a.level - level) / (a.level - b.level)) * (b.time - a.time);
  };
  return when(full / 4) - when((3 * full) / 4);
}
