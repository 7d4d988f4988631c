import type { Site } from '../site/index.js';
import { formatQuantity } from '../units/index.js';
import type { OptionName } from './result.js';

/** Numbers in words, in the units the survey asks for. */
export function sayer(site: Site) {
  const system = site.survey.site.show_units ?? 'metric';
  return {
    length: (m: number) => formatQuantity(m, 'length', system),
    /** above (+) or below (−) the lowest ground at the rim */
    level: (m: number) => formatQuantity(m, 'level', system),
    flow: (m3s: number) => formatQuantity(m3s, 'flow', system),
  };
}

/** An option as the beginning of a sentence. */
export const WITH_OPTION: Record<OptionName, string> = {
  'no-drain': 'With no drain',
  'surface-water-only': 'With surface water kept out',
  'cutoff-drain': 'With a cut-off drain uphill',
  'drain-to-outlet': 'With the drain to an outlet',
  'drain-to-sump': 'With the drain to a pumped sump',
  'raise-pond': 'With the pond raised',
  ballast: 'With the slab on the liner',
};

/** Least chance that is shown as a number: below it lies within what the sampling can tell. */
export const LEAST_CHANCE = 0.001;

/**
 * A chance in percent, two digits, that never rounds a doubt away: `4.1 %`, `less than 0.1 %`, `more than 99 %`.
 * @param chance - 0–1
 * @returns text
 * @example
 * ```ts
 * chanceText(0.041); // '4.1 %'
 * ```
 */
export function chanceText(chance: number): string {
  if (chance < LEAST_CHANCE) return 'less than 0.1 %';
  if (chance >= 0.995 && chance < 1) return 'more than 99 %';
  return `${Number((100 * chance).toPrecision(2))} %`;
}
