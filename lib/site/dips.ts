import { calendarOf, isoDate } from '../climate/index.js';
import { method, SECONDS_PER_DAY } from '../formula/index.js';
import type { Dip } from '../groundwater/index.js';
import { basicTimeLag, intakeShapeFactor } from '../seepage/index.js';
import type { Look, Survey, Warning } from '../survey/index.js';
import {
  dryBound,
  type FillingHole,
  type FillingLook,
  type KnownPermeability,
  LONGEST_RECOVERY,
  recoveredLevel,
  SCORE_95,
} from './recovery.js';

export const dipReading = method({
  title: 'What a look into a hole says',
  what: 'Turns looks into levels or bounds by the time the hole had to fill, with the lag of its own geometry.',
  assumptions: [
    "'dry' bounds the water to below the floor only after two lags; sooner only as far as ground as tight as one in " +
      'twenty would have shown it, often not at all',
    'a level seen less than three lags after opening or bailing is only a lower limit of where it is going, unless ' +
      'the looks since then settle that level',
    'so is a level that still rises from look to look, within 30 days and as long as ground as tight as one in twenty would not have let it settle; later the season may raise it',
    'a first strike while digging is a lower limit too',
    'a hole with no opening date is taken as long open',
  ],
  source: 'Hvorslev 1951; common practice for the limits',
});

/** Reading error of a tape in a pipe, m; common practice. */
export const DIP_ERROR = 0.01;
const RESERVED = new Set(['pond', 'dip-pipe', 'dig']);

/** A dip with its pit, and the depth below the ground there. */
export interface PitDip extends Dip {
  pit: string;
  /** seen above the ground at the hole, where the depth is counted from other ground */
  aboveGround?: boolean;
}

/** Looks since a hole was opened or bailed, while it fills. */
interface Filling {
  since: number;
  hole: FillingHole;
  known: KnownPermeability;
  looks: (FillingLook & { origin: Look['origin'] })[];
  /** rises longer than the ground was taken to let it */
  slow: boolean;
  /** place of the last of them among the dips */
  last: number;
}

/**
 * What all looks say of the water in the ground, and which of them say nothing and why.
 * @param groundOf - permeability that a hole gathers water through: median, m/s, and spread of its logarithm (Infinity
 *   where nothing is known of it), by pit, depth below which water enters and depth of the floor, m
 */
export function dipsOf(
  survey: Survey,
  groundOf: (pit: string, from: number | undefined, to: number) => KnownPermeability,
): { dips: PitDip[]; warnings: Warning[] } {
  const dips: PitDip[] = [];
  const warnings: Warning[] = [];
  for (const pit of [...new Set(survey.looks.map((l) => l.pit))]) {
    if (RESERVED.has(pit)) continue;
    let opened: Look | undefined;
    let start: Look | undefined;
    const fillings: Filling[] = [];
    const looksHere = survey.looks.filter((l) => l.pit === pit);
    for (const [i, look] of looksHere.entries()) {
      if (look.reading === 'opened' || look.reading === 'bailed') {
        start = look;
        if (look.reading === 'opened') opened = look;
        continue;
      }
      const hole = {
        ...opened,
        ...Object.fromEntries(Object.entries(look).filter(([, v]) => v !== undefined)),
      } as Look;
      const { floor, openFrom } = dimensions(hole);
      const known = groundOf(pit, openFrom, floor);
      /** how many times as slow as expected it may fill: ground as tight as one in twenty */
      const slowest = Math.exp(SCORE_95 * known.spread);
      const lag = lagOf(hole, known.median);
      const since = (l: Look) =>
        start === undefined ? Number.POSITIVE_INFINITY : (l.day - start.day) * SECONDS_PER_DAY;
      const time = since(look);
      const waited = time / lag;
      const dip = { pit, day: look.day, error: DIP_ERROR };
      if (look.reading === 'strike') dips.push({ ...dip, depth: look.depth!, says: 'above' });
      else if (look.reading === 'level') {
        // The ground may be tighter than it is taken for: a hole that still rises has not caught up.
        const settled = (l: Look | undefined) => l?.reading === 'level' && since(l) >= 3 * lag;
        const slow = waited < 3 * slowest && time < LONGEST_RECOVERY && stillRising(looksHere, i, settled);
        const filling = waited < 3 || slow;
        dips.push({ ...dip, depth: look.depth!, says: filling ? 'above' : 'level' });
        if (start && filling && timed(start, look)) {
          if (fillings.at(-1)?.since !== start.day)
            fillings.push({
              since: start.day,
              hole: fillingHole(hole, start),
              known,
              looks: [],
              slow: false,
              last: 0,
            });
          const current = fillings.at(-1)!;
          current.looks.push({ time, depth: look.depth!, origin: look.origin });
          current.last = dips.length - 1;
          current.slow ||= waited >= 3;
        }
      } else if (waited >= 2) dips.push({ ...dip, depth: hole.holeDepth!, says: 'below' });
      else {
        const bound = dryBound(time, fillingHole(hole, start!), known);
        if (bound !== undefined) dips.push({ ...dip, depth: bound, says: 'below' });
        warnings.push({
          code: 'dry-too-soon',
          message: `'dry' in ${pit} on ${isoDate(look.day)} says ${bound === undefined ? 'nothing' : `only that the water was below ${round(bound)} m`}: the hole had ${round(waited)} of the 2 time lags (one is ${days(lag)}) that this ground needs`,
          ...look.origin,
        });
      }
    }
    for (const { looks, hole, known, last, slow } of fillings) {
      const seen = Math.min(...looks.map((l) => l.depth));
      // Water under pressure may stand above the ground in a pipe.
      const found = recoveredLevel(looks, hole, known, seen < 0 ? seen - 1 : 0);
      if (found.says === 'level')
        dips[last] = { ...dips[last], depth: found.depth, says: 'level', error: bandError(found) };
      else if (slow)
        warnings.push({
          code: 'still-filling',
          message: `${pit} still rose on ${isoDate(dips[last].day)}: its looks until then say only that the water outside is higher, and the ground is tighter than taken; go on reading until two looks agree`,
          ...looks.at(-1)!.origin,
        });
    }
  }
  return { dips: dips.sort((a, b) => a.day - b.day), warnings };
}

/** Whether the water rose from this look to the next of the filling; to the last, from one that should have settled too. */
function stillRising(
  looks: readonly Look[],
  i: number,
  settled: (look: Look | undefined) => boolean,
): boolean {
  const [before, here, after] = [looks[i - 1], looks[i], looks[i + 1]];
  const rises = (from: Look, to: Look) => from.depth! - to.depth! > 2 * DIP_ERROR;
  if (after?.reading === 'level') return rises(here, after);
  return settled(before) && rises(before, here);
}

/** Standard deviation of a level whose band holds nine in ten. */
function bandError({ shallowest, deepest }: { shallowest: number; deepest: number }): number {
  return Math.max(DIP_ERROR, (deepest - shallowest) / 3.29);
}

/** Whether the time between two looks is known well enough: to the hour, or long against half a day. */
function timed(start: Look, look: Look): boolean {
  return look.day - start.day >= 5 || (start.timed && look.timed);
}

/** Dimensions of a look's hole: bore, diameter, floor, and where water may enter; what is not said is usual. */
function dimensions(hole: Look) {
  const diameter = hole.holeDiameter ?? hole.pipeBore ?? 0.1;
  const floor = hole.holeDepth ?? hole.depth ?? 1;
  return { diameter, bore: hole.pipeBore ?? diameter, floor, openFrom: hole.openFrom };
}

function fillingHole(look: Look, start: Look): FillingHole {
  const { diameter, bore, floor, openFrom } = dimensions(look);
  return {
    sealed: openFrom !== undefined,
    floor,
    start: start.reading === 'opened' ? floor : Math.min(start.depth!, floor),
    poolRadius: bore / 2,
    holeRadius: diameter / 2,
    intakeLength: Math.max(floor - (openFrom ?? 0), 0.05),
  };
}

/** Time lag of the hole in seconds; an open hole gathers water over the lower half of its depth. */
export function lagOf(hole: Look, permeability: number): number {
  const { diameter, bore, floor, openFrom } = dimensions(hole);
  const length = Math.max(floor - (openFrom ?? floor / 2), 0.05);
  const shape = intakeShapeFactor.compute(length, diameter / 2);
  return basicTimeLag.compute(bore / 2, shape, permeability);
}

const round = (v: number) => Number(v.toPrecision(2));
const days = (s: number) =>
  s < 2 * SECONDS_PER_DAY ? `${round(s / 3600)} h` : `${round(s / SECONDS_PER_DAY)} days`;

/** Wet months with a dip from which the winter counts as known. Our choice. */
export const WET_MONTHS_NEEDED = 4;

/** How many of the wet months have a dip that gives a level or a bound. */
export function wetMonthsCovered(dips: PitDip[], wetMonths: readonly number[]): number {
  const months = dips.filter((d) => d.says !== 'above').map((d) => calendarOf(d.day).month);
  return new Set(months.filter((m) => wetMonths.includes(m))).size;
}
