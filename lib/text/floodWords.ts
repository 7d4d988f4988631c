import type { Report } from '../contract/index.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';

/** Where the level of a flood at the outlet comes from; nothing without a drain that ends in one. */
export function floodWords({ outlet, result }: Report, units: UnitSystem): string {
  if (!outlet) return '';
  const assumed = result.assumptions.some(({ item }) => item === 'flood_every');
  const level =
    outlet.flood_m === null
      ? 'nobody gave a mark, so it is assumed'
      : `${formatQuantity(outlet.flood_m, 'level', units)}, from the flood mark in levels.csv`;
  return `Flood level at ${outlet.name}: ${level}. It comes once in ${Number(outlet.flood_every.toPrecision(3))} years (${assumed ? 'assumed' : 'as the survey says'}).`;
}
