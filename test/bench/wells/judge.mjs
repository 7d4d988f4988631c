/** One run of the tool on a well and its dips, and what is judged of it. */
import { PLACE_SPREAD } from '../../../dist/site/index.js';
import { climatology, reservoir } from './rivals.mjs';
import { bandScores, highScores, median, quantile } from './scores.mjs';
import { surveyFiles } from './wells.mjs';

/** Readings that a year must have for its highest to be one, in as many of the wet months. */
const ENOUGH = { looks: 10, wetMonths: 4 };

/** Highest reading of every hydrological year after the split that was read often enough: index of the year, depth. */
function measuredHighs({ after }, record) {
  const years = new Map();
  for (const { day, depth } of after) {
    const year = record.year[day - record.firstDay] ?? -1;
    if (year < 0) continue;
    const own = years.get(year) ?? { seen: Number.POSITIVE_INFINITY, looks: 0, wet: new Set() };
    own.seen = Math.min(own.seen, depth);
    own.looks++;
    const month = record.month[day - record.firstDay];
    if (month >= 11 || month <= 4) own.wet.add(month);
    years.set(year, own);
  }
  return [...years]
    .filter(([, { looks, wet }]) => looks >= ENOUGH.looks && wet.size >= ENOUGH.wetMonths)
    .map(([year, { seen }]) => ({ year, seen }));
}

/**
 * @param library - the built library
 * @param well - of `wellsIn`
 * @param dips - drawn from what was read before the split
 * @returns scores of the tool, of the dips' climatology and of a linear reservoir, and the middle yearly high
 */
export function judge({ parseSurvey, siteModel }, well, dips, { seed, samples }) {
  const survey = parseSurvey(surveyFiles(well, dips), { name: well.name });
  const before = process.cpuUsage();
  const site = siteModel(survey, { seed, samples });
  const { user, system } = process.cpuUsage(before);
  const time = (user + system) / 1000;
  const { record, water } = site;
  const { daily } = water;
  const judged = well.after.filter(({ day }) => day < record.firstDay + record.rain.length);
  const depths = judged.map((d) => d.depth);
  const days = judged.map((d) => d.day);
  // At the well itself: how far the water stands off it at the pond is no part of what is read there.
  const place = site.unknowns.place.map((z) => PLACE_SPREAD * z);
  const bands = days.map((day) => {
    const sorted = Float64Array.from(
      { length: daily.samples },
      (_, s) => place[s] - daily.clay[s * daily.days + day - daily.firstDay],
    ).sort();
    return { p10: quantile(sorted, 0.1), p50: quantile(sorted, 0.5), p90: quantile(sorted, 0.9) };
  });
  const yearly = (year) =>
    Float64Array.from({ length: water.samples }, (_, s) => {
      const from = (s * water.years + year) * 12;
      return place[s] - water.clayLow.month.subarray(from, from + 12).reduce((a, b) => Math.max(a, b));
    }).sort();
  const highs = measuredHighs(well, record).map(({ year, seen }) => ({ seen, sorted: yearly(year) }));
  const ours = bandScores(bands, depths);
  return {
    ...ours,
    highs: highScores(highs),
    middleHigh: median(highs.map(({ sorted }) => quantile(sorted, 0.5))),
    bands,
    time,
    model: site.waterModel,
    fit: site.fit,
    climatology: bandScores(climatology(dips, days), depths),
    reservoir: bandScores(reservoir(record, dips, days), depths),
  };
}
