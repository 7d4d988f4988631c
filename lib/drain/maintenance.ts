/** What a look into the inspection pipe says. */
export interface Reading {
  trouble: boolean;
  words: string;
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
  if (water <= invert + 0.05) return { trouble: false, words: 'free: the drain works' };
  if (water >= floor)
    return {
      trouble: true,
      words: 'water stands at the liner: keep the pond full, free the outlet, then flush',
    };
  return wet
    ? { trouble: false, words: 'the storm is running off: look again tomorrow' }
    : {
        trouble: true,
        words: 'water stands in the bed without rain: the outlet, the flap or the pipe is blocked; flush it',
      };
}

/**
 * What is looked at, and when.
 * @param kind - where the drain ends
 * @returns a sentence for each
 */
export function maintenance(kind: 'outlet' | 'sump'): string[] {
  return [
    'Every autumn and after storms: look into the inspection pipe.',
    'Every second year: flush the pipe with a hose from the inspection pipe until it runs clear; keep what comes out in a jar. Grit that settles at once is bed; a cloud that stays is clay, and the filter is failing.',
    'Water running out in dry weeks: the liner leaks; find it before the pond is topped up.',
    ...(kind === 'outlet'
      ? ['Every autumn: free the flap, clear the guard, cut the grass at the mouth.']
      : [
          'Every month of the wet half-year: lift the float of each pump and of the alarm; change the battery once a year.',
        ]),
  ];
}
