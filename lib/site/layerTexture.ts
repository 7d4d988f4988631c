import { type Texture, textureClass } from '../soil/index.js';
import type { LayerRow } from '../survey/index.js';

/** The texture of a layer as it is named, else the class of its percentages, else clay. */
export function textureOf({ texture, sand, clay }: LayerRow): Texture {
  if (texture !== undefined) return texture;
  if (sand === undefined || clay === undefined) return 'clay';
  // Percentages may miss 100 by a rounding.
  const all = Math.max(sand + clay, 1);
  return textureClass(sand / all, clay / all);
}
