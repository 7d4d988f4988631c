/** What a pond itself takes, whatever lies under it: liner, fleece, what is filled in around and below it, and its edge. */
import { beddingLaid, gravelLeftOut, ringVolume } from '../digging/index.js';
import { type DrainQuantity, layerVolume, together, WASTE, withWaste } from '../drain/index.js';
import { formula, type Use, unrecorded } from '../formula/index.js';
import type { Measures } from '../heads/index.js';
import type { Pond, Site } from '../site/index.js';
import { outline, planArea, widened } from '../uplift/index.js';
import { edgeOut, linerEdge } from './linerEdge.js';

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

/** Area of a sheet. */
export const sheetArea = formula({
  title: 'Area of the sheet',
  symbol: 'A',
  unit: 'm²',
  expression: 'l*b',
  parameters: {
    l: { meaning: 'length', unit: 'm', min: 0, max: 200 },
    b: { meaning: 'width', unit: 'm', min: 0, max: 200 },
  },
  compute: (l: number, b: number) => l * b,
  validity: 'one rectangular sheet',
  source: 'geometry',
});

/** What is laid beside every liner to look at the water under it. */
const DIP_PIPE = 'dip pipe, 50 mm (2 in), beside the liner, open at its foot, with cap';

/** Liner laid over the rim, m: about 1 ft. Common practice. */
const OVERLAP = 0.3;

/** The sheet that lines a pond, in one piece: length and width, m. */
export function linerSides(
  { shape, fullLevel }: Pick<Pond, 'shape' | 'fullLevel'>,
  depth: number,
  use: Use = unrecorded,
): [number, number] {
  const edge = linerEdge(fullLevel, use);
  const { length, width } = widened(shape, use(edgeOut, shape.sideSlope, edge, 0), use);
  const high = together('m', [depth, edge], use);
  const side = (a: number) => use(sheetSide, a, high, shape.sideSlope, OVERLAP);
  return [side(length), side(width)];
}

/**
 * The pond's own goods for measures at a depth; none for a pond that is there.
 * @param site - from {@link siteModel}
 * @param m - measures; a drain's bed lies in the place of a bedding
 * @param depth - m, above 0
 * @param use - what evaluates the formulas, for a record
 * @returns items with amount in m, m² or m³, waste and laps included
 */
export function pondGoods(site: Site, m: Measures, depth: number, use: Use = unrecorded): DrainQuantity[] {
  const { pond } = site;
  if (pond.existing) return [];
  const { ring, bedding, shape } = pond;
  const sides_m = linerSides(pond, depth, use);
  const liner = use(sheetArea, ...sides_m);
  const floor = () => planArea(shape, depth, use);
  const granular = (item: string, volume: number): DrainQuantity => ({
    item: `${item}, 10 % waste`,
    amount: use(withWaste['m³'], volume, WASTE.granular),
    unit: 'm³',
  });
  return [
    { item: 'liner, one sheet with 0.3 m (1 ft) over the rim', amount: liner, unit: 'm²', sides_m },
    {
      item: 'protection fleece under the liner, 15 % laps',
      amount: use(withWaste['m²'], liner, WASTE.fabric),
      unit: 'm²',
    },
    ...(beddingLaid(site, m) === 0
      ? []
      : bedding.kind === 'mat'
        ? [
            {
              item: 'drainage mat under the liner, 15 % laps',
              amount: use(withWaste['m²'], floor(), WASTE.fabric),
              unit: 'm²',
            },
          ]
        : [granular(`${bedding.kind} under the liner`, use(layerVolume, floor(), bedding.thickness))]),
    ...(ring.width > 0 && (ring.fill === 'sand' || ring.fill === 'gravel') && !gravelLeftOut(site, m)
      ? [granular(`${ring.fill} for the ring around the liner`, ringVolume(site, m, depth, use))]
      : []),
    ...(pond.wall === 'none'
      ? []
      : [
          {
            item: `${pond.wall} wall around the pond with its footing, as an engineer designs it`,
            amount: outline(shape, 0, use),
            unit: 'm',
          },
        ]),
    { item: DIP_PIPE, amount: 1, unit: 'piece' },
    {
      item: 'edging around the rim',
      amount: outline(
        widened(shape, use(edgeOut, shape.sideSlope, linerEdge(pond.fullLevel, use), 0), use),
        0,
        use,
      ),
      unit: 'm',
    },
  ].filter(({ amount }) => amount > 0);
}
