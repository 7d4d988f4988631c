import { calendarOf } from '../climate/index.js';
import { LEVEL_RESOLUTION, method } from '../formula/index.js';
import { quantile } from '../sampling/index.js';
import { type Site, WET_MONTHS_NEEDED } from '../site/index.js';
import { floorLevel, NOTHING } from './measures.js';
import { type OwnReading, readingsOf } from './readings.js';
import { Remembered } from './remembered.js';

export const oldDrainMethod = method({
  title: 'What the dip pipe tells of an old drain',
  what:
    'Whether the drain under a pond that is there holds the water down, by the looks into its dip pipe: it works when the water ' +
    'stood no higher than the floor at every look of at least four wet months; it has stopped when it stood higher at the last.',
  assumptions: [
    'a drain nobody spoke of is taken to be there where in those months the clay stands at least 0.2 m higher than was seen under ' +
      'the liner, in the middle year (our choice)',
    'it blocks twice as often as a new one with its upkeep, unless the survey says how rarely: looks tell of the years behind (our choice)',
  ],
  source: 'level against level; common practice',
});

/** What is known of a drain under a pond that is there. */
export interface OldDrain {
  works: boolean;
  /** highest water seen under the liner in the wet months, m above the datum */
  highest: number;
  /** of the wet months, the last of them the latest */
  looks: OwnReading[];
}

/** How much lower than the clay around it water stands that something must lead away, m. Our choice. */
const LED_AWAY = 0.2;

const found = new Remembered<OldDrain | null>();

/** The old drain of a site, see {@link oldDrainMethod}; undefined where none is there, or too few looks tell of it. */
export function oldDrainOf(site: Site): OldDrain | undefined {
  return found.of(site, '', () => seenOf(site) ?? null) ?? undefined;
}

/** Whether a drain lies there that works. */
export function oldDrainWorks(site: Site): boolean {
  return oldDrainOf(site)?.works === true;
}

function seenOf(site: Site): OldDrain | undefined {
  const { pond, survey, wetMonths } = site;
  const said = survey.pond.old_drain;
  if (!pond.existing || said === 'no') return undefined;
  const month = ({ day }: OwnReading) => calendarOf(Math.floor(day)).month;
  const looks = readingsOf(site, 'dip-pipe').filter(
    (look) => look.level !== undefined && wetMonths.includes(month(look)),
  );
  const last = looks.at(-1);
  const floor = floorLevel(pond.depth, NOTHING) + LEVEL_RESOLUTION;
  const low = looks.filter(({ level }) => level! <= floor);
  const months = new Set(low.map(month));
  if (!last) return undefined;
  const highest = Math.max(...looks.map(({ level }) => level!));
  const known = said === 'yes' || ledAway(site, Math.max(...low.map(({ level }) => level!)), months);
  if (!known) return undefined;
  if (last.level! > floor && (said === 'yes' || months.size >= WET_MONTHS_NEEDED))
    return { works: false, highest, looks };
  return low.length === looks.length && months.size >= WET_MONTHS_NEEDED
    ? { works: true, highest, looks }
    : undefined;
}

/** Whether in the middle year the clay of those months stands well above what was seen. */
function ledAway({ water }: Site, seen: number, months: ReadonlySet<number>): boolean {
  const { month: levels } = water.clayLow;
  const middle = (of: number) =>
    quantile(
      Float64Array.from({ length: levels.length / 12 }, (_, i) => levels[i * 12 + of - 1]),
      0.5,
    );
  return months.size >= WET_MONTHS_NEEDED && [...months].every((of) => middle(of) > seen + LED_AWAY);
}
