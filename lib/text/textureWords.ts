/** Soils on the texture triangle, in words. */
import { listText } from './sentence.js';

/** A soil: where it was found, its parts of sand and clay, its class, and whether only that was named. */
interface ToldSoil {
  names: string[];
  sand: number;
  clay: number;
  texture: string;
  byClass: boolean;
}

/**
 * Where a soil lies, of which class it is and how that is known; numbers stay with their signs.
 * @param soil - as it is drawn
 * @returns words without a stop
 */
export function soilWords({ names, sand, clay, texture, byClass }: ToldSoil): string {
  const percent = (part: number) => `${Math.round(part * 100)}\u00a0%`;
  const said = `sand ${percent(sand)}, silt ${percent(1 - sand - clay)}, clay ${percent(clay)}`;
  return `${listText(names)}: ${texture}, ${byClass ? `by its class; typically ${said}` : said}`;
}

/**
 * What the triangle shows, for whoever does not see it.
 * @param soils - on it
 * @returns sentences
 */
export function textureTriangleAlt(soils: readonly ToldSoil[]): string {
  if (soils.length === 0)
    return 'The USDA texture triangle; the pit log names no soil that has a place on it.';
  return `The USDA texture triangle with the layers of the pit log. ${soils.map(soilWords).join('; ')}.`;
}
