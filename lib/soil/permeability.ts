import { method } from '../formula/index.js';
import type { LogEstimate } from './estimate.js';
import type { PermeabilityTest } from './fieldTest.js';
import { saxtonRawls } from './saxtonRawls.js';
import { TYPICAL_COMPOSITION } from './typicalComposition.js';
import type { OtherGround, Structure, Texture, UsdaClass } from './words.js';

export const permeabilityEstimate = method({
  title: 'Permeability of a layer by its texture and structure',
  what:
    'Median and spread of the saturated conductivity of a layer before any test: the texture regression moved by ' +
    'structure and stones.',
  assumptions: [
    'log-normal; a table value for clay is right within a factor of about 10 (one standard deviation 1.6 in ln)',
    'massive clay a tenth, cracked clay ten times the regression (FAO Irrigation and Drainage Paper 62, Annex 1, ' +
      'partly seen: massive 0.01–0.05 m/d, with permanent wide cracks above 10 m/d)',
    'one measurement is right within a factor of 2 (0.7 in ln) and layers differ by 0.4 in ln from hole to hole: ' +
      'our choice, common practice',
  ],
  source: 'Saxton & Rawls 2006; FAO Irrigation and Drainage Paper 62; common practice for the spreads',
});

/** m/s, with the spread of the logarithm. Common practice; Freeze & Cherry 1979 Table 2.2 from memory. */
const OTHER: Record<OtherGround, { median: number; spread: number }> = {
  peat: { median: 1e-6, spread: 2 },
  'made ground': { median: 1e-6, spread: 2.3 },
  gravel: { median: 3e-3, spread: 1.2 },
  rock: { median: 1e-8, spread: 2.5 },
};

/** Factor on the regression by structure, for soils with at least 20 % clay. */
const STRUCTURE_FACTOR: Record<Structure, number> = { massive: 0.1, blocky: 1, cracked: 10, rooted: 3 };

/** What the pit log says of a layer. */
export interface Composition {
  texture: Texture;
  /** mass fractions of the fine earth, 0–1, when the pit log has them */
  sand?: number;
  clay?: number;
  /** percent by mass; absent: 1 */
  organicPercent?: number;
  structure?: Structure;
  /** mass fraction of the whole soil, 0–0.9; absent: none */
  stones?: number;
}

/**
 * The composition the regressions are evaluated for: what was measured, clay counted as 0.6 at most, else typical of the
 * class; of a loam where the ground has no class.
 * @param layer - of the pit log
 * @returns mass fractions of sand and clay, 0–1, and whether they were measured
 */
export function compositionOf(layer: Composition): { sand: number; clay: number; measured: boolean } {
  if (layer.sand !== undefined && layer.clay !== undefined) {
    // Percentages may miss 100 by a rounding.
    const all = Math.max(layer.sand + layer.clay, 1);
    return { sand: layer.sand / all, clay: Math.min(layer.clay / all, 0.6), measured: true };
  }
  const { sand, clay } = TYPICAL_COMPOSITION[layer.texture as UsdaClass] ?? TYPICAL_COMPOSITION.loam;
  return { sand, clay, measured: false };
}

/**
 * Permeability from the pit log alone, see {@link permeabilityEstimate}.
 * @param layer - of the pit log
 * @returns m/s, with its spread
 */
export function permeabilityFromTexture(layer: Composition): LogEstimate {
  if (layer.texture in OTHER) {
    const { median, spread } = OTHER[layer.texture as OtherGround];
    return { median, spread, evidence: [`table for ${layer.texture}`] };
  }
  const { sand, clay, measured } = compositionOf(layer);
  const { permeability } = saxtonRawls(sand, clay, Math.min(layer.organicPercent ?? 1, 8), {
    stones: layer.stones,
  });
  const clayey = clay >= 0.2;
  const factor = clayey && layer.structure ? STRUCTURE_FACTOR[layer.structure] : 1;
  const evidence = [
    measured ? 'texture regression for the measured percentages' : `table for ${layer.texture}`,
  ];
  if (factor !== 1) evidence.push(`${layer.structure} structure`);
  return { median: permeability * factor, spread: clayey ? 1.6 : 0.9, evidence };
}

/** One measurement is right within a factor of 2, standard deviation of the logarithm. */
const MEASURED_SPREAD = 0.7;

/**
 * A permeability (m/s) measured by someone who does not say how, as a test.
 * @param permeability - m/s, above 0
 * @returns a test with the spread of a method unknown
 */
export function measuredPermeability(permeability: number): PermeabilityTest {
  return {
    method: 'a measurement',
    permeability,
    reading: 0,
    spread: MEASURED_SPREAD,
    says: 'value',
    bias: [],
  };
}
