import { method } from '../formula/index.js';
import type { Look, Survey } from '../survey/index.js';
import { interpolate, wetFilled } from './filledMonths.js';
import { otherYearSpread, wetSeasons } from './otherYears.js';
import type { GroundLayer } from './profile.js';
import { COVER_WEIGHT, type Seam } from './seam.js';
import {
  groundHeadReadings,
  holesAt,
  type LoggedSeam,
  looksInto,
  pressesFrom,
  type Reading,
  SPREAD,
  seamHeadReadings,
  standsHigher,
} from './seamReadings.js';

export const seamsMethod = method({
  title: 'Permeable layers under tighter ground, and their pressure',
  what:
    'Every layer at least ten times as permeable as the tightest above it is a seam from where it was logged. Its pressure is ' +
    'the highest of what heads.csv says of it, of the level in a hole or pipe that is open to it, and of the rise after a strike.',
  assumptions: [
    'rock under other ground always counts; permeability of what else is no clay counts at its 95 % end; ten times as permeable, a seam 0.3 m thick keeps a quarter of its ' +
      'pressure under 0.4 m of cover beside a pond 2 m in radius, a hundred times three quarters (leaky seam)',
    'a level counts three lags of the seam after opening or bailing; sooner it is a lower limit, as a strike is',
    'a wet month that nobody looked in has the highest level read, where three wet months were looked in or heads.csv knows one, and ' +
      'a dry one lies between those that were read; else ' +
      'water at the ground, or at the highest level known where that is higher, 0.3 m over it where no wet month was read: our ' +
      'choice; ground that rises nearby can lift it further',
    'looks of one wet season tell of other years within 0.3 m, of two within 0.2, of more within 0.15 (one standard deviation: ' +
      'six open wells); until the year is known, their month counts with 1.645 times that on top',
    'a seam that no hole is open to has the pressure of one in another hole, with 0.2 m of spread (our choice)',
    'water struck below the end of the log comes from a seam there; water struck at a layer that is no clay, or standing above it ' +
      'in a pipe open to it alone, makes it a seam however permeable it is',
    'ground that nobody described above a seam counts as part of it',
    'what heads.csv says of the site or of a hole is of a seam too where the dig reaches it, unless one is told by itself, or was seen 0.1 m higher than that',
    'a hole that pits.csv does not log is read for every seam it is open to, its levels carried over',
  ],
  source: 'common practice; our choice where it says so',
});

/** How much more permeable than the tightest layer above it a seam is. */
const CONTRAST = 10;
/** What is called a clay is one only where it is known to be as permeable, m/s. Our choice. */
const PERMEABLE_CLAY = 1e-6;
const SCORE_95 = 1.645;
/** Wet months to be looked in before the highest level read counts for the year. Our choice. */
const WET_MONTHS_READ = 3;
/** Least that the water of a seam is taken to rise from the dry months to the wet, m. Our choice. */
const WET_RISE = 0.3;
/** Least depth of a layer that is under something, m. */
const UNDER = 0.3;

/**
 * The seams of a survey, see {@link seamsMethod}.
 * @param layers - of all logs, with their permeability
 * @param pits - ground at each pit, m above the datum
 * @param wetMonths - 1–12
 * @param depth - wished, m: what the site's own water stands in
 * @param topsoil - its thickness, m: alone it is no cover
 */
export function seamsOf(
  survey: Survey,
  layers: readonly GroundLayer[],
  pits: Map<string, number>,
  wetMonths: readonly number[],
  depth: number,
  topsoil: number,
): Seam[] {
  const logged = [...new Set(survey.layers.map((l) => l.pit))];
  const found = logged.flatMap((pit) => {
    const holes = holesAt(survey, pit, logged, pits);
    const log = layers.filter(({ row }) => row.pit === pit).sort((a, b) => a.row.top - b.row.top);
    return loggedSeams(survey, pit, log, holes, topsoil).map((seam) => {
      const ground = pits.get(pit) ?? 0;
      return {
        seam,
        seen: holes.flatMap((looks) => looksInto(looks, seam)),
        site: groundHeadReadings(survey, 'site', seam, ground),
        hole: groundHeadReadings(survey, 'hole', seam, ground),
        reached: seam.top - ground <= depth,
      };
    });
  });
  // What is told of the site is told of no seam where one is told by itself, or was seen higher.
  const apart = found.some(
    ({ seam, seen, site }) => standsHigher(seen, site) || seamHeadReadings(survey, seam).length > 0,
  );
  const read = found.map(({ seam, seen, site, hole, reached }) => ({
    seam,
    readings: [
      ...seamHeadReadings(survey, seam),
      ...(reached && !apart ? site : []),
      ...(reached && !standsHigher(seen, hole) && seamHeadReadings(survey, seam).length === 0 ? hole : []),
      ...seen,
    ],
  }));
  const all = read.map(({ seam, readings }) => seamWith(survey, seam, readings, pits, wetMonths));
  const measured = all.filter(({ known, assumed }) => known !== undefined && !assumed);
  return all.map((own) => {
    const other = measured.filter(({ pit }) => pit !== own.pit);
    const heads = own.heads.map((_, m) => Math.min(...other.map((o) => o.heads[m]!)));
    // Read higher than the other at its highest it is not fed by the same.
    const higher = own.known !== undefined && own.known < Math.min(...heads) - SPREAD.read;
    if (!own.assumed || other.length === 0 || higher) return own;
    const known = Math.min(own.known ?? Number.POSITIVE_INFINITY, ...other.map((o) => o.known!));
    return {
      ...own,
      heads,
      headDepth: Math.min(...heads),
      headSpread: Math.hypot(SPREAD.elsewhere, ...other.map((o) => o.headSpread)),
      known,
      assumed: false,
    };
  });
}

function seamWith(
  survey: Survey,
  { pit, top, coverWeight }: LoggedSeam,
  readings: Reading[],
  pits: Map<string, number>,
  wetMonths: readonly number[],
): Seam {
  const ground = pits.get(pit) ?? 0;
  const known = readings.length > 0 ? Math.min(...readings.map((r) => r.depth)) : undefined;
  const settled = readings.filter((r) => !r.atLeast);
  const months = new Set(settled.map((r) => r.month));
  const wetRead = wetMonths.filter((m) => months.has(m)).length;
  const year =
    settled.some((r) => r.day === undefined && (r.month === undefined || wetMonths.includes(r.month))) ||
    wetRead >= Math.min(WET_MONTHS_READ, wetMonths.length);
  const atSite = survey.heads.filter((h) => h.place === 'site').map((h) => h.depth + ground);
  // What stands so high in the dry months stands higher in the wet ones.
  const rise = wetRead === 0 && settled.length > 0 ? WET_RISE : 0;
  const credible = Math.min(0, (known ?? 0) - rise, ...atSite);
  const unread = year ? known! : credible;
  const days = settled.flatMap(({ day }) => (day === undefined ? [] : [day]));
  const years = otherYearSpread(wetSeasons(days, wetMonths));
  // One look in a month says little of that month in other years; where the year is known its spread counts instead.
  const credibleThen = ({ depth, day }: Reading) =>
    year || day === undefined ? depth : Math.max(depth - SCORE_95 * years, credible);
  const spreads = settled.map((r) => ({
    ...r,
    spread: r.day === undefined ? r.spread : Math.hypot(r.spread, years),
  }));
  const seen = Array.from({ length: 12 }, (_, m) => {
    const here = settled.filter((r) => r.month === m + 1).map(credibleThen);
    return here.length > 0 ? Math.min(...here) : undefined;
  });
  // Where the wet months are known the dry ones lie between those that were read, as in the clay.
  const filled =
    year && seen.some((depth) => depth !== undefined)
      ? interpolate(wetFilled(seen, wetMonths, unread))
      : seen.map((depth) => depth ?? unread);
  const heads = filled.map((depth) => depth - ground);
  return {
    pit,
    top: top - ground,
    heads,
    headDepth: Math.min(...heads),
    // What is taken as high as is credible needs no more on top.
    headSpread: year ? highestCredible(spreads).spread : known === undefined ? 0 : SPREAD.read,
    known: known === undefined ? undefined : known - ground,
    assumed: !year,
    coverWeight,
    from: readings.map((r) => r.origin),
  };
}

/** The reading that may have stood the highest. */
function highestCredible(readings: Reading[]): Reading {
  const credible = ({ depth, spread }: Reading) => depth - SCORE_95 * spread;
  return readings.reduce((a, b) => (credible(b) < credible(a) ? b : a));
}

/** Layers of one log that carry water under tighter ones, those that touch taken together; and what was struck below its end. */
function loggedSeams(
  survey: Survey,
  pit: string,
  log: GroundLayer[],
  holes: Look[][],
  topsoil: number,
): LoggedSeam[] {
  const seams: LoggedSeam[] = [];
  const told = survey.heads.some((h) => h.place === `below:${pit}`);
  const coverWeight = (top: number) =>
    log.some(({ row, texture }) => texture === 'peat' && row.top < top)
      ? COVER_WEIGHT.peat
      : COVER_WEIGHT.mineral;
  /** What nobody described over a layer may be the same. */
  const topOf = ({ row }: GroundLayer) =>
    log.reduce(
      (top, above) => (above.row.top < row.top ? Math.max(top, Math.min(above.row.bottom, row.top)) : top),
      0,
    );
  const add = (layer: GroundLayer, bottom: number) => {
    const { permeability } = layer;
    const top = topOf(layer);
    const last = seams.at(-1);
    if (last && last.bottom >= top - 1e-9) last.bottom = bottom;
    else
      seams.push({
        pit,
        top,
        bottom,
        permeability: permeability.median * Math.exp(-SCORE_95 * permeability.spread),
        coverWeight: coverWeight(top),
      });
  };
  for (const [i, layer] of log.entries()) {
    const above = log.slice(0, i).filter(({ row }) => row.bottom > topsoil + 1e-9);
    const cover = Math.min(...above.map((l) => l.permeability.median));
    const bottom = i === log.length - 1 ? Number.POSITIVE_INFINITY : layer.row.bottom;
    const isSeam = carries(layer, cover) || holes.some((looks) => pressesFrom(looks, layer, bottom));
    if (layer.row.top >= UNDER && above.length > 0 && isSeam) add(layer, bottom);
  }
  // Somebody knows of a seam: it is what was logged as no clay under clay, else it lies below the log.
  if (told && seams.length === 0) {
    const at = log.findIndex(
      ({ row, texture }, i) =>
        row.top > UNDER &&
        !texture.includes('clay') &&
        log.slice(0, i).some((l) => l.texture.includes('clay')),
    );
    if (at >= 0) add(log[at]!, at === log.length - 1 ? Number.POSITIVE_INFINITY : log[at]!.row.bottom);
  }
  const end = Math.max(...log.map(({ row }) => row.bottom), 0);
  const struck = holes
    .flat()
    .filter((l) => l.reading === 'strike' && l.depth! > end + 1e-9)
    .map((l) => l.depth!);
  const below = told && seams.length === 0 ? [end, ...struck] : struck;
  const fastest = 1e-5;
  if (end > 0 && below.length > 0)
    seams.push({
      pit,
      top: Math.min(...below),
      bottom: Number.POSITIVE_INFINITY,
      permeability: fastest,
      coverWeight: coverWeight(end),
    });
  return seams;
}

function carries({ texture, permeability }: GroundLayer, cover: number): boolean {
  // Its cracks carry what no table tells.
  if (texture === 'rock') return Number.isFinite(cover);
  if (texture.includes('clay')) return permeability.median >= Math.max(PERMEABLE_CLAY, CONTRAST * cover);
  return permeability.median * Math.exp(SCORE_95 * permeability.spread) >= CONTRAST * cover;
}
