/** Whether a slab can be cast: on a liner that no water lifts, or with the water kept pumped down. */
import { MONTHS } from '../climate/index.js';
import { method } from '../formula/index.js';
import { Remembered } from '../sampling/index.js';
import { monthValues, type Site } from '../site/index.js';

export const slabCastMethod = method({
  title: 'Whether a slab can be cast',
  what: 'A slab is cast on an empty liner: in a month in which the water stays below the floor, or where it can be kept pumped below it.',
  assumptions: [
    'a month will do in which the water behind the uphill wall stays below the floor in four years of five (our choice)',
    'pumping day and night until concrete is hard takes mains power, and a place that the water may be led to (common practice)',
  ],
  source: 'counting over the simulated years; common practice',
});

/** Share of years in which the floor stays dry in a month for casting. Our choice. */
const MOST_YEARS = 0.8;

const cast = new Remembered<number[]>();

/** Months (1–12) in which a liner so deep lies dry for a slab to be cast on it, m below the datum ground. */
export function monthsToCast({ water }: Pick<Site, 'water'>, deep: number): number[] {
  return cast.of(water, deep.toFixed(4), () =>
    MONTHS.filter((month) => {
      const levels = monthValues(water.clayHigh.month, month);
      return levels.filter((level) => level < -deep).length >= MOST_YEARS * levels.length;
    }),
  );
}

/** Whether a slab can be cast on a floor so deep, m below the datum ground. */
export function isCastable(site: Site, deep: number): boolean {
  const { mains_power, discharge_allowed } = site.survey.site;
  return (mains_power === 'yes' && discharge_allowed !== 'no') || monthsToCast(site, deep).length > 0;
}
