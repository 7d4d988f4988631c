/** The sheet to sign, row by row: its levels, its water, what lifts and what holds. */

import { type Basis, drawdownOf } from '../basis/index.js';
import type { DesignRow, Situation } from '../contract/index.js';
import { decidingSituations } from '../contract/index.js';
import type { Judged } from '../decision/index.js';
import { bestDig, dugDepth, plannedDigs, seamDepth, seamWater, spareOver } from '../digging/index.js';
import { relievedHead } from '../groundwater/index.js';
import {
  emptiedHold,
  floorLevel,
  fullLevel,
  levelOfDepth,
  type Measures,
  relievedBy,
  withoutDrain,
} from '../heads/index.js';
import { monthlyDesign } from '../reliability/index.js';
import { designRowName } from '../text/designVerdict.js';
import {
  depthOver,
  headOver,
  heaveFactor,
  lowestUsual,
  plugLeft,
  plugSpare,
  plugWeight,
  spareHead,
  upliftUtilisation,
  waterOverPlug,
  withSlab,
} from '../uplift/index.js';
import {
  type Designed,
  designedOf,
  designSheetOf,
  overOf,
  seamOf,
  sidesOf,
  upliftOf,
} from './designSheet.js';
import { shownRows } from './shownRows.js';
import { heldRow, knownDeepest, tellLevels, tellSides } from './workedBasics.js';
import { drawnDig, drawnLacks, drawnWater } from './workedDrawn.js';
import { assumed, Recording, rowsWords } from './workedFrom.js';
import { recordDay } from './workedKept.js';

/** The rows that are printed, each with its steps. */
export function designParts(a: Judged, situations: Situation[]): Recording[] {
  const sheet = designSheetOf(a, situations);
  if (!sheet) return [];
  const rows = decidingSituations(situations);
  const designed = designedOf(a, rows[0]!);
  const basis = (rows[0]!.of === 'recommended' && a.decision.changed) || a.basis;
  const { pond } = basis.site;
  const planned = a.decision.change?.emptied_in ?? (pond.emptiedIn === 'any' ? [] : pond.emptiedIn);
  const shown = shownRows(sheet);
  // The months in which it is to be emptied, whether or not another has less in hand.
  const told = sheet.rows.filter(
    (row) =>
      shown.includes(row) ||
      (row.situation === 'emptied' && row.month !== null && planned.includes(row.month)),
  );
  return told.map((shown) => {
    const at = sheet.rows.indexOf(shown);
    return rowPart(a, basis, designed, rows[at]!, shown, `design_sheet.rows[${at}]`);
  });
}

function rowPart(
  a: Judged,
  basis: Basis,
  designed: Designed,
  row: Situation,
  shown: DesignRow,
  path: string,
): Recording {
  const { site, measures, depth } = designed;
  const m =
    row.situation === 'drain-blocked' || row.situation === 'power-out' ? withoutDrain(measures) : measures;
  const r = new Recording(
    `The sheet to sign: ${designRowName(shown)}`,
    'Levels count from the lowest natural ground at the rim.',
  );
  tellLevels(r, site, m, depth);
  floorLevel(depth, m, r.use);
  recordLevels(r, a, basis, { ...designed, measures: m }, row, path);
  if (shown.sides) {
    tellSides(r, site);
    sidesOf(designed, r.use);
    r.same(`${path}.sides.factor`);
  }
  if (!shown.uplift) return r;
  const factor = assumed('factor of the rules named on the sheet');
  r.tell(headOver, {}).tell(headOver, { z: assumed('a head counts from nought') });
  r.tell(upliftUtilisation, { a: factor, b: factor });
  const uplift = upliftOf(designed, row, r.use);
  if (uplift.value !== null && uplift.lifting_pa > 0) r.same(`${path}.uplift.value`);
  return r;
}

/** Level of the pond or floor, the water of the row, and the margin between. */
function recordLevels(
  r: Recording,
  a: Judged,
  basis: Basis,
  designed: Designed,
  row: Situation,
  path: string,
): void {
  const { site, measures: m, depth } = designed;
  const { month } = row;
  const p = 1 - site.pond.acceptedRisk;
  const spare = (level: number, water: number) => {
    r.use(spareHead, level, water);
    r.same(`${path}.margin_m`);
  };
  if (row.water?.which === 'seam') {
    recordSeam(r, a, basis, designed, row, path);
    return;
  }
  if (row.situation === 'dig') {
    recordDig(r, a, basis, m, depth, row, path);
    return;
  }
  if (row.situation === 'outlet-flood') {
    const hold = emptiedHold(site, m, depth, r.use);
    r.retell(relievedHead, {
      u: assumed('more than any water'),
      d: assumed('head lost in the bed: our choice'),
    });
    const flood = m.drain?.kind === 'outlet' ? m.drain.flood : Number.NEGATIVE_INFINITY;
    const most = relievedBy(m, hold, 'works', flood, r.use)(relievedHead.parameters.u.max);
    r.same(`${path}.water.level_m`);
    spare(hold, most);
    return;
  }
  if (month !== null && row.situation !== 'drawn-down') {
    const hold = emptiedHold(site, m, depth, r.use);
    r.same(`${path}.level_m`);
    for (const of of ['month', 'emptied'] as const)
      drawnWater(
        r,
        a,
        basis,
        { of, month, way: m.way, cutoff: m.cutoff },
        p,
        basis.highs.monthly(m, month, p, of),
      );
    const { emptied } = monthlyDesign(basis, m, depth, month, r.use);
    r.same(`${path}.water.level_m`);
    spare(hold, emptied);
    return;
  }
  const day = recordDay(r, a, basis, m, depth, p, month ?? undefined);
  const level = row.situation === 'full' ? fullLevel(site, m, r.use) : day.pond;
  r.same(`${path}.level_m`);
  spare(m.ballast > 0 ? r.use(withSlab, level, m.ballast) : level, day.head);
}

function recordDig(
  r: Recording,
  a: Judged,
  basis: Basis,
  m: Measures,
  depth: number,
  row: Situation,
  path: string,
): void {
  const { site, dig } = basis;
  const dug = dugDepth(site, m, depth, r.use);
  r.tell(levelOfDepth, {});
  r.use(levelOfDepth, dug);
  r.same(`${path}.level_m`);
  const { plan } =
    plannedDigs(site, dig, m, depth).find(({ plan }) => row.month !== null && plan.months[0] === row.month) ??
    bestDig(site, dig, m, depth);
  drawnDig(r, a, basis, plan.months, 0.9, plan.wetWater);
  r.same(`${path}.water.level_m`);
  r.use(spareHead, -dug, plan.wetWater);
  r.same(`${path}.margin_m`);
}

/** The layer below the clay: its water, the ground over it, and what stands over the floor. */
function recordSeam(
  r: Recording,
  a: Judged,
  basis: Basis,
  designed: Designed,
  row: Situation,
  path: string,
): void {
  const { site, measures: m, depth } = designed;
  if (row.situation === 'seam') {
    r.tell(levelOfDepth, {});
    r.use(levelOfDepth, knownDeepest(r, site, m, depth));
    r.same(`${path}.level_m`);
  } else {
    recordPond(r, a, basis, m, depth, row);
    r.same(`${path}.level_m`);
  }
  const seam = seamOf(designed, row);
  const over = overOf(designed, row, r.use);
  const read = `${rowsWords(seam.from) || 'pits.csv'}: highest level of its water, or as high as is credible`;
  r.tell(seamDepth, {
    m: read,
    z: `pond.csv, accepted_risk: ${site.pond.acceptedRisk} of a normal distribution is above`,
    s: `${rowsWords(seam.from) || 'pits.csv'}: how well it is known`,
  });
  const top = `pits.csv: top of the seam in ${seam.pit}`;
  const wanted = assumed('factor wanted against heave: our choice');
  const weight = assumed('unit weight of wet ground: common practice');
  r.tell(levelOfDepth, { d: top });
  r.use(levelOfDepth, seamWater(seam, over, r.use));
  r.same(`${path}.water.level_m`);
  r.use(levelOfDepth, seam.top);
  r.tell(depthOver, { h: top, e: assumed('nought') });
  r.tell(plugLeft, { T: top }).tell(plugWeight, { g: weight }).tell(heaveFactor, { g: weight });
  r.tell(waterOverPlug, { F: wanted, g: weight }).tell(plugSpare, {
    ...(over.holds <= over.floor && { o: assumed('nothing is over the floor') }),
    F: wanted,
  });
  spareOver(seam, over, r.use);
  r.same(`${path}.margin_m`);
}

/** Level of the pond that stands over a seam. */
function recordPond(
  r: Recording,
  a: Judged,
  basis: Basis,
  m: Measures,
  depth: number,
  { situation }: Situation,
): void {
  const { site } = basis;
  if (situation === 'seam-emptied') {
    emptiedHold(site, m, depth, r.use);
    return;
  }
  const brim = fullLevel(site, m, r.use);
  if (situation === 'seam-full') return;
  const share = 1 - site.pond.acceptedRisk;
  drawnLacks(r, a, basis, share);
  if ('held' in site.pond.kept) r.tell(lowestUsual, { d: heldRow(site, site.pond.kept.held) });
  r.use(lowestUsual, brim, drawdownOf(basis, share));
}
