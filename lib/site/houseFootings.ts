import type { Survey } from '../survey/index.js';
import type { Assumptions } from './assumptions.js';
import type { Footing, Places } from './places.js';

/** Depth of a footing that nobody has seen, below the ground at the house, m: walls on a few courses of brick. Our choice. */
export const SHALLOW_FOOTING = 0.3;
/** A house nearer than this to a dig concerns it whatever its depth, m: Party Wall etc. Act 1996 section 6, from memory. */
export const NEAR_HOUSE = 3;
/** How far a footing may be from the levelled house it is of, m. Our choice. */
const SAME_WALL = { onPlan: 2, byTape: 0.5 };

/** The footings of a survey, and a shallow one for every house that none was levelled of. */
export function footingsOf(survey: Survey, places: Places, assume: Assumptions): Footing[] {
  const point = (name: string, roles: string[]) =>
    survey.levels.find((p) => p.point === name && roles.includes(p.role));
  const isOf = (footing: Footing, house: Places['houses'][number]) => {
    const [a, b] = [point(footing.name, ['footing']), point(house.name, ['house', 'neighbour-house'])];
    if (a?.x !== undefined && a.y !== undefined && b?.x !== undefined && b.y !== undefined)
      return Math.hypot(a.x - b.x, a.y - b.y) <= SAME_WALL.onPlan;
    return Math.abs(footing.distance - house.distance) <= SAME_WALL.byTape;
  };
  const unknown = places.houses.filter((house) => !places.footings.some((f) => isOf(f, house)));
  return [
    ...places.footings,
    ...unknown.map(({ name, level, distance, drawn }): Footing => {
      if (distance < NEAR_HOUSE)
        assume.add(
          `footing of ${name}`,
          SHALLOW_FOOTING,
          'm below its ground',
          'not levelled: taken as shallow as walls stand, our choice',
        );
      return {
        name,
        level: level - SHALLOW_FOOTING,
        distance,
        assumed: true,
        ...(drawn !== undefined && { drawn }),
      };
    }),
  ];
}
