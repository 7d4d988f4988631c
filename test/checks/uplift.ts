import {
  ballastHead,
  boilingFactor,
  columnPorePressure,
  criticalGradient,
  deepestCut,
  drainedGravelThickness,
  excessTaken,
  fillTime,
  gasInflow,
  gatheringRadius,
  gravelOnSlope,
  heaveFactor,
  netHead,
  netPressure,
  planWithin,
  rimMoment,
  rimPush,
  saturatedUnitWeight,
  seepageForce,
  sideInset,
  slabThickness,
  submergedGravelThickness,
  submergedUnitWeight,
  submergedWeightFactor,
  totalWeightFactor,
  upliftUtilisation,
  usaceFlotationFactor,
  ventFlow,
  waterOverPlug,
  waterPressure,
} from '../../lib/uplift/index.js';
import type { Check } from './check.js';
import { sideChecks } from './upliftSides.js';

const LB = 4.4482216152605;
const FT = 0.3048;
const LB_FT3 = LB / FT ** 3;
const BOND_HARRIS = 'Bond & Harris 2008, example on EN 1997-1 HYD at a cut-off';

/** The tank of a public discussion: concrete, soil on its lip and inside, ft³. */
const TANK = [340 * 150 * LB, 384 * 110 * LB, 340 * FT ** 3, 384 * FT ** 3, 256 * FT ** 3] as const;
/** That tank, so light that it just floats. */
const FLOATS = [9810 * 980 * FT ** 3 - TANK[1], TANK[1], TANK[2], TANK[3], TANK[4]] as const;
const conventions = { totalWeightFactor, usaceFlotationFactor, submergedWeightFactor };
const printed = { totalWeightFactor: 1.52, usaceFlotationFactor: 1.86, submergedWeightFactor: 3.0 };

/** Midpoint sum of a function over 0 to h. */
function summed(h: number, f: (z: number) => number, n = 20000): number {
  let sum = 0;
  for (let i = 0; i < n; i++) sum += (f(((i + 0.5) * h) / n) * h) / n;
  return sum;
}

export const upliftChecks: Check[] = [
  {
    covers: ['excessTaken'],
    what: 'a pond of 12 m² over a floor of 4 m², its level and the water outside made one by 20 mm over the floor, mm',
    kind: 'exact',
    source: 'balance of volumes: 0.02 × 4 m³ under the liner raise 12 m² by 6.667 mm',
    ours: () => 1000 * excessTaken.compute(0.02, 4, 12),
    expected: (1000 * 0.02 * 4) / 12,
    tolerance: 1e-9,
  },
  {
    covers: ['submergedUnitWeight'],
    what: 'submerged unit weight of 120 lb/ft³ at 2.75, lb/ft³',
    kind: 'published',
    source: 'worksheet after ACPA Design Data 41 (1996), manhole flotation: 76 lb/ft³',
    ours: () => submergedUnitWeight.compute(120 * LB_FT3, 2.75) / LB_FT3,
    expected: 76,
    tolerance: 0.5,
  },
  {
    covers: ['criticalGradient'],
    what: 'critical gradient at G = 2.696, n = 0.44',
    kind: 'published',
    source: 'worked example, public question bank (curioustab item 67082): 0.95',
    ours: () => criticalGradient.compute(2.696, 0.44),
    expected: 0.95,
    tolerance: 0.005,
  },
  {
    covers: ['heaveFactor'],
    what: 'critical thickness of clay: weight equals pressure at factor 1',
    kind: 'exact',
    source: 'total stress equals pore pressure',
    ours: () => heaveFactor.compute(19620, 2, 4),
    expected: 1,
    tolerance: 1e-12,
  },
  {
    covers: ['slabThickness', 'ballastHead'],
    what: 'a slab sized for a head holds exactly that head, m',
    kind: 'exact',
    source: 'statics, both ways round',
    ours: () => ballastHead.compute(24000 - 9810, slabThickness.compute(1, 0.25, 24000)),
    expected: 0.25,
    tolerance: 1e-12,
  },
  {
    covers: ['waterPressure'],
    what: 'pressure of 1 ft of water, lb/ft²',
    kind: 'published',
    source: 'unit weight of water 62.4 lb/ft³ (every US handbook)',
    ours: () => waterPressure.compute(0.3048) / 47.88025898,
    expected: 62.4,
    tolerance: 0.06,
  },
  {
    covers: ['netHead'],
    what: 'a pond level with the water outside has no net head, m',
    kind: 'exact',
    source: 'limit',
    ours: () => netHead.compute(0.07, 0.07),
    expected: 0,
    tolerance: 0,
  },
  {
    covers: ['sideInset', 'planWithin'],
    what: 'a round pond of 4 m with sides of 1 in 2 and a shelf of 0.3 m is a circle of 1.2 m radius at 1 m',
    kind: 'exact',
    source: 'area of a circle',
    ours: () => planWithin.compute(Math.PI / 4, 4, 4, sideInset.compute(0.5, 1, 0.3)),
    expected: Math.PI * 1.2 ** 2,
    tolerance: 1e-12,
  },
  {
    covers: ['gatheringRadius'],
    what: 'half of what a circle of 3 m and one of 4 m together hold is a circle of 3.5355 m',
    kind: 'exact',
    source: 'Pythagoras: 3² + 4² = 5², halved',
    ours: () => gatheringRadius.compute(Math.PI * 9, Math.PI * 16),
    expected: 5 / Math.SQRT2,
    tolerance: 1e-12,
  },
  {
    covers: ['fillTime'],
    what: 'volume: time times inflow over the floor is the depth, m',
    kind: 'exact',
    source: 'conservation',
    ours: () => (fillTime.compute(0.02, 3, 1e-6) * 1e-6) / 3,
    expected: 0.02,
    tolerance: 1e-15,
  },
  ...Object.entries(conventions).flatMap(([name, convention]): Check[] => [
    {
      covers: [name],
      what: `factor of one tank, ${convention.title}`,
      kind: 'recalled',
      source: 'worked numbers of a public discussion, second-hand; 62.4 lb/ft³ there, 62.45 here',
      ours: () => convention.compute(...TANK),
      expected: printed[name as keyof typeof printed],
      tolerance: 0.012,
    },
    {
      covers: [name],
      what: `the body that just floats has factor 1, ${convention.title}`,
      kind: 'exact',
      source: 'Archimedes: weight equals displaced water, however it is booked',
      ours: () => convention.compute(...FLOATS),
      expected: 1,
      tolerance: 1e-12,
    },
  ]),
  {
    covers: ['columnPorePressure'],
    what: 'pore pressure under 3.2 m with an upward gradient of 0.2933, kPa',
    kind: 'published',
    source: BOND_HARRIS,
    ours: () => columnPorePressure.compute(0.2933, 3.2) / 1000,
    expected: 40.6,
    tolerance: 0.05,
  },
  {
    covers: ['seepageForce'],
    what: 'seepage force on that column, kPa',
    kind: 'published',
    source: BOND_HARRIS,
    ours: () => seepageForce.compute(0.2933, 3.2) / 1000,
    expected: 9.2,
    tolerance: 0.05,
  },
  {
    covers: ['upliftUtilisation'],
    what: 'design pore pressure over design total stress of that column',
    kind: 'published',
    source: BOND_HARRIS,
    ours: () => upliftUtilisation.compute(1.35, 40.6, 0.9, 62.4),
    expected: 54.8 / 56.2,
    tolerance: 0.002,
  },
  {
    covers: ['saturatedUnitWeight'],
    what: 'saturated unit weight at G = 2.7 and e = 0.81, kN/m³',
    kind: 'published',
    source: 'worked example, public question bank (ques10 item 32989): 19.02',
    ours: () => saturatedUnitWeight.compute(2.7, 0.81) / 1000,
    expected: 19.02,
    tolerance: 0.005,
  },
  {
    covers: ['deepestCut'],
    what: 'deepest cut in 8 m of that clay over 3 m of artesian head, m',
    kind: 'published',
    source: 'worked example, public question bank (ques10 item 32989): 6.45',
    ours: () => deepestCut.compute(8, 1, 3, 19020),
    expected: 6.45,
    tolerance: 0.005,
  },
  {
    covers: ['deepestCut', 'heaveFactor'],
    what: 'the deepest cut at a factor has that factor',
    kind: 'exact',
    source: 'one equation both ways',
    ours: () => heaveFactor.compute(18500, 3 - deepestCut.compute(3, 1.25, 2.2, 18500), 2.2),
    expected: 1.25,
    tolerance: 1e-12,
  },
  {
    covers: ['boilingFactor', 'criticalGradient'],
    what: 'at the critical gradient the factor is 1',
    kind: 'exact',
    source: 'limit',
    ours: () => boilingFactor.compute(2.65, 0.4, 0.5, 0.5 * criticalGradient.compute(2.65, 0.4)),
    expected: 1,
    tolerance: 1e-12,
  },
  {
    covers: ['netPressure'],
    what: 'under both waters the net pressure is that of the net head, Pa',
    kind: 'exact',
    source: 'hydrostatics: the depth of the point drops out',
    ours: () => netPressure.compute(0.05, -0.3, -0.9) - waterPressure.compute(netHead.compute(0.05, -0.3)),
    expected: 0,
    tolerance: 1e-9,
  },
  {
    covers: ['drainedGravelThickness'],
    what: 'drained gravel as heavy as the water it answers, Pa left over',
    kind: 'exact',
    source: 'equilibrium at factor 1',
    ours: () => 16000 * drainedGravelThickness.compute(1, 0.4, 16000) - waterPressure.compute(0.4),
    expected: 0,
    tolerance: 1e-9,
  },
  {
    covers: ['submergedGravelThickness', 'submergedUnitWeight', 'ballastHead'],
    what: 'submerged gravel sized for an excess head holds it, m',
    kind: 'exact',
    source: 'equilibrium at factor 1, both ways round',
    ours: () =>
      ballastHead.compute(
        submergedUnitWeight.compute(16000, 2.65),
        submergedGravelThickness.compute(1, 0.15, 16000, 2.65),
      ),
    expected: 0.15,
    tolerance: 1e-12,
  },
  {
    covers: ['gravelOnSlope'],
    what: 'on a slope: friction of what still presses less the pull down the slope, Pa',
    kind: 'exact',
    source: 'equilibrium along the liner',
    ours: () => {
      const [h, s, b, d] = [0.15, 9900, 0.3, 0.45];
      const t = gravelOnSlope.compute(h, s, b, d);
      return (s * t * Math.cos(b) - 9810 * h) * Math.tan(d) - s * t * Math.sin(b);
    },
    expected: 0,
    tolerance: 1e-9,
  },
  {
    covers: ['rimPush'],
    what: 'push on a rim against the pressure summed over 20 000 strips, ratio',
    kind: 'exact',
    source: 'hydrostatics, numerical integration',
    ours: () => rimPush.compute(0.75) / summed(0.75, (z) => 9810 * z),
    expected: 1,
    tolerance: 1e-9,
  },
  {
    covers: ['rimMoment'],
    what: 'moment about the foot of a rim against strips, ratio',
    kind: 'exact',
    source: 'hydrostatics, numerical integration',
    ours: () => rimMoment.compute(0.75) / summed(0.75, (z) => 9810 * z * (0.75 - z)),
    expected: 1,
    tolerance: 1e-8,
  },
  {
    covers: ['gasInflow'],
    what: 'a table that rises 0.5 m through 3 % air under 12 m² drives out its pores, m³',
    kind: 'exact',
    source: 'conservation',
    ours: () => gasInflow.compute(12, 0, 0.03, 0.5 / 86400) * 86400,
    expected: 12 * 0.03 * 0.5,
    tolerance: 1e-12,
  },
  {
    covers: ['ventFlow'],
    what: 'pipe flow against the parabola of velocities summed over 20 000 rings, ratio',
    kind: 'exact',
    source: 'Navier–Stokes in a round pipe: v = Δp (R² − r²)/(4 μ L)',
    ours: () => {
      const [R, p, m, L] = [0.0125, 100, 1.8e-5, 3];
      const flow = summed(R, (r) => (2 * Math.PI * r * p * (R * R - r * r)) / (4 * m * L));
      return ventFlow.compute(2 * R, p, m, L) / flow;
    },
    expected: 1,
    tolerance: 1e-8,
  },
  ...sideChecks,
  {
    covers: ['waterOverPlug'],
    what: 'total stress over 1.25 times the pressure, with the water asked for on 0.6 m of clay of 18.5 kN/m³, head 1.5 m',
    kind: 'exact',
    source: 'balance of weights: (γ t + γw w) ÷ (1.25 γw h) = 1',
    ours: () => (18500 * 0.6 + 9810 * waterOverPlug.compute(1.25, 1.5, 18500, 0.6)) / (1.25 * 9810 * 1.5),
    expected: 1,
    tolerance: 1e-12,
  },
];
