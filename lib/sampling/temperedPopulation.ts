import { method } from '../formula/index.js';
import { latinNormals } from './latinHypercube.js';
import { drawnFrom, logDensity, normalThrough } from './populationMoves.js';
import { splitRhat } from './splitRhat.js';
import { uniforms } from './uniforms.js';

export const temperedPopulation = method({
  title: 'Populations drawn from what is known beforehand and what was seen',
  what:
    'Draws standard normal scores, lets the likelihood in by degrees and keeps at each degree the members that bear it, ' +
    'so that hopeless ones stop early. The members are in several populations; each is moved by what the others show. ' +
    'Then all walk on until the populations agree, or the most moves are made.',
  assumptions: [
    'each degree leaves at least half of the members effective (our choice)',
    'moves are accepted by the ratio of Metropolis, so that they leave the distribution as it is; what must be reached is ' +
      'drawn before the likelihood is known, so that it need not be known of what cannot reach it',
    'they agree when split-R̂ of every score is below 1.05 (our choice; 1.01 is asked of chains whose every digit counts)',
    'populations learn from each other, so that R̂ does not see what all of them miss: with many readings the levels agree from ' +
      'seed to seed, single parameters less than R̂ lets hope',
  ],
  source:
    'sequential Monte Carlo sampler, Del Moral, Doucet & Jasra 2006; moves of ter Braak 2006; split-R̂ Gelman et al. 2013 ' +
    '(all from memory)',
});

/** Share of the members that a degree leaves effective. */
const KEPT = 0.5;
/** Populations that are compared, and members of each: what they are moved by has to reach everywhere. */
const POPULATIONS = 4;
const MEMBERS = 48;
/** Moves tried of each member after a degree. */
const BETWEEN = 3;
/** Moves of all members in a round of the walk, rounds whose members are kept, and the most rounds. */
const ROUND = 3;
const ROUNDS = { kept: 12, most: 40 };
/** Split-R̂ below which the populations agree. */
const AGREED = 1.05;
/** Of so many moves one is a step along the difference of two others, the rest are drawn anew from all of them. */
const STEPS_EVERY = 3;
/** Small random step of a difference, so that it reaches everywhere. */
const JITTER = 0.01;

/**
 * Log likelihood of standard normal scores; finite. What is less than `atLeast` need not be known: −∞ will do, so that a
 * hopeless run may stop early.
 */
type LogLikelihood = (scores: Float64Array, atLeast: number) => number;

/** Populations on their way into a likelihood. */
interface Walkers {
  /** scores of the members, population by population */
  members: Float64Array[];
  logs: Float64Array;
  logLikelihood: LogLikelihood;
  next: () => number;
}

/** Populations that have walked until they agreed. */
interface Walked {
  /** largest split-R̂ of any score over the populations */
  splitRhat: number;
  /** members, so many, in random order */
  draw(size: number): Float64Array[];
}

/**
 * Populations from standard normal priors and a likelihood, let in by degrees.
 * @param dimensions - scores of a member
 * @param logLikelihood - of a member
 * @param seed - whole number
 */
export function temperedPopulations(dimensions: number, logLikelihood: LogLikelihood, seed: number): Walkers {
  const members = Array.from({ length: POPULATIONS }, (_, p) => {
    const flat = latinNormals(MEMBERS, dimensions, seed + 1009 * p);
    return Array.from({ length: MEMBERS }, (_, i) => flat.slice(i * dimensions, (i + 1) * dimensions));
  }).flat();
  const logs = Float64Array.from(members, (z) => logLikelihood(z, Number.NEGATIVE_INFINITY));
  const walkers: Walkers = { members, logs, logLikelihood, next: uniforms(seed + 101) };
  let degree = 0;
  for (let move = 0; degree < 1; ) {
    const step = nextDegree(logs, degree) - degree;
    resample(walkers, step);
    degree += step;
    for (let m = 0; m < BETWEEN; m++) moveAll(walkers, degree, move++);
  }
  return walkers;
}

/** Keeps the members that bear a step of the likelihood. */
function resample(walkers: Walkers, step: number): void {
  const chosen = systematic(weightsOf(walkers.logs, step), walkers.next);
  const members = walkers.members.slice();
  const logs = walkers.logs.slice();
  chosen.forEach((from, i) => {
    walkers.members[i] = members[from];
    walkers.logs[i] = logs[from];
  });
}

/**
 * Lets populations walk until they agree.
 * @param population - from {@link temperedPopulations}; walks on
 * @returns where they were, and how far they still differed
 */
export function walk(population: Walkers): Walked {
  const rounds: Float64Array[][] = [];
  let rhat = Number.POSITIVE_INFINITY;
  for (let turn = 0; rounds.length < ROUNDS.kept || (rhat > AGREED && rounds.length < ROUNDS.most); ) {
    for (let m = 0; m < ROUND; m++) moveAll(population, 1, turn++);
    rounds.push(population.members.slice());
    if (rounds.length >= ROUNDS.kept) rhat = worstRhat(rounds.slice(-ROUNDS.kept));
  }
  const kept = rounds.slice(-ROUNDS.kept).flat();
  return {
    splitRhat: rhat,
    draw: (size) =>
      systematic(new Float64Array(kept.length).fill(1 / kept.length), population.next, size).map(
        (i) => kept[i],
      ),
  };
}

/** Largest split-R̂ of any score, over rounds of members. */
function worstRhat(rounds: Float64Array[][]): number {
  const dimensions = rounds[0][0].length;
  let worst = 0;
  for (let j = 0; j < dimensions; j++) {
    const chains = Array.from({ length: POPULATIONS }, (_, p) =>
      rounds.flatMap((round) => round.slice(p * MEMBERS, (p + 1) * MEMBERS).map((z) => z[j])),
    );
    worst = Math.max(worst, splitRhat(chains));
  }
  return worst;
}

/** What rounding may do to a log likelihood that must be reached. */
const ROUNDING = 1e-9;

/** Tries a move of every member, population by population, by what is learnt from the other populations. */
function moveAll(walkers: Walkers, degree: number, turn: number): void {
  const { members, logs, logLikelihood, next } = walkers;
  const steps = turn % STEPS_EVERY === STEPS_EVERY - 1;
  for (let p = 0; p < POPULATIONS; p++) {
    const others = [...members.slice(0, p * MEMBERS), ...members.slice((p + 1) * MEMBERS)];
    const normal = steps ? undefined : normalThrough(others);
    for (let i = p * MEMBERS; i < (p + 1) * MEMBERS; i++) {
      const here = members[i];
      const trial = normal ? drawnFrom(normal, next) : alongDifference(others, here, next);
      const proposed = normal ? logDensity(normal, here) - logDensity(normal, trial) : 0;
      const gain = logNormal(trial) - logNormal(here) + proposed;
      const asked = Math.log(next());
      const needed = logs[i] + (asked - gain) / degree;
      const log = logLikelihood(trial, needed - ROUNDING * (1 + Math.abs(needed)));
      if (asked < degree * (log - logs[i]) + gain) {
        members[i] = trial;
        logs[i] = log;
      }
    }
  }
}

/** A member moved along the difference of two others. */
function alongDifference(others: Float64Array[], z: Float64Array, next: () => number): Float64Array {
  const first = Math.floor(next() * others.length);
  const second = (first + 1 + Math.floor(next() * (others.length - 1))) % others.length;
  const [a, b] = [others[first], others[second]];
  const length = 2.38 / Math.sqrt(2 * z.length);
  const moved = z.slice();
  for (let j = 0; j < z.length; j++) moved[j] += length * (a[j] - b[j]) + JITTER * (2 * next() - 1);
  return moved;
}

/** The degree to go to: all of the likelihood, or as much as leaves the share {@link KEPT} effective. */
function nextDegree(logs: Float64Array, degree: number): number {
  const effective = (step: number) =>
    1 / weightsOf(logs, step).reduce((sum, w) => sum + w * w, 0) / logs.length;
  if (effective(1 - degree) >= KEPT) return 1;
  let low = 0;
  let high = 1 - degree;
  for (let k = 0; k < 40; k++) {
    const middle = (low + high) / 2;
    if (effective(middle) >= KEPT) low = middle;
    else high = middle;
  }
  return degree + high;
}

/** Weights of members by a step of the likelihood, with sum 1. */
function weightsOf(logs: Float64Array, step: number): Float64Array {
  const most = logs.reduce((a, b) => Math.max(a, b));
  const weights = logs.map((l) => Math.exp(step * (l - most)));
  const total = weights.reduce((a, b) => a + b, 0);
  return weights.map((w) => w / total);
}

/** Log density of a standard normal vector, without its constant. */
function logNormal(scores: Float64Array): number {
  let sum = 0;
  for (const v of scores) sum -= 0.5 * v * v;
  return sum;
}

/** Systematic resampling, shuffled so that neighbours are not copies. */
function systematic(weights: Float64Array, next: () => number, count = weights.length): number[] {
  const start = next();
  const chosen: number[] = [];
  let sum = weights[0];
  let i = 0;
  for (let k = 0; k < count; k++) {
    while (sum < (k + start) / count && i < weights.length - 1) sum += weights[++i];
    chosen.push(i);
  }
  for (let k = count - 1; k > 0; k--) {
    const j = Math.floor(next() * (k + 1));
    [chosen[k], chosen[j]] = [chosen[j], chosen[k]];
  }
  return chosen;
}
