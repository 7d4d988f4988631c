import type { LogEstimate } from './estimate.js';
import type { Texture } from './words.js';

/**
 * Drainable porosity (specific yield) by texture, m³/m³: water released between saturation and 1 m suction.
 * Clay, silty clay, silty clay loam, clay loam and sandy loam are medians over Oklahoma Mesonet horizons
 * (20–54 each, r-cran-ncdfgeom 1.1.4); a clay low in the profile releases less, so it is set at 0.03 (FAO 62:
 * 0.01–0.02 massive, 0.01–0.03 fine blocky). Sands after Johnson 1967 (second-hand). The rest: interpolated,
 * common practice.
 */
const MEDIAN: Record<Texture, number> = {
  sand: 0.25,
  'loamy sand': 0.2,
  'sandy loam': 0.131,
  loam: 0.09,
  'silt loam': 0.08,
  silt: 0.08,
  'sandy clay loam': 0.07,
  'clay loam': 0.05,
  'silty clay loam': 0.045,
  'sandy clay': 0.05,
  'silty clay': 0.035,
  clay: 0.03,
  peat: 0.25,
  'made ground': 0.1,
  gravel: 0.22,
  rock: 0.02,
};

/**
 * Drainable porosity of a texture with its spread (0.4 in ln, about a factor 1.5: common practice).
 * @param texture - of the layer
 * @returns share of the volume, 0–1
 */
export function drainablePorosity(texture: Texture): LogEstimate {
  return { median: MEDIAN[texture], spread: 0.4, evidence: [`table for ${texture}`] };
}
