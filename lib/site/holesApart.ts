import { method } from '../formula/index.js';
import type { Warning } from '../survey/index.js';
import { formatQuantity } from '../units/index.js';
import type { PitDip } from './dips.js';
import type { Seam } from './seam.js';

export const holesApartMethod = method({
  title: 'Holes that tell of two waters',
  what: 'Two holes read within three days, brought to one place, whose levels lie further apart than ground and tape explain.',
  assumptions: [
    'further than 0.5 m and twice the spread of both readings (our choice)',
    'a hole into a layer under pressure is told apart already',
  ],
  source: 'common practice',
});

/** Days within which two readings are of one water. */
const TOGETHER = 3;
/** Levels so far apart are told, m. Our choice. */
const APART = 0.5;

/**
 * A warning where two holes disagree most.
 * @param dips - brought to the lowest ground at the rim, m below it
 */
export function holesApart(dips: readonly PitDip[], seams: readonly Seam[]): Warning[] {
  const pressed = new Set(seams.filter(({ from }) => from.length > 0).map(({ pit }) => pit));
  const read = dips
    .filter(({ pit, says }) => says === 'level' && !pressed.has(pit))
    .sort((a, b) => a.day - b.day);
  let most: { over: number; a: PitDip; b: PitDip } | undefined;
  for (const [at, a] of read.entries())
    for (let other = at + 1; other < read.length; other++) {
      const b = read[other]!;
      if (b.day - a.day > TOGETHER) break;
      if (a.pit === b.pit) continue;
      const over = Math.abs(a.depth - b.depth) - APART - 2 * Math.hypot(a.error, b.error);
      if (over > (most?.over ?? 0)) most = { over, a, b };
    }
  if (!most) return [];
  const [high, low] = [most.a, most.b].sort((a, b) => a.depth - b.depth) as [PitDip, PitDip];
  const apart = formatQuantity(low.depth - high.depth, 'length', 'metric');
  return [
    {
      code: 'holes-apart',
      message: `the water in ${high.pit} stands ${apart} higher than in ${low.pit} on the same days, ground allowed for: one of them leaks or is plugged, or there are two waters; both count, so read both again on one day and look which is right`,
      file: 'water.csv',
    },
  ];
}
