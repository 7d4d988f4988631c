import { FILL_PERMEABILITY, looseSoil } from '../drain/index.js';
import { method } from '../formula/index.js';
import { quantile } from '../sampling/index.js';
import type { PondGround, SectionPoint } from '../seepage/index.js';
import { InputError } from '../units/index.js';
import { linerProfile } from '../uplift/index.js';
import { monthValues } from './monthValues.js';
import type { GroundLayer } from './profile.js';
import { sectionSoilOf } from './sectionSoil.js';
import type { Site } from './siteModel.js';

export const pondGroundMethod = method({
  title: "The vertical section through a survey's pond",
  what:
    'The liner as planned, the layers of the deepest pit log with their median permeability, the ring as filled back, and ' +
    'the water at the far ends: as high as in one year of ten at both rims, its slope carried on.',
  assumptions: [
    'layers as thick everywhere as in that pit, gaps in the log belong to the layer above, the last one goes on downwards',
    'alike across and downwards unless said otherwise: a survey does not measure it',
    'sorptive number by texture and structure (Elrick & Reynolds)',
    'far ends at three widths of the pond; tight ground at twice its width below the floor, at least 3 m',
    'the ground slopes as between the two rims; a bank that holds the pond higher is not drawn',
    'water that rises above the ground, as from a seam under pressure, counts up to the ground',
    'levels at the far ends already carry the rain of the season; rain is added only where asked for',
  ],
  source: 'seepage in a vertical section; pit logs, levels and water of the survey',
});

/** What is to be cut through. */
interface SectionWish {
  /** January 1 to December 12; absent: the highest of all */
  month?: number;
  /** level of the pond's water, m above the datum; absent: emptied */
  pond?: number;
  /** rain that enters the ground, m/s, 0 and more; absent: none */
  rain?: number;
  /** permeability across over downwards; absent: 1 */
  anisotropy?: number;
  /** through the width, uphill on the left, or along the length; absent: through the width */
  cut?: 'across' | 'along';
}

/** Ground beside the pond, in its widths, and tight ground below its floor, in widths and at least m. */
const FAR = 3;
const DEEP = { widths: 2, least: 3 };
/** One year of ten is as wet. */
const WET_YEAR = 0.9;

/**
 * The ground of a survey's pond for {@link pondSection}, see {@link pondGroundMethod}.
 * @param site - of {@link siteModel}
 * @param wish - month 1–12, pond level, m above the lowest natural ground at the rim, rain, m/s, and cut
 * @returns heights m above the lowest natural ground at the rim, x from the middle of the pond; without pipes, for which
 *   see {@link withWorks}
 * @throws PondGeometryError for a pond that cannot be dug as described
 * @throws InputError for a month outside 1 to 12
 */
export function pondGroundOf(site: Site, wish: SectionWish = {}): PondGround {
  const { pond, places, ground } = site;
  const { month, rain = 0, anisotropy, cut = 'across' } = wish;
  if (month !== undefined && !(Number.isInteger(month) && month >= 1 && month <= 12))
    throw new InputError('invalid-input', `month ${month} is outside 1 (January) to 12 (December)`);
  const { points } = linerProfile(pond.shape, pond.depth);
  const width = cut === 'across' ? pond.shape.width : pond.shape.length;
  const half = width / 2;
  const side = points.map(({ inset, level }): SectionPoint => ({ x: inset - half, z: level }));
  const floor = -pond.depth;
  const away = FAR * width;
  // Along the pond the ground is level; across it climbs to the uphill rim on the left, and on beyond both rims.
  const rise = cut === 'across' ? Math.max(places.highRim, 0) : 0;
  const slope = rise / width;
  const uphill: SectionPoint[] = rise > 0 ? [{ x: -half, z: rise }] : [];
  const lowest = -slope * away;
  const water = waterAtRims(site, month);
  const table = cut === 'across' ? (water.high - water.low) / width : 0;
  return {
    outline: [...uphill, ...side, ...side.map(({ x, z }) => ({ x: -x, z })).reverse()],
    pond: wish.pond ?? floor,
    surface: [
      { x: -half - away, z: rise + slope * away },
      { x: -half, z: rise },
      { x: half, z: 0 },
      { x: half + away, z: lowest },
    ],
    layers: layersOf(ground.layers).map(({ thickness, layer }) => ({
      thickness,
      soil: sectionSoilOf(layer, anisotropy),
    })),
    base: Math.min(floor, lowest) - Math.max(DEEP.widths * width, DEEP.least),
    ...(pond.ring.width > 0
      ? {
          ring: {
            width: pond.ring.width,
            ...(pond.ring.depth === undefined ? {} : { bottom: -pond.ring.depth }),
            soil: looseSoil(FILL_PERMEABILITY[pond.ring.fill]),
          },
        }
      : {}),
    pipes: [],
    far: { left: water.high + table * away, right: water.low - table * away },
    rain,
  };
}

/** Level at the downhill and the uphill rim in a month, or the highest month, one year in ten; never above the ground. */
function waterAtRims({ water, places }: Site, month?: number): { low: number; high: number } {
  const months = month === undefined ? Array.from({ length: 12 }, (_, m) => m) : [month - 1];
  const highest = (levels: Float32Array) =>
    Math.max(...months.map((m) => quantile(monthValues(levels, m + 1), WET_YEAR)));
  return {
    low: Math.min(highest(water.clayLow.month), 0),
    high: Math.min(highest(water.clayHigh.month), Math.max(places.highRim, 0)),
  };
}

/** Layers of the deepest log from the ground down, without gaps. */
function layersOf(layers: GroundLayer[]): { thickness: number; layer: GroundLayer }[] {
  const deepest = layers.reduce((a, b) => (b.row.bottom > a.row.bottom ? b : a)).row.pit;
  const log = layers.filter(({ row }) => row.pit === deepest).sort((a, b) => a.row.top - b.row.top);
  return log.map((layer, l) => ({
    layer,
    thickness: (log[l + 1]?.row.top ?? layer.row.bottom) - (l === 0 ? 0 : layer.row.top),
  }));
}
