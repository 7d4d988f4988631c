import { meanConductivity, meanSlope } from './gardner.js';
import { type Conductances, halfOf, type Section, skinOf } from './section.js';
import type { Slope } from './slope.js';
import { cellsOf, framed, type Stencil } from './stencil.js';

/** The flow balance of a section that is not full, with what is needed to better it; framed vectors. */
export interface UnsaturatedSystem {
  /** what each cell's balance has too much of, m²/s */
  excess: Float64Array;
  /** flow out through each contact, m²/s */
  contactFlow: Float64Array;
  /** of a contact that lets out only: nought where it is shut */
  running: Uint8Array;
  /** symmetric part: conductances as they are, for the preconditioner */
  stencil: Stencil;
  /** slope of the excess with the heads */
  slope: Slope;
}

/** Water held at the start of a time step, and its length. */
export interface TimeStep {
  /** of each cell, m² */
  held: Float64Array;
  /** s */
  step: number;
}

/** Room for a system. */
export function unsaturatedSystem(section: Section, { nx, nz }: Conductances): UnsaturatedSystem {
  const plane = () => framed(nx, nz);
  return {
    excess: plane(),
    contactFlow: new Float64Array(section.contacts.length),
    running: new Uint8Array(section.contacts.length),
    stencil: { nx, nz, centre: plane(), east: plane(), north: plane() },
    slope: {
      nx,
      nz,
      centre: plane(),
      fromRight: plane(),
      fromLeft: plane(),
      fromAbove: plane(),
      fromBelow: plane(),
    },
  };
}

/** Thickness of a capillary fringe, 1/α, over the height of a cell: where it is less, the cell's own height counts. */
const LEAST_FRINGE = 1;

/** Heights and sorptive numbers of the cells, taken apart once. */
export interface CellFacts {
  height: Float64Array;
  sorptive: Float64Array;
  /** water that drains and that is squeezed out, m² and m a metre of head; nought where there is no soil */
  drainable: Float64Array;
  storage: Float64Array;
}

/** See {@link CellFacts}. */
export function cellFacts({ grid, soils, soilOf }: Section): CellFacts {
  const nx = grid.x.length - 1;
  const area = (k: number) => {
    const [i, j] = [k % nx, Math.floor(k / nx)];
    return (grid.x[i + 1] - grid.x[i]) * (grid.z[j + 1] - grid.z[j]);
  };
  return {
    drainable: Float64Array.from(soilOf, (s, k) => (s < 0 ? 0 : soils[s].drainable * area(k))),
    storage: Float64Array.from(soilOf, (s, k) => (s < 0 ? 0 : soils[s].storage * area(k))),
    height: Float64Array.from(soilOf, (_, k) => {
      const j = Math.floor(k / nx);
      return (grid.z[j] + grid.z[j + 1]) / 2;
    }),
    sorptive: Float64Array.from(soilOf, (s, k) => {
      const j = Math.floor(k / nx);
      return s < 0 ? 1 : Math.min(soils[s].sorptive, 1 / (LEAST_FRINGE * (grid.z[j + 1] - grid.z[j])));
    }),
  };
}

/**
 * Fills a system at given heads: each face's flow is the difference in head over the two half cells in series, each with
 * its own soil's mean conductivity between the two pressure heads.
 * @param head - of the cells, framed
 * @param patience - how far below its own head the ground's may fall before a running outlet shuts, m
 * @param time - of a step in time; absent: steady
 */
export function assembleUnsaturated(
  section: Section,
  conductances: Conductances,
  facts: CellFacts,
  head: Float64Array,
  system: UnsaturatedSystem,
  patience = 0,
  time?: TimeStep,
): void {
  const { nx, nz, halfAcross, halfDown, right, above } = conductances;
  const { excess, stencil, slope } = system;
  const { centre, fromRight, fromLeft, fromAbove, fromBelow } = slope;
  for (const v of [excess, stencil.centre, centre]) v.fill(0);
  const offset = nx + 1;
  const face = (
    k: number,
    l: number,
    full: number,
    half: Float64Array,
    coupling: Float64Array,
    fromNext: Float64Array,
    fromOwn: Float64Array,
  ) => {
    const [a, b] = [k + offset, l + offset];
    if (full === 0) {
      coupling[a] = 0;
      fromNext[a] = 0;
      fromOwn[b] = 0;
      return;
    }
    const fall = head[a] - head[b];
    const [p, q] = [head[a] - facts.height[k], head[b] - facts.height[l]];
    let g = full;
    let [slopeOwn, slopeNext] = [0, 0];
    if (p < 0 || q < 0) {
      const [sk, sl] = [facts.sorptive[k], facts.sorptive[l]];
      const mk = meanConductivity(sk, p, q);
      const ml = sk === sl ? mk : meanConductivity(sl, p, q);
      const [rk, rl] = [half[k] / mk, half[l] / ml];
      g = 1 / (rk + rl);
      const [wk, wl] = [(g * g * rk) / mk, (g * g * rl) / ml];
      slopeOwn = fall * (wk * meanSlope(sk, p, q, mk) + wl * meanSlope(sl, p, q, ml));
      slopeNext = fall * (wk * meanSlope(sk, q, p, mk) + wl * meanSlope(sl, q, p, ml));
    }
    const flow = g * fall;
    excess[a] += flow;
    excess[b] -= flow;
    coupling[a] = g;
    stencil.centre[a] += g;
    stencil.centre[b] += g;
    centre[a] += g + slopeOwn;
    fromOwn[b] = g + slopeOwn;
    centre[b] += g - slopeNext;
    fromNext[a] = g - slopeNext;
  };
  for (let j = 0; j < nz; j++)
    for (let i = 0; i < nx; i++) {
      const k = j * nx + i;
      if (i + 1 < nx) face(k, k + 1, right[k], halfAcross, stencil.east, fromRight, fromLeft);
      if (j + 1 < nz) face(k, k + nx, above[k], halfDown, stencil.north, fromAbove, fromBelow);
    }
  addContacts(section, conductances, facts, head, system, patience);
  if (time) addStorage(facts, head, system, time);
  const { supply, soilOf } = section;
  const cells = cellsOf(excess, nx, nz);
  if (supply) for (let k = 0; k < supply.length; k++) cells[k] -= supply[k];
  for (let k = 0; k < soilOf.length; k++)
    if (soilOf[k] < 0) {
      stencil.centre[k + offset] = 1;
      centre[k + offset] = 1;
    }
}

/** An outlet runs, or waits one step with a head too low before it shuts. */
const RUNNING = 1;
const WAITING = 2;

/** Flow through the contacts; one that lets out only runs while the ground's head is above its own. */
function addContacts(
  section: Section,
  { nx, halfAcross, halfDown, contact }: Conductances,
  facts: CellFacts,
  head: Float64Array,
  { excess, stencil, slope, contactFlow, running }: UnsaturatedSystem,
  patience: number,
): void {
  const { contacts, grid } = section;
  for (let c = 0; c < contacts.length; c++) {
    const { cell, head: outside, height, outOnly } = contacts[c];
    const k = cell + nx + 1;
    const fall = head[k] - outside;
    if (outOnly) {
      running[c] = fall > 0 ? RUNNING : running[c] === RUNNING && fall > -patience ? WAITING : 0;
      if (running[c] === 0) {
        contactFlow[c] = 0;
        continue;
      }
    }
    const [p, q] = [head[k] - facts.height[cell], outside - height];
    let g = contact[c];
    let bend = 0;
    if (p < 0 || q < 0) {
      const mean = meanConductivity(facts.sorptive[cell], p, q);
      const half = halfOf(contacts[c], halfAcross, halfDown) / mean;
      g = 1 / (half + skinOf(contacts[c], grid));
      bend = ((fall * g * g * half) / mean) * meanSlope(facts.sorptive[cell], p, q, mean);
    }
    contactFlow[c] = g * fall;
    excess[k] += g * fall;
    stencil.centre[k] += g;
    slope.centre[k] += g + bend;
  }
}

/** Water a cell holds at a head, m²; with dry soil as nought. */
export function waterHeld(facts: CellFacts, cell: number, head: number): number {
  const pressure = head - facts.height[cell];
  const share = pressure >= 0 ? 1 : Math.exp(facts.sorptive[cell] * pressure);
  return facts.drainable[cell] * share + facts.storage[cell] * pressure;
}

/** What is taken into storage in a step, backwards in time. */
function addStorage(
  facts: CellFacts,
  head: Float64Array,
  { excess, stencil, slope }: UnsaturatedSystem,
  { held, step }: TimeStep,
): void {
  const offset = stencil.nx + 1;
  for (let cell = 0; cell < held.length; cell++) {
    const k = cell + offset;
    const pressure = head[k] - facts.height[cell];
    const sorptive = facts.sorptive[cell];
    const gain =
      facts.storage[cell] +
      (pressure >= 0 ? 0 : facts.drainable[cell] * sorptive * Math.exp(sorptive * pressure));
    excess[k] += (waterHeld(facts, cell, head[k]) - held[cell]) / step;
    stencil.centre[k] += gain / step;
    slope.centre[k] += gain / step;
  }
}
