import { Remembered } from '../sampling/index.js';
import type { Site } from '../site/index.js';
import {
  compositionOf,
  greenAmptParameters,
  roomAboveTable,
  saxtonRawls,
  shedShare,
  textureClass,
} from '../soil/index.js';
import type { Storm } from './storm.js';

/** Share of the pores that wet ground can still fill. Common practice. */
const STILL_OPEN = 0.1;
/** Deepest table whose draught the retention curve covers, m: 33 kPa. */
const DEEPEST = 3.36;

const found = new Remembered<number | undefined>(32);

/**
 * Share of a storm that the ground uphill cannot take in (Green–Ampt), its water in the ground at a depth.
 * @param depth - of the water below the ground, m
 * @returns 0–1; absent where the uppermost layer has no grain sizes
 */
export function wetGroundRunoff(site: Site, storm: Storm, depth: number): number | undefined {
  const key = `${depth} ${storm.rain} ${storm.seconds} ${site.catchment.cover}`;
  return found.of(site.ground, key, () => runoff(site, storm, depth));
}

function runoff(site: Site, storm: Storm, depth: number): number | undefined {
  const { ground, catchment } = site;
  const layer = ground.layers.find(({ texture }) => /sand|silt|clay|loam/.test(texture));
  if (!layer) return undefined;
  const { sand, clay } = compositionOf({ texture: layer.texture, ...layer.row });
  const front = greenAmptParameters(textureClass(sand, clay));
  return shedShare({
    rain: storm.rain,
    duration: storm.seconds,
    cover: catchment.cover,
    soil: {
      conductivity: front.conductivity,
      suctionDeficit: front.suction * front.effectivePorosity * STILL_OPEN,
      room: roomAboveTable(saxtonRawls(sand, clay), Math.min(Math.max(depth, 0), DEEPEST)),
    },
  });
}
