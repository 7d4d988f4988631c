/** What a pond itself takes, whatever lies under it: liner, fleece, what is filled in around and below it, and its edge. */
import { beddingLaid, gravelLeftOut, ringVolume } from '../digging/index.js';
import { type DrainQuantity, WASTE } from '../drain/index.js';
import { formula } from '../formula/index.js';
import type { Measures } from '../heads/index.js';
import type { Pond, Site } from '../site/index.js';
import { outline, type PondShape, planArea } from '../uplift/index.js';

/** Side of a sheet that lines a pond. */
export const sheetSide = formula({
  title: 'Length of a sheet that lines a pond',
  symbol: 'l',
  unit: 'm',
  expression: 'a + 2*d*(sqrt(1 + m^2) - m) + 2*o',
  parameters: {
    a: { meaning: 'length of the pond at the rim', unit: 'm', min: 0.5, max: 100 },
    d: { meaning: 'depth', unit: 'm', min: 0, max: 5 },
    m: { meaning: 'slope of the sides, horizontal to 1 vertical', unit: '-', min: 0, max: 5 },
    o: { meaning: 'overlap at the rim', unit: 'm', min: 0, max: 1 },
  },
  compute: (a: number, d: number, m: number, o: number) => a + 2 * d * (Math.sqrt(1 + m ** 2) - m) + 2 * o,
  validity:
    'sides of one slope; a level shelf takes as much of the floor as it adds; for upright sides the common rule of length plus twice the depth',
  source: 'geometry',
});

/** The liner goes up above the full pond, m. Common practice. */
export const FREEBOARD = 0.1;
/** Liner laid over the rim, m: about 1 ft. Common practice. */
const OVERLAP = 0.3;

/** Edge of the liner above the lowest ground at the rim, m. */
export const linerEdge = (fullLevel: number) => Math.max(fullLevel + FREEBOARD, 0);

/** A pond's plan so much wider all round, m. */
export const widened = (shape: PondShape, by: number): PondShape => ({
  ...shape,
  length: shape.length + 2 * by,
  width: shape.width + 2 * by,
});

/** The sheet that lines a pond, in one piece: length and width, m. */
export function linerSides(
  { shape, fullLevel }: Pick<Pond, 'shape' | 'fullLevel'>,
  depth: number,
): [number, number] {
  const edge = linerEdge(fullLevel);
  // The sides go on at their slope up to the edge of the liner.
  const side = (a: number) =>
    sheetSide.compute(a + 2 * shape.sideSlope * edge, depth + edge, shape.sideSlope, OVERLAP);
  return [side(shape.length), side(shape.width)];
}

/**
 * The pond's own goods for measures at a depth; none for a pond that is there.
 * @param site - from {@link siteModel}
 * @param m - measures; a drain's bed lies in the place of a bedding
 * @param depth - m, above 0
 * @returns items with amount in m, m² or m³, waste and laps included
 */
export function pondGoods(site: Site, m: Measures, depth: number): DrainQuantity[] {
  const { pond } = site;
  if (pond.existing) return [];
  const { ring, bedding, shape } = pond;
  const sides_m = linerSides(pond, depth);
  const liner = sides_m[0] * sides_m[1];
  return [
    { item: 'liner, one sheet with 0.3 m (1 ft) over the rim', amount: liner, unit: 'm²', sides_m },
    {
      item: 'protection fleece under the liner, 15 % laps',
      amount: liner * (1 + WASTE.fabric),
      unit: 'm²',
    },
    ...(beddingLaid(site, m) > 0 ? beddingGoods(bedding, planArea(shape, depth)) : []),
    ...((ring.fill === 'sand' || ring.fill === 'gravel') && !gravelLeftOut(site, m)
      ? granular(`${ring.fill} for the ring around the liner`, ringVolume(site, m, depth))
      : []),
    ...(pond.wall === 'none'
      ? []
      : [
          {
            item: `${pond.wall} wall around the pond with its footing, as an engineer designs it`,
            amount: outline(shape),
            unit: 'm',
          },
        ]),
    {
      item: 'edging around the rim',
      amount: outline(widened(shape, shape.sideSlope * linerEdge(pond.fullLevel))),
      unit: 'm',
    },
  ];
}

const granular = (item: string, amount: number): DrainQuantity[] =>
  amount > 0 ? [{ item: `${item}, 10 % waste`, amount: amount * (1 + WASTE.granular), unit: 'm³' }] : [];

/** What the survey lays under a liner that no drain lies under. */
function beddingGoods({ kind, thickness }: Pond['bedding'], floor: number): DrainQuantity[] {
  if (kind === 'none') return [];
  if (kind !== 'mat') return granular(`${kind} under the liner`, floor * thickness);
  return [
    { item: 'drainage mat under the liner, 15 % laps', amount: floor * (1 + WASTE.fabric), unit: 'm²' },
  ];
}
