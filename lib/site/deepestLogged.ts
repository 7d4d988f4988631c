import type { Survey } from '../survey/index.js';

/** The hole whose log goes deepest, m below the ground there; undefined where none was logged. */
export function deepestLogged({
  layers,
}: Pick<Survey, 'layers'>): { pit: string; bottom: number } | undefined {
  return layers.reduce<{ pit: string; bottom: number } | undefined>(
    (deepest, layer) => (deepest && deepest.bottom >= layer.bottom ? deepest : layer),
    undefined,
  );
}
