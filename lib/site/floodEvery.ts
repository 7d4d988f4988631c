import type { Survey } from '../survey/index.js';
import type { Assumptions } from './assumptions.js';
import type { Places } from './places.js';

/** Years from one flood of the ditch to the next where nobody knows. Our choice. */
export const FLOOD_EVERY = 5;

/** How often the ditch floods that the drain may end in: once in so many years. */
export function floodEveryOf({ site }: Survey, { outlets }: Places, assume: Assumptions): number {
  if (outlets.length === 0) return site.flood_every ?? FLOOD_EVERY;
  return assume.or(
    site.flood_every,
    'flood_every',
    FLOOD_EVERY,
    'years',
    'how often the ditch floods is not said: a channel is full to its banks every one or two years (Leopold, ' +
      'Wolman & Miller 1964, from memory), a mark somebody remembers is reached about once in ten; between them, our choice',
  );
}
