import type { SectionSoil } from '../seepage/index.js';
import { drainablePorosity, sorptiveNumber } from '../soil/index.js';
import type { GroundLayer } from './profile.js';

/** Water squeezed from ground below the table, per volume and metre of head, 1/m. Common practice for stiff clay. */
const STORAGE = 1e-4;

/**
 * A layer of the pit log as a soil of the section, median of what is known.
 * @param anisotropy - conductivity across over downwards; tests in holes measure mostly across
 */
export function sectionSoilOf({ row, texture, ksat }: GroundLayer, anisotropy = 1): SectionSoil {
  return {
    across: ksat.median,
    down: ksat.median / anisotropy,
    sorptive: sorptiveNumber(texture, row.structure),
    drainable: drainablePorosity(texture).median,
    storage: STORAGE,
  };
}
