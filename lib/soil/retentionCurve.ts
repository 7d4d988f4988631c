import { formula, method, UNIT_WEIGHT_OF_WATER } from '../formula/index.js';
import { InputError } from '../units/index.js';

/** How water is held and let through; water contents m³/m³. */
export interface Retention {
  wiltingPoint: number;
  fieldCapacity: number;
  saturation: number;
  /** suction at which air enters, Pa */
  airEntry: number;
  /** saturated hydraulic conductivity, m/s */
  permeability: number;
}

const source =
  'Saxton & Rawls 2006, Soil Sci. Soc. Am. J. 70:1569, eqs 4, 11–14, 17, 18 (equations read in public ports)';
const validity = 'the soil drying from saturation; no cracks';

/** First estimate of the air-entry suction. */
export const airEntryEstimate = formula({
  title: 'Air-entry suction, first estimate',
  symbol: 'ψet',
  unit: 'Pa',
  expression: '1000*(-21.67*S - 27.93*C - 81.97*d + 71.12*S*d + 8.29*C*d + 14.05*S*C + 27.16)',
  parameters: {
    S: { meaning: 'sand, mass fraction', unit: '-', min: 0, max: 1 },
    C: { meaning: 'clay, mass fraction', unit: '-', min: 0, max: 0.6 },
    d: { meaning: 'free water θS−33', unit: 'm³/m³', min: 0, max: 0.4 },
  },
  compute: (S: number, C: number, d: number) =>
    1000 * (-21.67 * S - 27.93 * C - 81.97 * d + 71.12 * S * d + 8.29 * C * d + 14.05 * S * C + 27.16),
  validity,
  source,
});

/** Suction at which the largest pores let air in. */
export const airEntrySuction = formula({
  title: 'Air-entry suction',
  symbol: 'ψe',
  unit: 'Pa',
  expression: 't + 0.00002*t^2 - 0.113*t - 700',
  parameters: { t: { meaning: 'first estimate', unit: 'Pa', min: 0, max: 40000 } },
  compute: (t: number) => t + 0.00002 * t * t - 0.113 * t - 700,
  validity,
  source,
});

export const retentionCurve = method({
  title: 'Retention curve',
  what:
    'Water held at a suction: full up to air entry, a straight line to 33 kPa, a power law to 1500 kPa; and from it ' +
    'the room above a water table at rest.',
  assumptions: ['suction at rest is the height above the table', 'drying curve; a wetting soil holds less'],
  source,
});

const FIELD_CAPACITY = 33_000;

/**
 * Room for water between a table at rest and the ground: what can soak in before the soil is full, m.
 * @param soil - its retention curve
 * @param depth - of the table, m below the ground, 0 to 3.36 (33 kPa)
 * @returns m of water
 * @throws InputError outside that range
 */
export function roomAboveTable(soil: Retention, depth: number): number {
  const deepest = FIELD_CAPACITY / UNIT_WEIGHT_OF_WATER;
  if (!(depth >= 0 && depth <= deepest))
    throw new InputError(
      'invalid-input',
      `depth to the water table ${depth} m is outside 0 to ${deepest.toFixed(2)} m`,
    );
  // The deficit grows in a straight line above the height of air entry.
  const top = Math.max(depth * UNIT_WEIGHT_OF_WATER - soil.airEntry, 0);
  const slope = (soil.saturation - soil.fieldCapacity) / (FIELD_CAPACITY - soil.airEntry);
  return (slope * top * top) / 2 / UNIT_WEIGHT_OF_WATER;
}
