import type { Draws } from './draws.js';
import { FLAP_STUCK } from './draws.js';
import type { Bounds } from './emptiedPond.js';
import { type DrainState, reliefBounds } from './head.js';
import { floorLevel, type Measures } from './measures.js';

/** One thing a drain may be found to be in a year. */
export interface Course {
  state: DrainState | 'none';
  /** chance of it in a sample */
  weight(s: number): number;
  /** bounds of the head with the receiving water as usual */
  calm: Bounds;
  /** with the ditch in flood; absent where no ditch is reached */
  flood?: Bounds;
}

const UNBOUNDED: Bounds = { least: Number.NEGATIVE_INFINITY };

/** What may become of measures in a year: blocked first, where there is a drain that can be. */
export function coursesOf(m: Measures, draws: Draws, depths: ArrayLike<number>): Course[] {
  const { drain } = m;
  if (!drain) return [{ state: 'none', weight: () => 1, calm: UNBOUNDED }];
  const bounds = (state: DrainState, receiver: number): Bounds => {
    const all = Array.from(depths, (depth) => reliefBounds(m, floorLevel(depth, m), state, receiver));
    return { least: all[0].least, most: Float64Array.from(all, (b) => b.most) };
  };
  if (drain.kind === 'sump')
    return [
      { state: 'blocked', weight: (s) => draws.pumpOut[s], calm: UNBOUNDED },
      {
        state: 'works',
        weight: (s) => 1 - draws.pumpOut[s],
        calm: bounds('works', Number.NEGATIVE_INFINITY),
      },
    ];
  const ditch = drain.outlet.ditch ?? Number.NEGATIVE_INFINITY;
  const course = (state: DrainState, share: number): Course => ({
    state,
    weight: (s) => (1 - draws.blocked[s]) * share,
    calm: bounds(state, ditch),
    flood: bounds(state, drain.flood),
  });
  return [
    { state: 'blocked', weight: (s) => draws.blocked[s], calm: UNBOUNDED },
    course('works', 1 - FLAP_STUCK),
    course('flap-stuck', FLAP_STUCK),
  ];
}
