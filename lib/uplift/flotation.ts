import { formula, UNIT_WEIGHT_OF_WATER } from '../formula/index.js';

const W = UNIT_WEIGHT_OF_WATER;

/** Use of the resistance against uplift in limit-state form. */
export const upliftUtilisation = formula({
  title: 'Utilisation against uplift or heave (EN 1997-1, UPL and HYD)',
  symbol: 'Λ',
  unit: '-',
  expression: 'a*U/(b*G)',
  parameters: {
    a: { meaning: 'factor on what lifts (UPL 1.0, UK annex 1.1; HYD 1.35)', unit: '-', min: 1, max: 1.5 },
    U: { meaning: 'what lifts: uplift, pore pressure or seepage force', unit: 'N or Pa', min: 0, max: 1e9 },
    b: { meaning: 'factor on what holds (0.9)', unit: '-', min: 0.5, max: 1 },
    G: {
      meaning: 'what holds: weight, total stress or submerged weight',
      unit: 'N or Pa',
      min: 1e-6,
      max: 1e9,
    },
  },
  compute: (a: number, U: number, b: number, G: number) => (a * U) / (b * G),
  validity: 'at most 1 is verified; friction at the sides left out',
  source: 'EN 1997-1:2004, 2.4.7.4 and 2.4.7.5, Annex A.4 and A.5; Bond & Harris 2008',
});

/**
 * Partial factors of EN 1997-1 on what lifts, `variable` where that varies, and on what holds: recommended, and of the UK
 * annex. Table A.15 was read as a handbook on piles reprints it; 1.1 of the UK annex in worked examples, its 1.5 not seen.
 */
export const EUROCODE_7 = {
  uplift: { lifts: 1.0, variable: 1.5, holds: 0.9 },
  upliftUk: { lifts: 1.1, variable: 1.5, holds: 0.9 },
  heave: { lifts: 1.35, holds: 0.9 },
};

/** Factors of EM 1110-2-2100 (2005), table 3-4, by how often the load comes; from memory, its equation 3-2 was read. */
export const USACE_FLOTATION = { usual: 1.3, unusual: 1.2, extreme: 1.1 };

const weight = (meaning: string) => ({ meaning, unit: 'N', min: 0, max: 1e9 });
const volume = (meaning: string) => ({ meaning, unit: 'm³', min: 0.01, max: 1e5 });
const C = weight('weight of the structure, and of water in it');
const S = weight('weight of soil on it');
const a = volume('volume of the structure');
const b = volume('volume of that soil');
const i = volume('volume it keeps empty of groundwater');

/** All that weighs over all that is displaced. */
export const totalWeightFactor = formula({
  title: 'Flotation factor, total weights over all displaced water',
  symbol: 'FS',
  unit: '-',
  expression: '(C + S)/(9810*(a + b + i))',
  parameters: { C, S, a, b, i },
  compute: (C: number, S: number, a: number, b: number, i: number) => (C + S) / (W * (a + b + i)),
  validity: 'all of it under water; friction of the ground left out',
  source: 'statics; one of three bookkeepings of one tank in a public discussion (second-hand)',
});

/** Soil counted under water, its volume not among what is displaced. */
export const usaceFlotationFactor = formula({
  title: 'Flotation factor, EM 1110-2-2100',
  symbol: 'FS',
  unit: '-',
  expression: '(C + S - 9810*b)/(9810*(a + i))',
  parameters: { C, S, a, b, i },
  compute: (C: number, S: number, a: number, b: number, i: number) => (C + S - W * b) / (W * (a + i)),
  validity:
    'soil over the structure under water: submerged weight, and uplift less the water above the structure',
  source: 'USACE EM 1110-2-2100 (2005) equation 3-2',
});

/** The same by the square metre of a floor. */
export const flotationOfFloor = formula({
  title: 'Flotation factor by the square metre of floor, EM 1110-2-2100',
  symbol: 'FS',
  unit: '-',
  expression: 'w/(9810*h)',
  parameters: {
    w: { meaning: 'pressure of what holds', unit: 'Pa', min: 0, max: 1e6 },
    h: { meaning: 'head that lifts', unit: 'm', min: 0.001, max: 20 },
  },
  compute: (w: number, h: number) => w / (W * h),
  validity: 'equation 3-2 with nothing but water and weight on the floor',
  source: 'USACE EM 1110-2-2100 (2005) equation 3-2',
});

/** Everything that holds counted under water, against the empty volume alone. */
export const submergedWeightFactor = formula({
  title: 'Flotation factor, submerged weights over the empty volume',
  symbol: 'FS',
  unit: '-',
  expression: '(C - 9810*a + S - 9810*b)/(9810*i)',
  parameters: { C, S, a, b, i },
  compute: (C: number, S: number, a: number, b: number, i: number) => (C - W * a + S - W * b) / (W * i),
  validity: 'the largest figure of the three for what is safe, the smallest for what is not',
  source: 'statics; one of three bookkeepings of one tank in a public discussion (second-hand)',
});

/** What keeps a body under water down and what it displaces; N and m³. */
export interface Floating {
  structure: { weight: number; volume: number };
  soil: { weight: number; volume: number };
  /** kept empty of groundwater */
  empty: number;
}

/** One convention's figure for a body. `answer` marks the one to go by. */
export interface FlotationFigure {
  convention: FlotationConvention;
  kind: 'factor' | 'utilisation';
  value: number;
  wanted: number;
  met: boolean;
  answer: boolean;
}

/** The convention to go by: EN 1997-1, because its bookkeeping can be redone on a scale and with a bucket. */
export const FLOTATION_WANTED = EUROCODE_7.uplift.lifts / EUROCODE_7.uplift.holds;

/** A convention for the factor of a body under water, by name. */
export type FlotationConvention =
  | 'total-weights'
  | 'eurocode'
  | 'eurocode-uk'
  | 'usace'
  | 'submerged-weights';

/**
 * Factors of a body under water by the published conventions, side by side; the first is the answer.
 * @param body - weight and volume of structure and of soil on it, N and m³, and the volume kept empty
 * @param load - how often the load comes, for the factor that EM 1110-2-2100 wants
 * @returns each with what is wanted and whether it is met
 */
export function flotationFigures(
  { structure, soil, empty }: Floating,
  load: keyof typeof USACE_FLOTATION = 'usual',
): FlotationFigure[] {
  const args = [structure.weight, soil.weight, structure.volume, soil.volume, empty] as const;
  const uplift = W * (structure.volume + soil.volume + empty);
  const factor = (
    convention: FlotationConvention,
    value: number,
    wanted: number,
    answer = false,
  ): FlotationFigure => ({
    convention,
    kind: 'factor',
    value,
    wanted,
    met: value >= wanted,
    answer,
  });
  const eurocode = (
    convention: FlotationConvention,
    { lifts, holds }: { lifts: number; holds: number },
  ): FlotationFigure => {
    const value = upliftUtilisation.compute(lifts, uplift, holds, structure.weight + soil.weight);
    return { convention, kind: 'utilisation', value, wanted: 1, met: value <= 1, answer: false };
  };
  return [
    factor('total-weights', totalWeightFactor.compute(...args), FLOTATION_WANTED, true),
    eurocode('eurocode', EUROCODE_7.uplift),
    eurocode('eurocode-uk', EUROCODE_7.upliftUk),
    factor('usace', usaceFlotationFactor.compute(...args), USACE_FLOTATION[load]),
    factor('submerged-weights', submergedWeightFactor.compute(...args), 1),
  ];
}
