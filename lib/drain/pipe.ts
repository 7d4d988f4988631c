import { formula, type Use, unrecorded } from '../formula/index.js';
import { FOOT } from '../units/index.js';
import { COMMON_PIPES, type CommonPipe, ROUGHNESS } from './pipeSizes.js';

const D = { meaning: 'inside diameter', unit: 'm', min: 0.02, max: 1 };
const n = { meaning: 'roughness', unit: 's/m^(1/3)', min: 0.008, max: 0.03 };

/** Flow of a pipe running full by gravity. */
export const manningFull = formula({
  title: 'Capacity of a pipe running full (Manning)',
  symbol: 'Q',
  unit: 'm³/s',
  expression: 'pi*D^2/4*(D/4)^(2/3)*sqrt(S)/n',
  parameters: { D, S: { meaning: 'fall', unit: 'm/m', min: 0.0005, max: 0.2 }, n },
  compute: (D: number, S: number, n: number) =>
    (((Math.PI * D * D) / 4) * (D / 4) ** (2 / 3) * Math.sqrt(S)) / n,
  validity: 'steady turbulent flow, pipe full and free at its end',
  source: 'Manning; capacities of IPC 2018 Table 1106.2',
});

/** Fall at which a full pipe flows at a velocity. */
export const fallForVelocity = formula({
  title: 'Fall at which a full pipe reaches a velocity (Manning)',
  symbol: 'S',
  unit: 'm/m',
  expression: '(v*n/(D/4)^(2/3))^2',
  parameters: { v: { meaning: 'velocity', unit: 'm/s', min: 0.05, max: 3 }, n, D },
  compute: (v: number, n: number, D: number) => ((v * n) / (D / 4) ** (2 / 3)) ** 2,
  validity: 'pipe full or half full',
  source: 'Manning, solved for the fall',
});

/** Least fall laid in a garden, m/m: 1 %, steep enough to see with a string line. Common practice. */
export const LEAST_FALL = 0.01;

/**
 * Velocity that keeps a drain clean, m/s: 0.5 ft/s where no silt comes in, 1.4 ft/s with fine sand and silt
 * (ASAE EP480 as read in a university drainage guide).
 */
const CLEAN_VELOCITY = { filtered: 0.5 * FOOT, silty: 1.4 * FOOT };

/** Least diameter that can be flushed and looked into, m. Common practice. */
const LEAST_DIAMETER = 0.1;

/** A pipe against an inflow: capacity with the roughest and the smoothest wall the literature gives its kind. */
export interface PipeChoice {
  pipe: CommonPipe;
  /** inside, m */
  diameter: number;
  /** m³/s with the rough end, by which it is chosen */
  capacity: number;
  /** m³/s with the smooth end */
  most: number;
  /** capacity over inflow with the rough end */
  times: number;
}

/**
 * Every common pipe of a series against an inflow at a fall, smallest first.
 * @param inflow - m³/s
 * @param fall - m/m, above 0
 * @param series - as sold
 * @returns each with its capacity at both ends of roughness, m³/s
 */
export function pipesAgainst(
  inflow: number,
  fall: number,
  series: CommonPipe['series'] = 'metric',
): PipeChoice[] {
  return COMMON_PIPES.filter((p) => p.series === series).map((pipe) => {
    const { rough, smooth } = ROUGHNESS[pipe.kind];
    const capacity = manningFull.compute(pipe.inside, fall, rough);
    return {
      pipe,
      diameter: pipe.inside,
      capacity,
      most: manningFull.compute(pipe.inside, fall, smooth),
      times: capacity / Math.max(inflow, 1e-9),
    };
  });
}

/**
 * Smallest common pipe of a series that carries an inflow at all at its rough end; absent where none does.
 * @param inflow - m³/s
 * @param fall - m/m, above 0
 * @param series - as sold
 * @returns the pipe with its capacity at both ends of roughness, m³/s, or undefined
 */
export function smallestThatServes(
  inflow: number,
  fall: number,
  series: CommonPipe['series'] = 'metric',
): PipeChoice | undefined {
  return pipesAgainst(inflow, fall, series)
    .sort((a, b) => a.diameter - b.diameter)
    .find((c) => c.times >= 1);
}

/**
 * Fall at which a pipe running full or half full at its rough end keeps itself clean, m/m.
 * @param choice - a pipe of {@link pipesAgainst}
 * @returns m/m, for water that comes through a filter, and for silty water
 */
export function cleansingFall({ pipe }: PipeChoice): { filtered: number; silty: number } {
  const at = (velocity: number) => fallForVelocity.compute(velocity, ROUGHNESS[pipe.kind].rough, pipe.inside);
  return { filtered: at(CLEAN_VELOCITY.filtered), silty: at(CLEAN_VELOCITY.silty) };
}

/**
 * Smallest corrugated drain pipe that carries an inflow at a fall with half its capacity to spare, and at least 100 mm
 * inside, which can be flushed and looked into; the largest one where none does, so that its small reserve is seen.
 * @param inflow - m³/s
 * @param fall - m/m, above 0
 * @param series - as sold
 * @param use - what evaluates the formula for the pipe chosen, for a record
 * @returns the pipe with its capacity at both ends of roughness, m³/s
 */
export function choosePipe(
  inflow: number,
  fall: number,
  series: CommonPipe['series'] = 'metric',
  use: Use = unrecorded,
): PipeChoice {
  const choices = pipesAgainst(inflow, fall, series)
    .filter((c) => c.diameter >= LEAST_DIAMETER && c.pipe.kind === 'corrugated')
    .sort((a, b) => a.diameter - b.diameter);
  const choice = choices.find((c) => c.times >= 2) ?? choices[choices.length - 1];
  const { smooth, rough } = ROUGHNESS[choice.pipe.kind];
  const most = use(manningFull, choice.diameter, fall, smooth);
  return { ...choice, most, capacity: use(manningFull, choice.diameter, fall, rough) };
}
