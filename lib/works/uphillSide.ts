import { groundPlane, type Site } from '../site/index.js';

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
