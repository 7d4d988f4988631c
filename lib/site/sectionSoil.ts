import { type SectionSoil, SORPTIVE } from '../seepage/index.js';
import { drainablePorosity, type Structure, type Texture } from '../soil/index.js';
import type { GroundLayer } from './ground.js';

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
    sorptive: sorptiveOf(texture, row.structure),
    drainable: drainablePorosity(texture).median,
    storage: STORAGE,
  };
}

/** Sorptive number of a soil by its words, 1/m; the classes are those of {@link SORPTIVE}. */
export function sorptiveOf(texture: Texture, structure?: Structure): number {
  if (['sand', 'loamy sand', 'gravel', 'rock'].includes(texture) || structure === 'cracked')
    return SORPTIVE['coarse sand'];
  if (texture.includes('loam') || structure === 'rooted' || texture === 'peat') return SORPTIVE.loam;
  return texture.includes('clay') && structure === 'massive' ? SORPTIVE['tight clay'] : SORPTIVE['fine soil'];
}
