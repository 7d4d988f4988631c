/** The claims of the year in words, January to December. */
import { hoursIn, LENGTH, lengthIn, monthIn, placeIn } from './amounts.js';
import type { Claimer } from './claim.js';
import type { Told } from './survey.js';

export function yearClaims(words: string[], told: Told, said: Claimer) {
  for (const line of words) {
    const month = monthIn(line);
    const water =
      /highest water stands (.*?) in the middle year, and between (.*?) and (.*?) in 8 years/.exec(line);
    if (water) {
      const [, middle, low, high] = water;
      said.span(`clay|p50|${month}`, 'year', line, placeIn(middle!, 'near'));
      said.span(`clay|p90|${month}`, 'year', line, placeIn(low!, 'near'));
      said.span(`clay|p10|${month}`, 'year', line, placeIn(high!, 'near'));
    }
    const uphill = /behind the uphill wall (.*?)[;.] ?(?=[A-Zi]|$)/.exec(line)?.[1];
    if (uphill) said.span(`uphill|p50|${month}`, 'year', line, placeIn(uphill, 'near'));
    const ring = /in the dug ring (.*?)[;.] ?(?=[A-Zi]|$)/.exec(line)?.[1];
    if (ring) said.span(`ring|p50|${month}`, 'year', line, placeIn(ring, 'near'));
    // What follows on the water: sentences of the two ways.
    const rest = line.slice(line.search(/in 8 years of 10/) + 1);
    const lifting = new Set<string>();
    for (const sentence of rest.split(/\. (?=[A-Z])/)) {
      const found = /^(.*?): (not safe even|do not empty|it may be emptied)(.*)$/.exec(sentence);
      if (!found) continue;
      const [, by = '', what = '', more = ''] = found;
      const of = /nothing done/i.test(by) ? 'no-drain' : told.of;
      if (what.startsWith('not safe')) {
        lifting.add(of);
        continue;
      }
      const limit = /only for (.*?)\.?$/.exec(more)?.[1];
      const briefly = limit !== undefined || /only as long as planned/.test(more);
      const about = `empty|${of}|${month}`;
      const may = what.startsWith('do not') ? ['no'] : briefly ? ['limited', 'briefly'] : ['free'];
      said.says(about, 'year', sentence, ...may);
      if (limit) said.span(`hours|${of}|${month}`, 'year', sentence, hoursIn(limit));
      const size = new RegExp(`stands (${LENGTH}) too high`).exec(more)?.[1];
      if (!size) continue;
      const { low, high } = lengthIn(size, 'up', true);
      said.span(`margin|${of}|emptied|${month}`, 'year', sentence, { low: -high, high: -low });
    }
    for (const of of new Set(['no-drain', told.of]))
      said.says(
        `even full|${of}|${month}`,
        'year',
        lifting.has(of) ? 'not safe even full' : '(not named)',
        lifting.has(of) ? 'lifts' : 'holds',
      );
  }
}
