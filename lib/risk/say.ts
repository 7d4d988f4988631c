import type { Site } from '../site/index.js';
import { formatQuantity } from '../units/index.js';

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

/**
 * A chance in words that never rounds a doubt away.
 * @param p - 0–1
 * @returns in percent, with two digits
 */
export function sayChance(p: number): string {
  if (p <= 0) return '0 %';
  if (p < 0.001) return 'less than 0.1 %';
  if (p >= 0.995) return p < 1 ? 'more than 99 %' : '100 %';
  return `${Number((100 * p).toPrecision(2))} %`;
}
