import { method } from '../formula/index.js';
import type { UsdaClass } from './words.js';

export const greenAmptTable = method({
  title: 'Green–Ampt parameters by texture',
  what: 'Porosity, effective porosity, suction at the wetting front and conductivity of a texture class.',
  assumptions: [
    'means over about 5 000 horizons; the suction is right within a factor of about 5 (one standard deviation)',
    'the conductivity is about half the saturated one, for air trapped behind the front',
    'clay loam: copies print an effective porosity of 0.309, but the printed range 0.279–0.501 has its middle at ' +
      '0.390, as every other class has its value at the middle of its range; 0.390 is used',
    'the table has no silt; silt loam stands for it',
  ],
  source:
    'Rawls, Brakensiek & Miller 1983, J. Hydraulic Engineering 109:62–70 (values read in a teaching script, ranges from memory)',
});

/** Parameters of the wetting front. */
export interface GreenAmptParameters {
  porosity: number;
  /** porosity less what is never drained */
  effectivePorosity: number;
  /** suction head at the front, m */
  suction: number;
  /** m/s */
  conductivity: number;
}

/** class: porosity, effective porosity, suction (cm), conductivity (cm/h), as printed but for clay loam. */
const PRINTED: Record<Exclude<UsdaClass, 'silt'>, [number, number, number, number]> = {
  sand: [0.437, 0.417, 4.95, 11.78],
  'loamy sand': [0.437, 0.401, 6.13, 2.99],
  'sandy loam': [0.453, 0.412, 11.01, 1.09],
  loam: [0.463, 0.434, 8.89, 0.34],
  'silt loam': [0.501, 0.486, 16.68, 0.65],
  'sandy clay loam': [0.398, 0.33, 21.85, 0.15],
  'clay loam': [0.464, 0.39, 20.88, 0.1],
  'silty clay loam': [0.471, 0.432, 27.3, 0.1],
  'sandy clay': [0.43, 0.321, 23.9, 0.06],
  'silty clay': [0.479, 0.423, 29.22, 0.05],
  clay: [0.475, 0.385, 31.63, 0.03],
};

/**
 * Green–Ampt parameters of a texture class, SI.
 * @param texture - of the soil
 * @returns porosities 0–1, suction head m, conductivity m/s
 */
export function greenAmptParameters(texture: UsdaClass): GreenAmptParameters {
  const [porosity, effectivePorosity, cm, cmPerHour] = PRINTED[texture === 'silt' ? 'silt loam' : texture];
  return { porosity, effectivePorosity, suction: cm / 100, conductivity: cmPerHour / 360_000 };
}
