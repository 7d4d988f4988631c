import { formula, type Parameter } from '../formula/index.js';
import { compactedFieldCapacity, compactedSaturation, stonyPermeabilityRatio } from './compactedSoil.js';
import { airEntryEstimate, airEntrySuction, type Retention } from './retentionCurve.js';

const S: Parameter = { meaning: 'sand, mass fraction', unit: '-', min: 0, max: 1 };
const C: Parameter = { meaning: 'clay, mass fraction', unit: '-', min: 0, max: 0.6 };
const M: Parameter = { meaning: 'organic matter, percent by mass', unit: '%', min: 0, max: 8 };
const source = 'Saxton & Rawls 2006, Soil Sci. Soc. Am. J. 70:1569–1578 (equations read in public ports)';
const validity = 'regression on US soils; clay below 60 %, organic matter below 8 %; no cracks or roots';

/** Water content at 1500 kPa suction. */
export const wiltingPoint = formula({
  title: 'Water content at wilting point (1500 kPa)',
  symbol: 'θ1500',
  unit: 'm³/m³',
  expression: '1.14*(-0.024*S + 0.487*C + 0.006*M + 0.005*S*M - 0.013*C*M + 0.068*S*C + 0.031) - 0.02',
  parameters: { S, C, M },
  compute: (S: number, C: number, M: number) =>
    1.14 * (-0.024 * S + 0.487 * C + 0.006 * M + 0.005 * S * M - 0.013 * C * M + 0.068 * S * C + 0.031) -
    0.02,
  validity,
  source,
});

/** First estimate of the water content at 33 kPa, corrected by {@link fieldCapacity}. */
export const fieldCapacityEstimate = formula({
  title: 'Water content at field capacity, first estimate',
  symbol: 'θ33t',
  unit: 'm³/m³',
  expression: '-0.251*S + 0.195*C + 0.011*M + 0.006*S*M - 0.027*C*M + 0.452*S*C + 0.299',
  parameters: { S, C, M },
  compute: (S: number, C: number, M: number) =>
    -0.251 * S + 0.195 * C + 0.011 * M + 0.006 * S * M - 0.027 * C * M + 0.452 * S * C + 0.299,
  validity,
  source,
});

/** Water content at 33 kPa from its first estimate. */
export const fieldCapacity = formula({
  title: 'Water content at field capacity (33 kPa)',
  symbol: 'θ33',
  unit: 'm³/m³',
  expression: 't + 1.283*t^2 - 0.374*t - 0.015',
  parameters: { t: { meaning: 'first estimate', unit: 'm³/m³', min: 0, max: 0.7 } },
  compute: (t: number) => t + 1.283 * t * t - 0.374 * t - 0.015,
  validity,
  source,
});

/** Water released between saturation and 33 kPa. */
export const freeWater = formula({
  title: 'Water between saturation and field capacity',
  symbol: 'θS−33',
  unit: 'm³/m³',
  expression: '1.636*(0.278*S + 0.034*C + 0.022*M - 0.018*S*M - 0.027*C*M - 0.584*S*C + 0.078) - 0.107',
  parameters: { S, C, M },
  compute: (S: number, C: number, M: number) =>
    1.636 * (0.278 * S + 0.034 * C + 0.022 * M - 0.018 * S * M - 0.027 * C * M - 0.584 * S * C + 0.078) -
    0.107,
  validity,
  source,
});

/** Saturated water content (porosity) from field capacity and free water. */
export const saturation = formula({
  title: 'Water content at saturation',
  symbol: 'θS',
  unit: 'm³/m³',
  expression: 'a + b - 0.097*S + 0.043',
  parameters: {
    a: { meaning: 'field capacity θ33', unit: 'm³/m³', min: 0, max: 0.8 },
    b: { meaning: 'free water θS−33', unit: 'm³/m³', min: -0.1, max: 0.6 },
    S,
  },
  compute: (a: number, b: number, S: number) => a + b - 0.097 * S + 0.043,
  validity,
  source,
});

/** Saturated hydraulic conductivity from the three water contents. */
export const saturatedPermeability = formula({
  title: 'Saturated hydraulic conductivity from retention',
  symbol: 'Ks',
  unit: 'm/s',
  expression: '1930*d^(3 - log(f/w)/log(1500/33))/3.6e6',
  parameters: {
    d: { meaning: 'saturation less field capacity, θS − θ33', unit: 'm³/m³', min: 0.01, max: 0.5 },
    f: { meaning: 'field capacity θ33', unit: 'm³/m³', min: 0.03, max: 0.6 },
    w: { meaning: 'wilting point θ1500', unit: 'm³/m³', min: 0.01, max: 0.4 },
  },
  compute: (d: number, f: number, w: number) =>
    (1930 * d ** (3 - Math.log(f / w) / Math.log(1500 / 33))) / 3.6e6,
  validity: 'matrix flow of an undisturbed topsoil-like soil; deep intact clay is far tighter',
  source,
});

/** What makes a soil differ from the usual one of its texture. */
export interface Adjustments {
  /** density over the usual density, 0.9 (loose) to 1.3 (severely compacted); absent: 1 */
  density?: number;
  /** stones, mass fraction of the whole soil, 0–0.9 */
  stones?: number;
}

/**
 * Water contents below which the regressions have run out of their soils: of clean sand at wilting point they would
 * come to less than none, m³/m³.
 */
const LEAST_WATER = 0.01;

/**
 * Retention and permeability of a soil by the Saxton & Rawls (2006) regressions. Stones lower the permeability only:
 * water contents stay those of the fine earth. Wilting point and drainable pores are 0.01 m³/m³ at least: clean sand and
 * organic clay leave the regressions' soils.
 * @param sand - mass fraction 0–1
 * @param clay - mass fraction 0–0.6
 * @param organicPercent - organic matter, 0–8 % by mass, as a percentage
 * @param adjustments - density over the usual one, and stones
 * @returns water contents m³/m³, suction Pa, permeability m/s
 * @example
 * ```ts
 * saxtonRawls(0.2, 0.5).fieldCapacity; // 0.421
 * ```
 */
export function saxtonRawls(
  sand: number,
  clay: number,
  organicPercent = 2.5,
  { density = 1, stones = 0 }: Adjustments = {},
): Retention {
  const w = Math.max(wiltingPoint.compute(sand, clay, organicPercent), LEAST_WATER);
  const usual = fieldCapacity.compute(fieldCapacityEstimate.compute(sand, clay, organicPercent));
  const free = freeWater.compute(sand, clay, organicPercent);
  const full = saturation.compute(usual, free, sand);
  const s = compactedSaturation.compute(full, density);
  const f = compactedFieldCapacity.compute(usual, full, s);
  return {
    wiltingPoint: w,
    fieldCapacity: f,
    saturation: s,
    airEntry: Math.max(airEntrySuction.compute(airEntryEstimate.compute(sand, clay, free)), 0),
    permeability:
      saturatedPermeability.compute(Math.max(s - f, LEAST_WATER), f, w) *
      stonyPermeabilityRatio.compute(stones, 1 - s),
  };
}
