import {
  type ClimateRecord,
  DEPLETION_FRACTION,
  type RootZoneSeries,
  runRootZone,
  runSnow,
} from '../climate/index.js';
import { runTableStore, type TableParameters } from './tableStore.js';

/** Daily series of one parameter set; the arrays are reused from run to run. */
export interface ColumnSeries extends RootZoneSeries {
  /** depth to water, m below the ground */
  depth: Float64Array;
  /** saturation excess, m a day */
  spill: Float64Array;
  /** rain and melt reaching the ground, m a day */
  liquid: Float64Array;
}

/** Buffers for a record. */
export function columnSeries(days: number): ColumnSeries {
  return {
    recharge: new Float64Array(days),
    unmet: new Float64Array(days),
    depth: new Float64Array(days),
    spill: new Float64Array(days),
    liquid: new Float64Array(days),
  };
}

/**
 * Snow, root zone and water table over a record. The first year is run twice, so that the start is forgotten.
 * @returns largest closure error of the balances, m
 */
export function runColumn(record: ClimateRecord, p: TableParameters, out: ColumnSeries): { closure: number } {
  const root = {
    capacity: p.rootCapacity,
    depletion: DEPLETION_FRACTION,
    demandFactor: p.demandFactor,
    crackShare: p.crackShare,
  };
  const { liquid } = out;
  const snow = record.snows ? runSnow(record.rain, record.tmean, p.meltFactor, liquid).closure : 0;
  if (!record.snows) liquid.set(record.liquid);
  const warm = Math.min(365, liquid.length);
  const first = {
    recharge: out.recharge.subarray(0, warm),
    unmet: out.unmet.subarray(0, warm),
  };
  const roots0 = runRootZone(
    liquid.subarray(0, warm),
    record.demand.subarray(0, warm),
    root,
    0.3 * p.rootCapacity,
    first,
  );
  const table0 = runTableStore(
    first.recharge,
    first.unmet,
    p,
    0.5 * (p.baseDepth - p.spillDepth),
    out.depth.subarray(0, warm),
    out.spill.subarray(0, warm),
  );
  const roots = runRootZone(liquid, record.demand, root, roots0.deficit, out);
  const table = runTableStore(out.recharge, out.unmet, p, table0.height, out.depth, out.spill);
  return { closure: Math.max(Math.abs(snow), Math.abs(roots.closure), Math.abs(table.closure)) };
}
