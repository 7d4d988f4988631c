import { isWetHalf, calendarOf, isoDate } from '../climate/index.js';
import { method, SECONDS_PER_DAY } from '../formula/index.js';
import type { Dip } from '../groundwater/index.js';
import { basicTimeLag, intakeShapeFactor } from '../seepage/index.js';
import type { Look, Survey, Warning } from '../survey/index.js';

export const dipReading = method({
  title: 'What a look into a hole says',
  what: 'Turns looks into levels or bounds by the time the hole had to fill, with the lag of its own geometry.',
  assumptions: [
    "'dry' bounds the water to below the floor only after two lags; sooner it says nothing",
    'a level seen less than three lags after opening or bailing is only a lower limit of where it is going',
    'a first strike while digging is a lower limit too',
    'a hole with no opening date is taken as long open',
  ],
  source: 'Hvorslev 1951; common practice for the limits',
});

/** Reading error of a tape in a pipe, m; common practice. */
const TAPE_ERROR = 0.01;
const RESERVED = new Set(['pond', 'dip-pipe', 'dig']);

/** A dip with its pit, and the depth below the ground there. */
export interface PitDip extends Dip {
  pit: string;
}

/** What all looks say of the water in the ground, and which of them say nothing and why. */
export function dipsOf(survey: Survey, conductivity: number): { dips: PitDip[]; warnings: Warning[] } {
  const dips: PitDip[] = [];
  const warnings: Warning[] = [];
  for (const pit of [...new Set(survey.looks.map((l) => l.pit))]) {
    if (RESERVED.has(pit)) continue;
    let since: number | undefined;
    let opened: Look | undefined;
    for (const look of survey.looks.filter((l) => l.pit === pit)) {
      if (look.reading === 'opened' || look.reading === 'bailed') {
        since = look.day;
        if (look.reading === 'opened') opened = look;
        continue;
      }
      const hole = { ...opened, ...Object.fromEntries(Object.entries(look).filter(([, v]) => v !== undefined)) } as Look;
      const lag = lagOf(hole, conductivity);
      const waited = since === undefined ? Number.POSITIVE_INFINITY : ((look.day - since) * SECONDS_PER_DAY) / lag;
      const dip = { pit, day: look.day, error: TAPE_ERROR };
      if (look.reading === 'strike') dips.push({ ...dip, depth: look.depth!, says: 'above' });
      else if (look.reading === 'level')
        dips.push({ ...dip, depth: look.depth!, says: waited >= 3 ? 'level' : 'above' });
      else if (waited >= 2) dips.push({ ...dip, depth: hole.holeDepth!, says: 'below' });
      else
        warnings.push({
          code: 'dry-too-soon',
          message: `'dry' in ${pit} on ${isoDate(look.day)} says nothing: the hole had ${round(waited)} of the 2 time lags (one is ${days(lag)}) that this ground needs`,
          ...look.origin,
        });
    }
  }
  return { dips: dips.sort((a, b) => a.day - b.day), warnings };
}

/** Time lag of the hole in seconds; an open hole gathers water over the lower half of its depth. */
function lagOf(hole: Look, conductivity: number): number {
  const diameter = hole.holeDiameter ?? hole.pipeBore ?? 0.1;
  const floor = hole.holeDepth ?? hole.depth ?? 1;
  const length = Math.max(floor - (hole.openFrom ?? floor / 2), 0.05);
  const shape = intakeShapeFactor.compute(length, diameter / 2);
  return basicTimeLag.compute((hole.pipeBore ?? diameter) / 2, shape, conductivity);
}

const round = (v: number) => Number(v.toPrecision(2));
const days = (s: number) => (s < 2 * SECONDS_PER_DAY ? `${round(s / 3600)} h` : `${round(s / SECONDS_PER_DAY)} days`);

/** Months of the wet half-year in which the dips give a level or a bound. */
export function wetMonthsCovered(dips: PitDip[], latitude: number): number {
  const months = dips.filter((d) => d.says !== 'above').map((d) => calendarOf(d.day).month);
  return new Set(months.filter((m) => isWetHalf(m, latitude))).size;
}
