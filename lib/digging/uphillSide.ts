/** How a pond lies to ground that rises across it, and how much of its outline stands at the lowest and the highest ground. */
import { formula, type Use } from '../formula/index.js';
import { groundPlane, type Site } from '../site/index.js';
import { outline, widened } from '../uplift/index.js';

/** The low or the high side of a box. */
export const boxAlong = formula({
  title: 'Length along the low side of a box, and along its high side, with the corners there',
  symbol: 'l',
  unit: 'm',
  expression: 's + 4*x',
  parameters: {
    s: { meaning: 'side that faces uphill, at the rim', unit: 'm', min: 0.1, max: 100 },
    x: { meaning: 'line outside the rim', unit: 'm', min: 0, max: 20 },
  },
  compute: (s: number, x: number) => s + 4 * x,
  validity:
    'ground that rises square to that side and is level beyond the rim, so the corners stand as the side does',
  source: 'geometry: two corners of twice the way out each',
});

/** What of an ellipse counts as its low or its high side. */
export const ovalAlong = formula({
  title: 'Length of an ellipse that counts as its low side, and as its high side',
  symbol: 'l',
  unit: 'm',
  expression: 'P*s/(4*(s + e))',
  parameters: {
    P: { meaning: 'all round', unit: 'm', min: 0, max: 500 },
    s: { meaning: 'axis along the ground, at the rim', unit: 'm', min: 0.1, max: 100 },
    e: { meaning: 'axis up the ground, at the rim', unit: 'm', min: 0.1, max: 100 },
  },
  compute: (P: number, s: number, e: number) => (P * s) / (4 * (s + e)),
  validity:
    'of a circle an eighth on either side and the rest evenly between, which gives the mean and the mean square of its heights; ' +
    'near for an ellipse, and where the height runs out on the way',
  source: 'moments of a cosine; our choice between a circle and an ellipse drawn out either way',
});

/** All round a line outside the rim, and what of it runs along the low side and again along the high side, m. */
export function roundAndAlong(site: Pick<Site, 'survey' | 'pond'>, out: number, use: Use) {
  const { shape } = site.pond;
  const round = outline(widened(shape, out, use), 0, use);
  const side = uphillSide(site);
  const { length, width } = shape;
  const along =
    shape.shape === 'box'
      ? use(boxAlong, side, out)
      : use(ovalAlong, round, side, side === length ? width : length);
  return { round, along };
}

/** Length of the side that faces uphill, m: by the levelled rim where that lies on the plan, else the longer one. */
export function uphillSide({ survey, pond }: Pick<Site, 'survey' | 'pond'>): number {
  const { length, width } = pond.shape;
  const rim = survey.levels.flatMap(({ role, x, y, level }): [number, number, number][] =>
    role === 'rim' && x !== undefined && y !== undefined ? [[x, y, level]] : [],
  );
  const plane = groundPlane(rim);
  const longest = Math.max(length, width);
  if (!plane) return longest;
  const reach = (at: 0 | 1) => Math.max(...rim.map((p) => p[at])) - Math.min(...rim.map((p) => p[at]));
  const [along, across] =
    reach(0) >= reach(1) ? [plane.slope.x, plane.slope.y] : [plane.slope.y, plane.slope.x];
  // Ground that rises along the pond meets its end, ground that rises across it its long side.
  return Math.abs(along) > Math.abs(across) ? Math.min(length, width) : longest;
}
