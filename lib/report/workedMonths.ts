/** How low the pond may be let, month by month. */

import type { Basis } from '../basis/index.js';
import { MONTHS } from '../climate/index.js';
import { decidingSituations, type Situation } from '../contract/index.js';
import type { Judged } from '../decision/index.js';
import { formula } from '../formula/index.js';
import {
  emptiedHold,
  floorLevel,
  fullLevel,
  type Measures,
  NOTHING,
  riseBelow,
  riseUphill,
  withoutDrain,
} from '../heads/index.js';
import { keptLevel, lowestOver, monthlyDesign, recordLowest, seamLevel } from '../reliability/index.js';
import { lowestMonthsNote, lowestMonthsTitle } from '../text/lowerWords.js';
import { monthName } from '../text/monthWords.js';
import { lowestUsual } from '../uplift/index.js';
import { heldRow, tellLevels } from './workedBasics.js';
import { drawnLacks, drawnRise, drawnWater } from './workedDrawn.js';
import { assumed, pondItem, Recording } from './workedFrom.js';
import { recordDay } from './workedKept.js';

/** How far a pond may be let fall. */
export const belowFull = formula({
  title: 'How far the pond may be let fall below full',
  symbol: 'd',
  unit: 'm',
  expression: 'max(f - l, 0)',
  parameters: {
    f: { meaning: 'level of the full pond', unit: 'm', min: -30, max: 10 },
    l: { meaning: 'lowest level of the pond', unit: 'm', min: -30, max: 20 },
  },
  compute: (f: number, l: number) => Math.max(f - l, 0),
  validity: 'told to the centimetre below; nought: it is kept full, and may not be safe even so',
  source: 'definition',
});

/** What is kept over the water in a dip pipe at the low side. */
export const overDipPipe = formula({
  title: 'Height of the pond to be kept over the water in the dip pipe',
  symbol: 'k',
  unit: 'm',
  expression: 'g + r - s',
  parameters: {
    g: { meaning: 'margin kept', unit: 'm', min: 0, max: 2 },
    r: { meaning: 'rise of the water from the pipe to the uphill wall', unit: 'm', min: 0, max: 10 },
    s: { meaning: 'head that a slab on the liner holds', unit: 'm', min: 0, max: 2 },
  },
  compute: (g: number, r: number, s: number) => g + r - s,
  validity: 'told to the centimetre above',
  source: 'water against water; margin our choice',
});

/** The levels of the card: with the drain working or none needed, and with it stopped; and what is kept over a dip pipe. */
export function monthParts(a: Judged, situations: Situation[]): Recording[] {
  const { basis, site, decision } = a;
  const rows = decidingSituations(situations).filter(
    ({ situation, month }) => month !== null && (situation === 'emptied' || situation === 'drain-blocked'),
  );
  const advised = rows.some(({ of }) => of === 'recommended');
  const own = advised
    ? { m: decision.measures, depth: decision.depth, basis: decision.changed ?? basis }
    : { m: NOTHING, depth: site.pond.depth, basis };
  const parts = (['emptied', 'drain-blocked'] as const).map((situation) => {
    const m = situation === 'emptied' ? own.m : withoutDrain(own.m);
    const r = new Recording(lowestMonthsTitle(situation), lowestMonthsNote());
    tellLowest(r, a, own.basis, m, own.depth);
    for (const row of rows) if (row.situation === situation) recordMonth(r, a, { ...own, m }, row);
    return r;
  });
  return [...parts.filter(({ steps }) => steps.length > 2), dipPipePart(a)];
}

function tellLowest(r: Recording, a: Judged, basis: Basis, m: Measures, depth: number): void {
  const { site } = basis;
  tellLevels(r, site, m, depth);
  r.tell(lowestOver, {
    g: pondItem(site, 'margin', site.pond.margin),
    b: m.ballast > 0 ? assumed('the slab of this answer, as a head') : assumed('no slab'),
  });
  if ('held' in site.pond.kept) r.tell(lowestUsual, { d: heldRow(site, site.pond.kept.held) });
  else drawnLacks(r, a, basis, 0.5);
  floorLevel(depth, m, r.use);
  fullLevel(site, m, r.use);
}

function recordMonth(
  r: Recording,
  a: Judged,
  { basis, m, depth }: { basis: Basis; m: Measures; depth: number },
  { of, situation, month, lowest_level_m }: Situation,
): void {
  if (lowest_level_m === null) return;
  const p = 1 - basis.site.pond.acceptedRisk;
  const drawn = { of: 'month', month: month!, way: m.way, cutoff: m.cutoff } as const;
  const { high, holds } = monthlyDesign(basis, m, depth, month!);
  const wanted = lowestOver.compute(high, holds, basis.site.pond.margin, m.ballast);
  const kept = keptLevel(basis, m, depth, month!, wanted, high);
  if (kept === undefined) drawnWater(r, a, basis, drawn, p, basis.highs.monthly(m, month!, p));
  else recordDay(r, a, basis, m, depth, p, month!);
  emptiedHold(basis.site, m, depth, r.use);
  const heaved = seamLevel(basis, m, depth, month!);
  if (heaved !== null)
    r.know(
      heaved,
      'm',
      assumed('what the floor over a seam needs in all but the accepted share of the draws'),
    );
  const lowest = recordLowest(basis, m, depth, month!, r.use)!;
  if (r.steps.at(-1)!.result === lowest) r.same(`situations[${of}/${situation}/${month}].lowest_level_m`);
  r.use(belowFull, fullLevel(basis.site, m), lowest);
}

/** Margin and rise that are kept over a reading. */
function dipPipePart(a: Judged): Recording {
  const { site } = a.basis;
  const { ballast } = a.decision.measures;
  const r = new Recording(
    'How far over the water in the dip pipe the pond is kept',
    'The pipe stands at the low side; behind the uphill wall the water may stand higher on the same day.',
  );
  const rise = riseBelow(site, NOTHING);
  const month = MONTHS.find((each) => riseUphill(site, each) === rise)!;
  if (rise > 0) drawnRise(r, a, month, rise, monthName(month));
  r.tell(overDipPipe, {
    g: pondItem(site, 'margin', site.pond.margin),
    ...(rise > 0 ? {} : { r: assumed('no side stands uphill') }),
    s: assumed(ballast > 0 ? 'the slab of this answer, as a head' : 'no slab is laid'),
  });
  r.use(overDipPipe, site.pond.margin, rise, ballast);
  return r;
}
