import { newtonStep } from './biconjugateGradients.js';
import { conjugateGradients } from './conjugateGradients.js';
import { potentialStep } from './gardner.js';
import { multigridOf, vCycle } from './multigrid.js';
import { FLOW_TOLERANCE, headSpan } from './saturated.js';
import type { Conductances, Section } from './section.js';
import { framed } from './stencil.js';
import { assembleUnsaturated, type CellFacts, type TimeStep, type UnsaturatedSystem } from './unsaturated.js';

/** Part of the span of heads to which a free surface is settled. */
const SETTLED = 1e-8;
/** Step, as a part of the span, below which Newton takes over from Picard. */
const NEAR = 0.05;
/** Growth of a step of Newton over the one before it that sends the iteration back to Picard. */
const ASTRAY = 4;
const MOST_STEPS = 100;

/**
 * Finds the heads at which all cells balance: first by Picard's iteration, whose equations are symmetric and which bears
 * a wrong start, then by Newton's, which ends it. Both take their step in the flow potential.
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
  const offset = nx + 1;
  const span = headSpan(section);
  const [step, right, estimate] = [framed(nx, nz), framed(nx, nz), framed(nx, nz)];
  let before = Number.POSITIVE_INFINITY;
  let picards = 0;
  for (let taken = 1; taken <= MOST_STEPS; taken++) {
    assembleUnsaturated(section, conductances, facts, head, system, time);
    const multigrid = multigridOf(system.stencil);
    const newton = before <= NEAR * span && picards <= 0;
    if (newton) newtonStep(system, multigrid, step, before < 0.1 * NEAR * span ? 1e-3 : 1e-2);
    else {
      for (let k = 0; k < right.length; k++) right[k] = -system.excess[k];
      vCycle(multigrid, right, estimate);
      step.fill(0);
      conjugateGradients(multigrid, right, step, {
        head: 0.05 * largest(estimate),
        flow: () => Number.POSITIVE_INFINITY,
      });
      picards--;
    }
    let moved = 0;
    for (let cell = 0; cell < soilOf.length; cell++) {
      if (soilOf[cell] < 0) continue;
      const k = cell + offset;
      const pressure = head[k] - facts.height[cell];
      const after = potentialStep(facts.sorptive[cell], pressure, step[k]);
      const change = Math.abs(after - pressure);
      if (change > moved) moved = change;
      head[k] = facts.height[cell] + after;
    }
    if (newton && moved > ASTRAY * before) picards = 5;
    before = moved;
    if (moved <= SETTLED * span) {
      assembleUnsaturated(section, conductances, facts, head, system, time);
      if (lack(system) <= FLOW_TOLERANCE * through(section, system)) return taken;
    }
  }
  throw new RangeError(
    `the free surface did not settle in ${MOST_STEPS} steps; the heads still move by ${before.toPrecision(2)} m`,
  );
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

/** What passes through the contacts, with the supply, m²/s. */
function through({ supply }: Section, { contactFlow }: UnsaturatedSystem): number {
  let sum = 0;
  for (const flow of contactFlow) sum += Math.abs(flow);
  if (supply) for (const s of supply) sum += Math.abs(s);
  return sum / 2;
}
