import { method } from '../../formula/index.js';
import { InputError } from '../../units/index.js';
import { conjugateGradients } from './conjugateGradients.js';
import { flowsOf, type SectionFlows } from './flows.js';
import { multigridOf } from './multigrid.js';
import {
  type Conductances,
  conductancesOf,
  fromDatum,
  roundingFlow,
  type Section,
  strongestHead,
} from './section.js';
import { SolverError } from './solverError.js';
import { cellsOf, framed, type Stencil } from './stencil.js';

export const saturatedSectionMethod = method({
  title: 'Seepage in a vertical section full of water',
  what:
    'Finite volumes on a graded grid of rectangles: each cell balances the flow through its faces. Between cells the ' +
    'two halves count in series, so that a layer boundary is exact; a tight face lets nothing through.',
  assumptions: [
    'steady plane flow by Darcy; conductivities of a cell along the axes of the grid',
    'every given head holds, at pipes and open ground too',
    'sloping outlines in steps of the grid',
  ],
  source: 'standard; second order on smooth cases, first order at floor edges and pile tips, by the tests',
});

/** Heads and flows of a section. */
export interface SectionState {
  /** head of each cell, row by row from the bottom, m above the datum of the grid; NaN where there is no soil */
  head: Float64Array;
  /** out through each contact, m²/s */
  contactFlow: Float64Array;
  flows: SectionFlows;
  /** of the equation solver */
  iterations: number;
}

/** Part of the span of heads to which the heads are solved, and part of the flow to which its balance closes. */
const HEAD_TOLERANCE = 1e-9;
export const FLOW_TOLERANCE = 5e-9;
const MOST_ITERATIONS = 500;

/**
 * Heads of a section full of water, see {@link saturatedSectionMethod}.
 * @param original - grid, soils and contacts
 * @returns head in each cell, m above the datum of the grid, and flows, m²/s
 * @throws InputError where a part of the section touches no given head; SolverError when the heads do not settle
 */
export function solveSaturated(original: Section): SectionState {
  const conductances = conductancesOf(original);
  refuseIslands(original, conductances);
  const datum = strongestHead(original, conductances);
  const section = fromDatum(original, datum);
  const { nx, nz, contact } = conductances;
  const { contacts, supply, soilOf } = section;
  const b = framed(nx, nz);
  const x = framed(nx, nz);
  const right = cellsOf(b, nx, nz);
  if (supply) right.set(supply);
  for (let c = 0; c < contacts.length; c++) right[contacts[c].cell] += contact[c] * contacts[c].head;
  const values = cellsOf(x, nx, nz);
  const flow = (c: number) => contact[c] * (values[contacts[c].cell] - contacts[c].head);
  const through = () => {
    let sum = 0;
    for (let c = 0; c < contacts.length; c++) sum += Math.abs(flow(c));
    return sum / 2;
  };
  const tolerance = {
    head: HEAD_TOLERANCE * headScale(section),
    flow: () => FLOW_TOLERANCE * through(),
  };
  const multigrid = multigridOf(saturatedStencil(section, conductances));
  const iterations = conjugateGradients(multigrid, b, x, tolerance, MOST_ITERATIONS);
  if (iterations === undefined)
    throw new SolverError(`the heads did not settle in ${MOST_ITERATIONS} iterations`);
  const contactFlow = Float64Array.from(contacts, (_, c) => flow(c));
  return {
    head: values.map((v, k) => (soilOf[k] < 0 ? Number.NaN : v + datum)),
    contactFlow,
    flows: flowsOf(section, contactFlow, 0, roundingFlow(section, conductances)),
    iterations,
  };
}

/** The operator of a section full of water; a cell without soil stands for itself. */
export function saturatedStencil(
  { contacts, soilOf }: Section,
  { nx, nz, right, above, contact }: Conductances,
): Stencil {
  const [centre, east, north] = [framed(nx, nz), framed(nx, nz), framed(nx, nz)];
  cellsOf(east, nx, nz).set(right);
  cellsOf(north, nx, nz).set(above);
  const own = cellsOf(centre, nx, nz);
  for (let k = 0; k < soilOf.length; k++) {
    const f = k + nx + 1;
    own[k] = soilOf[k] < 0 ? 1 : east[f] + east[f - 1] + north[f] + north[f - nx];
  }
  for (let c = 0; c < contacts.length; c++) own[contacts[c].cell] += contact[c];
  return { nx, nz, centre, east, north };
}

/** What heads are measured against: the span of those given, or with rain at least the height of the section, m. */
export function headScale({ contacts, supply, grid }: Section): number {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const { head } of contacts) {
    if (head < low) low = head;
    if (head > high) high = head;
  }
  const height = grid.z[grid.z.length - 1] - grid.z[0];
  return supply || !(high > low) ? Math.max(high - low, height) : high - low;
}

/** Refuses ground that is cut off from every given head. */
export function refuseIslands({ contacts, soilOf, grid }: Section, { nx, right, above }: Conductances): void {
  const seen = new Uint8Array(soilOf.length);
  const open = contacts.map(({ cell }) => cell);
  for (const cell of open) seen[cell] = 1;
  const visit = (cell: number) => {
    if (seen[cell]) return;
    seen[cell] = 1;
    open.push(cell);
  };
  for (let cell = open.pop(); cell !== undefined; cell = open.pop()) {
    if (right[cell] > 0) visit(cell + 1);
    if (cell > 0 && right[cell - 1] > 0) visit(cell - 1);
    if (above[cell] > 0) visit(cell + nx);
    if (cell >= nx && above[cell - nx] > 0) visit(cell - nx);
  }
  const lost = soilOf.findIndex((soil, k) => soil >= 0 && !seen[k]);
  if (lost < 0) return;
  const [i, j] = [lost % nx, Math.floor(lost / nx)];
  throw new InputError(
    'invalid-input',
    `ground at x ${((grid.x[i] + grid.x[i + 1]) / 2).toFixed(2)} m, z ${((grid.z[j] + grid.z[j + 1]) / 2).toFixed(2)} m ` +
      'touches no water of known level; open a way to the far ground, or fill it as pond',
  );
}
