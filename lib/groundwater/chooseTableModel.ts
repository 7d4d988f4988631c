import type { ClimateRecord } from '../climate/index.js';
import { method } from '../formula/index.js';
import { percentiles } from '../sampling/index.js';
import { columnSeries, runColumn } from './columnRun.js';
import { type Dip, fitTable, SPIN_UP, type TableFit, windowOf } from './fitTable.js';
import type { TableModel } from './tableModels.js';

export const modelChoice = method({
  title: 'Choice between models of the water table',
  what:
    'With enough levels, each model is fitted to the first two thirds and judged on the last third; the one that ' +
    'misses it least is fitted again to all. With fewer, the model expected for the ground is taken.',
  assumptions: [
    '24 levels over at least 300 days are enough (our choice)',
    'skill is the root mean square of the misses',
  ],
  source: 'split-sample test, Klemeš 1986, from memory',
});

const ENOUGH = { levels: 24, days: 300 };
const TRIAL_SETS = 40;

/** The model of the water table that was chosen, and its fit. */
export interface ChosenModel {
  model: TableModel;
  fit: TableFit;
  /** why, in words with the figures */
  reason: string;
}

/**
 * Chooses a model and fits it, see {@link modelChoice}.
 * @param record - daily climate
 * @param dips - looks at the water, m below the ground, sorted by day
 * @param models - to choose from, of {@link modelsFor}, the one expected without dips first
 * @param count - parameter sets wanted, at least 1
 * @param seed - whole number
 * @returns the model, its fit, and the reason in words
 * @throws Error when a balance does not close to 1e-9 m
 */
export function chooseTableModel(
  record: ClimateRecord,
  dips: Dip[],
  models: TableModel[],
  count: number,
  seed: number,
): ChosenModel {
  const inside = (d: Dip) => d.day >= record.firstDay && d.day < record.firstDay + record.rain.length;
  const levels = dips.filter((d) => d.says === 'level' && inside(d));
  const span = levels.length > 1 ? levels[levels.length - 1].day - levels[0].day : 0;
  if (levels.length < ENOUGH.levels || span < ENOUGH.days) {
    const [model] = models;
    const reason = `${levels.length} levels over ${Math.round(span)} days are too few to choose by skill: the ${model.name} is what such ground does`;
    return { model, fit: fitTable(record, dips, model.priors, count, seed), reason };
  }
  const split = levels[Math.floor((2 * levels.length) / 3)].day;
  const early = dips.filter((d) => d.day < split);
  const late = levels.filter((d) => d.day >= split);
  const misses = models.map((model) =>
    miss(record, late, fitTable(record, early, model.priors, TRIAL_SETS, seed)),
  );
  const best = misses.indexOf(Math.min(...misses));
  const figures = models.map((m, i) => `${m.name} ${misses[i].toFixed(2)} m`).join(', ');
  return {
    model: models[best],
    fit: fitTable(record, dips, models[best].priors, count, seed),
    reason: `judged on ${late.length} levels kept back, root mean square miss: ${figures}`,
  };
}

/** Root mean square miss of the middle of the sets on dips they were not fitted to, m. */
function miss(record: ClimateRecord, dips: Dip[], fit: TableFit): number {
  const window = windowOf(record, dips[0].day - SPIN_UP, dips[dips.length - 1].day);
  const series = columnSeries(window.rain.length);
  const seen = fit.sets.map((p) => {
    runColumn(window, p, series);
    return dips.map((d) => series.depth[Math.floor(d.day) - window.firstDay]);
  });
  const squares = dips.map((d, i) => (percentiles(seen.map((s) => s[i])).p50 - d.depth) ** 2);
  return Math.sqrt(squares.reduce((a, b) => a + b, 0) / squares.length);
}
