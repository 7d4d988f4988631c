import { method } from '../../formula/index.js';
import { flowsOf } from './flows.js';
import { refuseIslands, type SectionState } from './saturated.js';
import {
  type Conductances,
  conductancesOf,
  fromDatum,
  roundingFlow,
  type Section,
  strongestHead,
} from './section.js';
import { settle } from './settle.js';
import { SolverError } from './solverError.js';
import { cellsOf, framed } from './stencil.js';
import {
  type CellFacts,
  cellFacts,
  type UnsaturatedSystem,
  unsaturatedSystem,
  waterHeld,
} from './unsaturated.js';

export const freeSurfaceMethod = method({
  title: 'Free surface in a vertical section',
  what:
    'Steady flow in ground that is full only below the water table: the conductivity falls with suction by Gardner, and ' +
    'the table is where the pressure is nought. Pipes and open ground let water out only, and only at no suction.',
  assumptions: [
    'steady plane flow by Darcy and Richards, one sorptive number a soil, films of 1e-8 in dry soil',
    'a capillary fringe thinner than a cell counts as high as the cell',
    'sloping outlines in steps of the grid',
  ],
  source:
    'Richards 1931, Gardner 1958, from memory; discharge of a dam by Charny, parabolas of Dupuit and Hooghoudt in the tests',
});

/**
 * Heads of a section with its free surface, see {@link freeSurfaceMethod}.
 * @param original - grid, soils and contacts
 * @returns head in each cell, m above the datum of the grid, and flows, m²/s
 * @throws InputError where a part of the section touches no contact; SolverError when the surface does not settle
 */
export function solveFreeSurface(original: Section): SectionState {
  const conductances = conductancesOf(original);
  refuseIslands(original, conductances);
  const datum = strongestHead(original, conductances);
  const section = fromDatum(original, datum);
  const { nx, nz } = conductances;
  const { soilOf, contacts, grid } = section;
  const facts = cellFacts(section);
  const system = unsaturatedSystem(section, conductances);
  const head = framed(nx, nz);
  // From all wet: the first step is then the section full of water with every outlet running.
  const wet = contacts.reduce((top, c) => Math.max(top, c.head), grid.z[nz]) + grid.z[nz] - grid.z[nz - 1];
  const cells = cellsOf(head, nx, nz);
  for (let k = 0; k < soilOf.length; k++) cells[k] = soilOf[k] < 0 ? 0 : wet;
  let iterations = settle(section, conductances, facts, head, system);
  for (let way = 0; way < WAYS.length && iterations === undefined; way++)
    iterations = creep(section, conductances, facts, head, system, WAYS[way]);
  if (iterations === undefined)
    throw new SolverError('the free surface did not settle, neither at once nor by way of time');
  return {
    head: cells.map((h, k) => (soilOf[k] < 0 ? Number.NaN : h + datum)),
    contactFlow: system.contactFlow,
    flows: flowsOf(section, system.contactFlow, 0, roundingFlow(section, conductances)),
    iterations,
  };
}

/** A way by time: length of the first step, s, how much longer each next one is, how many, and whether by Picard. */
interface WayByTime {
  first: number;
  longer: number;
  steps: number;
  cautious: boolean;
}

/** Ways tried one after another; one that fails leaves the next a better start. */
const WAYS: WayByTime[] = [
  { first: 1e3, longer: 3, steps: 20, cautious: false },
  { first: 1e3, longer: 3, steps: 20, cautious: true },
  { first: 100, longer: 10, steps: 12, cautious: false },
  { first: 10, longer: 2, steps: 44, cautious: false },
];

/** The steady state by way of time, for a start that is too far off: ever longer steps until nothing changes. */
function creep(
  section: Section,
  conductances: Conductances,
  facts: CellFacts,
  head: Float64Array,
  system: UnsaturatedSystem,
  { first, longer, steps, cautious }: WayByTime,
): number | undefined {
  const { nx, nz } = conductances;
  const cells = cellsOf(head, nx, nz);
  let taken = 0;
  for (let i = 0; i < steps; i++) {
    const held = cells.map((h, k) => waterHeld(facts, k, h));
    taken +=
      settle(section, conductances, facts, head, system, { held, step: first * longer ** i }, cautious) ?? 0;
  }
  const last = settle(section, conductances, facts, head, system, undefined, cautious);
  return last === undefined ? undefined : taken + last;
}
