/** Water that stands higher in summer than in winter: possible, and more often a date or a sign. */

import { calendarOf } from '../climate/index.js';
import type { Findings } from './problem.js';
import { groupBy } from './rows.js';
import type { Origin, Survey } from './survey.js';
import { isNamedHole } from './water.js';

/** Higher by less than this is the reading and the year, m; our choice. */
const SLACK = 0.15;
const NORTH = 50;
/** Mean temperature of late winter below which its rain lies as snow until it melts, °C; common practice. */
const FREEZES = 0;

/** January to March in the north, July to September in the south, where clay stands wettest; common practice. */
export function isLateWinter(month: number, latitude = NORTH): boolean {
  return (latitude < 0 ? opposite(month) : month) <= 3;
}

const opposite = (month: number) => ((month + 5) % 12) + 1;

interface Level {
  place: string;
  month: number;
  depth: number;
  origin: Origin;
}

/** Warns for every place whose water is higher in late summer than in late winter, unless that freezes: snow feeds no water. */
export function checkSeasons(survey: Survey, findings: Findings): void {
  const { latitude } = survey.site;
  if (freezes(survey)) return;
  for (const [place, levels] of groupBy(seen(survey).concat(known(survey)), (level) => level.place)) {
    const summer = levels.filter(({ month }) => isLateWinter(opposite(month), latitude));
    const winter = levels.filter(({ month }) => isLateWinter(month, latitude));
    if (summer.length === 0 || winter.length === 0) continue;
    const [high, wet] = [highest(summer), highest(winter)];
    const rise = wet.depth - high.depth;
    if (rise <= SLACK) continue;
    findings.warn({
      ...high.origin,
      code: 'summer-above-winter',
      message: `water of ${place} stands ${Number(rise.toPrecision(2))} m higher in summer than in winter - check the dates, the depths, and that a latitude in the south has a minus`,
    });
  }
}

/** Whether late winter freezes on average, by the daily weather or else an ordinary year. */
function freezes({ weather, climate, site }: Survey): boolean {
  const byDay = weather.flatMap(({ day, tmin, tmax }) =>
    tmin === undefined || tmax === undefined
      ? []
      : [{ month: calendarOf(day).month, tmean: (tmin + tmax) / 2 }],
  );
  const winter = (byDay.length > 0 ? byDay : climate).flatMap(({ month, tmean }) =>
    tmean !== undefined && isLateWinter(month, site.latitude) ? [tmean] : [],
  );
  return winter.length > 0 && winter.reduce((sum, t) => sum + t, 0) / winter.length < FREEZES;
}

function seen({ looks }: Survey): Level[] {
  return looks.flatMap(({ pit, reading, depth, day, origin }) =>
    reading === 'level' && depth !== undefined && isNamedHole(pit)
      ? [{ place: `${pit} in water.csv`, month: calendarOf(day).month, depth, origin }]
      : [],
  );
}

function known({ heads }: Survey): Level[] {
  return heads.flatMap(({ place, month, depth, origin }) =>
    month === 'high' ? [] : [{ place: `${place} in heads.csv`, month, depth, origin }],
  );
}

/** Looks while a hole fills or after it was bailed are too deep; the highest is not among them. */
const highest = (levels: Level[]) => levels.reduce((a, b) => (b.depth < a.depth ? b : a));
