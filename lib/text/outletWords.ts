import type { Cover, Erosion, OutletWorks } from '../drain/index.js';
import type { Say } from './say.js';

const LIES: Record<Cover['lies'], string> = {
  deep: 'deep enough for spade and wheelbarrow',
  shallow: 'shallow: mark it, keep vehicles off, and lay stiff pipe',
  bare: 'the pipe would lie above the ground here',
};

const EROSION: Record<Exclude<Erosion, 'paved'>, string> = {
  'flat-stone': 'a flat stone under the mouth is enough',
  apron: 'the bank would wash out: lay a stone apron on fabric, or flatten the last run',
};

/** Ground below a mouth that water wears away first, m. Common practice. */
const PAVED = 0.5;

const FROST =
  'A free-draining pipe empties itself and may lie above the frost; its mouth must not freeze shut under snow or in standing water.';

/** Cover, frost, erosion and backwater of a run to an outlet. */
export function outletWords({ cover, erosion, backwater }: OutletWorks, { length, level }: Say): string[] {
  const under = (place: string, c: Cover) =>
    `Earth over the pipe ${place}: ${length(Math.max(c.cover, 0))}, ${LIES[c.lies]}.`;
  const shut = backwater && level(backwater.flap);
  const open = backwater && level(backwater.open);
  const stands =
    shut === open
      ? `${open}, with a flap that shuts or without one`
      : `${shut} behind a flap that shuts, ${open} without one`;
  return [
    under('at the pond', cover.pond),
    under('at its mouth', cover.mouth),
    FROST,
    `Below the mouth: ${erosion === 'paved' ? `pave the first ${length(PAVED)} with stones the size of a fist` : EROSION[erosion]}.`,
    ...(backwater ? [`With the ditch in flood the water under the liner stands ${stands}.`] : []),
  ];
}
