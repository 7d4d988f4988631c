/** A fact that can be, and among the others of the survey hardly is: told, and taken as it stands. */

import type { Origin } from './survey.js';

/** What stands against a fact, and where that was said. */
export interface Doubt {
  where: Origin;
  /** a sentence without its end: what is odd, then what to check */
  message: string;
}

/** Gathers the doubts whose condition holds and whose place is known. */
export class Doubts {
  readonly list: Doubt[] = [];

  /** @param where absent: the fact was not said, so nothing can be odd about it */
  when(odd: boolean, where: Origin | undefined, message: string): void {
    if (odd && where) this.list.push({ where, message });
  }
}

/** Lengths in a doubt. */
export const metres = (value: number) => `${Number(value.toPrecision(3))} m`;
