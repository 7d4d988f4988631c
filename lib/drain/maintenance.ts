/** What a look into the inspection pipe says. */
export interface Reading {
  trouble: boolean;
  says: 'free' | 'at-the-liner' | 'storm' | 'blocked';
}

/**
 * Reads the inspection pipe at the head of the drain; levels m above one datum.
 * @param water - level in the inspection pipe
 * @param invert - level of the lowest inside point of the pipe in the bed
 * @param floor - level of the liner's floor
 * @param wet - whether it rained hard in the last day
 * @returns whether there is trouble, and what the look says
 */
export function readInspectionPipe(water: number, invert: number, floor: number, wet: boolean): Reading {
  if (water <= invert + 0.05) return { trouble: false, says: 'free' };
  if (water >= floor) return { trouble: true, says: 'at-the-liner' };
  return wet ? { trouble: false, says: 'storm' } : { trouble: true, says: 'blocked' };
}

/** What is looked after, by name. */
export type Task = 'inspection-pipe' | 'flush' | 'leak' | 'flap' | 'pumps';

/**
 * What is looked after.
 * @param kind - where the drain ends
 * @returns each task
 */
export function maintenance(kind: 'outlet' | 'sump'): Task[] {
  return ['inspection-pipe', 'flush', 'leak', kind === 'outlet' ? 'flap' : 'pumps'];
}
