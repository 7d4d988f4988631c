import type { SectionSoil } from '../seepage/index.js';
import { drainablePorosity, sorptiveNumber } from '../soil/index.js';
import type { GroundLayer } from './profile.js';

/** Water squeezed from ground below the table, per volume and metre of head, 1/m. Common practice for stiff clay. */
const STORAGE = 1e-4;

/**
 * A layer of the pit log as a soil of the section, median of what is known.
 * @param anisotropy - permeability across over downwards; tests in holes measure mostly across
 */
export function sectionSoilOf({ row, texture, permeability }: GroundLayer, anisotropy = 1): SectionSoil {
  return {
    across: permeability.median,
    down: permeability.median / anisotropy,
    sorptive: sorptiveNumber(texture, row.structure),
    drainable: drainablePorosity(texture).median,
    storage: STORAGE,
  };
}
