import type { Basis } from '../basis/index.js';
import { type DrainState, floorLevel, type Measures, reliefBounds, withoutDrain } from '../heads/index.js';
import type { Carrying } from './carrying.js';
import type { Bounds } from './emptiedPond.js';

/** One thing a drain may be found to be in a year. */
export interface Course {
  /** the last two of a sump: no pump runs, both out or the power */
  state: DrainState | 'none' | 'pumps-out' | 'power-out';
  /** with a drain uphill blocked: those without it */
  measures: Measures;
  /** chance of it in a sample, at one of the depths */
  weight(s: number, d: number): number;
  /** bounds of the head with the receiving water as usual */
  calm: Bounds;
  /** with the ditch in flood; absent in a year without one, and where no ditch is reached */
  flood?: Bounds;
}

const UNBOUNDED: Bounds = { least: Number.NEGATIVE_INFINITY };

/**
 * What may become of measures in a year: blocked first, where there is a drain that can be. A drain that more water reaches
 * than it can take is found blocked.
 * @param carrying - of the drain by depth
 */
export function coursesOf(
  m: Measures,
  { site, draws }: Pick<Basis, 'site' | 'draws'>,
  depths: ArrayLike<number>,
  carrying: Carrying[],
): Course[] {
  const { drain, cutoff } = m;
  const { blocked, pumpOut, reliability } = draws;
  if (!drain && cutoff === undefined)
    return [{ state: 'none', measures: m, weight: () => 1, calm: UNBOUNDED }];
  // No candidate has a drain uphill and another under the floor.
  if (!drain)
    return [
      { state: 'blocked', measures: withoutDrain(m), weight: (s) => blocked[s], calm: UNBOUNDED },
      { state: 'works', measures: m, weight: (s) => 1 - blocked[s], calm: UNBOUNDED },
    ];
  const bounds = (state: DrainState, receiver: number): Bounds => {
    const all = Array.from(depths, (depth) => reliefBounds(m, floorLevel(depth, m), state, receiver));
    return { least: all[0].least, most: Float64Array.from(all, (b) => b.most) };
  };
  /** chance that the bed and its pipe take the water */
  const open = (s: number, d: number) => (carrying[d].overwhelmed[s] === 1 ? 0 : 1 - blocked[s]);
  const shut: Course = { state: 'blocked', measures: m, weight: (s, d) => 1 - open(s, d), calm: UNBOUNDED };
  if (drain.kind === 'sump') {
    const cut = (s: number, d: number) => (carrying[d].filled?.[s] === 1 ? reliability.powerOut : 0);
    return [
      shut,
      { state: 'pumps-out', measures: m, weight: (s, d) => open(s, d) * pumpOut[s], calm: UNBOUNDED },
      {
        state: 'power-out',
        measures: m,
        weight: (s, d) => open(s, d) * (1 - pumpOut[s]) * cut(s, d),
        calm: UNBOUNDED,
      },
      {
        state: 'works',
        measures: m,
        weight: (s, d) => open(s, d) * (1 - pumpOut[s]) * (1 - cut(s, d)),
        calm: bounds('works', Number.NEGATIVE_INFINITY),
      },
    ];
  }
  const ditch = drain.outlet.ditch ?? Number.NEGATIVE_INFINITY;
  const floods = 1 / site.floodEvery;
  const inYears = (state: DrainState, share: number): Course[] => {
    const weight = (of: number) => (s: number, d: number) => open(s, d) * share * of;
    const calm = bounds(state, ditch);
    return [
      { state, measures: m, weight: weight(1 - floods), calm },
      { state, measures: m, weight: weight(floods), calm, flood: bounds(state, drain.flood) },
    ];
  };
  return [
    shut,
    ...inYears('works', 1 - reliability.flapStuck),
    ...inYears('flap-stuck', reliability.flapStuck),
  ];
}
