/** Ponds at random: any that can be dug, and any profile that a liner can have. */
import fc from 'fast-check';
import type { LinerProfile, PondShape } from '../../lib/uplift/index.js';

/** One seed for all properties of the room. */
export const RUNS = { seed: 6, numRuns: 300 };

export const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** To the millimetre, as a tape gives it. */
const taped = (min: number, max: number) =>
  fc.integer({ min: 1000 * min, max: 1000 * max }).map((mm) => mm / 1000);

const shape = fc.constantFrom<PondShape['shape']>('box', 'round', 'oval');

/** A profile of one to six pieces: sides of any slope, upright walls, shelves; the rim anywhere. */
export const profiles: fc.Arbitrary<LinerProfile> = fc
  .record({
    shape,
    length: taped(1, 8),
    width: taped(1, 8),
    rim: taped(-1, 1),
    steps: fc.array(
      fc.oneof(
        fc.record({ down: taped(0.05, 0.8), in: taped(0, 1) }),
        fc.record({ down: fc.constant(0), in: taped(0.05, 1) }),
        fc.record({ down: taped(0.05, 0.8), in: fc.constant(0) }),
      ),
      { minLength: 1, maxLength: 6 },
    ),
  })
  .filter(({ steps }) => steps.some(({ down }) => down > 0))
  .map(({ shape, length, width, rim, steps }) => {
    // Steps inwards share the half width, with something left for a floor.
    const room =
      (0.45 * Math.min(length, width)) /
      Math.max(
        steps.reduce((sum, step) => sum + step.in, 0),
        1e-9,
      );
    const scale = Math.min(room, 1);
    let at = { inset: 0, level: rim };
    return {
      shape,
      length,
      width: shape === 'round' ? length : width,
      points: [
        at,
        ...steps.map((step) => {
          at = {
            inset: at.inset + scale * Math.min(step.in, Math.min(length, width)),
            level: at.level - step.down,
          };
          return at;
        }),
      ],
    };
  })
  .filter(({ length, width, points }) => 2 * points.at(-1)!.inset <= Math.min(length, width));
