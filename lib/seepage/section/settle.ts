import { conjugateGradients } from './conjugateGradients.js';
import { potentialStep } from './gardner.js';
import { type Multigrid, multigridOf, vCycle } from './multigrid.js';
import { newtonStep, stepRoom } from './newtonStep.js';
import { FLOW_TOLERANCE, headScale } from './saturated.js';
import { type Conductances, roundingFlow, type Section } from './section.js';
import { framed } from './stencil.js';
import { assembleUnsaturated, type CellFacts, type TimeStep, type UnsaturatedSystem } from './unsaturated.js';

/** Step, as a part of the scale of heads, at which a free surface counts as settled. */
const SETTLED = 1e-7;
/** Patience with outlets, as a part of the last step: a pipe must not shut for a passing error. */
const PATIENCE = 0.01;
const MOST_PATIENCE = 1e-5;
/** Step below which only rounding is left. */
const ROUNDING = 1e-12;
/** How far a step's equations are solved, early and late. */
const ROUGH = 0.03;
const FINE = 1e-3;
/** Step of Newton, in scales of head, that is not believed. */
const WILD = 20;
/** Steps after which they are expected to shrink. */
const LONG = 10;
/** Step, as a part of the scale, that is still a long way. */
const FAR = 0.01;
const MOST_STEPS = 40;
/** Iterations spent on a step of Picard, which need not be exact. */
const PICARD_ITERATIONS = 30;

/**
 * Finds the heads at which all cells balance, by Newton's method with each step taken in the flow potential. Early steps
 * are solved roughly, the last ones well. As nothing but water comes in, no head falls below the lowest one given, or the
 * lowest at the start; and none rises in a step by more than that scale.
 * @param head - to start from, framed; becomes the solution
 * @returns steps taken, or undefined where 40 were not enough
 */
export function settle(
  section: Section,
  conductances: Conductances,
  facts: CellFacts,
  head: Float64Array,
  system: UnsaturatedSystem,
  time?: TimeStep,
  cautious = false,
): number | undefined {
  const { nx, nz } = conductances;
  const { soilOf } = section;
  const scale = headScale(section);
  const step = framed(nx, nz);
  const room = stepRoom(nx, nz);
  const lowest = lowestHead(section, head);
  const atRest = roundingFlow(section, conductances);
  let moved = scale;
  let damping = 1;
  assembleUnsaturated(section, conductances, facts, head, system, 0, time);
  for (let taken = 1; taken <= MOST_STEPS; taken++) {
    const multigrid = multigridOf(system.stencil);
    const picard = (taken > LONG && taken % 3 === 0) || (cautious && moved > FAR * scale);
    if (!picard) newtonStep(system, multigrid, step, Math.min(ROUGH, Math.max(moved / scale, FINE)), room);
    if (picard || largest(step) > WILD * scale) picardStep(system, multigrid, step);
    const before = moved;
    moved = 0;
    for (let cell = 0; cell < soilOf.length; cell++) {
      if (soilOf[cell] < 0) continue;
      const k = cell + nx + 1;
      const pressure = head[k] - facts.height[cell];
      const wanted = head[k] + potentialStep(facts.sorptive[cell], pressure, damping * step[k]);
      const after = Math.min(Math.max(wanted, lowest), head[k] + scale);
      const change = Math.abs(after - head[k]);
      if (change > moved) moved = change;
      head[k] = after;
    }
    // Steps that do not shrink go to and fro between two states; half-way lies between.
    damping = taken >= LONG && moved > before / 2 && moved > FAR * scale ? 0.5 : 1;
    const patience = moved > SETTLED * scale ? Math.min(PATIENCE * moved, MOST_PATIENCE * scale) : 0;
    assembleUnsaturated(section, conductances, facts, head, system, patience, time);
    if (moved > SETTLED * scale || damping < 1) continue;
    const left = lack(system);
    if (left <= FLOW_TOLERANCE * through(section, system)) return taken;
    if (moved <= ROUNDING * scale && left <= Math.max(roundingLeft(system, head), atRest)) return taken;
  }
  return undefined;
}

/** Lowest head given or at the start, m. */
function lowestHead({ contacts, soilOf, grid }: Section, head: Float64Array): number {
  let lowest = contacts.reduce((low, c) => Math.min(low, c.head), Number.POSITIVE_INFINITY);
  const offset = grid.x.length;
  for (let cell = 0; cell < soilOf.length; cell++)
    if (soilOf[cell] >= 0 && head[cell + offset] < lowest) lowest = head[cell + offset];
  return lowest;
}

/** The step with the conductivities as they are: its equations are symmetric, and its heads stay within those given. */
function picardStep({ excess }: UnsaturatedSystem, multigrid: Multigrid, step: Float64Array): void {
  const right = excess.map((e) => -e);
  const { b, x: estimate } = multigrid.levels[0];
  b.set(right);
  vCycle(multigrid);
  step.fill(0);
  const tolerance = { head: ROUGH * largest(estimate), flow: () => Number.POSITIVE_INFINITY };
  conjugateGradients(multigrid, right, step, tolerance, PICARD_ITERATIONS);
}

function largest(v: Float64Array): number {
  let most = 0;
  for (let k = 0; k < v.length; k++) if (Math.abs(v[k]) > most) most = Math.abs(v[k]);
  return most;
}

/** Sum over cells of what their balances lack, m²/s. */
function lack({ excess }: UnsaturatedSystem): number {
  let sum = 0;
  for (let k = 0; k < excess.length; k++) sum += Math.abs(excess[k]);
  return sum;
}

/** What rounding of the heads can leave of the balances, m²/s. */
function roundingLeft({ slope }: UnsaturatedSystem, head: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < head.length; k++) sum += slope.centre[k] * Math.abs(head[k]);
  return 4 * Number.EPSILON * sum;
}

/** What passes through the contacts, with the supply, m²/s. */
function through({ supply }: Section, { contactFlow }: UnsaturatedSystem): number {
  let sum = 0;
  for (const flow of contactFlow) sum += Math.abs(flow);
  if (supply) for (const s of supply) sum += Math.abs(s);
  return sum / 2;
}
