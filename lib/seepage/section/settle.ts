import { potentialStep } from './gardner.js';
import { multigridOf } from './multigrid.js';
import { newtonStep, stepRoom } from './newtonStep.js';
import { FLOW_TOLERANCE, headSpan } from './saturated.js';
import type { Conductances, Section } from './section.js';
import { framed } from './stencil.js';
import { assembleUnsaturated, type CellFacts, type TimeStep, type UnsaturatedSystem } from './unsaturated.js';

/** Step, as a part of the span of heads, at which a free surface counts as settled. */
const SETTLED = 1e-6;
/** Step below which only rounding is left. */
const ROUNDING = 1e-12;
/** How far a step's equations are solved, early and late. */
const ROUGH = 0.01;
const FINE = 1e-3;
const MOST_STEPS = 100;

/**
 * Finds the heads at which all cells balance, by Newton's method with each step taken in the flow potential. Early steps
 * are solved roughly, the last ones well. As nothing but water comes in, no head falls below the lowest one given, or the
 * lowest at the start; and none rises in a step by more than the span of the heads given.
 * @param head - to start from, framed; becomes the solution
 * @returns steps taken
 * @throws RangeError when they do not settle
 */
export function settle(
  section: Section,
  conductances: Conductances,
  facts: CellFacts,
  head: Float64Array,
  system: UnsaturatedSystem,
  time?: TimeStep,
): number {
  const { nx, nz } = conductances;
  const { soilOf } = section;
  const span = headSpan(section);
  const step = framed(nx, nz);
  const room = stepRoom(nx, nz);
  const lowest = lowestHead(section, head);
  let moved = span;
  assembleUnsaturated(section, conductances, facts, head, system, time);
  for (let taken = 1; taken <= MOST_STEPS; taken++) {
    newtonStep(
      system,
      multigridOf(system.stencil),
      step,
      Math.min(ROUGH, Math.max(moved / span, FINE)),
      room,
    );
    moved = 0;
    for (let cell = 0; cell < soilOf.length; cell++) {
      if (soilOf[cell] < 0) continue;
      const k = cell + nx + 1;
      const pressure = head[k] - facts.height[cell];
      const wanted = facts.height[cell] + potentialStep(facts.sorptive[cell], pressure, step[k]);
      const after = Math.min(Math.max(wanted, lowest), head[k] + span);
      const change = Math.abs(after - head[k]);
      if (change > moved) moved = change;
      head[k] = after;
    }
    assembleUnsaturated(section, conductances, facts, head, system, time);
    if (moved > SETTLED * span) continue;
    if (moved <= ROUNDING * span || lack(system) <= FLOW_TOLERANCE * through(section, system)) return taken;
  }
  throw new RangeError(
    `the free surface did not settle in ${MOST_STEPS} steps; the heads still move by ${moved.toPrecision(2)} m`,
  );
}

/** Lowest head given or at the start, m. */
function lowestHead({ contacts, soilOf, grid }: Section, head: Float64Array): number {
  let lowest = contacts.reduce((low, c) => Math.min(low, c.head), Number.POSITIVE_INFINITY);
  const offset = grid.x.length;
  for (let cell = 0; cell < soilOf.length; cell++)
    if (soilOf[cell] >= 0 && head[cell + offset] < lowest) lowest = head[cell + offset];
  return lowest;
}

/** Sum over cells of what their balances lack, m²/s. */
function lack({ excess }: UnsaturatedSystem): number {
  let sum = 0;
  for (let k = 0; k < excess.length; k++) sum += Math.abs(excess[k]);
  return sum;
}

/** What passes through the contacts, with the supply, m²/s. */
function through({ supply }: Section, { contactFlow }: UnsaturatedSystem): number {
  let sum = 0;
  for (const flow of contactFlow) sum += Math.abs(flow);
  if (supply) for (const s of supply) sum += Math.abs(s);
  return sum / 2;
}
