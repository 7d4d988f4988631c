import { formula, method } from '../formula/index.js';
import {
  FieldTestError,
  fitLevels,
  type LevelReading,
  type PermeabilityTest,
  type TestGeometry,
} from './fieldTest.js';

/** Shape factor of a cylindrical hole above the water table. */
export const holeShapeFactor = formula({
  title: 'Shape factor of a hole above the water table',
  symbol: 'C',
  unit: '-',
  expression: '(x/(p + q*x))^n',
  parameters: {
    x: { meaning: 'water depth over the radius', unit: '-', min: 0.1, max: 20 },
    p: { meaning: 'first constant of the soil category', unit: '-', min: 1.9, max: 2.2 },
    q: { meaning: 'second constant', unit: '-', min: 0.08, max: 0.13 },
    n: { meaning: 'power', unit: '-', min: 0.6, max: 0.8 },
  },
  compute: (x: number, p: number, q: number, n: number) => (x / (p + q * x)) ** n,
  validity: 'fits to numerical solutions for water depths of 0.1 to 20 radii',
  source: 'Zhang, Groenevelt & Parkin 1998, Soil & Tillage Research 49 (journal and constants from memory)',
});

/** Rate at which the level in such a hole falls, over the permeability. */
export const holeFallRate = formula({
  title: 'Fall of the level in a hole over the permeability',
  symbol: '−(dH/dt)/K',
  unit: '-',
  expression: '(2*H^2 + C*a^2 + 2*H/s)/(C*a^2)',
  parameters: {
    H: { meaning: 'water depth', unit: 'm', min: 0.005, max: 3 },
    a: { meaning: 'radius of the hole', unit: 'm', min: 0.015, max: 0.5 },
    C: { meaning: 'shape factor', unit: '-', min: 0.05, max: 6 },
    s: { meaning: 'sorptive number α*', unit: '1/m', min: 1, max: 36 },
  },
  compute: (H: number, a: number, C: number, s: number) =>
    (2 * H * H + C * a * a + (2 * H) / s) / (C * a * a),
  validity: 'wetted once before, water table well below the floor, quasi-steady',
  source:
    'Reynolds et al. 2015, percolation time to field-saturated permeability, as on a public stormwater wiki (seen)',
});

export const fallingHole = method({
  title: 'Falling level in a hole above the water table',
  what: 'Permeability from a level falling in an unlined hole: pressure, gravity and capillary suck each counted.',
  assumptions: [
    'sorptive number by texture and structure (Elrick & Reynolds categories); a category off moves the result by up ' +
      'to a factor of about 1.5 in a deep narrow hole, more in a shallow wide one',
    'one kind of soil round the wetted part; the water table below the floor',
    'the falling level is integrated, not averaged',
  ],
  source: 'Reynolds et al. 2015; Zhang et al. 1998 for the shape factor',
});

/** Constants of the shape factor by sorptive number, 1/m. */
const SHAPE: [sorptive: number, p: number, q: number, n: number][] = [
  [9, 2.074, 0.093, 0.754],
  [4, 1.992, 0.091, 0.683],
  [1, 2.081, 0.121, 0.672],
];

/** What a hole's test needs to know besides its looks. Lengths m. */
export interface HoleTest {
  diameter: number;
  /** 1/m, see `sorptiveNumber` */
  sorptive: number;
  /** hole depth, and the depth to the water table where it is known; below the ground */
  holeDepth?: number;
  tableDepth?: number;
  /** absent: not known */
  soakedBefore?: boolean;
  /** one standard deviation of a look; absent: {@link TAPE_ERROR} */
  tape?: number;
}

/**
 * G of the shape-factor method: the integral of dH over the fall rate, from the floor up, by Simpson's rule.
 * @param radius - of the hole, m
 * @param sorptive - α*, 1/m
 * @returns G, m, as a function of the level above the floor, m, and its derivative
 */
function holePotential(radius: number, sorptive: number): Pick<TestGeometry, 'potential' | 'slope'> {
  const [, p, q, n] = SHAPE.find(([least]) => sorptive >= least) ?? SHAPE[2];
  const slope = (H: number) =>
    1 / holeFallRate.compute(H, radius, holeShapeFactor.compute(H / radius, p, q, n), sorptive);
  // In the root of the level: the integrand is smooth in it down to the floor.
  const term = (u: number) => (u === 0 ? 0 : 2 * u * slope(u * u));
  const potential = (level: number) => {
    const steps = 400;
    const end = Math.sqrt(level);
    let sum = term(0) + term(end);
    for (let i = 1; i < steps; i++) sum += (i % 2 ? 4 : 2) * term((i * end) / steps);
    return (sum * end) / steps / 3;
  };
  return { potential, slope };
}

/**
 * Permeability from a falling level in a hole by the shape-factor method, see {@link fallingHole}.
 * @param readings - at least two: time, s; level above the floor of the hole, m, shrinking
 * @param hole - diameter, 0.03 to 1 m, and sorptive number, 1/m
 * @returns permeability of the ground, m/s, with its spread
 * @throws FieldTestError when the readings or the hole cannot be interpreted, or the hole reaches below the water table
 */
export function fallingHoleTest(readings: LevelReading[], hole: HoleTest): PermeabilityTest {
  refuseBelowTable(hole);
  const radius = hole.diameter / 2;
  if (!(radius >= 0.015 && radius <= 0.5))
    throw new FieldTestError(
      'geometry',
      `diameter ${hole.diameter} m is outside 0.03 to 1 m`,
      'Measure the hole across again.',
    );
  return fitLevels(
    readings,
    {
      method: 'falling level in a hole (shape factor)',
      ...holePotential(radius, hole.sorptive),
      kind: 'falling',
      methodSpread: 0.5,
      bias: soakBias(hole),
    },
    hole.tape,
  );
}

/**
 * A hole that reaches below the water table fills by itself: a falling test there measures the difference.
 * @param hole - its depth and that of the water table, m below the ground; where either is not known nothing is refused
 * @throws FieldTestError where the hole reaches below the table
 */
function refuseBelowTable({ holeDepth, tableDepth }: Pick<HoleTest, 'holeDepth' | 'tableDepth'>): void {
  if (holeDepth !== undefined && tableDepth !== undefined && tableDepth < holeDepth)
    throw new FieldTestError(
      'below-table',
      `invalid hole depth ${holeDepth} m: the water table stands at ${tableDepth} m, above the floor`,
      'Bail the hole and watch it recover instead (auger-hole method), or test a shallower hole.',
    );
}

/**
 * Dry soil drinks first.
 * @param hole - whether it was soaked before
 * @returns what the test may be wrong by, in words; empty where it was soaked
 */
function soakBias({ soakedBefore }: Pick<HoleTest, 'soakedBefore'>): string[] {
  return soakedBefore === false ? ['not soaked before: reads high, dry soil drinks first'] : [];
}
