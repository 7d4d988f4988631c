import { formula } from '../formula/index.js';

/** A class of drainage fabric: what it may let through at most, and must at least. */
export interface FabricRule {
  /** largest apparent opening size, m */
  opening: number;
  /** least permittivity, 1/s */
  permittivity: number;
}

/**
 * Drainage fabric by the soil's fines. AASHTO M 288 as quoted in UFGS 02373, where the third row is misprinted
 * 'greater than 15 percent' (50 is meant).
 * @param fines - share finer than 0.075 mm, 0–1
 * @returns largest opening, m, and least permittivity, 1/s
 */
export function fabricRule(fines: number): FabricRule {
  if (fines < 0.15) return { opening: 4.3e-4, permittivity: 0.5 };
  if (fines <= 0.5) return { opening: 2.5e-4, permittivity: 0.2 };
  return { opening: 2.2e-4, permittivity: 0.1 };
}

/** Share of fines above which one design manual wants no fabric but sand (UFC 3-270-04: 85 %). */
const FABRIC_DOUBTFUL = 0.85;

/**
 * Whether a soil is so fine that a fabric straight on it may clog.
 * @param fines - share finer than 0.075 mm, 0–1
 * @returns true where it may
 */
export function fabricDoubtful(fines: number): boolean {
  return fines > FABRIC_DOUBTFUL;
}

/** Flow through a fabric. */
export const fabricFlow = formula({
  title: 'Flow through a fabric (permittivity)',
  symbol: 'Q',
  unit: 'm³/s',
  expression: 'p*h*A/r',
  parameters: {
    p: { meaning: 'permittivity', unit: '1/s', min: 0.01, max: 5 },
    h: { meaning: 'head lost through the fabric', unit: 'm', min: 0, max: 1 },
    A: { meaning: 'area', unit: 'm²', min: 0, max: 500 },
    r: { meaning: 'how many times it has clogged', unit: '-', min: 1, max: 1000 },
  },
  compute: (p: number, h: number, A: number, r: number) => (p * h * A) / r,
  validity: 'water through a sheet; twenty times clogged it still passes hundreds of times what clay yields',
  source: 'definition of permittivity, ASTM D4491',
});
