/** The vertical section across a pond: its ground, what is laid under the liner, and the water solved in it. */
export {
  BARE_RADIUS,
  evenPlaces,
  type SectionWorks,
  searchLayout,
  withWorks,
  worksOf,
} from './drain/index.js';
export { liftWords, linerUpliftFigure, sectionHeadsFigure } from './figures/index.js';
export {
  evenLines,
  gradedLines,
  headAt,
  linerUplift,
  type PondGround,
  phreaticLine,
  pondSection,
  runSection,
  type Section,
  SolverError,
  solveFreeSurface,
  solveSaturated,
  USUAL_FINENESS,
} from './seepage/index.js';
export { pondGroundOf } from './site/index.js';
export { InputError } from './units/index.js';
