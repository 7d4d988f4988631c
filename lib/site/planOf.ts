import type { PondFacts } from '../survey/index.js';

/** Length and width at the rim, m: as said, or what the area makes of them; as wide as long where only one is said. */
export function planOf({ shape, area, length, width }: PondFacts): { length: number; width: number } {
  const round = shape === 'round' || shape === 'oval';
  const around = area === undefined ? undefined : round ? (area * 4) / Math.PI : area;
  const other = (side: number) => (around === undefined ? side : around / side);
  if (length !== undefined) return { length, width: width ?? other(length) };
  const across = width ?? Math.sqrt(around ?? 0);
  return { length: other(across), width: across };
}
