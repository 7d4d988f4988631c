import { formula } from '../formula/index.js';
import { type HoleTest, refuseBelowTable, soakBias } from './fallingHole.js';
import { fitLevels, type LevelReading, type PermeabilityTest } from './fieldTest.js';

/** Permeability from two looks at a hole, gravity alone. */
export const inverseAugerHole = formula({
  title: 'Inverse auger hole (Porchet)',
  symbol: 'K',
  unit: 'm/s',
  expression: 'r/(2*t)*log((a + r/2)/(b + r/2))',
  parameters: {
    r: { meaning: 'radius of the hole', unit: 'm', min: 0.02, max: 0.5 },
    t: { meaning: 'time between the looks', unit: 's', min: 10, max: 1e6 },
    a: { meaning: 'water depth at first', unit: 'm', min: 0.01, max: 3 },
    b: { meaning: 'water depth later', unit: 'm', min: 0, max: 3 },
  },
  compute: (r: number, t: number, a: number, b: number) =>
    (r / (2 * t)) * Math.log((a + r / 2) / (b + r / 2)),
  together: { says: 'b <= a', holds: (_r, _t, a, b) => b <= a },
  validity: 'unit gradient through wall and floor, no capillary suck: an upper bound in clay',
  source:
    'van Hoorn in ILRI Publication 16 (from memory); finite form printed by the Riverside County handbook (from memory)',
});

/**
 * Permeability from a falling level in a hole by the inverse auger-hole method; reads high in clay, see
 * {@link inverseAugerHole}.
 * @param readings - at least two: time, s; level above the floor, m, shrinking
 * @param hole - diameter, m, above 0
 * @returns permeability of the ground, m/s, with its spread
 * @throws FieldTestError when the readings cannot be interpreted, or the hole reaches below the water table
 */
export function inverseAugerHoleTest(
  readings: LevelReading[],
  hole: Omit<HoleTest, 'sorptive'>,
): PermeabilityTest {
  refuseBelowTable(hole);
  const r = hole.diameter / 2;
  return fitLevels(
    readings,
    {
      method: 'falling level in a hole (inverse auger hole)',
      potential: (h) => (r / 2) * Math.log(h + r / 2),
      slope: (h) => r / (2 * h + r),
      kind: 'falling',
      methodSpread: 0.7,
      bias: ['counts capillary suck as gravity: reads high, in clay several times', ...soakBias(hole)],
    },
    hole.tape,
  );
}
