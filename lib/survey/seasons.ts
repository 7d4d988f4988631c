/** Water that stands higher in summer than in winter: possible, and more often a date or a sign. */

import { calendarOf } from '../climate/index.js';
import type { Findings } from './problem.js';
import type { Origin, Survey } from './survey.js';
import { isNamedHole } from './water.js';

/** Higher by less than this is the reading and the year, m; our choice. */
const SLACK = 0.15;
const NORTH = 50;

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

/** Warns for every place whose water is higher in late summer than in late winter. */
export function checkSeasons(survey: Survey, findings: Findings): void {
  const { latitude } = survey.site;
  for (const [place, levels] of byPlace(seen(survey).concat(known(survey)))) {
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

function byPlace(levels: Level[]): Map<string, Level[]> {
  const places = new Map<string, Level[]>();
  for (const level of levels) {
    const here = places.get(level.place);
    if (here) here.push(level);
    else places.set(level.place, [level]);
  }
  return places;
}

/** Looks while a hole fills or after it was bailed are too deep; the highest is not among them. */
const highest = (levels: Level[]) => levels.reduce((a, b) => (b.depth < a.depth ? b : a));
