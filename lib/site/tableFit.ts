import type { ClimateRecord } from '../climate/index.js';
import type { GroundForTable, TableFit } from '../groundwater/index.js';
import { percentiles } from '../sampling/index.js';
import type { Warning } from '../survey/index.js';
import type { Ground } from './ground.js';

/** What the priors of the table take from the ground. */
export function forTable(ground: Ground, record: ClimateRecord): GroundForTable {
  return {
    porosity: ground.porosity,
    rootCapacity: ground.rootCapacity,
    permeable: ground.permeability.median > 1e-6,
    clayey: ground.clayey,
    snows: record.snows,
  };
}

/** A miss of the dips worth telling, m. Our choice. */
const POOR_FIT = 0.15;

/** Warns of looks that the fit leaves out, and of those it misses. */
export function warnOfFit(fit: TableFit, warnings: Warning[]): void {
  if (fit.outside > 0)
    warnings.push({
      code: 'dips-outside-weather',
      message: `${fit.outside} looks lie outside the weather record and are not used in the fit`,
      file: 'water.csv',
    });
  const missing = percentiles(fit.modelError).p50;
  if (fit.used > 0 && missing > POOR_FIT)
    warnings.push({
      code: 'fit-poor',
      message: `the model misses the dips by ${missing.toFixed(2)} m (one standard deviation): its bands are as wide, and what moves this water may not be in it`,
      file: 'water.csv',
    });
}
