import { method, SECONDS_PER_DAY } from '../formula/index.js';
import { UnderpondError } from '../units/index.js';

export const fieldTestReading = method({
  title: 'Permeability from a level falling or rising in a hole',
  what:
    'Every such test has K·t = G(level at the start) − G(level), with G from the geometry alone: a weighted straight ' +
    "line through G against time gives the permeability, and the tape's error its spread.",
  assumptions: [
    'each look is off by the reading error of the tape, one standard deviation, all looks alike',
    'where the looks scatter more than that, the spread grows with the scatter',
    'slower than the test can resolve: a fall within two standard deviations of none, or no faster than an open hole ' +
      'evaporates (2 mm a day, common practice), bounds the permeability from above and gives no number',
    'an augered wall is smeared: in cracked or blocky clay it hides one to two orders of magnitude; a trench shows more',
  ],
  source:
    'weighted least squares; McKay, Cherry & Gillham 1993, Water Resources Research 29 (abstract) for the smear',
});

/** A look at the water: s since the start; m above the floor in a falling test, m below rest in a recovery. */
export interface LevelReading {
  time: number;
  level: number;
}

/** What a test says of the permeability around it. */
export interface PermeabilityTest {
  method: string;
  /** m/s; the bound where `says` is not 'value' */
  permeability: number;
  /** standard deviation of its natural logarithm from the readings alone */
  reading: number;
  /** the same with what the method leaves out */
  spread: number;
  says: 'value' | 'slower than' | 'faster than';
  /** what makes it read high or low, in words */
  bias: string[];
}

/** Readings that cannot be interpreted, with what to do instead. */
export class FieldTestError extends UnderpondError {
  override readonly name = 'FieldTestError';

  /**
   * @param code - short, for programs
   * @param why - begins with the word of the error vocabulary and holds the value with its unit
   * @param remedy - what to do, a sentence
   */
  constructor(
    override readonly code:
      | 'too-few'
      | 'time-order'
      | 'wrong-way'
      | 'outside-hole'
      | 'below-table'
      | 'geometry',
    readonly why: string,
    readonly remedy: string,
  ) {
    super(`${why}. ${remedy}`);
  }
}

/** Evaporation from an open hole, m/s: 2 mm a day. Common practice. */
const HOLE_EVAPORATION = 0.002 / SECONDS_PER_DAY;
/** Reading error of a tape in a hole, m. Common practice. */
const TAPE_ERROR = 0.002;

/** How a method turns levels into permeability. */
export interface TestGeometry {
  method: string;
  /** G(level), m */
  potential: (level: number) => number;
  /** its derivative, dimensionless */
  slope: (level: number) => number;
  /** water sinking in a hole above the table, or coming back in one below it: `level` shrinks in both */
  kind: 'falling' | 'recovering';
  /** standard deviation of the natural logarithm, of what the method leaves out */
  methodSpread: number;
  bias: string[];
}

/**
 * Fits the permeability to the levels of a test, see {@link fieldTestReading}.
 * @param readings - at least two, in order of time, s; levels m, shrinking
 * @param geometry - of the method
 * @param tape - reading error, m, one standard deviation
 * @returns permeability, m/s, with its spread, or a bound where the looks settle no more
 * @throws FieldTestError when the readings cannot be interpreted
 */
export function fitLevels(
  readings: LevelReading[],
  geometry: TestGeometry,
  tape = TAPE_ERROR,
): PermeabilityTest {
  checkOrder(readings, geometry.kind, tape);
  const { method, potential, slope, methodSpread, bias } = geometry;
  const emptied = readings.findIndex((r) => r.level <= 2 * tape);
  const used = emptied < 0 ? readings : readings.slice(0, emptied);
  if (used.length < 2) {
    if (used.length === 0)
      throw new FieldTestError(
        'too-few',
        'missing water at the first look',
        'Fill the hole and begin again.',
      );
    const [{ time, level }] = used;
    const permeability = (potential(level) - potential(2 * tape)) / (readings[emptied].time - time);
    const emptyBias = [...bias, 'emptied before the second look'];
    return { method, permeability, reading: 0, spread: methodSpread, says: 'faster than', bias: emptyBias };
  }
  const { rate, error } = line(used, potential, slope, tape);
  const middle = (used[0].level + used[used.length - 1].level) / 2;
  const evaporation = geometry.kind === 'falling' ? HOLE_EVAPORATION * slope(middle) : 0;
  if (rate <= Math.max(2 * error, evaporation)) {
    const permeability = Math.max(rate, 0) + 2 * error;
    return { method, permeability, reading: 0, spread: methodSpread, says: 'slower than', bias };
  }
  const reading = error / rate;
  return {
    method,
    permeability: rate,
    reading,
    spread: Math.hypot(reading, methodSpread),
    says: 'value',
    bias,
  };
}

function checkOrder(readings: LevelReading[], kind: TestGeometry['kind'], tape: number): void {
  if (readings.length < 2)
    throw new FieldTestError(
      'too-few',
      `missing a second look: ${readings.length} of at least 2`,
      'Look again after the level has moved by a few centimetres.',
    );
  readings.forEach(({ time, level }, at) => {
    if (!(level >= -tape))
      throw new FieldTestError(
        'outside-hole',
        `invalid level ${level} m: the water would be below the floor of the hole, or above where it stands at rest`,
        'Measure again; all depths must be from the same mark.',
      );
    if (at === 0) return;
    const before = readings[at - 1];
    if (!(time > before.time))
      throw new FieldTestError(
        'time-order',
        `invalid time ${time} s after ${before.time} s: looks must follow each other`,
        'Put the looks in order of time, with one time each.',
      );
    if (level - before.level > 3 * tape)
      throw new FieldTestError(
        'wrong-way',
        `invalid level ${level} m after ${before.level} m: the water ${kind === 'falling' ? 'rose during a falling test' : 'sank during a recovery'}`,
        kind === 'falling'
          ? 'Rain or groundwater came in. Cover the hole and try again; if it still rises, bail it and watch it recover.'
          : 'Wait until the level stands still, bail again and look more often.',
      );
  });
}

/** Weighted straight line through G against time: −slope and its standard error. */
function line(
  readings: LevelReading[],
  potential: (level: number) => number,
  slope: (level: number) => number,
  tape: number,
): { rate: number; error: number } {
  const points = readings.map(({ time, level }) => ({
    t: time,
    g: potential(level),
    w: 1 / (slope(level) * tape) ** 2,
  }));
  const sum = (f: (p: (typeof points)[number]) => number) => points.reduce((s, p) => s + p.w * f(p), 0);
  const all = sum(() => 1);
  const t = sum((p) => p.t) / all;
  const g = sum((p) => p.g) / all;
  const tt = sum((p) => (p.t - t) ** 2);
  const rate = -sum((p) => (p.t - t) * (p.g - g)) / tt;
  const scatter = sum((p) => (p.g - g + rate * (p.t - t)) ** 2) / Math.max(points.length - 2, 1);
  return { rate, error: Math.sqrt(Math.max(scatter, 1) / tt) };
}
