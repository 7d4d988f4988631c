import {
  ballastHead,
  criticalGradient,
  fillTime,
  heaveFactor,
  netHead,
  seepingSlopeFactor,
  slabThickness,
  submergedUnitWeight,
  upliftUtilisation,
  uprightCut,
  waterPressure,
  wetCrackedCut,
} from '../../lib/uplift/index.js';
import type { Check } from './check.js';

const LB_FT3 = 157.0874606377;

export const upliftChecks: Check[] = [
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
    covers: ['upliftUtilisation'],
    what: 'utilisation of a box with the UK factors',
    kind: 'published',
    source: 'Bond & Harris 2008, example on EN 1997-1 UPL (922.6 against 839.8 kN/m: fails)',
    ours: () => upliftUtilisation.compute(1.1, 922.6 / 1.1, 0.9, 839.8 / 0.9),
    expected: 922.6 / 839.8,
    tolerance: 1e-9,
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
    covers: ['uprightCut'],
    what: 'upright cut with c = 30 kPa, γ = 15 kN/m³, m',
    kind: 'published',
    source: 'worked example, public question bank (askfilo): 8 m',
    ours: () => uprightCut.compute(30000, 15000),
    expected: 8,
    tolerance: 0.005,
  },
  {
    covers: ['wetCrackedCut'],
    what: 'plane wedge with a full crack to half height: moment of forces left over, kN/m',
    kind: 'exact',
    source: '2c(H−z) = γ(H²−z²)/2 + γw z²/2 at z = H/2 (Terzaghi 1943 wedge)',
    ours: () => {
      const [c, g] = [20000, 18000];
      const H = wetCrackedCut.compute(c, g);
      const z = H / 2;
      return 2 * c * (H - z) - (g * (H * H - z * z)) / 2 - (9810 * z * z) / 2;
    },
    expected: 0,
    tolerance: 1e-6,
  },
  {
    covers: ['seepingSlopeFactor'],
    what: 'slope angle with factor 1.5 at φ = 34°, γ = 18, γw = 10 kN/m³, degrees',
    kind: 'published',
    source: 'GATE Civil 2014 Q16 (with γw = 10; ours is put in with the same ratio γw/γ): 11.3°',
    ours: () => {
      const flat = seepingSlopeFactor.compute((18000 * 9810) / 10000, (34 * Math.PI) / 180, Math.PI / 4);
      return (Math.atan(flat / 1.5) * 180) / Math.PI;
    },
    expected: 11.3,
    tolerance: 0.05,
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
    covers: ['fillTime'],
    what: 'volume: time times inflow over the floor is the depth, m',
    kind: 'exact',
    source: 'conservation',
    ours: () => (fillTime.compute(0.02, 3, 1e-6) * 1e-6) / 3,
    expected: 0.02,
    tolerance: 1e-15,
  },
];
