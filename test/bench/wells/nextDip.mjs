/**
 * Which month's dip narrows the yearly high most: `node test/bench/wells/nextDip.mjs FOLDER [draws=2] [samples=256]`, after
 * `npm run build`. To four dips of one winter one of each of the next twelve months is added as it was read; told is the
 * width of the 80 % band of the yearly highs as a share of that without it, in the mean of wells and draws, and how often
 * that month's is the narrowest.
 */
import { join, resolve } from 'node:path';
import { median, quantile } from './scores.mjs';
import { dayOf, drawDips, surveyFiles, wellsIn } from './wells.mjs';

const [folder, draws = '2', samples = '256'] = process.argv.slice(2);
const { parseSurvey, siteModel } = await import(
  resolve(process.env.LIBRARY ?? join(import.meta.dirname, '../../../dist/index.js'))
);

/** Width of the band of the yearly highs in the middle year, m. */
function width(well, dips) {
  const survey = parseSurvey(surveyFiles(well, dips), { name: well.name });
  const { water } = siteModel(survey, { seed: 1, samples: Number(samples) });
  const highs = (year) =>
    Float64Array.from({ length: water.samples }, (_, s) => {
      const from = (s * water.years + year) * 12;
      return water.clayLow.month.subarray(from, from + 12).reduce((a, b) => Math.max(a, b));
    }).sort();
  return median(
    Array.from({ length: water.years }, (_, year) => quantile(highs(year), 0.9) - quantile(highs(year), 0.1)),
  );
}

const shares = Array.from({ length: 12 }, () => []);
const best = new Array(12).fill(0);
for (const well of wellsIn(folder))
  for (let draw = 0; draw < Number(draws); draw++) {
    const dips = drawDips(well, '4', draw);
    const last = dips[dips.length - 1];
    const before = width(well, dips);
    const year = Number(last.date.slice(0, 4));
    const after = Array.from({ length: 12 }, (_, m) => {
      const wanted = [year, year + 1]
        .map((y) => dayOf(`${y}-${String(m + 1).padStart(2, '0')}-15`))
        .find((day) => day > last.day + 14);
      const look = well.before.reduce((a, b) =>
        Math.abs(b.day - wanted) < Math.abs(a.day - wanted) ? b : a,
      );
      const near = Math.abs(look.day - wanted) <= 20 && look.day > last.day;
      return near ? width(well, [...dips, look]) / before : Number.NaN;
    });
    after.forEach((share, m) => {
      if (!Number.isNaN(share)) shares[m].push(share);
    });
    const known = after.map((share) => (Number.isNaN(share) ? Number.POSITIVE_INFINITY : share));
    best[known.indexOf(Math.min(...known))]++;
    console.log(well.name.padEnd(14), draw, before.toFixed(2), 'm', after.map((s) => s.toFixed(2)).join(' '));
  }
const mean = (v) => v.reduce((a, b) => a + b, 0) / v.length;
console.log('mean share    ', shares.map((v) => mean(v).toFixed(2)).join(' '));
console.log('narrowest     ', best.join(' '));
