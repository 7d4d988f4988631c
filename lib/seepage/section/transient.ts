import { method } from '../../formula/index.js';
import { flowsOf, type SectionFlows } from './flows.js';
import { refuseIslands } from './saturated.js';
import { conductancesOf, fromDatum, roundingFlow, type Section, strongestHead } from './section.js';
import { settle } from './settle.js';
import { SolverError } from './solverError.js';
import { cellsOf, framed } from './stencil.js';
import { cellFacts, unsaturatedSystem, waterHeld } from './unsaturated.js';

export const transientSectionMethod = method({
  title: 'Seepage in a vertical section through time',
  what:
    'Steps backwards in time (implicit Euler) on the water held, so that no step loses water: what drains by suction ' +
    'follows the same law as the conductivity, what is squeezed out goes with the head.',
  assumptions: ['as for the steady free surface', 'first order in the length of the step'],
  source:
    'Celia et al. 1990 for stepping the water held (from memory); a draining column by scipy in the tests',
});

/** A section at the end of a time step. */
interface SectionMoment {
  /** s since the start */
  time: number;
  /** of each cell, m above the datum of the grid; NaN where there is no soil */
  head: Float64Array;
  /** out through each contact, m²/s */
  contactFlow: Float64Array;
  flows: SectionFlows;
}

/**
 * Runs a section through time, see {@link transientSectionMethod}.
 * @param original - as it is; `at` may change its given heads and supply from step to step
 * @param start - head of each cell at the start, m above the datum of the grid
 * @param steps - lengths of the steps, s, above 0
 * @param at - the section at the end of a step, same cells and contacts; absent: unchanged
 * @returns the state after each step
 * @throws InputError where a part of the section touches no contact; SolverError when a step does not settle
 */
export function runSection(
  original: Section,
  start: Float64Array,
  steps: number[],
  at: (time: number) => Section = () => original,
): SectionMoment[] {
  const conductances = conductancesOf(original);
  refuseIslands(original, conductances);
  const datum = strongestHead(original, conductances);
  const section = fromDatum(original, datum);
  const { nx, nz } = conductances;
  const { soilOf } = section;
  const facts = cellFacts(section);
  const system = unsaturatedSystem(section, conductances);
  const head = framed(nx, nz);
  const cells = cellsOf(head, nx, nz);
  for (let k = 0; k < soilOf.length; k++) cells[k] = soilOf[k] < 0 ? 0 : start[k] - datum;
  const waterNow = () => Float64Array.from(soilOf, (_, k) => waterHeld(facts, k, cells[k]));
  let time = 0;
  let held = waterNow();
  return steps.map((step) => {
    time += step;
    const then = fromDatum(at(time), datum);
    if (settle(then, conductances, facts, head, system, { held, step }) === undefined)
      throw new SolverError(
        `the heads did not settle in the step of ${step} s to ${time} s; take shorter steps`,
      );
    const after = waterNow();
    const stored = after.reduce((sum, w, k) => sum + (w - held[k]), 0) / step;
    held = after;
    const contactFlow = system.contactFlow.slice();
    return {
      time,
      head: cells.map((h, k) => (soilOf[k] < 0 ? Number.NaN : h + datum)),
      contactFlow,
      flows: flowsOf(then, contactFlow, stored, roundingFlow(then, conductances)),
    };
  });
}
