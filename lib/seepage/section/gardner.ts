/** Relative conductivity left in dry soil: films. Keeps every cell part of the whole. */
const FILM = 1e-8;

/** Conductivity at a pressure head over that of full soil, by Gardner's law and the films of dry soil. */
function relativeConductivity(sorptive: number, pressure: number): number {
  return pressure >= 0 ? 1 : FILM + (1 - FILM) * Math.exp(sorptive * pressure);
}

/** Its slope, 1/m. */
function conductivitySlope(sorptive: number, pressure: number): number {
  return pressure >= 0 ? 0 : (1 - FILM) * sorptive * Math.exp(sorptive * pressure);
}

/** Its integral, m. */
function flowPotential(sorptive: number, pressure: number): number {
  if (pressure >= 0) return pressure + (1 - FILM) / sorptive;
  return FILM * pressure + ((1 - FILM) * Math.exp(sorptive * pressure)) / sorptive;
}

/** αΔp below which the mean is taken at the middle: the difference of integrals would lose its digits. */
const ALIKE = 1e-4;

/**
 * Mean of the relative conductivity between two pressure heads, by its integral: level flow through uniform soil comes
 * out exactly. Symmetric in the two.
 */
export function meanConductivity(sorptive: number, a: number, b: number): number {
  if (a >= 0 && b >= 0) return 1;
  if (Math.abs(sorptive * (a - b)) < ALIKE) return relativeConductivity(sorptive, (a + b) / 2);
  return (flowPotential(sorptive, a) - flowPotential(sorptive, b)) / (a - b);
}

/** Slope of that mean with the first pressure head, 1/m; `mean` is the mean itself. */
export function meanSlope(sorptive: number, a: number, b: number, mean: number): number {
  if (a >= 0 && b >= 0) return 0;
  if (Math.abs(sorptive * (a - b)) < ALIKE) return conductivitySlope(sorptive, (a + b) / 2) / 2;
  return (relativeConductivity(sorptive, a) - mean) / (a - b);
}

/** Largest part of its conductivity that a cell may lose in one step of Newton. */
const LOSS = 0.98;

/**
 * A step of Newton taken in the flow potential instead of the pressure head, in which Gardner's law is straight: a
 * drying cell goes further than its tangent, a wetting one less far.
 * @param step - of Newton, m
 * @returns change of the pressure head, m
 */
export function potentialStep(sorptive: number, pressure: number, step: number): number {
  const exponent = sorptive * pressure;
  if (exponent < 0) {
    const before = Math.exp(exponent);
    if (before < FILM) return step;
    const gain = Math.max(sorptive * step, -LOSS);
    const after = before * (1 + gain);
    return after > 1 ? (after - 1) / sorptive - pressure : Math.log1p(gain) / sorptive;
  }
  const after = exponent + 1 + sorptive * step;
  return after >= 1 ? step : Math.log(Math.max(after, 1 - LOSS)) / sorptive - pressure;
}
