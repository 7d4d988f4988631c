import type { Survey } from '../survey/index.js';
import type { Places } from './places.js';
import { COVER_WEIGHT } from './seam.js';

/** A log by how deep it goes. */
interface DeepLog {
  pit: string;
  /** its end, m below the ground there */
  bottom: number;
  /** that ground, m above the datum */
  ground: number;
  /** unit weight of what lies over its end, as over a seam, N/m³ */
  weight: number;
}

/** The hole whose log goes deepest by level; undefined where none was logged. */
export function deepestLogged({
  survey: { layers },
  places,
}: {
  survey: Pick<Survey, 'layers'>;
  places: Pick<Places, 'pits'>;
}): DeepLog | undefined {
  const logs = layers.map(({ pit, bottom }) => ({ pit, bottom, ground: places.pits.get(pit) ?? 0 }));
  const deepest = logs.reduce<(typeof logs)[number] | undefined>(
    (deep, log) => (deep && deep.bottom - deep.ground >= log.bottom - log.ground ? deep : log),
    undefined,
  );
  if (!deepest) return undefined;
  const peat = layers.some(({ pit, texture }) => pit === deepest.pit && texture === 'peat');
  return { ...deepest, weight: peat ? COVER_WEIGHT.peat : COVER_WEIGHT.mineral };
}
