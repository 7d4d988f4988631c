import { formula, method } from '../formula/index.js';
import { InputError } from '../units/index.js';

const a = { meaning: 'slope of the water along x', unit: '-', min: -0.5, max: 0.5 };
const b = { meaning: 'slope of the water along y', unit: '-', min: -0.5, max: 0.5 };

/** Steepness of the water table. */
export const hydraulicGradient = formula({
  title: 'Hydraulic gradient',
  symbol: 'i',
  unit: '-',
  expression: 'sqrt(a^2 + b^2)',
  parameters: { a, b },
  compute: (a: number, b: number) => Math.sqrt(a ** 2 + b ** 2),
  validity: 'plane water table',
  source: 'geometry',
});

/** Where groundwater goes: straight down the slope of its table. */
export const flowAzimuth = formula({
  title: 'Direction of groundwater flow',
  symbol: 'α',
  unit: 'deg',
  expression: 'atan2(-a, -b)*180/pi - 360*floor(atan2(-a, -b)*180/pi/360)',
  parameters: { a, b },
  compute: (a: number, b: number) => {
    const degrees = (Math.atan2(-a, -b) * 180) / Math.PI;
    return degrees - 360 * Math.floor(degrees / 360);
  },
  validity:
    'clockwise from the y axis (north, where y is measured northwards); ground alike in all directions',
  source: 'geometry',
});

export const waterTablePlaneFit = method({
  title: 'Water table as a plane through levelled holes',
  what:
    'Slope, gradient and direction of the water table by least squares, and the head at any spot with its error; ' +
    'several rounds of looks share one slope, each at its own height.',
  assumptions: [
    'the table is a plane between the holes and does not turn from round to round',
    'one standard deviation for every head; the misfit replaces it where that is larger',
    'beyond the holes the error grows with the distance',
    'holes in a strip narrower than a tenth of its length (by standard deviations) give no plane, nor do heads that rise more ' +
      'than 1 in 2: a place or level is wrong (our choice)',
    'it tells nothing of a spot ten times as far from the middle of the holes as they are (our choice)',
  ],
  source: 'least squares; three-point problem of hydrogeology',
});

/** A head at a levelled hole. Metres, on any axes and any mark. */
export interface LevelledHead {
  x: number;
  y: number;
  head: number;
}

/** A plane through heads. */
export interface WaterTablePlane {
  /** rise of the head along x and y, m/m */
  slopeX: number;
  slopeY: number;
  /** steepness, m/m, 0 and more */
  gradient: number;
  /** one standard deviation of the gradient */
  gradientSpread: number;
  /** where the water goes, degrees clockwise from the y axis; absent where the table is level */
  azimuth?: number;
  /** one standard deviation of the direction, degrees; 180 = any */
  azimuthSpread: number;
  /** one standard deviation of a head, as used, m */
  error: number;
  /** head less plane, by round and hole, m */
  residuals: number[][];
  /** whether a spot lies near enough to the holes to be told of */
  reaches(x: number, y: number): boolean;
  /** head at a spot in a round (the first is 0), and its standard deviation, m */
  headAt(x: number, y: number, round?: number): { head: number; spread: number };
  /** rise of the head over a step along x and y, m, and its standard deviation, m */
  riseOver(dx: number, dy: number): { rise: number; spread: number };
}

/** Least ratio of width to length of the field of holes. */
const LEAST_WIDTH = 0.1;
/** Steepest plane that is a water table, and how many times as far as the holes it reaches. Our choice. */
const STEEPEST = 0.5;
const REACH = 10;

/**
 * The plane through heads of one or more rounds of looks, see {@link waterTablePlaneFit}.
 * @param rounds - heads seen at one time each; together at least three holes that do not lie in a line
 * @param error - one standard deviation of a head, m, above 0
 * @returns the plane, or undefined where the holes do not span one: fewer than three, nearly in a line, or too steep
 * @throws InputError for a round without heads
 */
export function waterTablePlane(
  rounds: readonly LevelledHead[][],
  error: number,
): WaterTablePlane | undefined {
  if (rounds.some((round) => round.length === 0))
    throw new InputError('missing-input', 'missing heads: a round without any');
  const centres = rounds.map((round) => ({
    n: round.length,
    x: mean(round.map((h) => h.x)),
    y: mean(round.map((h) => h.y)),
    head: mean(round.map((h) => h.head)),
  }));
  let [xx, xy, yy, xh, yh] = [0, 0, 0, 0, 0];
  rounds.forEach((round, r) => {
    for (const h of round) {
      const [x, y, head] = [h.x - centres[r].x, h.y - centres[r].y, h.head - centres[r].head];
      xx += x * x;
      xy += x * y;
      yy += y * y;
      xh += x * head;
      yh += y * head;
    }
  });
  const half = (xx + yy) / 2;
  const root = Math.hypot((xx - yy) / 2, xy);
  if (!(half > 0) || half - root < LEAST_WIDTH ** 2 * (half + root)) return undefined;

  const det = xx * yy - xy * xy;
  const slopeX = (yy * xh - xy * yh) / det;
  const slopeY = (xx * yh - xy * xh) / det;
  const residuals = rounds.map((round, r) =>
    round.map(
      (h) => h.head - centres[r].head - slopeX * (h.x - centres[r].x) - slopeY * (h.y - centres[r].y),
    ),
  );
  const spare = rounds.reduce((sum, round) => sum + Math.max(round.length - 1, 0), 0) - 2;
  const misfit = spare > 0 ? Math.sqrt(residuals.flat().reduce((sum, v) => sum + v * v, 0) / spare) : 0;
  const sd = Math.max(error, misfit);
  /** Standard deviation of the rise over a step (u, v). */
  const along = (u: number, v: number) => sd * Math.sqrt((yy * u * u - 2 * xy * u * v + xx * v * v) / det);

  const gradient = hydraulicGradient.compute(slopeX, slopeY);
  if (gradient > STEEPEST) return undefined;
  const level = gradient === 0;
  const heads = rounds.flat();
  const middle = { x: mean(heads.map((h) => h.x)), y: mean(heads.map((h) => h.y)) };
  const away = ({ x, y }: { x: number; y: number }) => Math.hypot(x - middle.x, y - middle.y);
  const farthest = REACH * Math.max(...heads.map(away));
  const [ux, uy] = level ? [1, 0] : [slopeX / gradient, slopeY / gradient];
  return {
    slopeX,
    slopeY,
    gradient,
    gradientSpread: along(ux, uy),
    azimuth: level ? undefined : flowAzimuth.compute(slopeX, slopeY),
    azimuthSpread: level ? 180 : Math.min((Math.atan2(along(-uy, ux), gradient) * 180) / Math.PI, 180),
    error: sd,
    residuals,
    reaches: (x, y) => away({ x, y }) <= farthest,
    riseOver: (dx, dy) => ({ rise: slopeX * dx + slopeY * dy, spread: along(dx, dy) }),
    headAt(x, y, round = 0) {
      const c = centres[round];
      const [dx, dy] = [x - c.x, y - c.y];
      return {
        head: c.head + slopeX * dx + slopeY * dy,
        spread: Math.hypot(sd / Math.sqrt(c.n), along(dx, dy)),
      };
    },
  };
}

const mean = (values: number[]) => values.reduce((a, b) => a + b, 0) / values.length;
