import { method } from '../formula/index.js';
import { InputError } from '../units/index.js';
import type { UsdaClass } from './words.js';

export const usdaTextureTriangle = method({
  title: 'USDA soil texture triangle',
  what: 'The texture class of a fine earth from its sand, silt and clay.',
  assumptions: [
    'percentages of the fraction below 2 mm, rounded to 0.1 % first',
    'a point on a limit belongs to the class as the 2009 wording reads it',
  ],
  source: 'Benham, Ahrens & Nettleton 2009, Clarification of Soil Texture Class Boundaries, USDA-NRCS',
});

/**
 * USDA texture class.
 * @param sand - mass fraction 0.05–2 mm, 0–1
 * @param clay - mass fraction below 0.002 mm, 0–1; silt is the rest
 * @returns one of the twelve classes of the USDA
 * @throws InputError when a fraction is below 0, or they exceed 1 together
 * @example
 * ```ts
 * textureClass(0.2, 0.5); // 'clay'
 * ```
 */
export function textureClass(sand: number, clay: number): UsdaClass {
  if (!(sand >= 0 && clay >= 0 && sand + clay <= 1 + 1e-9))
    throw new InputError(
      'invalid-input',
      `invalid texture: sand ${sand} and clay ${clay} must be 0 to 1 and at most 1 together`,
    );
  // Tenths of a percent as whole numbers: binary fractions put points on the wrong side of a limit.
  const s = Math.round(sand * 1000);
  const c = Math.round(clay * 1000);
  const z = 1000 - s - c;
  if (z + 1.5 * c < 150) return 'sand';
  if (z + 2 * c < 300) return 'loamy sand';
  if (c >= 400) return s > 450 ? 'sandy clay' : z >= 400 ? 'silty clay' : 'clay';
  if (c >= 350 && s > 450) return 'sandy clay';
  if (c >= 270) return s > 450 ? 'sandy clay loam' : s > 200 ? 'clay loam' : 'silty clay loam';
  if (z >= 800 && c < 120) return 'silt';
  if (z >= 500) return 'silt loam';
  if (c >= 200 && z < 280 && s > 450) return 'sandy clay loam';
  if (c >= 70 && z >= 280 && s <= 520) return 'loam';
  return 'sandy loam';
}
