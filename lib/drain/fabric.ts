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
