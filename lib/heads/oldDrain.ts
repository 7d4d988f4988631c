import { calendarOf } from '../climate/index.js';
import { LEVEL_RESOLUTION, method } from '../formula/index.js';
import { quantile, Remembered } from '../sampling/index.js';
import { monthValues, type Site, WET_MONTHS_NEEDED } from '../site/index.js';
import { floorLevel, NOTHING } from './measures.js';
import { type OwnReading, readingsOf } from './readings.js';

export const oldDrainMethod = method({
  title: 'What the dip pipe tells of an old drain',
  what:
    'Whether the drain under a pond that is there holds the water down, by the looks into its dip pipe in wet months: it works when ' +
    'the water stood no higher than the floor at every one of them while the clay stood at least 0.2 m higher than was seen, in at ' +
    'least four of these months; it has stopped when the water stood above the floor at the last; else the looks do not tell.',
  assumptions: [
    'the clay of the day by the daily simulation, where the look lies in the weather record, else that of the month in the middle year; ' +
      'a winter in which it stood low too proves nothing',
    'a drain nobody spoke of is taken to be there where the looks prove one',
    'looks that ended three years before the latest day the survey knows tell nothing of today (our choice)',
    'it blocks twice as often as a new one with its upkeep, unless the survey says how rarely: looks tell of the years behind (our choice)',
  ],
  source: 'level against level; common practice',
});

/** What is known of a drain under a pond that is there. */
export interface OldDrain {
  state: 'works' | 'stopped' | 'untold';
  /** looks of the wet months, the last of them the latest */
  looks: OwnReading[];
  /** highest water seen at them, m above the datum; absent: none was read */
  highest?: number;
}

/** How much lower than the clay around it water stands that something must lead away, m. Our choice. */
const LED_AWAY = 0.2;
/** Looks older than this tell nothing of today, days. Our choice. */
const LONG_AGO = 3 * 365.25;

const found = new Remembered<OldDrain | null>();

/** The old drain of a site, see {@link oldDrainMethod}; undefined where none is there that anybody knows of. */
export function oldDrainOf(site: Site): OldDrain | undefined {
  return found.of(site, '', () => seenOf(site) ?? null) ?? undefined;
}

/** Whether a drain lies there that works. */
export function oldDrainWorks(site: Site): boolean {
  return oldDrainOf(site)?.state === 'works';
}

function seenOf(site: Site): OldDrain | undefined {
  const { pond, survey, wetMonths } = site;
  const said = survey.pond.old_drain;
  if (!pond.existing || said === 'no') return undefined;
  const looks = readingsOf(site, 'dip-pipe').filter(
    (look) => look.level !== undefined && wetMonths.includes(monthOf(look)),
  );
  const last = looks.at(-1);
  if (!last) return said === 'yes' ? { state: 'untold', looks } : undefined;
  const floor = floorLevel(pond.depth, NOTHING) + LEVEL_RESOLUTION;
  const low = looks.filter(({ level }) => level! <= floor);
  const held = new Set(low.filter((look) => clayOn(site, look) > look.level! + LED_AWAY).map(monthOf));
  const proven = held.size >= WET_MONTHS_NEEDED;
  if (said !== 'yes' && !proven) return undefined;
  const highest = Math.max(...looks.map(({ level }) => level!));
  if (latestDay(site) - last.day > LONG_AGO) return { state: 'untold', looks, highest };
  if (last.level! > floor) return { state: 'stopped', looks, highest };
  return { state: proven && low.length === looks.length ? 'works' : 'untold', looks, highest };
}

const monthOf = ({ day }: OwnReading) => calendarOf(Math.floor(day)).month;

/** Water in the clay on the day of a look, at the middle of what is likely, m above the datum. */
function clayOn({ water }: Site, look: OwnReading): number {
  const { daily, clayLow } = water;
  const at = daily ? Math.floor(look.day) - daily.firstDay : -1;
  if (daily && at >= 0 && at < daily.days)
    return quantile(
      Float64Array.from({ length: daily.samples }, (_, s) => daily.clay[s * daily.days + at]),
      0.5,
    );
  return quantile(monthValues(clayLow.month, monthOf(look)), 0.5);
}

/** Latest day that the survey knows of. */
function latestDay({ survey, record }: Site): number {
  const ends = survey.looks.map(({ day }) => day);
  return Math.max(...ends, record ? record.firstDay + record.rain.length - 1 : Number.NEGATIVE_INFINITY);
}
