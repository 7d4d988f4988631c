import type { LoweredGround } from '../drain/index.js';
import { type Use, unrecorded } from '../formula/index.js';
import { permeabilityAround, type Site } from '../site/index.js';
import { logPercentiles } from '../soil/index.js';
import { circleRadius, planArea } from '../uplift/index.js';

/** A layer is tight against the ground of the pond below this share of its permeability. Common practice. */
const TIGHT = 0.1;

/**
 * The ground round a drain: how permeable, and how far down it goes on.
 * @param level - that the drain holds, m above the datum
 * @param depth - of the pond, m
 * @param use - a recorder, for the worked sheet
 */
export function loweredGround(
  { ground, pond }: Site,
  level: number,
  depth: number,
  use: Use = unrecorded,
): LoweredGround {
  const { p10, p50, p90 } = logPercentiles(permeabilityAround(ground, depth));
  const pits = [...new Set(ground.layers.map(({ row }) => row.pit))];
  // Where one hole meets a tight layer and the next does not, the ground goes on.
  const below = pits.map((pit) => {
    const tight = ground.layers.filter(
      ({ row, permeability }) => row.pit === pit && row.bottom > -level && permeability.median < TIGHT * p50,
    );
    return Math.max(Math.min(...tight.map(({ row }) => row.top)) + level, 0);
  });
  return {
    permeability: { low: p10, likely: p50, high: p90 },
    below: Math.max(...below),
    radius: use(circleRadius, planArea(pond.shape, 0)),
  };
}
