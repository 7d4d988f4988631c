/** Water and pond through the year: what is told at a day or a month. */
import { formatQuantity, type UnitSystem } from '../units/index.js';

/** In the middle of years, and in one of ten below and above; m. */
interface Spread {
  p10: number;
  p50: number;
  p90: number;
}

/**
 * Name of the axis of depths.
 * @param unit - of lengths
 * @returns a heading
 */
export function waterDepthAxis(unit: string): string {
  return `Depth to water below the lowest rim ground (${unit})`;
}

/**
 * How deep the water stands.
 * @param when - day or month, written
 * @param depth - below the lowest ground at the rim
 * @param units - how numbers are written
 * @returns words
 */
export function waterDepthText(when: string, depth: Spread, units: UnitSystem): string {
  return `${when}: ${eightInTen(depth, (value) => formatQuantity(value, 'length', units))}`;
}

/**
 * Where the pond stands as it is kept.
 * @param when - day or month, written
 * @param level - of the pond
 * @param units - how numbers are written
 * @returns words
 */
export function pondKeptText(when: string, level: Spread, units: UnitSystem): string {
  return `pond as kept, ${when}: ${eightInTen(level, (value) => formatQuantity(value, 'level', units))}`;
}

const eightInTen = ({ p10, p50, p90 }: Spread, say: (value: number) => string) =>
  `${say(p50)}, eight in ten ${say(p10)} to ${say(p90)}`;
