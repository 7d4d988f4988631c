import { method } from '../formula/index.js';
import {
  type Fineness,
  floorOf,
  type LinerPoint,
  linerUplift,
  type PondGround,
  pondSection,
  solveFreeSurface,
} from '../seepage/index.js';
import type { Bed } from './envelope.js';
import { EDGE } from './floorRelief.js';
import { BED_THICKNESS, evenPlaces } from './layout.js';
import { type SectionWorks, withWorks } from './sectionWorks.js';

export const sectionLayoutMethod = method({
  title: 'Fewest pipes and thinnest bed that hold an emptied liner down',
  what:
    'Pipes side by side, evenly spaced, one more at a time, in each thickness of the bed; each is solved as a vertical ' +
    'section with its free surface, and held against what ballast holds.',
  assumptions: [
    'as for the section and for what is cut',
    'ballast lies on the floor only, which is judged to nine tenths of its half width; sides are judged where the bed goes up behind them',
  ],
  source: 'seepage in a vertical section',
});

/** What may be laid. */
export interface LayoutWish {
  /** absent: pipes in the ground as it is */
  bed?: { kind: Bed; turnedUp: boolean };
  /** thicknesses of the bed to be tried, the thinnest first, m; absent: the usual one */
  thicknesses?: number[];
  /** effective radius of the pipe, and depth of its middle below the floor where it lies in no bed; m */
  pipe: { radius: number; depth?: number };
  /** head that ballast on the floor holds, m */
  held: number;
  /** pipes side by side at most; absent: 5 */
  most?: number;
}

/** A layout that was tried. */
export interface LayoutTrial {
  count: number;
  /** between pipes, or the width of the floor for one, m */
  spacing: number;
  /** of the bed, m; 0 without one */
  thickness: number;
  /** largest net head that lifts the floor, ballast taken off, and the sides; m */
  floor: number;
  sides: number;
  /** into all pipes, a metre of them, m²/s */
  flow: number;
}

/** What the search found. */
export interface LayoutSearch {
  /** absent where nothing tried holds */
  found?: LayoutTrial;
  tried: LayoutTrial[];
}

/** Cells of the sections tried. */
const FINENESS: Fineness = { across: 120, up: 70, hole: 2 };

/**
 * Searches a layout, see {@link sectionLayoutMethod}.
 * @param ground - without works, the pond emptied, SI
 * @param wish - what may be laid
 * @param fineness - of the grid
 * @returns the layouts tried, and the first that holds
 * @throws InputError as {@link pondSection}, as for a pipe too close under the floor; SolverError where a section does not settle
 */
export function searchLayout(
  ground: PondGround,
  { bed, thicknesses = [BED_THICKNESS], pipe, held, most = 5 }: LayoutWish,
  fineness = FINENESS,
): LayoutSearch {
  const floor = floorOf(ground);
  const toes = ground.outline.filter((p) => p.z < floor + 1e-9).map((p) => p.x);
  const [left, right] = [Math.min(...toes), Math.max(...toes)];
  const [width, middle] = [right - left, (left + right) / 2];
  const { radius } = pipe;
  const tried: LayoutTrial[] = [];
  for (let count = 1; count <= most; count++)
    for (const thickness of bed ? thicknesses : [0]) {
      const depth = bed ? thickness - radius : (pipe.depth ?? BED_THICKNESS);
      const works: SectionWorks = {
        ...(bed ? { bed: { ...bed, thickness } } : {}),
        pipes: evenPlaces(width, count).map((across) => ({ across, depth, radius })),
      };
      const pond = pondSection(withWorks(ground, works), fineness);
      const state = solveFreeSurface(pond.section);
      const points = linerUplift(pond, state);
      const worst = (where: (p: LinerPoint) => boolean) =>
        Math.max(...points.filter(where).map((p) => p.uplift));
      const onFloor = ({ z }: LinerPoint) => z < floor + 1e-6;
      const layout: LayoutTrial = {
        count,
        spacing: width / count,
        thickness,
        floor: worst((p) => onFloor(p) && Math.abs(p.x - middle) <= (EDGE * width) / 2) - held,
        sides: worst((p) => !onFloor(p)),
        flow: works.pipes.reduce((sum, _, p) => sum + (state.flows.out[`pipe ${p + 1}`] ?? 0), 0),
      };
      tried.push(layout);
      if (layout.floor <= 0 && !(bed?.turnedUp && layout.sides > 0)) return { found: layout, tried };
    }
  return { tried };
}
