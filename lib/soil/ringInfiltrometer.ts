import { formula, method } from '../formula/index.js';
import { FieldTestError, type PermeabilityTest } from './fieldTest.js';

/** Permeability from the second term of Philip's fit. */
export const philipConductivity = formula({
  title: "Permeability from the steady term of Philip's equation",
  symbol: 'K',
  unit: 'm/s',
  expression: '1.5*(A - 0.75*S^2/(a*m))',
  parameters: {
    A: { meaning: 'steady term', unit: 'm/s', min: 1e-9, max: 1e-3 },
    S: { meaning: 'sorptivity', unit: 'm/s½', min: 0, max: 0.01 },
    a: { meaning: 'radius of the ring', unit: 'm', min: 0.05, max: 10 },
    m: { meaning: 'moisture filled by the wetting', unit: 'm³/m³', min: 0.02, max: 0.5 },
  },
  compute: (A: number, S: number, a: number, m: number) => 1.5 * (A - (0.75 * S * S) / (a * m)),
  together: {
    says: '0.75*S^2/(a*m) <= A',
    holds: (A, S, a, m) => (0.75 * S * S) / (a * m) <= A,
  },
  validity:
    'steady term two thirds of K, as for a sharp front; a third to two thirds occur, so right within a factor of 1.5',
  source:
    'Philip 1969 for the share; Smettem et al. 1994, Water Resources Research 30, for the spread sideways (from memory)',
});

export const ringInfiltrometer = method({
  title: 'Ring infiltrometer, two-term fit',
  what: 'Sorptivity and permeability from water soaked into a ring: F = S√t + A t by least squares, K from A.',
  assumptions: [
    'ponded thinly from the start, readings within the time in which the square root counts',
    'no spread below the ring when it is driven deep; else the spread sideways is taken off',
  ],
  source: 'Philip 1957; Smettem et al. 1994 (from memory)',
});

/** A ring. Lengths m. */
export interface InfiltrometerRing {
  /** of the ring; absent: driven below the wetting, so that flow stays straight down */
  radius?: number;
  /** moisture filled by the wetting, m³/m³; needed with `radius` */
  deficit?: number;
  /** one standard deviation of a reading of water soaked in; absent: 0.001 */
  tape?: number;
}

/** The permeability, and the sorptivity: how fast dry soil drinks at first. */
export interface RingResult extends PermeabilityTest {
  /** m/s½ */
  sorptivity: number;
}

/**
 * Permeability and sorptivity from a ring, see {@link ringInfiltrometer}.
 * @param readings - at least three: s since ponding, above 0, and m of water soaked in since then; both growing
 * @param ring - its radius, the moisture it fills and the error of a look
 * @returns permeability m/s and sorptivity m/s½
 * @throws FieldTestError when the readings cannot be interpreted
 */
export function ringInfiltrometerTest(
  readings: { time: number; infiltrated: number }[],
  { radius, deficit, tape = 0.001 }: InfiltrometerRing = {},
): RingResult {
  check(readings, tape);
  let [xx, xt, tt, xf, tf] = [0, 0, 0, 0, 0];
  for (const { time: t, infiltrated: f } of readings) {
    const x = Math.sqrt(t);
    xx += t;
    xt += x * t;
    tt += t * t;
    xf += x * f;
    tf += t * f;
  }
  const det = xx * tt - xt * xt;
  const sorptivity = (xf * tt - tf * xt) / det;
  const steady = (tf * xx - xf * xt) / det;
  const scatter = readings.reduce(
    (sum, { time, infiltrated }) => sum + (infiltrated - sorptivity * Math.sqrt(time) - steady * time) ** 2,
    0,
  );
  const sigma = Math.max(tape, Math.sqrt(scatter / Math.max(readings.length - 2, 1)));
  const error = 1.5 * sigma * Math.sqrt(xx / det);
  const straight = radius === undefined || deficit === undefined;
  const k = straight ? 1.5 * steady : philipConductivity.compute(steady, sorptivity, radius, deficit);
  const base = {
    method: 'ring infiltrometer (Philip, two terms)',
    sorptivity,
    bias: ['the steady term is a third to two thirds of the permeability; two thirds is taken'],
  };
  if (k <= 2 * error)
    return { ...base, ksat: Math.max(k, 0) + 2 * error, reading: 0, spread: 0.4, says: 'slower than' };
  const reading = error / k;
  return { ...base, ksat: k, reading, spread: Math.hypot(reading, 0.4), says: 'value' };
}

function check(readings: { time: number; infiltrated: number }[], tape: number): void {
  if (readings.length < 3)
    throw new FieldTestError(
      'too-few',
      `missing readings: ${readings.length} of at least 3`,
      'Read more often in the first half hour.',
    );
  readings.forEach(({ time, infiltrated }, at) => {
    const before = readings[at - 1] ?? { time: 0, infiltrated: 0 };
    if (!(time > before.time))
      throw new FieldTestError(
        'time-order',
        `invalid time ${time} s after ${before.time} s: readings must follow each other, from above 0`,
        'Leave out the reading at the start and put the rest in order.',
      );
    if (infiltrated < before.infiltrated - 3 * tape)
      throw new FieldTestError(
        'wrong-way',
        `invalid ${infiltrated} m soaked in after ${before.infiltrated} m: water cannot come back`,
        'Add up the water poured in since the start.',
      );
  });
}
